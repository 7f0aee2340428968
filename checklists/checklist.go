package checklists

import (
	"fmt"
	"regexp"
	"slices"

	"gudgeon/kb"
	"gudgeon/rules/source"
)

// Kind says what a step asks of the machinist.
type Kind string

// The kinds of step.
const (
	Do      Kind = "do"      // something to do, ticked when done
	Measure Kind = "measure" // quantities to read
	Choose  Kind = "choose"  // a question with words or yes/no for an answer
	Survey  Kind = "survey"  // a table of readings round a bore
	Hold    Kind = "hold"    // work stops until a named person releases it
)

var stepKinds = []string{string(Do), string(Measure), string(Choose), string(Survey), string(Hold)}

// checklistSource is a checklist as it was written.
type checklistSource struct {
	Name     source.Text   `yaml:"checklist,required" about:"the checklist's name, the same as its file's"`
	Title    source.Text   `yaml:"title,required" about:"as it is shown"`
	About    source.Text   `yaml:"about" about:"which job it is for"`
	Part     source.Text   `yaml:"part" about:"the kind of part, so that notes on the like come first"`
	Sheets   []source.Text `yaml:"sheets" about:"rule sheets that watch over it"`
	Cautions []source.Text `yaml:"cautions" about:"what holds at every step"`
	Steps    []stepItem    `yaml:"steps,required" about:"in the order of the work"`

	Examples []exampleSource `yaml:"examples" about:"readings, and where the job must stand with them"`

	steps  []*stepSource  // in order, with those taken in
	shared []*source.File // the files that steps were taken in from
}

type stepSource struct {
	ID         source.Text   `yaml:"id,required" about:"small letters, digits and hyphens; every step has its own"`
	Kind       source.Text   `yaml:"kind,required" about:"do, measure, choose, survey or hold"`
	Title      source.Text   `yaml:"title,required" about:"a few words"`
	Do         source.Text   `yaml:"do" about:"what to do"`
	Why        source.Text   `yaml:"why,required" about:"the reason, in one sentence"`
	How        source.Text   `yaml:"how" about:"how it is done best"`
	Wrong      source.Text   `yaml:"goes wrong" about:"what people get wrong here"`
	When       source.Text   `yaml:"when" about:"the step is needed only where this holds"`
	Take       []source.Text `yaml:"take" about:"readings to take"`
	Cautions   []source.Text `yaml:"cautions" about:"what can hurt somebody or the part"`
	Needs      []source.Text `yaml:"needs" about:"of a hold: sheets or rules that may not stop or wait"`
	ReleasedBy source.Text   `yaml:"released by" about:"of a hold: who may release it"`
	TwoPersons bool          `yaml:"two persons" about:"whether a second person must be there"`
}

// Words gives the kinds of step.
func (stepSource) Words() map[string][]string {
	return map[string][]string{"kind": stepKinds}
}

// Words gives the kinds of part.
func (checklistSource) Words() map[string][]string {
	return map[string][]string{"part": kb.Parts()}
}

// Schema describes a checklist for editors.
func Schema() source.Schema {
	return source.SchemaFor[checklistSource]("A checklist of gudgeon")
}

var idForm = regexp.MustCompile(`^[a-z][a-z0-9]*(-[a-z0-9]+)*$`)

// readChecklist reads the form of a checklist and takes in the shared steps it
// names; what its names mean is checked when it is compiled.
func readChecklist(shelf Shelf, f *source.File) (*checklistSource, error) {
	c := &checklistSource{}
	if err := source.Decode(f, c); err != nil {
		return nil, err
	}
	var report source.Report
	if !idForm.MatchString(c.Name.Value) {
		report.At(c.Name, "a checklist is named with small letters, digits and hyphens", "")
	}
	if part := c.Part; !part.IsZero() && !slices.Contains(kb.Parts(), part.Value) {
		report.At(part, fmt.Sprintf("part %q is not known", part.Value), source.Suggest(part.Value, kb.Parts()))
	}
	for i := range c.Steps {
		c.take(shelf, &c.Steps[i], &report)
	}
	checkSteps(c.steps, &report)
	return c, report.Err()
}

func checkSteps(steps []*stepSource, report *source.Report) {
	seen := map[string]source.Text{}
	for _, s := range steps {
		s.check(report)
		if first, twice := seen[s.ID.Value]; twice {
			report.At(s.ID, fmt.Sprintf("the step %s is there twice", s.ID.Value), "every step has an id of its own; the other is "+place(first))
		}
		seen[s.ID.Value] = s.ID
	}
}

// place says where a text stands.
func place(t source.Text) string { return fmt.Sprintf("%s:%d", t.File().Name, t.Pos.Line) }

func (s *stepSource) check(report *source.Report) {
	if !idForm.MatchString(s.ID.Value) {
		report.At(s.ID, "a step's id is written with small letters, digits and hyphens", "")
	}
	switch kind := Kind(s.Kind.Value); kind {
	case Do:
		s.refuse(report, s.Take, "take", "a do step takes no readings; make it measure or choose")
		s.refuse(report, s.Needs, "needs", "only a hold has needs")
	case Measure, Choose, Survey:
		if len(s.Take) == 0 {
			report.At(s.ID, fmt.Sprintf("a %s step takes at least one reading", kind), "add take: [name, …]")
		}
		s.refuse(report, s.Needs, "needs", "only a hold has needs")
	case Hold:
		s.refuse(report, s.Take, "take", "a hold takes no readings; put a measure step before it")
		if s.ReleasedBy.IsZero() {
			report.At(s.ID, "a hold says who may release it", "add released by: foreman")
		}
	default:
		report.At(s.Kind, fmt.Sprintf("the kind of step %q is not known", s.Kind.Value), source.Suggest(s.Kind.Value, stepKinds))
	}
}

func (s *stepSource) refuse(report *source.Report, list []source.Text, key, why string) {
	if len(list) > 0 {
		report.At(list[0], key+" does not belong here", why)
	}
}
