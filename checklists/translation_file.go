package checklists

import (
	"fmt"

	"gudgeon/rules/source"
)

// wordsSource is a checklist, or a file of shared steps, in another language as
// it was written.
type wordsSource struct {
	Checklist source.Text                 `yaml:"checklist"`
	StepsOf   source.Text                 `yaml:"steps of"`
	Language  source.Text                 `yaml:"language,required"`
	Title     source.Text                 `yaml:"title"`
	About     source.Text                 `yaml:"about"`
	Cautions  []source.Text               `yaml:"cautions"`
	Steps     source.Map[stepWordsSource] `yaml:"steps"`
}

type stepWordsSource struct {
	Title      source.Text   `yaml:"title"`
	Do         source.Text   `yaml:"do"`
	Why        source.Text   `yaml:"why"`
	How        source.Text   `yaml:"how"`
	Wrong      source.Text   `yaml:"goes wrong"`
	ReleasedBy source.Text   `yaml:"released by"`
	Cautions   []source.Text `yaml:"cautions"`
}

func readWords(f *source.File) (*wordsSource, error) {
	w := &wordsSource{}
	if err := source.Decode(f, w); err != nil {
		return nil, err
	}
	var report source.Report
	if w.Checklist.IsZero() == w.StepsOf.IsZero() {
		report.At(w.Language, "what these words belong to is not said", "begin the file with checklist: name or steps of: name")
	}
	return w, report.Err()
}

// englishTexts are what a person reads of one file, to hold its translation
// against.
type englishTexts struct {
	what, name   string // checklist or steps of, and its name
	title, about string
	cautions     []string
	steps        []*stepSource
}

// texts are what the checklist's own file says; its shared steps have a file of
// their own.
func (p *Procedure) texts() englishTexts {
	e := englishTexts{what: "checklist", name: p.ID, title: p.Title, about: p.About, cautions: p.Cautions}
	for _, s := range p.Steps {
		if s.source.ID.File() == p.name.File() {
			e.steps = append(e.steps, s.source)
		}
	}
	return e
}

func (s *Shop) partTexts(name string) (englishTexts, error) {
	f, err := s.SharedSteps(name)
	if f == nil || err != nil {
		return englishTexts{what: "steps of", name: name}, err
	}
	shared, err := readShared(f)
	if err != nil {
		return englishTexts{}, err
	}
	return englishTexts{what: "steps of", name: name, about: shared.About.Value, steps: shared.steps()}, nil
}

// check reports what is translated and is not there, and another language than
// the one asked for.
func (w *wordsSource) check(e englishTexts, language string) error {
	var report source.Report
	name := w.Checklist
	if e.what == "steps of" {
		name = w.StepsOf
	}
	if name.Value != e.name {
		report.At(w.Language, fmt.Sprintf("these words are kept as those of %s %s", e.what, e.name), fmt.Sprintf("begin the file with %s: %s", e.what, e.name))
		return report.Err()
	}
	if w.Language.Value != language {
		report.At(w.Language, "the folder is that of the language "+language, "")
	}
	sameCount(w.Cautions, e.cautions, &report)
	for _, entry := range w.Steps {
		step, ok := e.step(entry.Key.Value)
		if !ok {
			report.At(entry.Key, fmt.Sprintf("%s %s has no step %s of its own", e.what, e.name, entry.Key.Value), source.Suggest(entry.Key.Value, e.stepIDs()))
			continue
		}
		sameCount(entry.Value.Cautions, values(step.Cautions), &report)
	}
	return report.Err()
}

// sameCount refuses a list of cautions that leaves one out, or has one of its own.
func sameCount(own []source.Text, english []string, report *source.Report) {
	if len(own) > 0 && len(own) != len(english) {
		report.At(own[0], fmt.Sprintf("%d cautions for %d in English", len(own), len(english)), "give every caution, in the same order")
	}
}

func (e englishTexts) step(id string) (*stepSource, bool) {
	for _, s := range e.steps {
		if s.ID.Value == id {
			return s, true
		}
	}
	return nil, false
}

func (e englishTexts) stepIDs() []string {
	var ids []string
	for _, s := range e.steps {
		ids = append(ids, s.ID.Value)
	}
	return ids
}

// untranslated lists what the English says and w does not, by its place in the
// translation file. A nil w lacks everything.
func (e englishTexts) untranslated(w *wordsSource) []string {
	if w == nil {
		w = &wordsSource{}
	}
	m := &missingWords{}
	m.look("title", e.title, w.Title)
	m.look("about", e.about, w.About)
	m.list("cautions", e.cautions, w.Cautions)
	for _, s := range e.steps {
		own, _ := w.Steps.Get(s.ID.Value)
		at := "steps." + s.ID.Value + "."
		m.look(at+"title", s.Title.Value, own.Title)
		m.look(at+"do", s.Do.Value, own.Do)
		m.look(at+"why", s.Why.Value, own.Why)
		m.look(at+"how", s.How.Value, own.How)
		m.look(at+"goes wrong", s.Wrong.Value, own.Wrong)
		m.look(at+"released by", s.ReleasedBy.Value, own.ReleasedBy)
		m.list(at+"cautions", values(s.Cautions), own.Cautions)
	}
	return m.places
}

type missingWords struct{ places []string }

func (m *missingWords) look(place, english string, word source.Text) {
	if english != "" && word.Value == "" {
		m.places = append(m.places, place)
	}
}

func (m *missingWords) list(place string, english []string, words []source.Text) {
	if len(english) > 0 && len(words) == 0 {
		m.places = append(m.places, place)
	}
}
