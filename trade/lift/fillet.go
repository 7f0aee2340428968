package lift

import (
	"cmp"
	"errors"
	"math"

	"gudgeon/trade"
	"gudgeon/units"
)

// Basis is the rule that says what stress a weld's throat may bear.
type Basis int

// The bases, as a share of the electrode's strength Exx.
const (
	WeldBTHA    Basis = iota // ASME BTH-1 category A: 0.60/(1.20·2.00)
	WeldBTHB                 // ASME BTH-1 category B: 0.60/(1.20·3.00)
	Weld030                  // 0.30: the welding code, and AISC 360 ASD
	WeldLRFD                 // 0.75·0.60: AISC 360 LRFD, for factored loads only
	WeldNominal              // 0.60: AISC 360 nominal strength
)

// bases are those offered to rule sheets: the ones for loads as they are.
var bases = []string{"BTH-1 A", "BTH-1 B", "0.30"}

var shares = [...]float64{WeldBTHA: 0.6 / 2.4, WeldBTHB: 0.6 / 3.6, Weld030: 0.3, WeldLRFD: 0.45, WeldNominal: 0.6}

var (
	electrodes = []electrode{{"E60", 60}, {"E70", 70}, {"E80", 80}, {"E90", 90}, {"E100", 100}, {"E110", 110}}

	electrodeRange = trade.Between("electrode", 400*megaPa, 900*megaPa, units.Pressure, "")
	legSizeRange   = trade.Between("leg size", 2e-3, 0.1, units.Length, "")
	weldRange      = trade.Between("weld", 5e-3, 20, units.Length, "")
	plateRange     = trade.Between("plate", 1e-3, 1, units.Length, "")
)

// electrode is a class of electrode.
type electrode struct {
	name     string
	strength float64 // ksi
}

const ksi = 1000 * pound * trade.StandardGravity / (inch * inch)

// weldThroat is the throat of a fillet with equal legs, per leg.
const weldThroat = math.Sqrt2 / 2

func electrodeNames() []string {
	return trade.Names(electrodes[:], func(r electrode) string { return r.name })
}

// ElectrodeStrength is the least tensile strength of an electrode class in Pa,
// the class number in ksi: E60, E70, E80, E90, E100 or E110. Any other name is an
// error. Source: AWS classification numbering.
func ElectrodeStrength(class string) (float64, error) {
	for _, e := range electrodes {
		if e.name == class {
			return e.strength * ksi, nil
		}
	}
	return 0, errors.New("no strength is known for electrode " + class)
}

// WeldStress is the stress in Pa that the throat of a fillet weld may bear,
// 0.60·Exx/(1.20·Nd) by ASME BTH-1 (from memory) or 0.30·Exx by the welding code
// (as used in Shigley 9th ed. ex. 9-2). No increase is taken for a weld that lies across
// the load, though AISC 360 J2.4 would allow one.
//
// electrode: strength Exx, Pa, 400 to 900 MPa. Out of range, or an unknown
// basis, is an error. Sources: as named above.
func WeldStress(electrode float64, basis Basis) (float64, error) {
	if err := electrodeRange.CheckAs("electrode strength", electrode); err != nil {
		return 0, err
	}
	if basis < 0 || int(basis) >= len(shares) {
		return 0, errors.New("not a basis for weld strength")
	}
	return shares[basis] * electrode, nil
}

// FilletStrength is what a unit length of fillet weld may bear in N/m,
// leg/√2·(weld stress).
//
// leg: m, 2 to 100 mm; electrode: Pa, 400 to 900 MPa. Out of range is an error.
// Sources: as WeldStress.
func FilletStrength(leg, electrode float64, basis Basis) (float64, error) {
	stress, err := WeldStress(electrode, basis)
	return weldThroat * leg * stress, cmp.Or(err, legSizeRange.CheckAs("weld leg", leg))
}

// FilletLeastLeg is the least leg in m that a fillet weld may have for the
// thinner of the parts joined: to 1/4 in 1/8, to 1/2 in 3/16, to 3/4 in 1/4,
// over 3/4 in 5/16; each limit belongs to the smaller leg.
//
// thinner: m, 1 mm to 1 m. Out of range is an error. Source: AISC 360-05/-10
// Table J2.4, single-pass welds.
func FilletLeastLeg(thinner float64) (float64, error) {
	if err := plateRange.CheckAs("thinner part", thinner); err != nil {
		return 0, err
	}
	switch {
	case thinner <= inch/4+touch:
		return inch / 8, nil
	case thinner <= inch/2+touch:
		return inch * 3 / 16, nil
	case thinner <= inch*3/4+touch:
		return inch / 4, nil
	}
	return inch * 5 / 16, nil
}

