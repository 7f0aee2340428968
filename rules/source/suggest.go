package source

import "strings"

// suggest is the hint for a word that is not one of known.
func suggest(word string, known []string) string {
	if near, ok := Nearest(word, known); ok {
		return "did you mean " + near + "?"
	}
	if len(known) == 0 || len(known) > 24 {
		return ""
	}
	return "known here: " + strings.Join(known, ", ")
}

// Suggest is the hint to give for a word that is not one of known: the nearest
// of them, or all when they are few.
func Suggest(word string, known []string) string { return suggest(word, known) }

// Nearest finds the known word that is a slip of the finger away from word.
func Nearest(word string, known []string) (string, bool) {
	best, least := "", 3
	for _, k := range known {
		if d := distance(word, k, least); d < least && d <= max(1, len(k)/3) {
			best, least = k, d
		}
	}
	return best, best != ""
}

// distance counts the letters to add, drop or change between a and b
// (Levenshtein); it gives limit as soon as it cannot be less.
func distance(a, b string, limit int) int {
	if len(a)-len(b) >= limit || len(b)-len(a) >= limit {
		return limit
	}
	row := make([]int, len(b)+1)
	for j := range row {
		row[j] = j
	}
	for i := 1; i <= len(a); i++ {
		diagonal := row[0]
		row[0] = i
		for j := 1; j <= len(b); j++ {
			change := diagonal
			if a[i-1] != b[j-1] {
				change++
			}
			diagonal = row[j]
			row[j] = min(change, row[j]+1, row[j-1]+1)
		}
	}
	return min(row[len(b)], limit)
}
