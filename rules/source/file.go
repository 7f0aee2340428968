package source

import (
	"fmt"
	"strings"
	"unicode/utf8"
)

// File is a text that a person wrote, with the name to show in messages.
type File struct {
	Name string
	Text string
}

// Largest is the most bytes a file may have: far above any sheet or any job's
// readings, far below what would tie up a phone.
const Largest = 1 << 20

// Line gives the text of a line, counted from 1.
func (f *File) Line(n int) string {
	if n < 1 {
		return ""
	}
	text := f.Text
	for ; n > 1; n-- {
		_, rest, found := strings.Cut(text, "\n")
		if !found {
			return ""
		}
		text = rest
	}
	line, _, _ := strings.Cut(text, "\n")
	return strings.TrimSuffix(line, "\r")
}

// check refuses what cannot be a file of ours before any parser sees it.
func (f *File) check() error {
	switch {
	case len(f.Text) > Largest:
		return &Error{File: f.Name, What: fmt.Sprintf("the file is larger than %d KiB", Largest>>10), Hint: "split it, or check that it is the right file"}
	case strings.TrimSpace(f.Text) == "":
		return &Error{File: f.Name, What: "the file is empty"}
	}
	line := 1
	for i, text := 0, f.Text; i < len(text); {
		r, size := utf8.DecodeRuneInString(text[i:])
		switch {
		case r == utf8.RuneError && size == 1:
			return &Error{File: f.Name, Pos: Pos{line, 1}, What: "the text is not UTF-8", Hint: "save the file as UTF-8 in your editor"}
		case r == 0:
			return &Error{File: f.Name, Pos: Pos{line, 1}, What: "the file is not text"}
		case r == '\n':
			line++
		}
		i += size
	}
	return f.checkNesting()
}

// deepest nesting of brackets; the parser below recurses on each.
const deepest = 40

func (f *File) checkNesting() error {
	depth, line := 0, 1
	for _, c := range []byte(f.Text) {
		switch c {
		case '\n':
			line++
		case '[', '{':
			depth++
		case ']', '}':
			depth = max(depth-1, 0)
		}
		if depth > deepest {
			return &Error{File: f.Name, Pos: Pos{line, 1}, What: "brackets are nested too deeply"}
		}
	}
	return nil
}

// Text is a piece of a file that knows its place.
type Text struct {
	Value string
	Pos   Pos // of the first character of Value
	file  *File
}

// At makes a Text at a place of f.
func At(f *File, value string, pos Pos) Text { return Text{Value: value, Pos: pos, file: f} }

// Plain makes a Text from a line that is in no file, such as a command's argument.
func Plain(name, value string) Text {
	return Text{Value: value, Pos: Pos{1, 1}, file: &File{Name: name, Text: value}}
}

// File is where t stands.
func (t Text) File() *File { return t.file }

// IsZero reports whether t was never set.
func (t Text) IsZero() bool { return t.Value == "" && t.file == nil }

func (t Text) String() string { return t.Value }
