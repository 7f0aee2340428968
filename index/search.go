package index

import (
	"cmp"
	"errors"
	"fmt"
	"math"
	"slices"
	"strings"
	"time"

	"github.com/blevesearch/bleve/v2"

	"gudgeon/kb"
)

// Options narrow a search. The zero value searches everything.
type Options struct {
	Part     string    // one of [kb.Parts]
	Process  string    // one of [kb.Processes]
	Material string    // any part of the material's name
	From, To time.Time // first and last day
	Limit    int       // most hits; 0 means 10
}

const (
	usualLimit  = 10
	longestText = 4000 // characters of a query
)

// A Hit is a note found, with the places that fit.
type Hit struct {
	Note     kb.Note   `json:"note"`
	Score    float64   `json:"score"` // comparable within one search only
	Snippets []Snippet `json:"snippets,omitempty"`
}

// Search finds the notes for what somebody typed, the best first, equals by
// name. Without words it gives every note that the options leave, newest first.
func (ix *Index) Search(text string, o Options) ([]Hit, error) {
	if err := o.check(); err != nil {
		return nil, err
	}
	if len(text) > longestText {
		return nil, fmt.Errorf("the search text is longer than %d characters; use a few words", longestText)
	}
	wanted := ix.wanted(text)
	ranked, err := ix.rank(wanted, o)
	if err != nil {
		return nil, err
	}
	if strings.TrimSpace(text) == "" {
		ranked = ix.newest(o)
	}
	return ix.hits(ranked, wanted, o.Limit), nil
}

func (ix *Index) hits(ranked []scored, wanted []clause, limit int) []Hit {
	if limit <= 0 {
		limit = usualLimit
	}
	hits := make([]Hit, 0, min(limit, len(ranked)))
	for _, s := range ranked[:min(limit, len(ranked))] {
		n := ix.notes[s.name]
		hits = append(hits, Hit{Note: n, Score: s.score, Snippets: ix.snippets(n, wanted)})
	}
	return hits
}

func (o Options) check() error {
	if o.Part != "" && !slices.Contains(kb.Parts(), o.Part) {
		return fmt.Errorf("part %q is not known; use one of: %s", o.Part, strings.Join(kb.Parts(), ", "))
	}
	if o.Process != "" && !slices.Contains(kb.Processes(), o.Process) {
		return fmt.Errorf("process %q is not known; use one of: %s", o.Process, strings.Join(kb.Processes(), ", "))
	}
	if !o.From.IsZero() && !o.To.IsZero() && o.To.Before(o.From) {
		return errors.New("the last day is before the first; swap the two dates")
	}
	return nil
}

// lets reports whether the options leave a note in.
func (o Options) lets(n kb.Note) bool {
	switch {
	case o.Part != "" && n.Part != o.Part:
		return false
	case o.Process != "" && !slices.Contains(n.Process, o.Process):
		return false
	case !strings.Contains(strings.ToLower(n.Material), strings.ToLower(o.Material)):
		return false
	case !o.From.IsZero() && n.Date.Before(o.From):
		return false
	}
	return o.To.IsZero() || !n.Date.After(o.To)
}

// A clause is a term to look for and how much it counts.
type clause struct {
	text   string
	weight float64
}

// What the very word counts is 1.
const (
	pairWeight   = 0.15
	ideaWeight   = 0.5
	slipWeight   = 0.7
	phraseWeight = 1.0 // an idea told in several words, such as "ground clamp"
	insideWeight = 0.4 // a word of it, which alone says less: "clamp"
	nearWeight   = 0.6 // a quantity that only rounds to the one typed
)

// wanted turns what was typed into clauses. What no note has is left out.
func (ix *Index) wanted(text string) []clause {
	read := ix.reader.read(text, nil)
	var list clauses
	for _, w := range read.words {
		list.add(w.text, wordWeight(w, read.ideas))
		for _, known := range ix.nearest(w.text) {
			list.add(known, slipWeight)
		}
	}
	for _, p := range pairs(read.words) {
		list.add(p, pairWeight)
	}
	for _, i := range read.ideas {
		if i.phrase {
			list.add(i.text, phraseWeight)
		}
		list.add(i.text, ideaWeight)
	}
	for _, c := range read.codes {
		list.add(c.text, 1)
	}
	for _, q := range read.quantities {
		for _, known := range ix.same(q) {
			list.add(known.text, known.weight)
		}
	}
	return slices.DeleteFunc(list, func(c clause) bool { return !isPair(c.text) && ix.notesWith[c.text] == 0 })
}

