package rules

import (
	"regexp"

	"gudgeon/rules/source"
	"gudgeon/units"
)

// Sheet is a rule sheet as it was written.
type Sheet struct {
	Name     source.Text               `yaml:"sheet,required" about:"the sheet's name, the same as its file's"`
	About    source.Text               `yaml:"about" about:"what it is for, in a sentence"`
	Uses     []source.Text             `yaml:"uses" about:"sheets whose readings and values may be named here"`
	Readings source.Map[readingSource] `yaml:"readings" about:"what is asked, by the name that formulas use"`
	Values   source.Map[valueSource]   `yaml:"values" about:"formulas over readings, other values and the functions of the trade"`
	Rules    []ruleSource              `yaml:"rules" about:"conditions that must hold"`
	Examples []exampleSource           `yaml:"examples" about:"readings, and the verdicts that they must give"`

	file *source.File
}

type readingSource struct {
	Ask       source.Text                         `yaml:"ask,required" about:"the question put to the machinist"`
	Kind      source.Text                         `yaml:"kind,required" about:"what is measured"`
	Unit      source.Text                         `yaml:"unit" about:"of a number without one"`
	Usual     source.Text                         `yaml:"usual" about:"what it mostly is"`
	From      source.Text                         `yaml:"from" about:"the least that makes sense, with its unit"`
	To        source.Text                         `yaml:"to" about:"the most that makes sense, with its unit"`
	Options   []source.Text                       `yaml:"options" about:"the answers of a choice"`
	With      source.Text                         `yaml:"with" about:"the instrument it is usually read with"`
	WithWhen  source.Map[source.Map[source.Text]] `yaml:"with when" about:"the instrument it is read with, by the answer to a choice"`
	How       source.Text                         `yaml:"how" about:"how to take it"`
	CanChange bool                                `yaml:"can change" about:"whether the shop can make it another value"`
	Limits    bool                                `yaml:"limits" about:"whether it is a size with limits, 3.000 +.002/-.000"`
	Whole     bool                                `yaml:"whole" about:"whether it is counted"`
}

// valueSource is an expression, or an expression with the unit to show it in.
type valueSource struct {
	Is    source.Text `yaml:"is,required" about:"the formula"`
	Unit  source.Text `yaml:"unit" about:"to show it in"`
	About source.Text `yaml:"about" about:"what it is, in a sentence"`
}

// DecodeNode reads the short form name: expression and the long form.
func (v *valueSource) DecodeNode(n source.Node, report *source.Report) {
	if !n.IsMapping() {
		v.Is = n.Text(report)
		return
	}
	var long longValue
	n.Decode(&long, report)
	*v = valueSource(long)
}

// longValue is a value in its long form.
type longValue valueSource

// DescribeSchema describes both forms.
func (*valueSource) DescribeSchema() source.Schema {
	return source.AnyOf(source.SchemaOf[source.Text](), source.SchemaOf[longValue]())
}

// Words gives the kinds.
func (readingSource) Words() map[string][]string {
	return map[string][]string{"kind": units.KindNames()}
}

// Words gives the levels.
func (ruleSource) Words() map[string][]string {
	return map[string][]string{"level": levelNames[:]}
}

// SheetSchema describes a rule sheet for editors.
func SheetSchema() source.Schema { return source.SchemaFor[Sheet]("A rule sheet of gudgeon") }

type ruleSource struct {
	ID         source.Text `yaml:"id,required" about:"small letters, digits and hyphens; every rule has its own"`
	When       source.Text `yaml:"when" about:"the rule is needed only where this holds"`
	Check      source.Text `yaml:"check,required" about:"what must hold"`
	Level      source.Text `yaml:"level,required" about:"what it comes to when it does not hold"`
	LifeSafety bool        `yaml:"life safety" about:"whether life and limb hang on it: only new readings open it"`
	Says       source.Text `yaml:"says,required" about:"what is wrong; {name} puts a reading or value in"`
	Do         source.Text `yaml:"do,required" about:"what to do about it"`
	Source     source.Text `yaml:"source,required" about:"where it comes from"`
}

var (
	nameForm = regexp.MustCompile(`^[a-z][a-z0-9_]*$`)             // a word an expression can use
	idForm   = regexp.MustCompile(`^[a-z][a-z0-9]*(-[a-z0-9]+)*$`) // a word for files and rules
)

// ReadSheet reads one rule sheet. Every mistake in its form comes back in one
// source.Errors.
func ReadSheet(f *source.File) (*Sheet, error) {
	s := &Sheet{file: f}
	if err := source.Decode(f, s); err != nil {
		return nil, err
	}
	var report source.Report
	if !idForm.MatchString(s.Name.Value) {
		report.At(s.Name, "a sheet is named with small letters, digits and hyphens", "")
	}
	seen := map[string]bool{}
	for _, r := range s.Rules {
		if !idForm.MatchString(r.ID.Value) {
			report.At(r.ID, "a rule's id is written with small letters, digits and hyphens", "")
		}
		if seen[r.ID.Value] {
			report.At(r.ID, "the id "+r.ID.Value+" is given twice", "every rule has an id of its own")
		}
		seen[r.ID.Value] = true
		if _, ok := ParseLevel(r.Level.Value); !ok {
			report.At(r.Level, "the level "+r.Level.Value+" is not known", "write note, caution or stop")
		}
	}
	return s, report.Err()
}
