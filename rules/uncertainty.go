package rules

import (
	"maps"
	"math"

	"gudgeon/trade"
	"gudgeon/units"
)

// uncertainty is how far a margin may be off.
type uncertainty struct {
	variance float64 // of the margin, SI squared
	bend     float64 // by how much the margin's mean is shifted by its curvature, SI
	top      *ReadingDef
	topPart  float64 // the part of the variance that the top reading makes, SI squared
}

// U is the expanded uncertainty of the margin, k = 2.
func (u *uncertainty) U() float64 { return coverage * math.Sqrt(u.variance) }

// bent is the share of a margin's standard uncertainty above which its
// curvature makes the first-order figure too rough to be left unmentioned.
// A kink, such as that of a least or an absolute value, moves the standard
// deviation most for its bend: by a tenth or so where this begins to speak.
const bent = 0.1

// nonLinear reports whether first-order propagation is too rough here.
func (u *uncertainty) nonLinear() bool {
	return math.Abs(u.bend) > bent*math.Sqrt(u.variance) && u.variance > 0
}

// column is one reading and all that hangs on it.
type column struct {
	def    *ReadingDef
	values []*Value // in order of evaluation
	leaves []*leaf

	// the part of it that some margin hangs on
	toMargins []*Value
	margins   []*leaf
}

// buildColumns finds, for every reading that anything hangs on, what must be
// worked out again when it changes.
func (s *Set) buildColumns() {
	all := map[*ReadingDef]*column{}
	for _, d := range s.Readings {
		all[d] = &column{def: d}
	}
	needed := s.spreadLeaves(all)
	for _, v := range s.Values {
		for d := range s.dependenciesOf(v.expr.root).readings {
			c := all[d]
			c.values = append(c.values, v)
			if needed[c][v] {
				c.toMargins = append(c.toMargins, v)
			}
		}
	}
	s.columns = nil
	for _, d := range s.Readings {
		if c := all[d]; len(c.leaves)+len(c.values) > 0 {
			s.keepColumn(c)
		}
	}
}

// spreadLeaves puts every leaf into the columns of its readings, and gives the
// values that each column's margins are made of.
func (s *Set) spreadLeaves(all map[*ReadingDef]*column) map[*column]map[*Value]bool {
	needed := map[*column]map[*Value]bool{}
	for _, l := range s.leaves {
		deps := s.dependenciesOf(l.n)
		for d := range deps.readings {
			c := all[d]
			c.leaves = append(c.leaves, l)
			if !l.hasMargin() {
				continue
			}
			c.margins = append(c.margins, l)
			if needed[c] == nil {
				needed[c] = map[*Value]bool{}
			}
			maps.Copy(needed[c], deps.values)
		}
	}
	return needed
}

func (s *Set) keepColumn(c *column) {
	width := 0
	for _, v := range c.toMargins {
		width += v.width()
	}
	s.columns = append(s.columns, *c)
	s.savedWidth = max(s.savedWidth, width)
	s.leavesWidth = max(s.leavesWidth, len(c.margins))
}

func (s *Set) dependenciesOf(n *node) *dependencies {
	deps := &dependencies{set: s, readings: map[*ReadingDef]bool{}, values: map[*Value]bool{}}
	deps.of(n)
	return deps
}

// propagate finds the uncertainty of every margin by the law of propagation of
// uncertainty to first order, each sensitivity taken as the central difference
// over one standard uncertainty (JCGM 100, 5.1.2 and the note to 5.1.3).
// Readings count as independent: an error that two of them share, such as that
// of one micrometer, is not seen.
func (r *Report) propagate() {
	r.propagateSurveys()
	r.propagateReadings()
}

func (r *Report) propagateReadings() {
	for i := range r.set.columns {
		c := &r.set.columns[i]
		if c.def.Kind == units.Survey || !r.hasMargins(c) {
			continue
		}
		if u := r.standardU(c.def, r.readings[c.def.Name]); u > 0 {
			r.propagateReading(c, u)
		}
	}
}

func (r *Report) propagateSurveys() {
	for i := range r.set.columns {
		c := &r.set.columns[i]
		if c.def.Kind == units.Survey && r.hasMargins(c) {
			r.propagateSurvey(c, r.readings[c.def.Name])
		}
	}
}

// hasMargins reports whether a reading is known and some known margin hangs on
// it: without one there is nothing to add an uncertainty to.
func (r *Report) hasMargins(c *column) bool {
	if x := r.frame.x[c.def.slot]; x != x {
		return false
	}
	for _, l := range c.margins {
		if m := r.states[l.index].margin; m == m {
			return true
		}
	}
	return false
}

