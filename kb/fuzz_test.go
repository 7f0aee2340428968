package kb

import (
	"testing"
	"unicode/utf8"

	"github.com/stretchr/testify/require"

	"gudgeon/rules/source"
)

func FuzzParse(f *testing.F) {
	f.Add([]byte(good))
	f.Add([]byte("---\n---\n"))
	f.Add([]byte("---\ntitle: [\n---\n"))
	f.Add([]byte("---\n? a\n: b\n---\n"))
	f.Add([]byte("---\n&a title: *a\n---\n"))
	f.Add([]byte("---\nmeasured: {a: {b: c}}\n<<: x\n---\n"))
	f.Add([]byte("---\ntitle: |\n\t- \xff\n---\n"))
	f.Fuzz(func(t *testing.T, data []byte) {
		n, err := parseText("a.md", string(data))
		if err == nil {
			requireWhole(t, n)
			return
		}
		var list source.Errors
		require.ErrorAs(t, err, &list)
		require.NotEmpty(t, list)
		for _, one := range list {
			require.NotEmpty(t, one.What)
			require.GreaterOrEqual(t, one.Pos.Line, 0)
			require.True(t, utf8.ValidString(one.Error()))
		}
	})
}

// requireWhole holds for every note that is taken.
func requireWhole(t *testing.T, n Note) {
	require.NotEmpty(t, n.Title)
	require.Contains(t, Parts(), n.Part)
	require.NotEmpty(t, n.Process)
	require.NotEmpty(t, n.Found)
	require.NotEmpty(t, n.Done)
	require.False(t, n.Date.IsZero())
	require.True(t, utf8.ValidString(n.Title+n.Found+n.Done+n.Body))
}
