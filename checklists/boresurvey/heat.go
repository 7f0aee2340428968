package boresurvey

import (
	"fmt"
	"slices"
	"strings"

	"gudgeon/rules"
	"gudgeon/rules/source"
	"gudgeon/trade/bore"
	"gudgeon/trade/weld"
	"gudgeon/units"
)

// HeatData is the part as the welder finds it, and how it is heated.
type HeatData struct {
	weld.HeatJob
	Grade       string // of the steel; empty when its analysis is given
	Pick        weld.Pick
	Drained     bool // the cylinder or cavity is open, drained and vented
	Electronics bool // near
	OnMachine   bool // the part is still mounted

	Volts, Amps, Travel float64 // V, A, m/s; zero when not given
	Procedure           float64 // preheat of the welding procedure, K; 0: none
	MostInterpass       float64 // K; 0: not asked

	Preheat   Temperature // zero when it is still to be read
	Interpass []Temperature
	Missing   []string

	ready bool // steel, group and thickness are known
	at    source.Text
}

// Temperature is one reading, K, with its standard uncertainty; 0: not known.
type Temperature struct{ K, U float64 }

type heatSource struct {
	Steel       source.Text        `yaml:"steel"`
	Range       source.Text        `yaml:"range"`
	Composition *compositionSource `yaml:"composition"`
	Group       source.Text        `yaml:"group"`
	Thickest    source.Text        `yaml:"thickest metal"`

	Volts  source.Text `yaml:"volts"`
	Amps   source.Text `yaml:"amps"`
	Travel source.Text `yaml:"travel speed"`

	Now           source.Text   `yaml:"metal now"`
	Preheat       source.Text   `yaml:"preheat"`
	Interpass     []source.Text `yaml:"interpass"`
	With          source.Text   `yaml:"with"`
	Within        source.Text   `yaml:"within"`
	Procedure     source.Text   `yaml:"procedure preheat"`
	MostInterpass source.Text   `yaml:"most interpass"`

	Casting     source.Text `yaml:"casting"`
	Coated      source.Text `yaml:"galvanised or plated"`
	Cylinders   source.Text `yaml:"cylinders near"`
	Drained     source.Text `yaml:"drained and vented"`
	Hoses       source.Text `yaml:"hoses near"`
	Electronics source.Text `yaml:"electronics near"`
	OnMachine   source.Text `yaml:"on the machine"`

	known rules.Instruments
}

type compositionSource struct {
	C  source.Text `yaml:"C,required"`
	Mn source.Text `yaml:"Mn,required"`
	Si source.Text `yaml:"Si"`
	Cr source.Text `yaml:"Cr"`
	Mo source.Text `yaml:"Mo"`
	V  source.Text `yaml:"V"`
	Ni source.Text `yaml:"Ni"`
	Cu source.Text `yaml:"Cu"`
	B  source.Text `yaml:"B"`
}

var (
	groups = []string{weld.CategoryA.String(), weld.CategoryB.String(), weld.CategoryC.String()}
	ranges = []string{"top", "middle"} // the top counts when nothing is written
	warmth = limits{200, 1000}         // temperature of metal, K
)

func (src *heatSource) read(report *source.Report) *HeatData {
	h := &HeatData{at: firstOf(src.Steel, src.Group, src.Thickest, src.Casting, src.Preheat)}
	src.readSteel(h, report)
	group, grouped := readWord(src.Group, groups, report)
	h.Category = weld.Category(group)
	h.Thickness = readLength(src.Thickest, limits{0.001, 1}, report)
	h.need(grouped, "group (A: stick that is not low-hydrogen; B: low-hydrogen stick or wire; C: the same on the stronger grades)")
	h.need(h.Thickness > 0, "thickest metal (where the boss is thickest)")
	h.ready = len(h.Missing) == 0
	src.readArc(h, report)
	src.readFacts(h, report)
	src.readTemperatures(h, report)
	return h
}

func (h *HeatData) need(there bool, what string) {
	if !there {
		h.Missing = append(h.Missing, "heat: "+what)
	}
}

// readSteel takes the grade's composition, or the analysis.
func (src *heatSource) readSteel(h *HeatData, report *source.Report) {
	h.Pick = weld.TopOfRange
	if i, _ := readWord(src.Range, ranges, report); i == 1 {
		h.Pick = weld.MidRange
	}
	switch {
	case src.Composition != nil && src.Steel.Value != "":
		report.At(src.Steel, "the steel is given by its grade and by its composition", "keep the composition if the part was analysed, else the grade")
	case src.Composition != nil:
		h.Steel = src.Composition.read(report)
		h.at = firstOf(h.at, src.Composition.C)
	case src.Steel.Value == "":
		h.need(false, "steel (its grade), or composition; where nobody knows it, have a chip analysed")
	default:
		h.Grade = gradeNamed(src.Steel, report)
		h.Steel, _ = weld.SteelNamed(h.Grade, h.Pick) // an unknown grade is reported already
	}
}

