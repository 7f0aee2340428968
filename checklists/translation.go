package checklists

import (
	"gudgeon/rules"
	"gudgeon/rules/source"
)

// Translation is what a person reads of a procedure in another language. What
// it lacks is read in English; nil is English altogether.
type Translation struct {
	Rules *rules.Translation

	title, about string
	cautions     []string
	steps        map[string]StepWords
}

// StepWords are what a person reads of a step.
type StepWords struct {
	Title, Do, Why, How, Wrong string
	ReleasedBy                 string
	Cautions                   []string
}

// Translate reads what the shop has of a procedure in another language. All
// mistakes come back as one source.Errors.
func (s *Shop) Translate(p *Procedure, language string) (*Translation, error) {
	if language == rules.English {
		return nil, nil
	}
	var report source.Report
	words, err := p.Rules.Translate(s, language)
	report.Merge(err)
	t := &Translation{Rules: words, steps: map[string]StepWords{}}
	f, err := s.checklistWords(p, language)
	report.Merge(err)
	if f != nil {
		report.Merge(t.addChecklist(p, f, language))
	}
	for _, name := range p.parts {
		report.Merge(t.addPart(s, name, language))
	}
	return t, report.Err()
}

func (t *Translation) addChecklist(p *Procedure, f *source.File, language string) error {
	words, err := readWords(f)
	if err != nil {
		return err
	}
	if err := words.check(p.texts(), language); err != nil {
		return err
	}
	t.title, t.about, t.cautions = words.Title.Value, words.About.Value, values(words.Cautions)
	t.addSteps(words)
	return nil
}

func (t *Translation) addPart(s *Shop, name, language string) error {
	f, err := s.partWords(name, language)
	if f == nil || err != nil {
		return err
	}
	words, err := readWords(f)
	if err != nil {
		return err
	}
	part, err := s.partTexts(name)
	if err != nil {
		return err
	}
	if err := words.check(part, language); err != nil {
		return err
	}
	t.addSteps(words)
	return nil
}

func (t *Translation) addSteps(words *wordsSource) {
	for _, e := range words.Steps {
		w := e.Value
		t.steps[e.Key.Value] = StepWords{
			Title: w.Title.Value, Do: w.Do.Value, Why: w.Why.Value, How: w.How.Value, Wrong: w.Wrong.Value,
			ReleasedBy: w.ReleasedBy.Value, Cautions: values(w.Cautions),
		}
	}
}

func orElse(text, english string) string {
	if text == "" {
		return english
	}
	return text
}

// orElseAll gives the English texts where there are not as many others.
func orElseAll(texts, english []string) []string {
	if len(texts) != len(english) {
		return english
	}
	return texts
}

// Sheets is the part of it that the rules say; nil is English.
func (t *Translation) Sheets() *rules.Translation {
	if t == nil {
		return nil
	}
	return t.Rules
}

// Title is a procedure's title.
func (t *Translation) Title(p *Procedure) string {
	if t == nil {
		return p.Title
	}
	return orElse(t.title, p.Title)
}

// About says which job a procedure is for.
func (t *Translation) About(p *Procedure) string {
	if t == nil {
		return p.About
	}
	return orElse(t.about, p.About)
}

// Cautions are what holds at every step.
func (t *Translation) Cautions(p *Procedure) []string {
	if t == nil {
		return p.Cautions
	}
	return orElseAll(t.cautions, p.Cautions)
}

// Step is what a person reads of a step.
func (t *Translation) Step(s *Step) StepWords {
	words := StepWords{s.Title, s.Do, s.Why, s.How, s.Wrong, s.ReleasedBy, s.Cautions}
	if t == nil {
		return words
	}
	own := t.steps[s.ID]
	return StepWords{
		Title: orElse(own.Title, words.Title), Do: orElse(own.Do, words.Do), Why: orElse(own.Why, words.Why),
		How: orElse(own.How, words.How), Wrong: orElse(own.Wrong, words.Wrong),
		ReleasedBy: orElse(own.ReleasedBy, words.ReleasedBy), Cautions: orElseAll(own.Cautions, words.Cautions),
	}
}

// In gives the report as it reads in another language.
func (r *Report) In(t *Translation) *Report {
	out := *r
	out.words, out.Rules = t, r.Rules.In(t.Sheets())
	return &out
}

// Words is what the report is printed in; nil is English.
func (r *Report) Words() *Translation { return r.words }
