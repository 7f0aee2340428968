package fit

import (
	"errors"
	"strings"

	"gudgeon/trade"
	"gudgeon/units"
)

// HoleClasses lists the ISO 286 classes of holes in the table: H7, P7 ...
func HoleClasses() []string { return classes(func(t *tables) *table { return &t.holes }) }

// ShaftClasses lists the ISO 286 classes of shafts in the table: h6, p6 ...
func ShaftClasses() []string { return classes(func(t *tables) *table { return &t.shafts }) }

// Classes lists the ISO 286 classes of holes and shafts in the table.
func Classes() []string { return classes(func(t *tables) *table { return &t.limits }) }

// Grades lists the ISO 286 tolerance grades in the table: IT5 ...
func Grades() []string { return classes(func(t *tables) *table { return &t.grades }) }

// InchFits lists the ANSI B4.1 fits in the table: FN2, RC4 ...
func InchFits() []string { return classes(func(t *tables) *table { return &t.inch }) }

func classes(pick func(*tables) *table) []string {
	t, err := load()
	if err != nil {
		return nil
	}
	return pick(t).names()
}

// LimitsResult is one class at one size.
type LimitsResult struct {
	Class      string
	Size       float64 // nominal, m
	Deviation  Band    // from the nominal size, m
	Low, High  float64 // limits of size, m
	Hole       bool
	Source     string
	FromMemory bool // the row was not read from a source: confirm before cutting
}

// Limits returns the limits of size of an ISO 286 class such as H7 or p6.
//
//	low = size + lower deviation; high = size + upper deviation
//
// size nominal size, limits and deviations: m. The deviations are looked up,
// not computed: the standard rounds them.
//
// Valid for sizes over 3 to 500 mm (some classes less) and the classes in
// Classes; otherwise an error that says what the table has. A size on a
// boundary belongs to the lower range. Source: each row's own, in the result;
// rows from memory say so.
func Limits(size float64, name string) (LimitsResult, error) {
	t, err := load()
	if err != nil {
		return LimitsResult{}, err
	}
	c, err := t.limits.named(name)
	if err != nil {
		return LimitsResult{}, err
	}
	return limitsOf(c, size)
}

func limitsOf(c *class, size float64) (LimitsResult, error) {
	if err := isoSizeRange.Check(size); err != nil {
		return LimitsResult{}, err
	}
	r, err := c.at(size)
	if err != nil {
		return LimitsResult{}, err
	}
	band := r.shaft
	if isHole(c.name) {
		band = r.hole
	}
	return LimitsResult{
		Class: c.name, Size: size, Deviation: band, Hole: isHole(c.name),
		Low: size + band.Lower, High: size + band.Upper, Source: r.source, FromMemory: r.memory,
	}, nil
}

// note is appended to a worked line that rests on memory.
func note(memory bool) string {
	if memory {
		return " (this row of the table is from memory: confirm it before cutting)"
	}
	return ""
}

// Steps gives the worked lines of the limits.
func (r LimitsResult) Steps() []trade.Step {
	return []trade.Step{
		{Name: "lower deviation of " + r.Class + note(r.FromMemory), Formula: r.Source, Kind: units.Length, Value: r.Deviation.Lower, Unit: "thou"},
		{Name: "upper deviation of " + r.Class, Formula: r.Source, Kind: units.Length, Value: r.Deviation.Upper, Unit: "thou"},
		{Name: "low limit", Formula: "size + lower", Kind: units.Length, Value: r.Low},
		{Name: "high limit", Formula: "size + upper", Kind: units.Length, Value: r.High},
	}
}

// ToleranceGrade returns the width of an ISO 286 tolerance grade, such as IT7,
// in m at a nominal size in m.
//
// Looked up, not computed. Valid for sizes over 3 to 500 mm and IT5 to IT11;
// otherwise an error. Source: Machine Drawing (Narayana, Kannaiah, Reddy) Table 15.1.
func ToleranceGrade(size float64, grade string) (float64, error) {
	t, err := load()
	if err != nil {
		return 0, err
	}
	c, err := t.grades.named(grade)
	if err != nil {
		return 0, err
	}
	return gradeOf(c, size)
}

func gradeOf(c *class, size float64) (float64, error) {
	if err := isoSizeRange.Check(size); err != nil {
		return 0, err
	}
	r, err := c.at(size)
	if err != nil {
		return 0, err
	}
	return r.hole.Upper, nil
}

// FitResult is a hole and a shaft together. Interference is negative clearance.
type FitResult struct {
	HoleClass, ShaftClass string  // of an ISO fit
	InchClass             string  // of an ANSI fit
	Size                  float64 // nominal, m
	Hole, Shaft           Band    // deviations, m
	LeastClearance        float64 // m
	MostClearance         float64 // m
	Source                string  // of the hole, and of the whole fit if ANSI
	ShaftSource           string  // of an ISO shaft
	FromMemory            bool    // a row was not read from a source: confirm before cutting
}

