package index

import (
	"testing"

	"github.com/stretchr/testify/require"
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
		{"same: [[centre, two words]]", `synonyms.yaml: "two words" under same is not one word; write one, or put it under near`},
		{"near: {oval: [egged, '.']}", `synonyms.yaml: a way to say "oval" holds no word; delete it`},
	} {
		r := testReader(t)
		_, err := readSynonyms(r, []byte(c.file))
		require.EqualError(t, err, c.want)
	}
	_, err := readSynonyms(testReader(t), []byte("nearly: {}"))
	require.ErrorContains(t, err, `synonyms.yaml: [1:1] unknown field "nearly"`)
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
