package rules

import (
	"gudgeon/rules/source"
	"gudgeon/units"
)

// English is the language that sheets are written in.
const English = "en"

// Translation is what a person reads of a set's sheets in another language.
// What it lacks is read in English; nil is English altogether.
type Translation struct {
	Language string

	phrases  map[string]string // the engine's own words, by the English ones
	about    map[string]string // by sheet
	readings map[string]readingWords
	values   map[string]string
	rules    map[string]ruleWords
	options  map[string]string // of any choice, for those written into a rule
}

type readingWords struct {
	ask, how string
	options  []string // in the order of the reading's own
}

type ruleWords struct{ says, do string }

// TranslationShelf is where the translations of sheets are found.
type TranslationShelf interface {
	SheetTranslation(language, sheet string) (*source.File, error) // nil and no error when there is none
}

// Translate reads what a shelf has of the set's sheets in another language. All
// mistakes come back as one source.Errors.
func (s *Set) Translate(shelf TranslationShelf, language string) (*Translation, error) {
	if language == English {
		return nil, nil
	}
	t := &Translation{
		Language: language, phrases: phrasesOf(language), about: map[string]string{}, readings: map[string]readingWords{},
		values: map[string]string{}, rules: map[string]ruleWords{}, options: map[string]string{},
	}
	var report source.Report
	for _, name := range s.sheetNames() {
		report.Merge(t.sheet(s, shelf, name))
	}
	return t, report.Err()
}

func (t *Translation) sheet(s *Set, shelf TranslationShelf, name string) error {
	f, err := shelf.SheetTranslation(t.Language, name)
	if f == nil || err != nil {
		return err
	}
	words, err := ReadSheetTranslation(f)
	if err != nil {
		return err
	}
	if err := words.Check(s, name, t.Language); err != nil {
		return err
	}
	t.add(s, words)
	return nil
}

// add takes in the checked words of one sheet.
func (t *Translation) add(s *Set, words *SheetTranslation) {
	t.about[words.Sheet.Value] = words.About.Value
	for _, e := range words.Readings {
		w := readingWords{ask: e.Value.Ask.Value, how: e.Value.How.Value}
		for _, o := range s.readings[e.Key.Value].Options {
			text, _ := e.Value.Options.Get(o)
			w.options = append(w.options, text.Value)
			if text.Value != "" {
				t.options[o] = text.Value
			}
		}
		t.readings[e.Key.Value] = w
	}
	for _, e := range words.Values {
		t.values[e.Key.Value] = e.Value.Value
	}
	for _, e := range words.Rules {
		t.rules[e.Key.Value] = ruleWords{says: e.Value.Says.Value, do: e.Value.Do.Value}
	}
}

// orElse gives the English text where there is no other.
func orElse(text, english string) string {
	if text == "" {
		return english
	}
	return text
}

// Ask is the question for a reading.
func (t *Translation) Ask(d *ReadingDef) string {
	if t == nil {
		return d.Ask
	}
	return orElse(t.readings[d.Name].ask, d.Ask)
}

// How says how a reading is taken; it may be empty.
func (t *Translation) How(d *ReadingDef) string {
	if t == nil {
		return d.How
	}
	return orElse(t.readings[d.Name].how, d.How)
}

// Options are the answers to a choice.
func (t *Translation) Options(d *ReadingDef) []string {
	if t == nil || t.readings[d.Name].options == nil {
		return d.Options
	}
	list := make([]string, len(d.Options))
	for i, o := range d.Options {
		list[i] = orElse(t.readings[d.Name].options[i], o)
	}
	return list
}

// With names the instrument that a reading is usually taken with.
func (t *Translation) With(d *ReadingDef) string { return t.phrase(d.With) }

// About says what a value is.
func (t *Translation) About(v *Value) string {
	if t == nil {
		return v.About
	}
	return orElse(t.values[v.Name], v.About)
}

// SheetAbout says what a sheet is about.
func (t *Translation) SheetAbout(s *Sheet) string {
	if t == nil {
		return s.About.Value
	}
	return orElse(t.about[s.Name.Value], s.About.Value)
}

// Show prints a reading's value the way this shop writes it.
func (t *Translation) Show(d *ReadingDef, r Reading, s units.System) string {
	switch d.Kind {
	case units.YesNo:
		return t.yesOrNo(r.Value)
	case units.Choice:
		return t.Options(d)[int(r.Value)]
	case units.Survey:
		return t.phrasef("%d points", len(r.Survey))
	}
	return d.Show(r, s)
}

// In gives the report as it reads in another language. Both are the same
// results; only what is printed differs.
func (r *Report) In(t *Translation) *Report {
	out := *r
	out.words = t
	return &out
}

// Language is what the report is printed in; nil is English.
func (r *Report) Language() *Translation { return r.words }