// FilletMostLeg is the greatest leg in m along the edge of a plate: under 1/4 in
// the plate's thickness, from 1/4 in its thickness less 1/16 in, so that the
// edge is not melted away unseen.
//
// edge: thickness, m, 1 mm to 1 m. Out of range is an error. Source: AISC 360
// J2.2b.
func FilletMostLeg(edge float64) (float64, error) {
	if err := plateRange.CheckAs("thickness at the edge", edge); err != nil {
		return 0, err
	}
	if edge < inch/4-touch {
		return edge, nil
	}
	return edge - inch/16, nil
}

// Fillet is one or more straight runs of fillet weld, loaded through their
// common centre.
type Fillet struct {
	Load      float64 // kg, 0.1 to 500 000
	Leg       float64 // m, 2 to 100 mm
	Length    float64 // of one run, m, 5 mm to 20 m
	Runs      float64 // how many such runs share the load, 1 to 20, whole
	EndLoaded bool    // the load comes in at the end of the runs and flows along them
	Electrode float64 // strength, Pa, 400 to 900 MPa
	Basis     Basis
}

// FilletResult is what the runs may bear.
type FilletResult struct {
	In              Fillet
	EffectiveLeg    float64 // m
	Beta            float64 // reduction of length for a long end-loaded run, a ratio
	EffectiveLength float64 // of one run, m
	Stress          float64 // allowed on the throat, Pa
	Capacity        float64 // of all runs, kg
	Use             float64 // load/Capacity, a ratio
}

var (
	runsRange = trade.Between("runs", 1, 20, units.Number, "")
	errRuns   = errors.New("count whole runs of weld")
)

// CheckFillet works straight fillet welds loaded through their centre:
// capacity = runs·leg'/√2·β·length·(weld stress).
//
// A run shorter than 4 legs counts with leg' = length/4. An end-loaded run
// longer than 100 legs counts with β = 1.2 − 0.002·length/leg, and longer than
// 300 legs as 180 legs. Part of a run, or anything out of range, is an error.
// The base metal beside the weld is not checked. Sources: AISC 360 J2.2b; weld
// stress as WeldStress.
func CheckFillet(in Fillet) (FilletResult, error) {
	stress, err := WeldStress(in.Electrode, in.Basis)
	err = cmp.Or(err, loadRange.CheckAs("load on the weld", in.Load), legSizeRange.CheckAs("weld leg", in.Leg),
		weldRange.CheckAs("length of a run", in.Length), runsRange.CheckAs("number of runs", in.Runs))
	if err != nil {
		return FilletResult{}, err
	}
	if in.Runs != math.Trunc(in.Runs) {
		return FilletResult{}, errRuns
	}
	r := FilletResult{In: in, Beta: 1, EffectiveLeg: min(in.Leg, in.Length/4), Stress: stress}
	if in.EndLoaded {
		r.Beta = longWeld(in.Length / in.Leg)
	}
	r.EffectiveLength = r.Beta * in.Length
	force := in.Runs * weldThroat * r.EffectiveLeg * r.EffectiveLength * stress
	r.Capacity = force / trade.StandardGravity
	r.Use = in.Load / r.Capacity
	return r, nil
}

// longWeld is β for a run so many legs long.
func longWeld(legs float64) float64 {
	switch {
	case legs <= 100:
		return 1
	case legs <= 300:
		return 1.2 - 0.002*legs
	}
	return 180 / legs
}

// Steps gives the lines of the work.
func (r FilletResult) Steps() []trade.Step {
	return []trade.Step{
		{Name: "effective leg", Formula: "min(leg, length/4)", Kind: units.Length, Value: r.EffectiveLeg, Unit: "inch"},
		{Name: "long-weld factor", Formula: "β = 1.2 − 0.002·length/leg, at most 1", Kind: units.Number, Value: r.Beta},
		{Name: "effective length of a run", Formula: "β·length", Kind: units.Length, Value: r.EffectiveLength, Unit: "inch"},
		{Name: "allowed stress on the throat", Formula: "share of Exx", Kind: units.Pressure, Value: r.Stress, Unit: "ksi"},
		loadStep("capacity", "runs·leg'/√2·β·length·stress", r.Capacity),
		{Name: "use", Formula: "load/capacity", Kind: units.Ratio, Value: r.Use, Unit: "percent"},
	}
}
