package index

import (
	"slices"
	"strings"
)

// A code is a drawing, tag or rod number: letters and digits that are no word.
type code struct {
	term            // the whole, without its dashes
	pieces []string // what one may remember of it
}

// A code has at least this many digits, and its pieces this many characters.
const shortest = 3

func codes(text string) []code {
	var found []code
	for start := 0; start < len(text); start++ {
		if class(text[start]) == none {
			continue
		}
		end := codeEnd(text, start)
		written := text[start:end]
		if digitsIn(written) >= shortest {
			whole := joined(written)
			found = append(found, code{term{string(codeMark) + whole, start, end}, pieces(written, whole)})
		}
		start = end
	}
	return found
}

// codeEnd finds where letters and digits stop, with single joints between them.
func codeEnd(text string, i int) int {
	for ; i < len(text); i++ {
		if class(text[i]) != none {
			continue
		}
		joint := text[i] == '-' || text[i] == '.' || text[i] == '/'
		if !joint || i+1 == len(text) || class(text[i+1]) == none {
			break
		}
	}
	return i
}

func digitsIn(s string) int {
	n := 0
	for i := range len(s) {
		if class(s[i]) == figure {
			n++
		}
	}
	return n
}

// joined is a code without its joints, in small letters.
func joined(written string) string {
	return strings.Join(strings.FieldsFunc(strings.ToLower(written), func(r rune) bool {
		return r == '-' || r == '.' || r == '/'
	}), "")
}

// isNumber holds for the digits of a quantity. With a letter behind them, as in
// 2217C, they may be a code after all, and are both.
func (c code) isNumber(quantities []quantity) bool {
	if digitsIn(c.text)+1 < len(c.text) { // the mark counts one
		return false
	}
	return slices.ContainsFunc(quantities, func(q quantity) bool { return q.start <= c.start && c.end <= q.end })
}

// pieces are the heads and tails of a code and of each run of letters or digits in it.
func pieces(written, whole string) []string {
	seen := map[string]bool{}
	var list []string
	add := func(s string) {
		if s = string(codeMark) + s; !seen[s] {
			seen[s] = true
			list = append(list, s)
		}
	}
	for _, run := range append(runs(strings.ToLower(written)), whole) {
		for n := shortest; n <= len(run); n++ {
			add(run[:n])
			add(run[len(run)-n:])
		}
	}
	return list
}

// runs cuts ab-1234c into ab, 1234 and c.
func runs(s string) []string {
	var list []string
	start := 0
	for i := 1; i <= len(s); i++ {
		if i < len(s) && class(s[i]) == class(s[i-1]) {
			continue
		}
		if class(s[start]) != none {
			list = append(list, s[start:i])
		}
		start = i
	}
	return list
}

type kindOfByte int

const (
	none kindOfByte = iota
	figure
	letter
)

func class(c byte) kindOfByte {
	switch {
	case '0' <= c && c <= '9':
		return figure
	case 'a' <= c && c <= 'z', 'A' <= c && c <= 'Z':
		return letter
	}
	return none
}
