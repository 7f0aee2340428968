package index

import (
	"cmp"
	"slices"
)

// nearest gives the words of the notes that a word no note has was likely meant
// to be: at most two, the likeliest first.
func (ix *Index) nearest(stem string) []string {
	allowed := slips(stem)
	if allowed == 0 || ix.notesWith[stem] > 0 {
		return nil
	}
	type guess struct {
		text     string
		distance int
	}
	var guesses []guess
	for known := range ix.notesWith {
		if !plainWord(known) || known[0] != stem[0] {
			continue
		}
		if d := distance(stem, known, allowed); d <= allowed {
			guesses = append(guesses, guess{known, d})
		}
	}
	slices.SortFunc(guesses, func(a, b guess) int {
		return cmp.Or(cmp.Compare(a.distance, b.distance),
			cmp.Compare(ix.notesWith[b.text], ix.notesWith[a.text]), cmp.Compare(a.text, b.text))
	})
	var best []string
	for _, g := range guesses[:min(2, len(guesses))] {
		if g.distance == guesses[0].distance {
			best = append(best, g.text)
		}
	}
	return best
}

// slips is how many slips a word of this length may have; short words and
// numbers none, for one slip makes another word of them.
func slips(stem string) int {
	switch {
	case !plainWord(stem) || len(stem) < 4:
		return 0
	case len(stem) < 8:
		return 1
	}
	return 2
}

func plainWord(text string) bool {
	for i := range len(text) {
		if text[i] < 'a' || text[i] > 'z' {
			return false
		}
	}
	return text != ""
}

// distance counts the letters wrong, missing, too many or swapped with the next
// (optimal string alignment); it stops counting above most.
func distance(a, b string, most int) int {
	if len(a)-len(b) > most || len(b)-len(a) > most {
		return most + 1
	}
	before, last, row := make([]int, len(b)+1), make([]int, len(b)+1), make([]int, len(b)+1)
	for j := range last {
		last[j] = j
	}
	for i := 1; i <= len(a); i++ {
		row[0] = i
		for j := 1; j <= len(b); j++ {
			wrong := 1
			if a[i-1] == b[j-1] {
				wrong = 0
			}
			row[j] = min(last[j]+1, row[j-1]+1, last[j-1]+wrong)
			if i > 1 && j > 1 && a[i-1] == b[j-2] && a[i-2] == b[j-1] {
				row[j] = min(row[j], before[j-2]+1)
			}
		}
		before, last, row = last, row, before
	}
	return last[len(b)]
}
