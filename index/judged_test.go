package index

import (
	"fmt"
	"os"
	"testing"

	"github.com/goccy/go-yaml"
	"github.com/stretchr/testify/require"

	"gudgeon/index/quality"
	"gudgeon/kb"
)

// leastNDCG is the floor for our own queries; the figures themselves are logged.
const leastNDCG = 0.85

func TestOwnQueries(t *testing.T) {
	for file, count := range map[string]int{"judged.yaml": 65, "held_out.yaml": 30} {
		t.Run(file, func(t *testing.T) { measureOwn(t, file, count) })
	}
}

func measureOwn(t *testing.T, file string, count int) {
	ix, notes := shippedIndex(t)
	queries := judged(t, file, notes)
	require.Len(t, queries, count)
	figures, err := quality.Evaluate(queries, ix.names)
	require.NoError(t, err)
	t.Logf("%s over %d notes: %v", file, len(notes), figures)
	require.GreaterOrEqual(t, figures.NDCG10, leastNDCG)
	if file != "judged.yaml" {
		return // single results of the other set are nobody's business while tuning
	}
	for _, q := range queries {
		ranked, err := ix.names(q.Text, 10)
		require.NoError(t, err)
		if n := quality.NDCG(q.Grades, ranked); n < 0.7 {
			t.Logf("%.2f %q: %v", n, q.Text, ranked[:min(5, len(ranked))])
		}
	}
}

func shippedIndex(t testing.TB) (*Index, []kb.Note) {
	notes, err := kb.Shipped()
	require.NoError(t, err)
	ix, err := Build(notes)
	require.NoError(t, err)
	t.Cleanup(func() { require.NoError(t, ix.Close()) })
	return ix, notes
}

func judged(t *testing.T, file string, notes []kb.Note) []quality.Query {
	text, err := os.ReadFile("testdata/" + file)
	require.NoError(t, err)
	var list []struct {
		Query string
		Notes map[string]int
	}
	require.NoError(t, yaml.UnmarshalWithOptions(text, &list, yaml.Strict()))
	known := map[string]bool{}
	for _, n := range notes {
		known[n.Name] = true
	}
	queries := make([]quality.Query, len(list))
	for i, q := range list {
		for name, grade := range q.Notes {
			require.True(t, known[name], "%q: there is no note %s", q.Query, name)
			require.Contains(t, []int{1, 2, 3}, grade, q.Query)
		}
		queries[i] = quality.Query{ID: fmt.Sprint(i + 1), Text: q.Query, Grades: q.Notes}
	}
	return queries
}
