package source

import (
	"errors"
	"fmt"
	"sort"
	"strings"
	"unicode/utf8"
)

// Pos is a place in a file, both counted from 1; columns count characters.
type Pos struct{ Line, Column int }

// Error is one mistake in a file that a person wrote.
type Error struct {
	File  string
	Pos   Pos
	Line  string // the text of the line, empty when there is none to show
	Width int    // characters to mark, at least 1
	What  string // what is wrong
	Hint  string // what to do; may be empty
}

// Error writes file:line:column, what is wrong, the line, a mark and the hint.
func (e *Error) Error() string {
	var b strings.Builder
	b.WriteString(e.File)
	if e.Pos.Line > 0 {
		fmt.Fprintf(&b, ":%d:%d", e.Pos.Line, e.Pos.Column)
	}
	b.WriteString(": " + e.What)
	if e.Line != "" {
		e.snippet(&b)
	}
	if e.Hint != "" {
		b.WriteString("\n  " + e.Hint)
	}
	return b.String()
}

// widest line worth showing.
const widest = 160

func (e *Error) snippet(b *strings.Builder) {
	line := strings.ReplaceAll(e.Line, "\t", " ")
	column := e.Pos.Column
	if runes := []rune(line); len(runes) > widest {
		from := min(max(0, column-widest/2), len(runes)-widest)
		line, column = string(runes[from:from+widest]), column-from
	}
	room := utf8.RuneCountInString(line) - column + 1
	width := min(max(e.Width, 1), max(room, 1))
	number := fmt.Sprint(e.Pos.Line)
	fmt.Fprintf(b, "\n  %s | %s\n  %s | %s%s", number, line,
		strings.Repeat(" ", len(number)), strings.Repeat(" ", max(column-1, 0)), strings.Repeat("^", width))
}

// Errors is every mistake found in one run, in the order of the files.
type Errors []*Error

func (list Errors) Error() string {
	texts := make([]string, len(list))
	for i, e := range list {
		texts[i] = e.Error()
	}
	return strings.Join(texts, "\n")
}

// most mistakes reported at once; after that the first ones want mending first.
const most = 20

// Report collects mistakes.
type Report struct {
	list    Errors
	dropped int
}

// Add records a mistake at a place of f.
func (r *Report) Add(f *File, at Pos, width int, what, hint string) {
	r.Append(&Error{File: f.Name, Pos: at, Line: f.Line(at.Line), Width: width, What: what, Hint: hint})
}

// At records a mistake in a Text.
func (r *Report) At(t Text, what, hint string) {
	if t.file == nil {
		r.Append(&Error{File: "input", What: what, Hint: hint})
		return
	}
	r.Add(t.file, t.Pos, utf8.RuneCountInString(t.Value), what, hint)
}

// Append records a finished mistake.
func (r *Report) Append(e *Error) {
	if len(r.list) >= most {
		r.dropped++
		return
	}
	for _, seen := range r.list {
		if *seen == *e {
			return
		}
	}
	r.list = append(r.list, e)
}

// Merge adds the mistakes in err, if any: an Errors, an *Error, or any error.
func (r *Report) Merge(err error) {
	var list Errors
	var one *Error
	switch {
	case err == nil:
	case errors.As(err, &list):
		for _, e := range list {
			r.Append(e)
		}
	case errors.As(err, &one):
		r.Append(one)
	default:
		r.Append(&Error{File: "input", What: err.Error()})
	}
}

// Failed reports whether anything was recorded.
func (r *Report) Failed() bool { return len(r.list) > 0 }

// Err is all that was recorded, sorted by place, or nil.
func (r *Report) Err() error {
	if len(r.list) == 0 {
		return nil
	}
	list := append(Errors(nil), r.list...)
	sort.SliceStable(list, func(i, j int) bool {
		a, b := list[i], list[j]
		if a.File != b.File {
			return a.File < b.File
		}
		if a.Pos.Line != b.Pos.Line {
			return a.Pos.Line < b.Pos.Line
		}
		return a.Pos.Column < b.Pos.Column
	})
	if r.dropped > 0 {
		list = append(list, &Error{File: list[len(list)-1].File, What: fmt.Sprintf("and %d more mistakes", r.dropped), Hint: "mend the first ones and run it again"})
	}
	return list
}
