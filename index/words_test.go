package index

import (
	"testing"

	"github.com/stretchr/testify/require"

	"gudgeon/rules/source"
)

func texts(terms []term) []string {
	var list []string
	for _, t := range terms {
		list = append(list, t.text)
	}
	return list
}

func TestReadingOfText(t *testing.T) {
	r := testReader(t)
	for _, c := range []struct {
		text string
		want []string
	}{
		{"The maker's bushings were worn", []string{"maker", "bush", "wear", "=wear", "=liner"}},
		{"out-of-round", []string{"round", "=oval"}},
		{"build-up at 9 o'clock", []string{"build", "=buildup"}},
		{"gage centered", []string{"gaug", "centr"}},
		{"5,000 times", []string{"5000", "time"}},
		{"Größe", []string{"größe"}},
		{"", nil},
	} {
		require.ElementsMatch(t, c.want, texts(r.read(c.text, nil).terms()), c.text)
	}
}

func TestWordsKeepTheirPlaces(t *testing.T) {
	text := "Ångström, the maker's 3.2.1 bore"
	for _, w := range testReader(t).words(text, nil) {
		require.NotContains(t, text[w.start:w.end], " ")
		require.NotEmpty(t, text[w.start:w.end])
	}
}

func TestPairs(t *testing.T) {
	r := testReader(t)
	require.Equal(t, []string{"lift tabl", "tabl edg"}, pairs(r.read("lift table at the edge", nil).words))
	require.Empty(t, pairs(r.read("lift ............ table", nil).words))
	require.Equal(t, " lift . tabl ", newRun(r.read("lift ............ table", nil).words, 2).text)
}

func TestSynonymsMistakes(t *testing.T) {
	for _, c := range []struct{ file, want string }{
		{"same: [[centre, two words]]", "own.yaml:1:17: \"two words\" is not one word\n  1 | same: [[centre, two words]]\n    |                 ^^^^^^^^^\n  write one, or put it under near:"},
		{"near: {oval: [egged, '.']}", "own.yaml:1:23: this way to say \"oval\" holds no word\n  1 | near: {oval: [egged, '.']}\n    |                       ^\n  delete it"},
		{"nearly: {}", "own.yaml:1:1: \"nearly\" is not a key here\n  1 | nearly: {}\n    | ^^^^^^\n  known here: same, near, skip"},
	} {
		require.EqualError(t, CheckSynonyms(&source.File{Name: "own.yaml", Text: c.file}), c.want)
	}
}

// A shop's own words join those that are known already, and its own ways to say
// an idea stand beside the shipped ones.
func TestSynonymsOfAShop(t *testing.T) {
	r, err := newReader(&source.File{Name: "own.yaml", Text: "same: [[center, zentrum], [knuckle, bushing]]\nnear: {oval: [potato shaped]}\nskip: [Cousin]\n"})
	require.NoError(t, err)
	for _, c := range []struct {
		text string
		want []string
	}{
		{"zentrum", []string{"centr"}},
		{"bush", []string{"knuckl", "=liner"}},
		{"potato shaped", []string{"potato", "shape", "=oval"}},
		{"egged", []string{"eg", "=oval"}},
		{"cousin", nil},
	} {
		require.ElementsMatch(t, c.want, texts(r.read(c.text, nil).terms()), c.text)
	}
	shipped := testReader(t)
	require.ElementsMatch(t, []string{"bush", "=liner"}, texts(shipped.read("bush", nil).terms()), "another reader is not touched")
}

func TestDistance(t *testing.T) {
	for _, c := range []struct {
		a, b string
		want int
	}{
		{"preheat", "preheat", 0},
		{"prehaet", "preheat", 1}, // two letters swapped
		{"chater", "chatter", 1},
		{"nitrogn", "nitrogen", 1},
		{"bore", "weld", 4},
	} {
		require.Equal(t, c.want, distance(c.a, c.b, 4), "%s %s", c.a, c.b)
		require.Equal(t, c.want, distance(c.b, c.a, 4), "%s %s", c.b, c.a)
	}
	require.Equal(t, 2, distance("a", "abcdef", 1), "far apart in length is not counted out")
}
