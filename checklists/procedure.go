package checklists

import (
	"crypto/sha256"
	"encoding/hex"
	"fmt"
	"slices"
	"strings"

	"gudgeon/rules"
	"gudgeon/rules/source"
	"gudgeon/units"
)

// Procedure is a checklist compiled with the rule sheets it names. It is
// immutable.
type Procedure struct {
	ID       string
	Title    string
	About    string
	Part     string // the kind of part, one of kb.Parts; may be empty
	Cautions []string
	Steps    []*Step
	Rules    *rules.Set
	Hash     string // of the checklist, the steps it takes in, every sheet and the shop's instruments, SHA-256 in hex

	examples []exampleSource
	name     source.Text
	parts    []string // names of the shared steps it takes in
}

// Step is one thing to do.
type Step struct {
	ID         string
	Kind       Kind
	Title      string
	Do         string
	Why        string
	How        string
	Wrong      string
	Cautions   []string
	Take       []*rules.ReadingDef
	Needs      []*rules.Rule // of a hold: what must not stop or wait
	ReleasedBy string
	TwoPersons bool

	when   *rules.Condition
	source *stepSource
}

// Compile makes a Procedure of a checklist file. All mistakes, in it and in its
// sheets, come back as one source.Errors.
func Compile(l *rules.Library, shelf Shelf, f *source.File) (*Procedure, error) {
	c, err := readChecklist(shelf, f)
	if err != nil {
		return nil, err
	}
	p, err := compile(l, shelf, c)
	if err != nil {
		return nil, err
	}
	p.Hash = hash(slices.Concat([]*source.File{f}, c.shared, p.Rules.SheetFiles(), l.Files()))
	return p, nil
}

func compile(l *rules.Library, shelf Shelf, c *checklistSource) (*Procedure, error) {
	set, err := rules.Compile(l, shelf, c.Sheets)
	if err != nil {
		return nil, err
	}
	b := &builder{set: set, sheets: c.Sheets}
	p := &Procedure{
		ID: c.Name.Value, Title: c.Title.Value, About: c.About.Value, Part: c.Part.Value, Cautions: values(c.Cautions), Rules: set, examples: c.Examples, name: c.Name,
	}
	for _, item := range c.Steps {
		if item.of != nil {
			p.parts = append(p.parts, item.of.Name.Value)
		}
	}
	for _, step := range c.steps {
		p.Steps = append(p.Steps, b.step(step))
	}
	return p, b.report.Err()
}

// OfSheet makes a Procedure without steps of one sheet, so that readings can be
// held against the sheet alone.
func OfSheet(l *rules.Library, shelf rules.Shelf, sheet *rules.Sheet) (*Procedure, error) {
	set, err := rules.CompileSheet(l, shelf, sheet)
	if err != nil {
		return nil, err
	}
	return &Procedure{ID: sheet.Name.Value, Title: sheet.About.Value, Rules: set, name: sheet.Name}, nil
}

// hash is over the texts of files, in order.
func hash(files []*source.File) string {
	sum := sha256.New()
	for i, f := range files {
		if i > 0 {
			sum.Write([]byte{0})
		}
		sum.Write([]byte(f.Text))
	}
	return hex.EncodeToString(sum.Sum(nil))
}

func values(texts []source.Text) []string {
	var list []string
	for _, t := range texts {
		list = append(list, t.Value)
	}
	return list
}

type builder struct {
	set    *rules.Set
	sheets []source.Text
	report source.Report
}

func (b *builder) step(src *stepSource) *Step {
	s := &Step{
		ID: src.ID.Value, Kind: Kind(src.Kind.Value), Title: src.Title.Value, Do: src.Do.Value, Why: src.Why.Value,
		How: src.How.Value, Wrong: src.Wrong.Value, Cautions: values(src.Cautions),
		ReleasedBy: src.ReleasedBy.Value, TwoPersons: src.TwoPersons, source: src,
	}
	for _, name := range src.Take {
		if d := b.reading(name, s.Kind); d != nil {
			s.Take = append(s.Take, d)
		}
	}
	for _, name := range src.Needs {
		s.Needs = append(s.Needs, b.needed(name)...)
	}
	if !src.When.IsZero() {
		when, err := b.set.Condition(src.When)
		b.report.Merge(err)
		s.when = when
	}
	return s
}

func (b *builder) reading(name source.Text, kind Kind) *rules.ReadingDef {
	d, ok := b.set.Reading(name.Value)
	if !ok {
		var names []string
		for _, d := range b.set.Readings {
			names = append(names, d.Name)
		}
		b.report.At(name, fmt.Sprintf("no sheet of this checklist has a reading %s", name.Value), source.Suggest(name.Value, names))
		return nil
	}
	word := d.Kind == units.Choice || d.Kind == units.YesNo
	switch {
	case kind == Survey && d.Kind != units.Survey:
		b.report.At(name, fmt.Sprintf("%s is no survey", d.Name), "take it in a measure step")
	case kind != Survey && d.Kind == units.Survey:
		b.report.At(name, fmt.Sprintf("%s is a survey", d.Name), "take it in a survey step")
	case kind == Choose && !word:
		b.report.At(name, fmt.Sprintf("%s is measured, not chosen", d.Name), "take it in a measure step")
	}
	return d
}

// needed finds what a hold depends on: a rule, or every rule of a sheet.
func (b *builder) needed(name source.Text) []*rules.Rule {
	if r, ok := b.set.Rule(name.Value); ok {
		return []*rules.Rule{r}
	}
	var found []*rules.Rule
	for _, r := range b.set.Rules {
		if r.Sheet == name.Value {
			found = append(found, r)
		}
	}
	if len(found) == 0 {
		b.report.At(name, fmt.Sprintf("%s is neither a sheet nor a rule of this checklist", name.Value), "its sheets: "+strings.Join(values(b.sheets), ", "))
	}
	return found
}

// Step finds a step by its id.
func (p *Procedure) Step(id string) (*Step, bool) {
	for _, s := range p.Steps {
		if s.ID == id {
			return s, true
		}
	}
	return nil, false
}
