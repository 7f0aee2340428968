package rules

import (
	"regexp"

	"gudgeon/rules/source"
)

// Sheet is a rule sheet as it was written.
type Sheet struct {
	Name     source.Text               `yaml:"sheet,required"`
	About    source.Text               `yaml:"about"`
	Uses     []source.Text             `yaml:"uses"` // sheets whose readings and values may be named here
	Readings source.Map[readingSource] `yaml:"readings"`
	Values   source.Map[valueSource]   `yaml:"values"`
	Rules    []ruleSource              `yaml:"rules"`
	Examples []exampleSource           `yaml:"examples"`

	file *source.File
}

type readingSource struct {
	Ask       source.Text   `yaml:"ask,required"`
	Kind      source.Text   `yaml:"kind,required"`
	Unit      source.Text   `yaml:"unit"`
	Usual     source.Text   `yaml:"usual"`
	From      source.Text   `yaml:"from"`
	To        source.Text   `yaml:"to"`
	Options   []source.Text `yaml:"options"`
	With      source.Text   `yaml:"with"`
	How       source.Text   `yaml:"how"`
	CanChange bool          `yaml:"can change"`
	Limits    bool          `yaml:"limits"`
	Whole     bool          `yaml:"whole"`
}

// valueSource is an expression, or an expression with the unit to show it in.
type valueSource struct {
	Is    source.Text `yaml:"is,required"`
	Unit  source.Text `yaml:"unit"`
	About source.Text `yaml:"about"`
}

// DecodeNode reads the short form name: expression and the long form.
func (v *valueSource) DecodeNode(n source.Node, report *source.Report) {
	if !n.IsMapping() {
		v.Is = n.Text(report)
		return
	}
	type long valueSource
	var l long
	n.Decode(&l, report)
	*v = valueSource(l)
}

type ruleSource struct {
	ID         source.Text `yaml:"id,required"`
	When       source.Text `yaml:"when"`
	Check      source.Text `yaml:"check,required"`
	Level      source.Text `yaml:"level,required"`
	LifeSafety bool        `yaml:"life safety"`
	Says       source.Text `yaml:"says,required"`
	Do         source.Text `yaml:"do,required"`
	Source     source.Text `yaml:"source,required"`
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