func (r *FitResult) close() {
	r.LeastClearance = r.Hole.Lower - r.Shaft.Upper
	r.MostClearance = r.Hole.Upper - r.Shaft.Lower
}

// ISOFit returns the limits and clearance of a hole and a shaft class, as H7 and p6.
//
//	least clearance = EI - es; most clearance = ES - ei
//
// Deviations EI, ES of the hole, ei, es of the shaft, clearances and size: m;
// negative clearance is interference.
//
// Valid as for Limits; otherwise an error. Source: each row's own, in the result.
func ISOFit(size float64, hole, shaft string) (FitResult, error) {
	t, err := load()
	if err != nil {
		return FitResult{}, err
	}
	h, err := t.holes.named(hole)
	if err != nil {
		return FitResult{}, err
	}
	s, err := t.shafts.named(shaft)
	if err != nil {
		return FitResult{}, err
	}
	return isoFitOf(h, s, size)
}

func isoFitOf(hole, shaft *class, size float64) (FitResult, error) {
	h, err := limitsOf(hole, size)
	if err != nil {
		return FitResult{}, err
	}
	s, err := limitsOf(shaft, size)
	if err != nil {
		return FitResult{}, err
	}
	r := FitResult{
		HoleClass: h.Class, ShaftClass: s.Class, Size: size, Hole: h.Deviation, Shaft: s.Deviation,
		Source: h.Source, ShaftSource: s.Source, FromMemory: h.FromMemory || s.FromMemory,
	}
	r.close()
	return r, nil
}

// InchFit returns the limits and clearance of an ANSI B4.1 fit, as FN2 or RC4.
//
//	least clearance = hole low - shaft high; most clearance = hole high - shaft low
//
// Size, deviations and clearances: m; negative clearance is interference.
//
// Valid for sizes over 0.71 to 9.85 in (some classes less) and the classes in
// InchFits; otherwise an error that says what the table has. A size on a
// boundary belongs to the lower range. FN fits have finer ranges than the rest.
// Source: each row's own, in the result; rows from memory say so.
func InchFit(size float64, name string) (FitResult, error) {
	t, err := load()
	if err != nil {
		return FitResult{}, err
	}
	c, err := t.inch.named(name)
	if err != nil {
		return FitResult{}, err
	}
	return inchFitOf(c, size)
}

func inchFitOf(c *class, size float64) (FitResult, error) {
	if err := inchSizeRange.Check(size); err != nil {
		return FitResult{}, err
	}
	row, err := c.at(size)
	if err != nil {
		return FitResult{}, err
	}
	r := FitResult{InchClass: c.name, Size: size, Hole: row.hole, Shaft: row.shaft, Source: row.source, FromMemory: row.memory}
	r.close()
	return r, nil
}

// Named returns the fit that a drawing's words name: "H7/p6", "FN2", "RC 4".
//
// size nominal size in m. Valid and in error as ISOFit and InchFit.
// Source: theirs.
func Named(size float64, name string) (FitResult, error) {
	name = strings.ReplaceAll(name, " ", "")
	if hole, shaft, pair := strings.Cut(name, "/"); pair {
		return ISOFit(size, hole, shaft)
	}
	if name == "" {
		return FitResult{}, errors.New("no fit is named; write it as H7/p6 or FN2")
	}
	return InchFit(size, strings.ToUpper(name))
}

// Steps gives the worked lines of the fit.
func (r FitResult) Steps() []trade.Step {
	shaftSource := r.ShaftSource
	if shaftSource == "" {
		shaftSource = r.Source
	}
	return []trade.Step{
		{Name: "lower deviation of the hole " + r.HoleClass + r.InchClass + note(r.FromMemory), Formula: r.Source, Kind: units.Length, Value: r.Hole.Lower, Unit: "thou"},
		{Name: "upper deviation of the hole", Formula: r.Source, Kind: units.Length, Value: r.Hole.Upper, Unit: "thou"},
		{Name: "lower deviation of the shaft " + r.ShaftClass + r.InchClass, Formula: shaftSource, Kind: units.Length, Value: r.Shaft.Lower, Unit: "thou"},
		{Name: "upper deviation of the shaft", Formula: shaftSource, Kind: units.Length, Value: r.Shaft.Upper, Unit: "thou"},
		{Name: "least clearance (negative: interference)", Formula: "hole low - shaft high", Kind: units.Length, Value: r.LeastClearance, Unit: "thou"},
		{Name: "most clearance (negative: interference)", Formula: "hole high - shaft low", Kind: units.Length, Value: r.MostClearance, Unit: "thou"},
	}
}
