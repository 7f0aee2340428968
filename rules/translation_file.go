package rules

import (
	"fmt"
	"strings"

	"gudgeon/rules/source"
)

// SheetTranslation is the words of one sheet in another language as they were
// written.
type SheetTranslation struct {
	Sheet    source.Text                    `yaml:"sheet,required"`
	Language source.Text                    `yaml:"language,required"`
	About    source.Text                    `yaml:"about"`
	Readings source.Map[readingTranslation] `yaml:"readings"`
	Values   source.Map[source.Text]        `yaml:"values"`
	Rules    source.Map[ruleTranslation]    `yaml:"rules"`
}

type readingTranslation struct {
	Ask     source.Text             `yaml:"ask"`
	How     source.Text             `yaml:"how"`
	Options source.Map[source.Text] `yaml:"options"` // English option: the same in this language
}

type ruleTranslation struct {
	Says source.Text `yaml:"says"`
	Do   source.Text `yaml:"do"`
}

// ReadSheetTranslation reads the form of a translation.
func ReadSheetTranslation(f *source.File) (*SheetTranslation, error) {
	t := &SheetTranslation{}
	return t, source.Decode(f, t)
}

// Check reports what is translated and is not in the sheet, names in {braces}
// that mean nothing, and options that cannot be told apart.
func (t *SheetTranslation) Check(s *Set, name, language string) error {
	c := &translationCheck{set: s, sheet: s.sheets[name], builder: &builder{set: s}}
	if t.Sheet.Value != name {
		c.report().At(t.Sheet, fmt.Sprintf("these words are kept as those of %s", name), "give the file the name of its sheet")
		return c.report().Err()
	}
	if t.Language.Value != language {
		c.report().At(t.Language, fmt.Sprintf("the folder is that of the language %s", language), "")
	}
	for _, e := range t.Readings {
		c.reading(e.Key, e.Value)
	}
	for _, e := range t.Values {
		if _, ok := c.sheet.Values.Get(e.Key.Value); !ok {
			c.unknown(e.Key, "value", keysOf(c.sheet.Values))
		}
	}
	for _, e := range t.Rules {
		c.rule(e.Key, e.Value)
	}
	return c.report().Err()
}

type translationCheck struct {
	set     *Set
	sheet   *Sheet
	builder *builder // for its check of messages
}

func (c *translationCheck) report() *source.Report { return &c.builder.report }

func (c *translationCheck) unknown(name source.Text, what string, names []string) {
	c.report().At(name, fmt.Sprintf("sheet %s has no %s %s", c.sheet.Name.Value, what, name.Value), source.Suggest(name.Value, names))
}

func (c *translationCheck) reading(name source.Text, words readingTranslation) {
	src, ok := c.sheet.Readings.Get(name.Value)
	if !ok {
		c.unknown(name, "reading", keysOf(c.sheet.Readings))
		return
	}
	meant := map[string]string{} // option by every word for it
	for _, o := range src.Options {
		meant[plain(o.Value)] = o.Value
	}
	for _, e := range words.Options {
		if meant[plain(e.Key.Value)] != e.Key.Value {
			c.report().At(e.Key, fmt.Sprintf("%s has no option %s", name.Value, e.Key.Value), source.Suggest(e.Key.Value, written(src.Options)))
			continue
		}
		if other, taken := meant[plain(e.Value.Value)]; taken && other != e.Key.Value {
			c.report().At(e.Value, fmt.Sprintf("this already means the option %s", other), "every option has a word of its own")
		}
		meant[plain(e.Value.Value)] = e.Key.Value
	}
}

func (c *translationCheck) rule(id source.Text, words ruleTranslation) {
	var ids []string
	for _, r := range c.sheet.Rules {
		if r.ID.Value == id.Value {
			c.builder.checkMessage(setScope{c.set}, words.Says)
			c.builder.checkMessage(setScope{c.set}, words.Do)
			return
		}
		ids = append(ids, r.ID.Value)
	}
	c.unknown(id, "rule", ids)
}

// Untranslated lists what a sheet says and its translation does not, by the
// place in the translation file: rules.truck-overload.do. A nil translation
// lacks everything.
func (s *Sheet) Untranslated(t *SheetTranslation) []string {
	if t == nil {
		t = &SheetTranslation{}
	}
	m := &missingWords{}
	m.look("about", s.About, t.About)
	for _, e := range s.Readings {
		words, _ := t.Readings.Get(e.Key.Value)
		at := "readings." + e.Key.Value
		m.look(at+".ask", e.Value.Ask, words.Ask)
		m.look(at+".how", e.Value.How, words.How)
		for _, o := range e.Value.Options {
			word, _ := words.Options.Get(o.Value)
			m.look(at+".options."+o.Value, o, word)
		}
	}
	for _, e := range s.Values {
		word, _ := t.Values.Get(e.Key.Value)
		m.look("values."+e.Key.Value, e.Value.About, word)
	}
	for _, r := range s.Rules {
		words, _ := t.Rules.Get(r.ID.Value)
		m.look("rules."+r.ID.Value+".says", r.Says, words.Says)
		m.look("rules."+r.ID.Value+".do", r.Do, words.Do)
	}
	return m.places
}

type missingWords struct{ places []string }

func (m *missingWords) look(place string, english, word source.Text) {
	if english.Value != "" && word.Value == "" {
		m.places = append(m.places, place)
	}
}

func keysOf[T any](m source.Map[T]) []string {
	var keys []string
	for _, e := range m {
		keys = append(keys, e.Key.Value)
	}
	return keys
}

func written(list []source.Text) []string {
	var out []string
	for _, t := range list {
		out = append(out, t.Value)
	}
	return out
}

// SameWord reports whether two words are the same but for capitals and accents.
func SameWord(a, b string) bool { return plain(a) == plain(b) }

// plain is a word without capitals and accents, which are easily left out when
// typing with gloves on.
func plain(text string) string {
	return strings.NewReplacer("á", "a", "é", "e", "í", "i", "ó", "o", "ú", "u", "ü", "u").Replace(strings.ToLower(strings.TrimSpace(text)))
}
