package index

import (
	"fmt"
	"strings"
	"sync"
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"gudgeon/kb"
)

func day(t require.TestingT, text string) time.Time {
	d, err := time.Parse(kb.DateLayout, text)
	require.NoError(t, err)
	return d
}

// few is a small index whose results can be worked out by eye.
func few(t testing.TB) *Index {
	ix, err := Build([]kb.Note{
		{Name: "oval-link", Title: "Oval link", Part: "link", Material: "cast steel", Process: []string{"survey"},
			Found: "The bore was egged. It measured 3-1/8 in.", Rules: []string{"bore-round"}, Date: day(t, "2024-01-01")},
		{Name: "round-lever", Title: "Bore out of round", Part: "lever", Material: "cast iron", Process: []string{"bore"},
			Found: "Chatter, see drawing 40-2217-C.", Rules: []string{"bore-round", "bore-size"}, Date: day(t, "2025-01-01")},
		{Name: "pin-b", Title: "Seized pin", Part: "pin", Material: "alloy steel", Process: []string{"fit"},
			Found: "Pin of 79.4 mm seized.", Date: day(t, "2023-01-01")},
		{Name: "pin-a", Title: "Seized pin", Part: "pin", Material: "alloy steel", Process: []string{"fit"},
			Found: "Pin of 79.4 mm seized.", Date: day(t, "2023-01-01")},
	})
	require.NoError(t, err)
	t.Cleanup(func() { require.NoError(t, ix.Close()) })
	return ix
}

func found(t require.TestingT, hits []Hit, err error) []string {
	require.NoError(t, err)
	list := []string{}
	for _, h := range hits {
		list = append(list, h.Note.Name)
	}
	return list
}

func TestSearch(t *testing.T) {
	ix := few(t)
	for _, c := range []struct {
		query string
		want  []string
	}{
		{"egged", []string{"oval-link", "round-lever"}},        // the word itself before its synonym
		{"out of round", []string{"oval-link", "round-lever"}}, // a phrase counts as its idea, told three times in the first
		{"seized", []string{"pin-a", "pin-b"}},                 // equals by name
		{`3.125"`, []string{"oval-link", "pin-a", "pin-b"}},
		{"79.4 mm", []string{"pin-a", "pin-b", "oval-link"}},
		{"2217", []string{"round-lever"}},
		{"402217c", []string{"round-lever"}},
		{"chater", []string{"round-lever"}},
		{"zzz", []string{}},
		{"the of", []string{}},
		{"", []string{"round-lever", "oval-link", "pin-a", "pin-b"}}, // newest first
	} {
		hits, err := ix.Search(c.query, Options{})
		require.Equal(t, c.want, found(t, hits, err), c.query)
	}
}

func TestFilters(t *testing.T) {
	ix := few(t)
	for _, c := range []struct {
		o    Options
		want []string
	}{
		{Options{Part: "pin"}, []string{"pin-a", "pin-b"}},
		{Options{Process: "bore"}, []string{"round-lever"}},
		{Options{Material: "Steel"}, []string{"oval-link", "pin-a", "pin-b"}},
		{Options{From: day(t, "2024-01-01")}, []string{"round-lever", "oval-link"}},
		{Options{To: day(t, "2024-01-01")}, []string{"oval-link", "pin-a", "pin-b"}},
		{Options{Limit: 1}, []string{"round-lever"}},
	} {
		hits, err := ix.Search("", c.o)
		require.Equal(t, c.want, found(t, hits, err), "%+v", c.o)
	}
	hits, err := ix.Search("chatter", Options{Part: "link"})
	require.Equal(t, []string{}, found(t, hits, err))
}

func TestSearchMistakes(t *testing.T) {
	ix := few(t)
	for _, c := range []struct {
		query string
		o     Options
		want  string
	}{
		{"x", Options{Part: "wheel"}, `part "wheel" is not known; use one of: link, pin boss, bucket ear, boom foot, lever, hinge, cylinder eye, housing, bushing, pin, lifting gear, truck, press, other`},
		{"x", Options{Process: "paint"}, `process "paint" is not known; use one of: lift, move, set up, find centre, survey, bore, weld, preheat, measure, press, fit, inspect, record`},
		{"x", Options{From: day(t, "2025-01-01"), To: day(t, "2024-01-01")}, "the last day is before the first; swap the two dates"},
		{strings.Repeat("x", 4001), Options{}, "the search text is longer than 4000 characters; use a few words"},
	} {
		_, err := ix.Search(c.query, c.o)
		require.EqualError(t, err, c.want)
	}
}

func TestSnippetsMarkWhatFits(t *testing.T) {
	hits, err := few(t).Search("egged bores 3.125 in", Options{})
	require.NoError(t, err)
	s := hits[0].Snippets
	require.Len(t, s, 2)
	require.Equal(t, "The [bore] was [egged].", s[0].Marked("[", "]"))
	require.Equal(t, "found", s[0].Field)
	require.Equal(t, "It measured [3-1/8 in].", s[1].Marked("[", "]"))
}