// clauses holds each term once, with the most weight it was given.
type clauses []clause

func (list *clauses) add(text string, weight float64) {
	for i, c := range *list {
		if c.text == text {
			(*list)[i].weight = max(c.weight, weight)
			return
		}
	}
	*list = append(*list, clause{text, weight})
}

func wordWeight(w term, ideas []idea) float64 {
	for _, i := range ideas {
		if i.phrase && i.start <= w.start && w.end <= i.end {
			return insideWeight
		}
	}
	return 1
}

// mostSame quantities are looked for; more only make a vague size slow.
const mostSame = 8

// same lists the quantities of the notes that may be the one typed, the closest
// first.
func (ix *Index) same(q quantity) []clause {
	var found []quantity
	for _, known := range ix.quantities {
		if q.near(known) {
			found = append(found, known)
		}
	}
	off := func(k quantity) float64 { return math.Abs(k.value - q.value) }
	slices.SortFunc(found, func(a, b quantity) int {
		return cmp.Or(cmp.Compare(off(a), off(b)), cmp.Compare(a.value, b.value))
	})
	var list []clause
	for _, k := range found[:min(mostSame, len(found))] {
		weight := nearWeight
		if k.term() == q.term() {
			weight = 1
		}
		list = append(list, clause{k.term(), weight})
	}
	return list
}

type scored struct {
	name  string
	score float64
}

// rank orders all notes that have a wanted term.
//
// Each term is scored by bleve alone and the sum is taken here. In one combined
// query bleve would weigh a rare term by the square of its rarity and multiply by
// the share of terms matched; both made results worse when measured.
func (ix *Index) rank(wanted []clause, o Options) ([]scored, error) {
	sum := map[string]float64{}
	for _, c := range wanted {
		scores, err := ix.scores(c.text)
		if err != nil {
			return nil, fmt.Errorf("searching the notes: %w", err)
		}
		weight := c.weight * math.Sqrt(rarity(len(scores), len(ix.notes)))
		for name, score := range scores {
			sum[name] += weight * score
		}
	}
	ranked := make([]scored, 0, len(sum))
	for name, score := range sum {
		if o.lets(ix.notes[name]) {
			ranked = append(ranked, scored{name, settled(score)})
		}
	}
	order(ranked)
	return ranked, nil
}

// scores gives the notes that have a term, or a pair of words, with its score.
func (ix *Index) scores(text string) (map[string]float64, error) {
	if isPair(text) {
		return ix.pairScores(text), nil
	}
	q := bleve.NewTermQuery(text)
	q.SetField(textField)
	result, err := ix.bleve.Search(bleve.NewSearchRequestOptions(q, len(ix.notes), 0, false))
	if err != nil {
		return nil, err
	}
	scores := make(map[string]float64, len(result.Hits))
	for _, h := range result.Hits {
		scores[h.ID] = h.Score
	}
	return scores, nil
}

// rarity is higher the fewer notes have a term; it is the one bleve uses.
func rarity(having, all int) float64 {
	return 1 + math.Log(float64(all)/float64(1+having))
}

// settled drops the last digits, so that equals are equal.
func settled(score float64) float64 { return math.Round(score*1e9) / 1e9 }

func order(ranked []scored) {
	slices.SortFunc(ranked, func(a, b scored) int {
		return cmp.Or(cmp.Compare(b.score, a.score), cmp.Compare(a.name, b.name))
	})
}

func (ix *Index) newest(o Options) []scored {
	var list []scored
	for name, n := range ix.notes {
		if o.lets(n) {
			list = append(list, scored{name: name})
		}
	}
	slices.SortFunc(list, func(a, b scored) int {
		return cmp.Or(ix.notes[b.name].Date.Compare(ix.notes[a.name].Date), cmp.Compare(a.name, b.name))
	})
	return list
}
