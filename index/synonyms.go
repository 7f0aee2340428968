package index

import (
	_ "embed" // for the shipped synonyms
	"fmt"
	"slices"
	"strings"

	"gudgeon/rules/source"
)

//go:embed synonyms.yaml
var shippedSynonyms string

// synonyms holds the trade's words that stand for each other.
type synonyms struct {
	same    map[string]string   // a stem's other spelling → the one used here
	phrases map[string][]phrase // by first stem
	skip    map[string]bool     // words of a question that say nothing
}

// A phrase is one way to say an idea.
type phrase struct {
	stems []string
	idea  string
}

func (p phrase) equal(other phrase) bool {
	return p.idea == other.idea && slices.Equal(p.stems, other.stems)
}

// synonymSheet is the file as written; it explains itself.
type synonymSheet struct {
	Same [][]source.Text           `yaml:"same"`
	Near source.Map[[]source.Text] `yaml:"near"`
	Skip []source.Text             `yaml:"skip"`
}

// CheckSynonyms finds the mistakes in a shop's own file of synonyms.
func CheckSynonyms(f *source.File) error {
	_, err := newReader(f)
	return err
}

// readSynonyms puts files together; later ones add to those before.
func readSynonyms(r *reader, files ...*source.File) (synonyms, error) {
	s := synonyms{same: map[string]string{}, phrases: map[string][]phrase{}, skip: map[string]bool{}}
	sheets := make([]synonymSheet, len(files))
	var report source.Report
	for i, f := range files {
		report.Merge(source.Decode(f, &sheets[i]))
		for _, w := range sheets[i].Skip {
			s.skip[strings.ToLower(w.Value)] = true
		}
		for _, group := range sheets[i].Same {
			s.addSame(r, group, &report)
		}
	}
	r.synonyms.same = s.same // the phrases below are spelled alike
	for _, sheet := range sheets {
		for _, idea := range sheet.Near {
			s.addIdea(r, idea, &report)
		}
	}
	return s, report.Err()
}

// addSame makes every spelling of a word the first one, or what that stands for
// already.
func (s synonyms) addSame(r *reader, spellings []source.Text, report *source.Report) {
	var stems []string
	for _, spelled := range spellings {
		words := r.words(spelled.Value, nil)
		if len(words) != 1 {
			report.At(spelled, fmt.Sprintf("%q is not one word", spelled.Value), "write one, or put it under near:")
			return
		}
		stems = append(stems, words[0].text)
	}
	if len(stems) == 0 {
		return
	}
	first := stems[0]
	if already, ok := s.same[first]; ok {
		first = already
	}
	for _, other := range stems[1:] {
		if other != first {
			s.respell(other, first)
		}
	}
}

// respell turns a word, and all that stood for it, into another.
func (s synonyms) respell(word, to string) {
	for spelled, as := range s.same {
		if as == word {
			s.same[spelled] = to
		}
	}
	s.same[word] = to
	delete(s.same, to) // so that nothing goes round in a circle
}

func (s synonyms) addIdea(r *reader, e source.Entry[[]source.Text], report *source.Report) {
	for _, way := range e.Value {
		p := phrase{idea: string(ideaMark) + e.Key.Value}
		for _, w := range r.words(way.Value, nil) {
			p.stems = append(p.stems, w.text)
		}
		if len(p.stems) == 0 {
			report.At(way, fmt.Sprintf("this way to say %q holds no word", e.Key.Value), "delete it")
			continue
		}
		first := p.stems[0]
		if !slices.ContainsFunc(s.phrases[first], p.equal) {
			s.phrases[first] = append(s.phrases[first], p)
		}
	}
}

// An idea is a term for what several ways of speaking mean.
type idea struct {
	term
	phrase bool // told in more than one word
}

// ideas finds the ideas that the words tell.
func (s synonyms) ideas(words []word) []idea {
	var found []idea
	for i, w := range words {
		for _, p := range s.phrases[w.text] {
			if n := len(p.stems); matches(words[i:], p.stems) {
				found = append(found, idea{term{p.idea, w.start, words[i+n-1].end}, n > 1})
			}
		}
	}
	return found
}

func matches(words []word, stems []string) bool {
	if len(words) < len(stems) {
		return false
	}
	for i, stem := range stems {
		if words[i].text != stem {
			return false
		}
	}
	return true
}

// isIdea tells a term for an idea from a word.
func isIdea(text string) bool { return strings.HasPrefix(text, string(ideaMark)) }
