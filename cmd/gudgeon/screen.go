package main

import (
	"fmt"
	"io"
	"os"
	"strconv"
	"strings"
	"unicode/utf8"

	"gudgeon/rules"
)

// screen owns what a person reads in the terminal: plain words, wrapped lines,
// colour only as a second cue.
type screen struct {
	out    io.Writer
	width  int
	colour bool

	language string // empty for English
}

func newScreen(out io.Writer) *screen {
	s := &screen{out: out, width: 80}
	if n, err := strconv.Atoi(os.Getenv("COLUMNS")); err == nil && n >= 40 {
		s.width = min(n, 110)
	}
	if f, ok := out.(*os.File); ok && os.Getenv("NO_COLOR") == "" && os.Getenv("TERM") != "dumb" {
		info, err := f.Stat()
		s.colour = err == nil && info.Mode()&os.ModeCharDevice != 0
	}
	return s
}

func (s *screen) line(format string, args ...any) { fmt.Fprintf(s.out, format+"\n", args...) }

func (s *screen) gap() { fmt.Fprintln(s.out) }

// heading writes a line that begins a part.
func (s *screen) heading(text string) {
	s.gap()
	s.line("%s", s.bold(text))
}

func (s *screen) bold(text string) string {
	if !s.colour {
		return text
	}
	return "\x1b[1m" + text + "\x1b[0m"
}

// verdict writes a verdict's word in capitals.
func (s *screen) verdict(v rules.Verdict) string {
	word := s.verdictWord(v)
	code, ok := map[rules.Verdict]string{rules.Go: "32", rules.Caution: "33", rules.Stop: "1;31", rules.Waiting: "36"}[v]
	if !s.colour || !ok {
		return word
	}
	return "\x1b[" + code + "m" + word + "\x1b[0m"
}

func (s *screen) verdictWord(v rules.Verdict) string { return strings.ToUpper(v.In(s.language)) }

// labelled writes a wrapped text after a label, further lines under the text.
func (s *screen) labelled(indent int, label, text string) {
	if text == "" {
		return
	}
	left := indent + visible(label)
	first := strings.Repeat(" ", indent) + label
	for _, line := range wrap(text, s.width-left) {
		s.line("%s%s", first, line)
		first = strings.Repeat(" ", left)
	}
}

// row writes a label padded to a column, then a wrapped text.
func (s *screen) row(indent int, label string, column int, text string) {
	pad := max(1, column-visible(label))
	s.labelled(indent, label+strings.Repeat(" ", pad), text)
}

// visible counts the characters of a text that show: all but the colour codes.
func visible(text string) int {
	n := 0
	for text != "" {
		before, after, coded := strings.Cut(text, "\x1b[")
		n += utf8.RuneCountInString(before)
		if !coded {
			break
		}
		_, text, _ = strings.Cut(after, "m")
	}
	return n
}

// wrap breaks a text into lines of at most width characters, at spaces.
func wrap(text string, width int) []string {
	var lines []string
	line, length := "", 0
	for _, word := range strings.Fields(text) {
		n := utf8.RuneCountInString(word)
		if length > 0 && length+1+n > max(width, 20) {
			lines = append(lines, line)
			line, length = "", 0
		}
		if length > 0 {
			line += " "
			length++
		}
		line += word
		length += n
	}
	return append(lines, line)
}
