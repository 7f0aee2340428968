package index

import (
	"cmp"
	"regexp"
	"slices"
	"strings"

	"gudgeon/kb"
)

// A Snippet is a sentence of a note that fits, with the words that fit marked.
type Snippet struct {
	Field string `json:"field"` // "found", "done" ... or "text" for the body
	Text  string `json:"text"`
	Marks []Mark `json:"marks"`
}

// A Mark is a range of bytes of a snippet's text.
type Mark struct {
	Start int `json:"start"`
	End   int `json:"end"`
}

// Marked puts open and close round every marked word.
func (s Snippet) Marked(open, close string) string {
	var b strings.Builder
	at := 0
	for _, m := range s.Marks {
		b.WriteString(s.Text[at:m.Start] + open + s.Text[m.Start:m.End] + close)
		at = m.End
	}
	return b.String() + s.Text[at:]
}

const (
	mostSnippets   = 2
	longestSnippet = 240 // bytes
)

// snippets picks the sentences that hold most of what is wanted, in the note's order.
func (ix *Index) snippets(n kb.Note, wanted []clause) []Snippet {
	worth := map[string]float64{}
	for _, c := range wanted {
		worth[c.text] = c.weight * rarity(ix.notesWith[c.text], len(ix.notes))
	}
	type choice struct {
		Snippet
		worth float64
		place int
	}
	var choices []choice
	for i, s := range sentences(n) {
		marks, sum := ix.marks(s.Text, worth)
		if sum > 0 {
			s.Marks = marks
			choices = append(choices, choice{s, sum, i})
		}
	}
	slices.SortStableFunc(choices, func(a, b choice) int { return cmp.Compare(b.worth, a.worth) })
	choices = choices[:min(mostSnippets, len(choices))]
	slices.SortFunc(choices, func(a, b choice) int { return cmp.Compare(a.place, b.place) })
	var picked []Snippet
	for _, c := range choices {
		picked = append(picked, c.Snippet)
	}
	return picked
}

// marks finds the wanted terms in a text; each counts once.
func (ix *Index) marks(text string, worth map[string]float64) ([]Mark, float64) {
	read := ix.reader.read(text, nil)
	terms := read.terms()
	for _, c := range read.codes {
		for _, p := range c.pieces {
			terms = append(terms, term{p, c.start, c.end})
		}
	}
	for _, q := range read.quantities {
		terms = append(terms, term{q.term(), q.start, q.end}, term{q.digits, q.start, q.end})
	}
	var marks []Mark
	counted := map[string]bool{}
	sum := 0.0
	for _, t := range terms {
		w, ok := worth[t.text]
		if !ok {
			continue
		}
		marks = append(marks, Mark{t.start, t.end})
		if !counted[t.text] {
			counted[t.text] = true
			sum += w
		}
	}
	return merged(marks), sum
}

// merged orders marks and joins those that overlap.
func merged(marks []Mark) []Mark {
	slices.SortFunc(marks, func(a, b Mark) int {
		return cmp.Or(cmp.Compare(a.Start, b.Start), cmp.Compare(b.End, a.End))
	})
	var out []Mark
	for _, m := range marks {
		if len(out) > 0 && m.Start < out[len(out)-1].End {
			out[len(out)-1].End = max(out[len(out)-1].End, m.End)
			continue
		}
		out = append(out, m)
	}
	return out
}

// sentences cuts a note into pieces short enough to show.
func sentences(n kb.Note) []Snippet {
	var list []Snippet
	add := func(field, text string) {
		for _, s := range cut(text) {
			list = append(list, Snippet{Field: field, Text: s})
		}
	}
	add("found", n.Found)
	add("cause", n.Cause)
	add("done", n.Done)
	add("next time", n.NextTime)
	for _, m := range n.Measured {
		add("measured", m.Name+": "+m.Text)
	}
	for paragraph := range strings.SplitSeq(n.Body, "\n\n") {
		add("text", strings.Join(strings.Fields(paragraph), " "))
	}
	return list
}

var sentenceEnd = regexp.MustCompile(`[.!?][)"]* `)

func cut(text string) []string {
	var list []string
	for text != "" {
		end := len(text)
		if at := sentenceEnd.FindStringIndex(text); at != nil {
			end = at[1]
		}
		if end > longestSnippet {
			end = spaceBefore(text, longestSnippet)
		}
		list = append(list, strings.TrimSpace(text[:end]))
		text = text[end:]
	}
	return list
}

// spaceBefore finds where a text may be cut so that no word is broken.
func spaceBefore(text string, at int) int {
	if i := strings.LastIndexByte(text[:at], ' '); i > 0 {
		return i + 1
	}
	return len(text)
}