func gradeNamed(text source.Text, report *source.Report) string {
	i := slices.IndexFunc(weld.Steels(), func(name string) bool { return strings.EqualFold(name, text.Value) })
	if i < 0 {
		report.At(text, "this grade is not in the list: give the composition instead, or have a chip analysed", source.Suggest(text.Value, weld.Steels()))
		return ""
	}
	return weld.Steels()[i]
}

func (src *compositionSource) read(report *source.Report) weld.Composition {
	share := func(text source.Text, most float64) float64 {
		return readQuantity(units.Ratio, text, units.Unit{}, limits{0, most}, report).Value
	}
	return weld.Composition{C: share(src.C, 0.02), Mn: share(src.Mn, 0.1), Si: share(src.Si, 0.1), Cr: share(src.Cr, 0.1), Mo: share(src.Mo, 0.1),
		V: share(src.V, 0.1), Ni: share(src.Ni, 0.1), Cu: share(src.Cu, 0.1), B: share(src.B, 0.0002)}
}

// readArc reads what the heat input is made of: all of it, or none.
func (src *heatSource) readArc(h *HeatData, report *source.Report) {
	h.Volts = readQuantity(units.Voltage, src.Volts, units.Unit{}, limits{5, 100}, report).Value
	h.Amps = readQuantity(units.Current, src.Amps, units.Unit{}, limits{5, 2000}, report).Value
	h.Travel = readQuantity(units.Speed, src.Travel, units.Unit{}, limits{1e-4, 0.2}, report).Value
	if h.Volts == 0 && h.Amps == 0 && h.Travel == 0 {
		return
	}
	h.need(h.Volts > 0, "volts")
	h.need(h.Amps > 0, "amps")
	h.need(h.Travel > 0, "travel speed (of the bead)")
}

// readFacts reads what is yes or no. What nobody has answered is not a no.
func (src *heatSource) readFacts(h *HeatData, report *source.Report) {
	var open []string
	for _, q := range []struct {
		name string
		text source.Text
		to   *bool
	}{{"casting", src.Casting, &h.Cast}, {"galvanised or plated", src.Coated, &h.Coated}, {"cylinders near", src.Cylinders, &h.Cavity},
		{"hoses near", src.Hoses, &h.Hoses}, {"electronics near", src.Electronics, &h.Electronics}, {"on the machine", src.OnMachine, &h.OnMachine}} {
		yes, known := readYesNo(q.text, report)
		*q.to = yes
		if !known {
			open = append(open, q.name)
		}
	}
	h.need(len(open) == 0, "yes or no to "+strings.Join(open, ", "))
	h.Drained, _ = readYesNo(src.Drained, report)
}

func (src *heatSource) readTemperatures(h *HeatData, report *source.Report) {
	u := src.thermometer(report)
	read := func(text source.Text) Temperature {
		m := readQuantity(units.Temperature, text, units.Unit{}, warmth, report)
		if m.U > 0 {
			return Temperature{m.Value, m.U / bore.Coverage}
		}
		return Temperature{m.Value, u}
	}
	h.Metal = read(src.Now).K
	h.Procedure, h.MostInterpass = read(src.Procedure).K, read(src.MostInterpass).K
	if h.MostInterpass > 0 && h.Procedure > h.MostInterpass {
		report.At(src.MostInterpass, "the most that is allowed between layers is less than the procedure's preheat", "")
	}
	h.Preheat = read(src.Preheat)
	h.need(h.Preheat.K > 0, "preheat, read at the coldest place before the first bead")
	known := h.Preheat.K == 0 || h.Preheat.U > 0
	for _, text := range src.Interpass {
		t := read(text)
		h.Interpass = append(h.Interpass, t)
		known = known && t.U > 0
	}
	h.need(known, "with (what the temperatures were read with), or within")
}

// thermometer is the standard uncertainty of the instrument, K; 0 when none is
// named. A figure counts before the instrument's.
func (src *heatSource) thermometer(report *source.Report) float64 {
	u := 0.0
	if src.With.Value != "" {
		i, ok := src.known.Find(src.With.Value, units.Temperature)
		if !ok {
			report.At(src.With, fmt.Sprintf("%q is not a known instrument for a temperature", src.With.Value),
				source.Suggest(src.With.Value, src.known.Names(units.Temperature)))
			return 0
		}
		u = i.U(0)
	}
	if src.Within.Value != "" {
		u = readQuantity(units.TemperatureDifference, src.Within, units.Unit{}, limits{0, 100}, report).Value / bore.Coverage
	}
	return u
}
