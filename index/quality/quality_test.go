package quality

import (
	"errors"
	"math"
	"testing"
	"testing/fstest"

	"github.com/stretchr/testify/require"
)

// Worked by hand: grades 3, 2, 0, 1 in the order found, one right document of
// grade 2 not found.
func TestFiguresWorkedByHand(t *testing.T) {
	q := Query{ID: "1", Text: "x", Grades: map[string]int{"a": 3, "b": 2, "d": 1, "e": 2, "f": 0}}
	rank := func(query string, n int) ([]string, error) {
		require.Equal(t, "x", query)
		require.Equal(t, 100, n)
		return []string{"a", "b", "c", "d"}, nil
	}
	got, err := Evaluate([]Query{q}, rank)
	require.NoError(t, err)
	// gained 3 + 2/1.58496 + 0 + 1/2.32193 = 4.69253; best 3 + 2/1.58496 + 2/2 + 1/2.32193 = 5.69253
	require.InDelta(t, 0.82433, got.NDCG10, 1e-5)
	require.InDelta(t, (1.0+1.0+3.0/4)/4, got.MAP, 1e-12)
	require.InDelta(t, 3.0/4, got.Recall100, 1e-12)
	require.Equal(t, 1, got.Queries)
	require.Equal(t, "nDCG@10 0.8243  MAP 0.6875  Recall@100 0.7500  (1 queries)", got.String())
}

func TestOnlyTheFirstTenCountForNDCG(t *testing.T) {
	late := []string{"1", "2", "3", "4", "5", "6", "7", "8", "9", "10", "a"}
	require.Zero(t, NDCG(map[string]int{"a": 3}, late))
	require.InDelta(t, 1/math.Log2(11), NDCG(map[string]int{"a": 3}, late[1:]), 1e-12)
}

func TestQueriesWithoutRightAnswersAreLeftOut(t *testing.T) {
	queries := []Query{{ID: "1", Grades: map[string]int{"a": 0}}, {ID: "2", Grades: map[string]int{"a": 1}}}
	got, err := Evaluate(queries, func(string, int) ([]string, error) { return []string{"a"}, nil })
	require.NoError(t, err)
	require.Equal(t, Figures{1, 1, 1, 1}, got)
	_, err = Evaluate(queries[:1], nil)
	require.EqualError(t, err, "no query has a right answer; nothing to measure")
}

func TestRankerErrorNamesTheQuery(t *testing.T) {
	_, err := Evaluate([]Query{{ID: "7", Grades: map[string]int{"a": 1}}}, func(string, int) ([]string, error) { return nil, errors.New("broken") })
	require.EqualError(t, err, "query 7: broken")
}

func TestRead(t *testing.T) {
	files := fstest.MapFS{
		"docs.jsonl":    {Data: []byte(`{"id": "1", "title": "a", "text": "b"}` + "\n")},
		"queries.jsonl": {Data: []byte(`{"id": "9", "text": "q"}` + "\n\n")},
		"qrels.tsv":     {Data: []byte("9\t1\t3\n")},
	}
	c, err := Read(files)
	require.NoError(t, err)
	require.Equal(t, []Document{{"1", "a", "b"}}, c.Documents)
	require.Equal(t, []Query{{"9", "q", map[string]int{"1": 3}}}, c.Queries)

	for _, bad := range []struct{ file, text, want string }{
		{"docs.jsonl", "{", "docs.jsonl:1: unexpected end of JSON input"},
		{"qrels.tsv", "9 1 3", "qrels.tsv:1: there should be query, document and grade here, with tabs between"},
		{"qrels.tsv", "8\t1\t3", "qrels.tsv:1: query 8 is not in queries.jsonl"},
		{"qrels.tsv", "9\t1\tx", `qrels.tsv:1: strconv.Atoi: parsing "x": invalid syntax`},
	} {
		broken := fstest.MapFS{}
		for name, f := range files {
			broken[name] = f
		}
		broken[bad.file] = &fstest.MapFile{Data: []byte(bad.text)}
		_, err := Read(broken)
		require.EqualError(t, err, bad.want)
	}
	delete(files, "queries.jsonl")
	_, err = Read(files)
	require.EqualError(t, err, "reading a collection: open queries.jsonl: file does not exist")
}
