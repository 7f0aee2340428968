package bore

import (
	"fmt"
	"math"

	"gudgeon/units"
)

// WarningCode says what a survey is weak in.
type WarningCode uint8

// The warnings of a survey. Value's meaning is given with each.
const (
	DiametersOnly WarningCode = iota // no centre can be found
	OneStation                       // no tilt can be found
	PartialArc                       // Value: widest gap, rad
	FewReadings                      // Value: how many
	NoUncertainty                    // no reading has one: the scatter is used instead
	BentAxis                         // Value: bow, m
	SizesDisagree                    // Value: swept less measured diameter, m
	Extrapolated                     // Value: farthest from a station to a face, m
	PoorRepeats                      // Value: widest spread, m
)

// Warning is one weakness of a survey, at a station where that applies.
type Warning struct {
	Code  WarningCode
	Z     float64 // m
	Value float64 // rad, m or how many, as the code says
	Oval  float64 // PartialArc: ratio of the centre's shift to the ovality
}

// Text says the warning and what to do about it.
func (w Warning) Text(sys units.System) string {
	length := func(x float64) string { return units.Show(x, units.Length, sys, units.Nearest) }
	at := "At " + length(w.Z) + ": "
	switch w.Code {
	case DiametersOnly:
		return "Diameters alone cannot find a centre: they give size and ovality. Sweep the bore with an indicator on the bar."
	case OneStation:
		return "One station gives no tilt. Sweep near both faces, and in the middle."
	case PartialArc:
		return at + fmt.Sprintf("nothing was read over %.0f° of the turn. If the bore is oval there, the centre may be off by up to %.1f times the ovality. Read the rest.",
			w.Value*180/math.Pi, w.Oval)
	case FewReadings:
		return at + fmt.Sprintf("only %.0f places were read. Take eight or more, evenly round.", w.Value)
	case NoUncertainty:
		return "No reading says how good it is, so the scatter about the circle is used. Name the indicator, or read some places twice."
	case BentAxis:
		return at + "the centre is " + length(w.Value) + " off the line through the others, more than its uncertainty. The bore is bent or stepped, or the bar moved. Read this station again."
	case SizesDisagree:
		return at + "swept and measured diameter differ by " + length(w.Value) + ". Check the set radius."
	case Extrapolated:
		return "A face is " + length(w.Value) + " from the nearest station. What lies between is a guess along the axis. Read nearer to the face."
	case PoorRepeats:
		return at + "readings at one place differ by " + length(w.Value) + ", more than the instrument should. Look for dirt, a loose holder or play in the bar."
	}
	return ""
}

// Text names the reading and says what to do about it.
func (o Outlier) Text(sys units.System) string {
	side := "outside"
	if o.Off < 0 {
		side = "inside"
	}
	show := func(x float64) string { return units.Show(x, units.Length, sys, units.Nearest) }
	return fmt.Sprintf("Reading %d, at %s and %s, is %s %s the circle of the others. Clean the spot and read it again; it may be a gouge, then keep it.",
		o.Index+1, show(o.Station), ClockWords(o.Clock), show(math.Abs(o.Off)), side)
}

func (s *Surveyed) warn() {
	add := func(w Warning) { s.Warnings = append(s.Warnings, w) }
	swept, unknown := 0, true
	first, last := math.Inf(1), math.Inf(-1)
	for i := range s.Stations {
		st := &s.Stations[i]
		if !st.Swept {
			continue
		}
		swept++
		first, last = min(first, st.Z), max(last, st.Z)
		for _, r := range st.Readings {
			unknown = unknown && r.U == 0
		}
		st.warn(add)
	}
	switch swept {
	case 0:
		add(Warning{Code: DiametersOnly})
		return
	case 1:
		add(Warning{Code: OneStation})
	}
	if unknown {
		add(Warning{Code: NoUncertainty})
	}
	if a := s.Axis; a != nil && len(a.centres) > 2 && a.Widened > 1 && a.Bow > Coverage*a.UBow {
		add(Warning{Code: BentAxis, Z: a.BowZ, Value: a.Bow})
	}
	if far := max(first, s.Length-last); far > max(s.Length/4, 6*mm) {
		add(Warning{Code: Extrapolated, Value: far})
	}
	if w := s.Repeats.Widest; w.N > 1 && w.Spread > 6*max(w.U, outlierLeast) {
		add(Warning{Code: PoorRepeats, Z: s.Repeats.Z, Value: w.Spread})
	}
}

func (st *Station) warn(add func(Warning)) {
	n := st.Circle.DoF + 3
	if st.Arc.Gap > 2*math.Pi/3+sameClock {
		add(Warning{Code: PartialArc, Z: st.Z, Value: st.Arc.Gap, Oval: st.Arc.Oval})
	}
	if n < 8 {
		add(Warning{Code: FewReadings, Z: st.Z, Value: float64(n)})
	}
	if st.Size.N == 0 {
		return
	}
	gap := st.Circle.Diameter() - st.Size.Mean
	u := math.Hypot(st.Circle.UDiameter(), st.Size.U)
	if math.Abs(gap) > Coverage*max(u, outlierLeast) {
		add(Warning{Code: SizesDisagree, Z: st.Z, Value: gap})
	}
}
