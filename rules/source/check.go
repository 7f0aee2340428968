package source

import (
	"fmt"
	"strings"
	"unicode"
	"unicode/utf8"
)

// Limits of a file: far above any sheet, note or job's readings, far below what
// would tie up a phone. The parser below takes a time that grows with the square
// of a line and of the keys in one table, and recurses on each bracket.
const (
	Largest      = 1 << 20 // bytes
	longestLine  = 4000    // characters
	mostEntries  = 20000   // lines and commas
	deepestNests = 40      // brackets in brackets
)

// Check refuses what cannot be a text that a person wrote: too large, empty, not
// UTF-8, or with control characters, which would garble the screen that a message
// about them is shown on.
func (f *File) Check() error {
	switch {
	case len(f.Text) > Largest:
		return &Error{File: f.Name, What: fmt.Sprintf("the file is larger than %d KiB", Largest>>10), Hint: "split it, or check that it is the right file"}
	case strings.TrimSpace(f.Text) == "":
		return &Error{File: f.Name, What: "the file is empty"}
	}
	at := Pos{1, 1}
	for i := 0; i < len(f.Text); {
		r, size := utf8.DecodeRuneInString(f.Text[i:])
		switch {
		case r == utf8.RuneError && size == 1:
			return f.unreadable(at, "there is a byte here that is not UTF-8 text", "save the file as UTF-8 in your editor")
		case r == '\n':
			at = Pos{at.Line + 1, 0}
		case garbles(r) && !strings.HasPrefix(f.Text[i:], "\r\n"):
			return f.unreadable(at, fmt.Sprintf("there is a control character (%U) here", r), "delete the character")
		}
		at.Column++
		i += size
	}
	return nil
}

// garbles reports whether a character would move the cursor or worse.
func garbles(r rune) bool { return unicode.IsControl(r) && r != '\t' && r != '\n' }

// unreadable shows a line with what cannot be shown replaced.
func (f *File) unreadable(at Pos, what, hint string) error {
	line := strings.Map(func(r rune) rune {
		if garbles(r) {
			return utf8.RuneError
		}
		return r
	}, f.Line(at.Line))
	return &Error{File: f.Name, Pos: at, Line: line, Width: 1, What: what, Hint: hint}
}

// checkShape refuses a text that would keep the parser busy for too long.
func (f *File) checkShape() error {
	depth, entries, at := 0, 0, Pos{1, 0}
	for _, c := range f.Text {
		at.Column++
		switch c {
		case '\n':
			at = Pos{at.Line + 1, 0}
			entries++
		case ',':
			entries++
		case '[', '{':
			depth++
		case ']', '}':
			depth = max(depth-1, 0)
		}
		switch {
		case depth > deepestNests:
			return f.tooMuch(at, "brackets are nested too deeply", "")
		case at.Column > longestLine:
			return f.tooMuch(at, fmt.Sprintf("the line is longer than %d characters", longestLine), "break it into several lines")
		case entries > mostEntries:
			return f.tooMuch(at, fmt.Sprintf("the file has more than %d lines and commas", mostEntries), "split it, or check that it is the right file")
		}
	}
	return nil
}

func (f *File) tooMuch(at Pos, what, hint string) error {
	at.Column = max(at.Column, 1)
	return &Error{File: f.Name, Pos: at, Line: f.Line(at.Line), Width: 1, What: what, Hint: hint}
}
