package index

import (
	"os"
	"testing"

	"github.com/stretchr/testify/require"

	"gudgeon/index/quality"
	"gudgeon/kb"
)

// collectionsEnv names a folder with public test collections, one in each
// sub-folder: docs.jsonl, queries.jsonl, qrels.tsv.
const collectionsEnv = "GUDGEON_COLLECTIONS"

func TestPublicCollections(t *testing.T) {
	folder := os.Getenv(collectionsEnv)
	if folder == "" {
		t.Skipf("set %s to a folder of collections to measure on them", collectionsEnv)
	}
	for _, name := range []string{"cranfield", "cisi"} {
		t.Run(name, func(t *testing.T) {
			c, err := quality.Read(os.DirFS(folder + "/" + name))
			require.NoError(t, err)
			notes := make([]kb.Note, len(c.Documents))
			for i, d := range c.Documents {
				notes[i] = kb.Note{Name: d.ID, Title: d.Title, Body: d.Text}
			}
			ix, err := Build(notes)
			require.NoError(t, err)
			defer ix.Close()
			figures, err := quality.Evaluate(c.Queries, ix.names)
			require.NoError(t, err)
			t.Logf("%s: %v", name, figures)
		})
	}
}

// names is the search as the quality package wants it.
func (ix *Index) names(query string, n int) ([]string, error) {
	ranked, err := ix.rank(ix.wanted(query), Options{})
	if err != nil {
		return nil, err
	}
	var names []string
	for _, s := range ranked[:min(n, len(ranked))] {
		names = append(names, s.name)
	}
	return names, nil
}
