package source

import "strings"

// File is a text that a person wrote, with the name to show in messages.
type File struct {
	Name string
	Text string
}

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
