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

// distance counts the letters to add, drop, change or swap with their neighbour
// between a and b (optimal string alignment); it gives limit as soon as it
// cannot be less.
func distance(a, b string, limit int) int {
	if len(a)-len(b) >= limit || len(b)-len(a) >= limit {
		return limit
	}
	before, above, row := make([]int, len(b)+1), make([]int, len(b)+1), make([]int, len(b)+1)
	for j := range above {
		above[j] = j
	}
	for i := 1; i <= len(a); i++ {
		row[0] = i
		for j := 1; j <= len(b); j++ {
			row[j] = above[j-1]
			if a[i-1] != b[j-1] {
				row[j]++
			}
			row[j] = min(row[j], above[j]+1, row[j-1]+1)
			if i > 1 && j > 1 && a[i-1] == b[j-2] && a[i-2] == b[j-1] {
				row[j] = min(row[j], before[j-2]+1)
			}
		}
		before, above, row = above, row, before
	}
	return min(above[len(b)], limit)
}