// standardU is a reading's standard uncertainty: the one typed with it, or that
// of the instrument it was taken with, or of the one that is usual for it.
func (r *Report) standardU(d *ReadingDef, reading Reading) float64 {
	if reading.U > 0 {
		return reading.U
	}
	if !d.Kind.Numeric() {
		return 0
	}
	return r.instrumentU(d, reading, d.Kind, reading.Value)
}

// pointU is the standard uncertainty of one point of a survey.
func (r *Report) pointU(d *ReadingDef, reading Reading) float64 {
	return r.instrumentU(d, reading, units.Length, 0)
}

func (r *Report) instrumentU(d *ReadingDef, reading Reading, k units.Kind, x float64) float64 {
	if i, ok := r.set.library.Instruments.Find(r.with(d, reading), k); ok {
		return i.U(x)
	}
	return 0
}

// with is what a reading was taken with: the instrument named with it, or the
// one that the answer to another question tells of, or the usual one.
func (r *Report) with(d *ReadingDef, reading Reading) string {
	if reading.With != "" {
		return reading.With
	}
	for _, w := range d.withWhen {
		if answer, ok := r.readings[w.question.Name]; ok && w.instruments[answer.Value] != "" {
			return w.instruments[answer.Value]
		}
	}
	return d.With
}

// shift is what a change of one reading does to the leaves that hang on it.
type shift struct {
	up, down []float64 // margins of the column's leaves
}

func (r *Report) propagateReading(c *column, u float64) {
	f, slot := r.frame, c.def.slot
	x := f.x[slot]
	r.save(c)
	moved := func(by float64, into []float64) {
		f.x[slot] = x + by
		r.rework(c, into)
	}
	r.add(c, u, moved)
	f.x[slot] = x
	r.restore(c)
}

func (r *Report) propagateSurvey(c *column, reading Reading) {
	i := r.set.surveys[c.def.slot]
	points := append(trade.Survey(nil), reading.Survey...)
	r.save(c)
	r.frame.surveys[i] = points
	for p := range points {
		u := points[p].U
		if u == 0 {
			u = r.pointU(c.def, reading)
		}
		if u == 0 {
			continue
		}
		x := points[p].Read
		r.add(c, u, func(by float64, into []float64) {
			points[p].Read = x + by
			r.rework(c, into)
		})
		points[p].Read = x
	}
	r.frame.surveys[i] = reading.Survey
	r.restore(c)
}

// add moves a reading up and down by its standard uncertainty and adds what
// that does to each margin. Where one side is refused by a formula, the step is
// halved; where it still is, the other side alone gives the slope.
func (r *Report) add(c *column, u float64, moved func(by float64, into []float64)) {
	up, down := r.shift.up[:len(c.margins)], r.shift.down[:len(c.margins)]
	h := u
	for range 4 {
		moved(h, up)
		moved(-h, down)
		if r.bothKnown(c, up, down) {
			break
		}
		h /= 2
	}
	for i, l := range c.margins {
		state := &r.states[l.index]
		if m := state.margin; m == m {
			state.add(c.def, slope(m, up[i], down[i])*u/h, curve(m, up[i], down[i])*u/h*u/h)
		}
	}
}

func (r *Report) bothKnown(c *column, up, down []float64) bool {
	for i, l := range c.margins {
		if m := r.states[l.index].margin; m == m && (up[i] != up[i] || down[i] != down[i]) {
			return false
		}
	}
	return true
}

// slope is the change of a margin for one step.
func slope(m, up, down float64) float64 {
	switch {
	case up == up && down == down:
		return (up - down) / 2
	case up == up:
		return up - m
	case down == down:
		return m - down
	}
	return 0
}

// curve is the shift of a margin's mean for one step: half its second difference.
func curve(m, up, down float64) float64 {
	if up != up || down != down {
		return 0
	}
	return (up + down - 2*m) / 2
}

func (u *uncertainty) add(d *ReadingDef, contribution, bend float64) {
	part := contribution * contribution
	u.variance += part
	u.bend += bend
	if part > u.topPart {
		u.top, u.topPart = d, part
	}
}

// rework evaluates what hangs on a reading and gives the margins.
func (r *Report) rework(c *column, margins []float64) {
	for _, v := range c.toMargins {
		r.frame.work(v)
	}
	for i, l := range c.margins {
		margins[i] = l.large(r.frame) - l.small(r.frame)
	}
	r.frame.err = nil
}

// save keeps the values that hang on a reading; restore puts them back.
func (r *Report) save(c *column) {
	at := 0
	for _, v := range c.toMargins {
		at += copy(r.saved[at:], r.frame.x[v.slot:v.slot+v.width()])
	}
}

func (r *Report) restore(c *column) {
	at := 0
	for _, v := range c.toMargins {
		at += copy(r.frame.x[v.slot:v.slot+v.width()], r.saved[at:])
	}
}
