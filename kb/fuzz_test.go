package kb

import (
	"testing"
	"unicode/utf8"

	"github.com/stretchr/testify/require"
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
		n, err := Parse("a.md", data)
		if err == nil {
			requireWhole(t, n)
			return
		}
		var m *Mistakes
		require.ErrorAs(t, err, &m)
		require.NotEmpty(t, m.List)
		for _, one := range m.List {
			require.NotEmpty(t, one.Do)
			require.GreaterOrEqual(t, one.Line, 0)
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
