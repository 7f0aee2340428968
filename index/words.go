package index

import (
	"slices"
	"strings"
	"unicode"
	"unicode/utf8"

	"github.com/blevesearch/bleve/v2/analysis"
	"github.com/blevesearch/bleve/v2/analysis/lang/en"
	"github.com/blevesearch/bleve/v2/analysis/token/porter"
	"github.com/blevesearch/bleve/v2/registry"

	"gudgeon/rules/source"
)

// A mark tells the kinds of term apart; plain words have none of these. A pair
// has its mark between two words, the others begin with theirs.
const (
	pairMark     = ' '
	ideaMark     = '='
	quantityMark = '#'
	codeMark     = '%'
)

// A term is what is looked up, with the bytes of text it stands for.
type term struct {
	text       string
	start, end int
}

// A word is a stem, and whether it is too common to look for.
type word struct {
	term
	stop bool
}

// reader turns text into terms. It holds only tables and may be used by many
// goroutines at once.
type reader struct {
	stemmer  analysis.TokenFilter
	stops    analysis.TokenMap
	synonyms synonyms
	units    map[byte][]spelling // by first byte
}

// newReader reads with the shipped synonyms and those of a shop's own files.
func newReader(own ...*source.File) (*reader, error) {
	stops, err := en.TokenMapConstructor(nil, registry.NewCache())
	if err != nil {
		return nil, err
	}
	r := &reader{stemmer: porter.NewPorterStemmer(), stops: stops, units: spellings()}
	files := append([]*source.File{{Name: "synonyms.yaml", Text: shippedSynonyms}}, own...)
	r.synonyms, err = readSynonyms(r, files...)
	return r, err
}

// stems remembers the stems of one reading of many notes; nil remembers nothing.
type stems map[string]string

func (r *reader) stem(s string, known stems) string {
	if stem, ok := known[s]; ok {
		return stem
	}
	one := analysis.TokenStream{{Term: []byte(s)}}
	stem := string(r.stemmer.Filter(one)[0].Term)
	if same, ok := r.synonyms.same[stem]; ok {
		stem = same
	}
	if known != nil {
		known[s] = stem
	}
	return stem
}

// words gives the stems of text in order, stop words included.
func (r *reader) words(text string, known stems) []word {
	list := make([]word, 0, len(text)/5) // a word and its blank, about
	for i := 0; i < len(text); {
		end := wordEnd(text, i)
		if end == i {
			_, size := utf8.DecodeRuneInString(text[i:])
			i += size
			continue
		}
		s := strings.TrimSuffix(plainDigits(strings.ToLower(text[i:end])), "'s")
		list = append(list, word{
			term: term{r.stem(s, known), i, end},
			stop: r.stops[s] || r.synonyms.skip[s],
		})
		i = end
	}
	return list
}

// wordEnd finds the end of the word at i, or i when there is none. An apostrophe
// between letters is part of a word, a point or a comma between digits too.
func wordEnd(text string, i int) int {
	for i < len(text) {
		c, size := utf8.DecodeRuneInString(text[i:])
		if !unicode.IsLetter(c) && !unicode.IsDigit(c) && !joins(text, i) {
			return i
		}
		i += size
	}
	return i
}

func joins(text string, i int) bool {
	if i == 0 || i+1 == len(text) {
		return false
	}
	before, after := class(text[i-1]), class(text[i+1])
	switch text[i] {
	case '\'':
		return before == letter && after == letter
	case '.', ',':
		return before == figure && after == figure
	}
	return false
}

// reading is everything one text says.
type reading struct {
	words      []term // without stop words
	ideas      []idea
	quantities []quantity
	codes      []code
}

// terms are the words and the ideas.
func (r reading) terms() []term {
	list := make([]term, len(r.words), len(r.words)+len(r.ideas))
	copy(list, r.words)
	for _, i := range r.ideas {
		list = append(list, i.term)
	}
	return list
}

func (r *reader) read(text string, known stems) reading {
	var out reading
	out.quantities = r.quantities(text)
	out.codes = slices.DeleteFunc(codes(text), func(c code) bool { return c.isNumber(out.quantities) })
	words := r.words(blank(text, out.quantities), known)
	out.ideas = r.synonyms.ideas(words)
	out.words = make([]term, 0, len(words))
	for _, w := range words {
		if !w.stop {
			out.words = append(out.words, w.term)
		}
	}
	return out
}

// blank takes the quantities out of a text so that their digits are no words;
// the places of everything else stay.
func blank(text string, found []quantity) string {
	if len(found) == 0 {
		return text
	}
	b := []byte(text)
	for _, q := range found {
		for i := q.start; i < q.end; i++ {
			b[i] = ' '
		}
	}
	return string(b)
}
