package index

import (
	"math"
	"strings"
)

// Two words next to each other in the query count for more in a note where they
// are neighbours too: "clean up", "lift table". There are far more pairs than
// words, so they are not indexed but counted when asked for.

// run is a note's words in order, each with a blank before and behind.
type run struct {
	text   string
	length int // terms the note is indexed by
}

// apart is how many bytes at most may stand between the words of a pair: room
// for two short words.
const apart = 8

// newRun strings the words together, with a stop where they are too far apart.
func newRun(words []term, length int) run {
	var b strings.Builder
	for i, w := range words {
		if i > 0 && w.start-words[i-1].end > apart {
			b.WriteString(" .")
		}
		b.WriteString(" " + w.text)
	}
	return run{b.String() + " ", length}
}

func isPair(text string) bool { return strings.ContainsRune(text, pairMark) }

// pairs lists the neighbours in a query.
func pairs(words []term) []string {
	var list []string
	for i := 1; i < len(words); i++ {
		if words[i].start-words[i-1].end <= apart {
			list = append(list, words[i-1].text+string(pairMark)+words[i].text)
		}
	}
	return list
}

// pairScores weighs a pair in every note as bleve weighs a term: root of its
// count, over root of the note's length, times rarity.
func (ix *Index) pairScores(pair string) map[string]float64 {
	scores := map[string]float64{}
	for name, r := range ix.runs {
		if n := strings.Count(r.text, " "+pair+" "); n > 0 {
			scores[name] = math.Sqrt(float64(n) / float64(r.length))
		}
	}
	rarity := rarity(len(scores), len(ix.notes))
	for name := range scores {
		scores[name] *= rarity
	}
	return scores
}
