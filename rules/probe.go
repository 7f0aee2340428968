package rules

import (
	"maps"
	"math"

	"gudgeon/units"
)

// probe asks one rule again and again with other readings. Only what hangs on
// the readings that move is worked out anew; the part of a margin's uncertainty
// that comes from surveys is kept as it was at the start.
type probe struct {
	rule    *Rule
	report  *Report
	surveys []uncertainty // by leaf
}

// only is the part of a set that one rule needs, with the rule alone.
func (s *Set) only(rule *Rule) *Set {
	part := *s
	part.Rules, part.Values, part.leaves = []*Rule{rule}, rule.values, rule.leaves
	part.buildColumns()
	return &part
}

func (s *Set) newProbe(rule *Rule, readings Readings) *probe {
	p := &probe{rule: rule, report: s.only(rule).newReport(maps.Clone(readings)), surveys: make([]uncertainty, s.leafCount)}
	if p.report.readings == nil {
		p.report.readings = Readings{}
	}
	p.report.evaluateValues()
	p.report.evaluateLeaves()
	p.report.propagateSurveys()
	for i := range p.report.states {
		p.surveys[i] = p.report.states[i].uncertainty
	}
	p.report.propagateReadings()
	return p
}

// with gives the rule's result when some readings are moved.
func (p *probe) with(moves ...move) Result {
	p.move(moves)
	p.report.propagateReadings()
	return p.report.rule(p.rule)
}

// isGo reports whether the rule is go when some readings are moved. Most of the
// way it is not, and that is known before the uncertainty is.
func (p *probe) isGo(moves ...move) bool {
	p.move(moves)
	if result := p.report.rule(p.rule); result.Verdict != Go || result.Noted {
		return false
	}
	p.report.propagateReadings()
	result := p.report.rule(p.rule)
	return result.Verdict == Go && !result.Noted
}

func (p *probe) move(moves []move) {
	for _, m := range moves {
		r := p.report.readings[m.def.Name]
		r.Value = m.to
		p.report.readings[m.def.Name] = r
		p.report.frame.x[m.def.slot] = m.to
		if m.def.InRange(m.to) != nil {
			p.report.frame.x[m.def.slot] = math.NaN()
		}
		p.rework(m.def)
	}
	for _, l := range p.rule.leaves {
		p.report.states[l.index].uncertainty = p.surveys[l.index]
	}
}

func (p *probe) rework(d *ReadingDef) {
	for i := range p.report.set.columns {
		c := &p.report.set.columns[i]
		if c.def != d {
			continue
		}
		for _, v := range c.values {
			p.report.evaluateValue(v)
		}
		for _, l := range c.leaves {
			l.work(p.report.frame, &p.report.states[l.index])
		}
	}
}

// move is one reading at another value.
type move struct {
	def *ReadingDef
	to  float64
}

// relative is how far a move goes, against the size of the reading. A reading
// of about zero is measured against a thousandth of its range.
func (m move) relative(from float64) float64 {
	size := math.Abs(from)
	if size < 1e-12 {
		size = math.Min(1, math.Abs(m.def.To-m.def.From)) / 1000
	}
	return math.Abs(m.to-from) / size
}

// reach is how far a reading may be moved in one direction.
func (d *ReadingDef) reach(from float64, up bool) float64 {
	end := d.From
	if up {
		end = d.To
	}
	if math.IsInf(end, 0) {
		end = from + math.Copysign(10*math.Max(math.Abs(from), 1e-3), end)
	}
	return end
}

// scanPoints are the shares of the way at which a rule is tried: fine near the
// present value, even further out, since a rule may turn more than once. A rule
// over a survey costs a thousand times what another does, so it gets fewer.
func (p *probe) scanPoints() []float64 {
	fine, even := 48, 64
	if p.overSurvey() {
		fine, even = 10, 12
	}
	points := make([]float64, 0, fine+even+1)
	for i := range fine {
		points = append(points, math.Pow(10, -5+4*float64(i)/float64(fine)))
	}
	for i := range even + 1 {
		points = append(points, 0.1+0.9*float64(i)/float64(even))
	}
	return points
}

func (p *probe) overSurvey() bool {
	for _, name := range p.rule.Needs {
		if p.report.set.readings[name].Kind == units.Survey {
			return true
		}
	}
	return false
}

// turn finds the first share of the way, from 0 to 1, at which try becomes
// true, as closely as bisect does. It gives false when it never does.
func (p *probe) turn(try func(share float64) bool) (float64, bool) {
	before := 0.0
	for _, share := range p.scanPoints() {
		if try(share) {
			return p.bisect(before, share, try), true
		}
		before = share
	}
	return 0, false
}

// bisect narrows down the turn between a share where try is false and one where
// it is true, and gives the true side: to the last bits of a float64, or to a
// millionth of the way for a rule over a survey.
func (p *probe) bisect(no, yes float64, try func(float64) bool) float64 {
	rounds := 48
	if p.overSurvey() {
		rounds = 14
	}
	for range rounds {
		middle := (no + yes) / 2
		if middle == no || middle == yes {
			break
		}
		if try(middle) {
			yes = middle
		} else {
			no = middle
		}
	}
	return yes
}
