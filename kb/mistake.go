package kb

import (
	"fmt"
	"strings"
	"unicode/utf8"
)

// MistakeLimit is how many mistakes one [Load] reports before it only counts.
const MistakeLimit = 20

// A Mistake is one thing wrong in a note: where it is and what to do about it.
type Mistake struct {
	File   string
	Line   int // from 1; 0 when the file as a whole is meant
	Column int // from 1, in characters
	What   string
	Do     string
	Source string // the offending line as written
}

// Error shows the mistake with its line and a mark under the column.
func (m Mistake) Error() string {
	if m.Line == 0 {
		return fmt.Sprintf("%s: %s\n  %s", m.File, m.What, m.Do)
	}
	text := fmt.Sprintf("%s:%d:%d: %s", m.File, m.Line, m.Column, m.What)
	if m.Source != "" {
		text += "\n    " + m.Source + "\n    " + indent(m.Source, m.Column) + "^"
	}
	return text + "\n  " + m.Do
}

// indent keeps tabs, so that the mark stands under the right character.
func indent(source string, column int) string {
	var b strings.Builder
	for _, r := range source {
		if column--; column < 1 {
			break
		}
		if r == '\t' {
			b.WriteRune('\t')
			continue
		}
		b.WriteByte(' ')
	}
	return b.String()
}

// Mistakes are all mistakes found in one reading, in the order of files and lines.
type Mistakes struct {
	List []Mistake // at most [MistakeLimit]
	Left int       // how many more there are
}

// Error shows every mistake in turn.
func (m *Mistakes) Error() string {
	texts := make([]string, 0, len(m.List)+1)
	for _, one := range m.List {
		texts = append(texts, one.Error())
	}
	if m.Left > 0 {
		texts = append(texts, fmt.Sprintf("and %d more; mend these first.", m.Left))
	}
	return strings.Join(texts, "\n")
}

// Unwrap lets errors.As find a single [Mistake].
func (m *Mistakes) Unwrap() []error {
	errs := make([]error, len(m.List))
	for i, one := range m.List {
		errs[i] = one
	}
	return errs
}

func (m *Mistakes) add(one Mistake) {
	if len(m.List) >= MistakeLimit {
		m.Left++
		return
	}
	m.List = append(m.List, one)
}

// err is nil when there is nothing to report.
func (m *Mistakes) err() error {
	if len(m.List) == 0 {
		return nil
	}
	return m
}

// page is the text of one file with the mistakes found in it.
type page struct {
	file     string
	lines    []string
	mistakes *Mistakes
}

func (p *page) mistake(line, column int, what, do string) {
	m := Mistake{File: p.file, Line: line, Column: column, What: what, Do: do}
	if line >= 1 && line <= len(p.lines) {
		m.Source = p.lines[line-1]
		m.Column = min(column, utf8.RuneCountInString(m.Source)+1)
	}
	p.mistakes.add(m)
}