func TestLongTextIsCutBetweenWords(t *testing.T) {
	long := strings.TrimSpace(strings.Repeat("twelve letters ", 100))
	pieces := cut(long)
	require.Greater(t, len(pieces), 1)
	require.Equal(t, long, strings.Join(pieces, " "))
	for _, p := range pieces {
		require.LessOrEqual(t, len(p), longestSnippet)
	}
	require.Equal(t, []string{strings.Repeat("é", 400)}, cut(strings.Repeat("é", 400)), "one long word is left whole")
}

func TestThreeWaysToWriteASizeFindTheSameNote(t *testing.T) {
	ix, _ := shippedIndex(t)
	for _, query := range []string{"3-1/8 in", `3.125"`, "79.4 mm"} {
		hits, err := ix.Search(query, Options{})
		names := found(t, hits, err)
		require.Contains(t, names, "millimetres-read-as-inches", query)
		require.Contains(t, names, "centre-taken-from-the-wear", query)
	}
}

func TestRelated(t *testing.T) {
	ix, notes := shippedIndex(t)
	for _, n := range notes {
		hits, err := ix.Related(n, 5)
		names := found(t, hits, err)
		require.Len(t, names, 5, n.Name)
		require.NotContains(t, names, n.Name)
	}
	hits, err := ix.Related(noteNamed(t, notes, "dry-ice-was-not-enough"), 3)
	require.Contains(t, found(t, hits, err), "nitrogen-bushing-stuck-halfway")
	hits, err = ix.Related(kb.Note{Name: "new", Title: "zzz"}, 3)
	require.Empty(t, found(t, hits, err))
}

func noteNamed(t *testing.T, notes []kb.Note, name string) kb.Note {
	for _, n := range notes {
		if n.Name == name {
			return n
		}
	}
	require.Fail(t, "no note "+name)
	return kb.Note{}
}

func TestForRule(t *testing.T) {
	ix := few(t)
	hits, err := ix.ForRule("bore-round", "lever", "", 5)
	require.Equal(t, []string{"round-lever", "oval-link"}, found(t, hits, err), "the same part first")
	hits, err = ix.ForRule("bore-round", "", "3.125 in", 5)
	require.Equal(t, []string{"oval-link", "round-lever"}, found(t, hits, err), "then by the numbers")
	hits, err = ix.ForRule("no-such-rule", "", "seized", 5)
	require.Equal(t, []string{"pin-a", "pin-b"}, found(t, hits, err), "by the words when no note names the rule")
	hits, err = ix.ForRule("no-such-rule", "", "", 5)
	require.Empty(t, found(t, hits, err))
}

func TestBuildTwiceGivesTheSameOrderAndScores(t *testing.T) {
	a, notes := shippedIndex(t)
	for i, j := 0, len(notes)-1; i < j; i, j = i+1, j-1 {
		notes[i], notes[j] = notes[j], notes[i]
	}
	b, err := Build(notes)
	require.NoError(t, err)
	defer b.Close()
	for _, query := range []string{"bushing pressed in the boss", "weld cracked", "3 in", "preheat 225 F lever"} {
		one, err := a.Search(query, Options{Limit: 125})
		require.NoError(t, err)
		two, err := b.Search(query, Options{Limit: 125})
		require.NoError(t, err)
		require.Equal(t, one, two, query)
	}
}

func TestManyMaySearchAtOnce(t *testing.T) {
	ix, _ := shippedIndex(t)
	want, err := ix.Search("chatter", Options{})
	require.NoError(t, err)
	var wait sync.WaitGroup
	for range 8 {
		wait.Go(func() {
			got, err := ix.Search("chatter", Options{})
			if err != nil || len(got) != len(want) || got[0].Score != want[0].Score {
				t.Errorf("another result at the same time: %v", err)
			}
		})
	}
	wait.Wait()
	require.NotEmpty(t, want)
}

func TestBuildOfNothing(t *testing.T) {
	ix, err := Build(nil)
	require.NoError(t, err)
	defer ix.Close()
	hits, err := ix.Search("bore", Options{})
	require.Empty(t, found(t, hits, err))
}

func FuzzSearch(f *testing.F) {
	ix := few(f)
	for _, s := range []string{"egged bore", `3-1/8" .050 1,850 lb`, "40-2217-C", "é'ó.5,", "-1/0 in", "= # %", "a b c d e", "\xff\x00"} {
		f.Add(s)
	}
	f.Fuzz(func(t *testing.T, query string) {
		hits, err := ix.Search(query, Options{})
		if err != nil {
			require.Greater(t, len(query), longestText)
			return
		}
		for _, h := range hits {
			for _, s := range h.Snippets {
				plain := strings.NewReplacer("\x01", "", "\x02", "").Replace(s.Marked("\x01", "\x02"))
				require.Equal(t, s.Text, plain)
			}
		}
	})
}

func Example() {
	ix, err := Build([]kb.Note{
		{Name: "seized-pin", Title: "Pin seized", Found: "The 3 in pin seized with .002 in clearance."},
		{Name: "egged-link", Title: "Link bored off centre", Found: "Bore of 3-1/8 in was egged."},
	})
	if err != nil {
		fmt.Println(err)
		return
	}
	defer ix.Close()
	hits, err := ix.Search("79.4 mm oval", Options{})
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, h := range hits {
		fmt.Println(h.Note.Name, "-", h.Snippets[0].Marked("[", "]"))
	}
	// Output: egged-link - Bore of [3-1/8 in] was [egged].
}
