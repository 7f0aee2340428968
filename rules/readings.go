package rules

import (
	"fmt"

	"gudgeon/rules/source"
	"gudgeon/units"
)

// ReadingNode is a reading as it was written, kept until it is known what is
// asked. It may be short, or say what it was read with and by whom:
//
//	part_weight: 4,600 lb
//	bore: {read: 3.002 in, with: inside micrometer, by: R. Doe}
type ReadingNode struct{ node source.Node }

// DecodeNode keeps the node.
func (r *ReadingNode) DecodeNode(n source.Node, _ *source.Report) { r.node = n }

// DescribeSchema describes a reading that is short, long, or a survey's table.
func (*ReadingNode) DescribeSchema() source.Schema {
	row := source.SchemaOf[[]source.Text]()
	survey := source.Schema{"type": "object", "required": []string{"at"}, "additionalProperties": row}
	return source.AnyOf(source.SchemaOf[source.Text](), source.SchemaOf[longReading](), survey)
}

// longReading is the long form of a reading.
type longReading struct {
	Read source.Text `yaml:"read,required" about:"the value, with its unit"`
	With source.Text `yaml:"with" about:"the instrument"`
	By   source.Text `yaml:"by" about:"who read it"`
}

// ReadAll understands a list of readings. A name with nothing behind it is a
// reading still to be taken.
func (s *Set) ReadAll(list source.Map[ReadingNode], report *source.Report) Readings {
	out := Readings{}
	for _, e := range list {
		d, ok := s.readings[e.Key.Value]
		if !ok {
			report.At(e.Key, fmt.Sprintf("there is no reading %s here", e.Key.Value), source.Suggest(e.Key.Value, s.readingNames()))
			continue
		}
		if e.Value.node.IsEmpty() {
			continue
		}
		if r, ok := s.read(d, e.Value.node, report); ok {
			out[d.Name] = r
		}
	}
	return out
}

func (s *Set) readingNames() []string {
	var names []string
	for _, d := range s.Readings {
		names = append(names, d.Name)
	}
	return names
}

func (s *Set) read(d *ReadingDef, n source.Node, report *source.Report) (Reading, bool) {
	if d.Kind == units.Survey {
		r := d.ReadSurvey(n, report)
		return r, len(r.Survey) > 0
	}
	var long longReading
	if n.IsMapping() {
		n.Decode(&long, report)
	} else {
		long.Read = n.Text(report)
	}
	if long.Read.Value == "" {
		return Reading{}, false
	}
	r, err := d.Read(long.Read.Value)
	if err != nil {
		report.At(long.Read, err.Error(), "")
		return r, false
	}
	if with := long.With; !with.IsZero() && d.Kind.Numeric() {
		if _, ok := s.library.Instruments.Find(with.Value, d.Kind); !ok {
			report.At(with, fmt.Sprintf("no instrument %q reads %s", with.Value, d.Kind), source.Suggest(with.Value, s.library.Instruments.Names(d.Kind)))
		}
	}
	r.With, r.By = long.With.Value, long.By.Value
	return r, true
}
