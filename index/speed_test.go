package index

import (
	"testing"

	"github.com/stretchr/testify/require"

	"gudgeon/kb"
)

func BenchmarkBuild(b *testing.B) {
	notes, err := kb.Shipped()
	require.NoError(b, err)
	for b.Loop() {
		ix, err := Build(notes)
		require.NoError(b, err)
		require.NoError(b, ix.Close())
	}
}

func BenchmarkSearch(b *testing.B) {
	notes, err := kb.Shipped()
	require.NoError(b, err)
	ix, err := Build(notes)
	require.NoError(b, err)
	defer ix.Close()
	for b.Loop() {
		hits, err := ix.Search("bushing turned in the boss, too little interference, 4 in", Options{})
		require.NoError(b, err)
		require.NotEmpty(b, hits)
	}
}
