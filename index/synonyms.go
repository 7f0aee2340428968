package index

import (
	_ "embed"
	"fmt"
	"maps"
	"slices"
	"strings"

	"github.com/goccy/go-yaml"
)

//go:embed synonyms.yaml
var synonymsFile []byte

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

// A synonymSheet is the file as written; it explains itself.
type synonymSheet struct {
	Same [][]string
	Near map[string][]string
	Skip []string
}

func readSynonyms(r *reader, file []byte) (synonyms, error) {
	var sheet synonymSheet
	if err := yaml.UnmarshalWithOptions(file, &sheet, yaml.Strict()); err != nil {
		return synonyms{}, fmt.Errorf("synonyms.yaml: %w", err)
	}
	s := synonyms{same: map[string]string{}, phrases: map[string][]phrase{}, skip: map[string]bool{}}
	for _, w := range sheet.Skip {
		s.skip[w] = true
	}
	for _, group := range sheet.Same {
		if err := s.addSame(r, group); err != nil {
			return synonyms{}, err
		}
	}
	r.synonyms.same = s.same // the phrases below are spelled alike
	for _, idea := range slices.Sorted(maps.Keys(sheet.Near)) {
		if err := s.addIdea(r, idea, sheet.Near[idea]); err != nil {
			return synonyms{}, err
		}
	}
	return s, nil
}

// addSame makes every spelling of a word the first one.
func (s synonyms) addSame(r *reader, spellings []string) error {
	var stems []string
	for _, spelled := range spellings {
		words := r.words(spelled, nil)
		if len(words) != 1 {
			return fmt.Errorf("synonyms.yaml: %q under same is not one word; write one, or put it under near", spelled)
		}
		stems = append(stems, words[0].text)
	}
	for _, other := range stems[min(1, len(stems)):] {
		s.same[other] = stems[0]
	}
	return nil
}

func (s synonyms) addIdea(r *reader, idea string, ways []string) error {
	for _, way := range ways {
		p := phrase{idea: string(ideaMark) + idea}
		for _, w := range r.words(way, nil) {
			p.stems = append(p.stems, w.text)
		}
		if len(p.stems) == 0 {
			return fmt.Errorf("synonyms.yaml: a way to say %q holds no word; delete it", idea)
		}
		first := p.stems[0]
		if !slices.ContainsFunc(s.phrases[first], p.equal) {
			s.phrases[first] = append(s.phrases[first], p)
		}
	}
	return nil
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
