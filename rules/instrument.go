package rules

import (
	_ "embed" // for the shipped instruments
	"fmt"
	"math"
	"sort"
	"strings"
	"sync"

	"gudgeon/rules/source"
	"gudgeon/units"
)

//go:embed instruments/instruments.yaml
var shippedInstruments string

// Instrument is what a reading is taken with.
type Instrument struct {
	Name   string
	Reads  units.Kind
	Within float64 // expanded uncertainty with k = 2, SI
	Share  float64 // the same as a share of the reading
	Basis  string
	// Special instruments fit one kind of place only, such as a fillet gauge.
	Special bool
}

// coverage is the factor k between a standard uncertainty and what a person
// calls "within" (JCGM 100, 6.2.1).
const coverage = 2

// U is the standard uncertainty of a reading x, SI.
func (i *Instrument) U(x float64) float64 {
	return math.Hypot(i.Within, i.Share*x) / coverage
}

// Instruments is a set of instruments by name.
type Instruments map[string]*Instrument

type instrumentsSource struct {
	Instruments source.Map[instrumentSource] `yaml:"instruments,required"`
}

type instrumentSource struct {
	Reads  source.Text `yaml:"reads,required"`
	Within source.Text `yaml:"within"`
	Share  source.Text `yaml:"share"`
	Basis  source.Text `yaml:"basis,required"`

	Special bool `yaml:"special"`
}

// ReadInstruments reads a file of instruments.
func ReadInstruments(f *source.File) (Instruments, error) {
	var src instrumentsSource
	if err := source.Decode(f, &src); err != nil {
		return nil, err
	}
	var report source.Report
	out := Instruments{}
	for _, e := range src.Instruments {
		out[strings.ToLower(e.Key.Value)] = readInstrument(e.Key, e.Value, &report)
	}
	return out, report.Err()
}

func readInstrument(name source.Text, src instrumentSource, report *source.Report) *Instrument {
	i := &Instrument{Name: name.Value, Basis: src.Basis.Value, Special: src.Special}
	kind, ok := units.ParseKind(src.Reads.Value)
	if !ok || !kind.Numeric() {
		report.At(src.Reads, fmt.Sprintf("%q cannot be read with an instrument", src.Reads.Value), source.Suggest(src.Reads.Value, units.KindNames()))
		return i
	}
	i.Reads = kind
	if src.Within.IsZero() && src.Share.IsZero() {
		report.At(name, "nothing says what it is good to", "add within: or share:")
	}
	i.Within = width(kind, src.Within, report)
	i.Share = width(units.Ratio, src.Share, report)
	return i
}

// width reads a half width; that of a temperature is a difference.
func width(k units.Kind, text source.Text, report *source.Report) float64 {
	if text.IsZero() {
		return 0
	}
	if k == units.Temperature {
		k = units.TemperatureDifference
	}
	m, err := units.Parse(k, text.Value, units.Unit{})
	if err == nil && m.Value <= 0 {
		err = fmt.Errorf("%q: an uncertainty is more than zero", text.Value)
	}
	if err != nil {
		report.At(text, err.Error(), "")
	}
	return m.Value
}

// UsualInstruments is what ships with the program.
var UsualInstruments = sync.OnceValue(func() Instruments {
	list, err := ReadInstruments(&source.File{Name: "instruments.yaml", Text: shippedInstruments})
	if err != nil {
		panic(err) // a mistake in this program, found by its first test
	}
	return list
})

// Find finds an instrument that reads kind k.
func (list Instruments) Find(name string, k units.Kind) (*Instrument, bool) {
	i, ok := list[strings.ToLower(name)]
	if !ok || i.Reads != k {
		return nil, false
	}
	return i, true
}

// byU lists the instruments that read kind k, the least sure at x first.
func (list Instruments) byU(k units.Kind, x float64) []*Instrument {
	var found []*Instrument
	for _, i := range list {
		if i.Reads == k {
			found = append(found, i)
		}
	}
	sort.Slice(found, func(a, b int) bool {
		ua, ub := found[a].U(x), found[b].U(x)
		if ua != ub {
			return ua > ub
		}
		return found[a].Name < found[b].Name
	})
	return found
}

// Names lists every instrument that reads kind k, by name.
func (list Instruments) Names(k units.Kind) []string {
	var names []string
	for _, i := range list.byU(k, 1) {
		names = append(names, i.Name)
	}
	sort.Strings(names)
	return names
}
