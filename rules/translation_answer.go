package rules

import (
	"errors"
	"fmt"
	"slices"
	"strings"

	"gudgeon/units"
)

// Understand turns an answer typed in this language, or in English, into the
// English one that is stored, so that files can be exchanged. A word or two of an
// option will do. What it does not know comes back as it is.
func (t *Translation) Understand(d *ReadingDef, text string) (string, error) {
	if t == nil {
		return d.Shorthand(text)
	}
	switch d.Kind {
	case units.YesNo:
		return t.understandYesNo(text), nil
	case units.Choice:
		return t.understandChoice(d, text)
	}
	return text, nil
}

func (t *Translation) understandYesNo(text string) string {
	word := plain(text)
	for _, english := range []string{"yes", "no"} {
		own := plain(t.phrase(english))
		if word != "" && (word == own || word == own[:1]) {
			return english
		}
	}
	return text
}

func (t *Translation) understandChoice(d *ReadingDef, text string) (string, error) {
	if _, err := d.readChoice(text); err == nil {
		return text, nil
	}
	own := t.Options(d)
	words := strings.Fields(plain(text))
	var fitting []int
	for i, o := range own {
		if plain(o) == plain(text) {
			return d.Options[i], nil
		}
		if len(words) > 0 && containsAll(strings.Fields(plain(o)), words) {
			fitting = append(fitting, i)
		}
	}
	switch len(fitting) {
	case 0:
		return d.Shorthand(text)
	case 1:
		return d.Options[fitting[0]], nil
	}
	var could []string
	for _, i := range fitting {
		could = append(could, own[i])
	}
	return "", fmt.Errorf(t.phrase("%s: %q could be: %s"), d.Name, text, strings.Join(could, ", "))
}

// Read understands an answer and says in this language what is wrong with it.
func (t *Translation) Read(d *ReadingDef, text string) (Reading, error) {
	english, err := t.Understand(d, text)
	if err != nil {
		return Reading{}, err
	}
	r, err := d.Read(english)
	return r, t.mistake(d, text, err)
}

// mistake says in this language that an answer was not one of those offered, or
// lies outside the range.
func (t *Translation) mistake(d *ReadingDef, text string, err error) error {
	if t == nil || err == nil {
		return err
	}
	var wrong *answerMistake
	var unread *units.ParseError
	switch {
	case errors.As(err, &unread):
		return fmt.Errorf("%s: %q: %s", d.Name, unread.Text, t.unread(unread))
	case errors.As(err, &wrong):
		return fmt.Errorf(t.phrase(wrong.format), wrong.args...)
	case d.Kind == units.YesNo:
		return fmt.Errorf(t.phrase("%s: %q: answer yes or no"), d.Name, text)
	case d.Kind == units.Choice:
		return fmt.Errorf(t.phrase("%s: %q is not one of: %s"), d.Name, text, strings.Join(t.Options(d), ", "))
	}
	return err
}

// unread says why a quantity could not be read, and how to write it. What names
// units or numbers of its own has only the second part in this language.
func (t *Translation) unread(e *units.ParseError) string {
	what := orElse(t.phrases[e.What], t.phrase("not understood"))
	hint := t.phrase(e.Hint)
	if examples, ok := strings.CutPrefix(e.Hint, "write it like "); ok {
		hint = t.phrasef("write it like %s", strings.ReplaceAll(examples, " or ", t.phrase(" or ")))
	}
	if hint == "" {
		return what
	}
	return what + "; " + hint
}

// answerMistake is what is wrong with an answer, so that it can be told in
// another language.
type answerMistake struct {
	format string
	args   []any
}

func answerError(format string, args ...any) error { return &answerMistake{format, args} }

func (m *answerMistake) Error() string { return fmt.Sprintf(m.format, m.args...) }

// option shows an option that is written into a rule.
func (t *Translation) option(english string) string {
	if t == nil {
		return english
	}
	return orElse(t.options[english], english)
}

// word puts a result that is a word into this language; numbers stay.
func (t *Translation) word(text string, of Type) string {
	switch {
	case of.isYesNo():
		return t.phrase(text)
	case of.Kind == units.Choice:
		return t.option(t.phrase(text))
	}
	return text
}

func (t *Translation) yesOrNo(x float64) string { return t.phrase(yesOrNo(x)) }

// answers gives English answers to a reading in this language.
func (t *Translation) answers(d *ReadingDef, list []string) []string {
	out := slices.Clone(list)
	for i, answer := range list {
		if at := slices.Index(d.Options, answer); at >= 0 {
			out[i] = t.Options(d)[at]
		} else {
			out[i] = t.phrase(answer)
		}
	}
	return out
}
