package kb

import (
	"fmt"
	"strings"
	"unicode/utf8"
)

const fence = "---"

// clean makes one text of what editors on different systems write: no byte
// order mark, lines end with \n.
func clean(data []byte) string {
	text := strings.TrimPrefix(string(data), "\ufeff")
	return strings.ReplaceAll(text, "\r\n", "\n")
}

// readable reports the first byte that is no text.
func (p *page) readable() bool {
	for i, line := range p.lines {
		for at, r := range line {
			column := utf8.RuneCountInString(line[:at]) + 1
			if r == utf8.RuneError && !strings.HasPrefix(line[at:], "\ufffd") {
				p.lines[i] = strings.ToValidUTF8(line, "\ufffd")
				p.mistake(i+1, column, "there is a byte here that is not UTF-8 text",
					"Save the file as UTF-8.")
				return false
			}
			if r < ' ' && r != '\t' {
				p.lines[i] = strings.Map(visible, line)
				p.mistake(i+1, column, fmt.Sprintf("there is a control character (%U) here", r),
					"Delete the character.")
				return false
			}
		}
	}
	return true
}

// visible replaces what would garble the screen a line is shown on.
func visible(r rune) rune {
	if r < ' ' && r != '\t' {
		return utf8.RuneError
	}
	return r
}

// split finds the front matter; it gives the number of its closing line.
func (p *page) split() (end int, ok bool) {
	if strings.TrimRight(p.lines[0], " \t") != fence {
		p.mistake(1, 1, "the note does not begin with front matter",
			"Begin the file with a line of three dashes, the keys below it, and three dashes again.")
		return 0, false
	}
	for i, line := range p.lines[1:] {
		if strings.TrimRight(line, " \t") == fence {
			return i + 2, true
		}
	}
	p.mistake(1, 1, "the front matter is not closed",
		"Put a line of three dashes between the keys and the text.")
	return 0, false
}
