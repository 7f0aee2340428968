// Package quality measures how well a search puts the right documents first.
//
// It knows nothing of any search engine: [Evaluate] takes a function that ranks
// documents for a query, and judgements of which documents are right.
package quality

import (
	"bufio"
	"cmp"
	"encoding/json"
	"fmt"
	"io/fs"
	"math"
	"slices"
	"strconv"
	"strings"
)

// A Document is one text of a collection.
type Document struct {
	ID, Title, Text string
}

// A Query is one question with its judged answers.
type Query struct {
	ID, Text string
	Grades   map[string]int // document → how right it is; 0 and absent are wrong
}

// A Collection is a set of documents and the queries judged on them.
type Collection struct {
	Documents []Document
	Queries   []Query
}

// A Ranker gives at most n document ids for a query, the best first.
type Ranker func(query string, n int) ([]string, error)

// Figures are means over the queries that have a right answer at all.
type Figures struct {
	NDCG10    float64 // gain is the grade, discount log2(rank+1), first ten
	MAP       float64 // mean average precision over the first hundred
	Recall100 float64 // share of the right documents among the first hundred
	Queries   int
}

func (f Figures) String() string {
	return fmt.Sprintf("nDCG@10 %.4f  MAP %.4f  Recall@100 %.4f  (%d queries)", f.NDCG10, f.MAP, f.Recall100, f.Queries)
}

const (
	first = 10
	depth = 100
)

// Evaluate runs every query through the ranker.
func Evaluate(queries []Query, rank Ranker) (Figures, error) {
	var sum Figures
	for _, q := range queries {
		if right(q.Grades) == 0 {
			continue
		}
		ranked, err := rank(q.Text, depth)
		if err != nil {
			return Figures{}, fmt.Errorf("query %s: %w", q.ID, err)
		}
		if len(ranked) > depth {
			ranked = ranked[:depth]
		}
		sum.NDCG10 += NDCG(q.Grades, ranked)
		sum.MAP += averagePrecision(q.Grades, ranked)
		sum.Recall100 += recall(q.Grades, ranked)
		sum.Queries++
	}
	if sum.Queries == 0 {
		return Figures{}, fmt.Errorf("no query has a right answer; nothing to measure")
	}
	n := float64(sum.Queries)
	return Figures{sum.NDCG10 / n, sum.MAP / n, sum.Recall100 / n, sum.Queries}, nil
}

// NDCG is the discounted gain of the first ten over that of the best order.
func NDCG(grades map[string]int, ranked []string) float64 {
	var got []int
	for _, id := range ranked {
		got = append(got, grades[id])
	}
	var best []int
	for _, g := range grades {
		best = append(best, g)
	}
	slices.SortFunc(best, func(a, b int) int { return cmp.Compare(b, a) })
	ideal := gain(best)
	if ideal == 0 {
		return 0
	}
	return gain(got) / ideal
}

func gain(grades []int) float64 {
	sum := 0.0
	for i, g := range grades[:min(first, len(grades))] {
		sum += float64(max(g, 0)) / math.Log2(float64(i)+2)
	}
	return sum
}

func averagePrecision(grades map[string]int, ranked []string) float64 {
	found, sum := 0, 0.0
	for i, id := range ranked {
		if grades[id] > 0 {
			found++
			sum += float64(found) / float64(i+1)
		}
	}
	return sum / float64(right(grades))
}

func recall(grades map[string]int, ranked []string) float64 {
	found := 0
	for _, id := range ranked {
		if grades[id] > 0 {
			found++
		}
	}
	return float64(found) / float64(right(grades))
}

func right(grades map[string]int) int {
	n := 0
	for _, g := range grades {
		if g > 0 {
			n++
		}
	}
	return n
}

// Read reads a collection: docs.jsonl (id, title, text), queries.jsonl (id,
// text) and qrels.tsv (query, document, grade).
func Read(fsys fs.FS) (Collection, error) {
	var c Collection
	err := eachLine(fsys, "docs.jsonl", func(line string) error {
		var d Document
		err := json.Unmarshal([]byte(line), &d)
		c.Documents = append(c.Documents, d)
		return err
	})
	if err != nil {
		return Collection{}, err
	}
	at := map[string]int{}
	err = eachLine(fsys, "queries.jsonl", func(line string) error {
		q := Query{Grades: map[string]int{}}
		err := json.Unmarshal([]byte(line), &q)
		at[q.ID] = len(c.Queries)
		c.Queries = append(c.Queries, q)
		return err
	})
	if err != nil {
		return Collection{}, err
	}
	err = eachLine(fsys, "qrels.tsv", func(line string) error {
		f := strings.Split(line, "\t")
		if len(f) != 3 {
			return fmt.Errorf("there should be query, document and grade here, with tabs between")
		}
		grade, err := strconv.Atoi(f[2])
		i, ok := at[f[0]]
		if err == nil && !ok {
			err = fmt.Errorf("query %s is not in queries.jsonl", f[0])
		}
		if err == nil {
			c.Queries[i].Grades[f[1]] = grade
		}
		return err
	})
	return c, err
}

func eachLine(fsys fs.FS, file string, do func(string) error) error {
	f, err := fsys.Open(file)
	if err != nil {
		return fmt.Errorf("reading a collection: %w", err)
	}
	defer f.Close()
	lines := bufio.NewScanner(f)
	lines.Buffer(nil, 1<<20)
	for n := 1; lines.Scan(); n++ {
		if strings.TrimSpace(lines.Text()) == "" {
			continue
		}
		if err := do(lines.Text()); err != nil {
			return fmt.Errorf("%s:%d: %w", file, n, err)
		}
	}
	return lines.Err()
}
