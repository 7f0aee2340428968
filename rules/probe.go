package rules

import "math"

// probe asks one rule again and again with other readings.
type probe struct {
	rule   *Rule
	report *Report
}

// only is the part of a set that one rule needs, with the rule alone.
func (s *Set) only(rule *Rule) *Set {
	part := *s
	part.Rules, part.Values, part.leaves = []*Rule{rule}, rule.values, rule.leaves
	part.columns = nil
	part.buildColumns()
	return &part
}

func (s *Set) newProbe(rule *Rule, readings Readings) *probe {
	own := make(Readings, len(readings))
	for name, r := range readings {
		own[name] = r
	}
	return &probe{rule: rule, report: s.only(rule).newReport(own)}
}

// with gives the rule's result when some readings are moved.
func (p *probe) with(moves ...move) Result {
	for _, m := range moves {
		r := p.report.readings[m.def.Name]
		r.Value = m.to
		p.report.readings[m.def.Name] = r
		p.report.frame.x[m.def.slot] = m.to
		if m.def.InRange(m.to) != nil {
			p.report.frame.x[m.def.slot] = math.NaN()
		}
	}
	p.report.work()
	return p.report.rule(p.rule)
}

// isGo reports whether the rule is go when some readings are moved.
func (p *probe) isGo(moves ...move) bool {
	result := p.with(moves...)
	return result.Verdict == Go && !result.Noted
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
// present value, even further out, since a rule may turn more than once.
func scanPoints() []float64 {
	const fine, even = 48, 64
	var points []float64
	for i := range fine {
		points = append(points, math.Pow(10, -5+4*float64(i)/fine))
	}
	for i := range even + 1 {
		points = append(points, 0.1+0.9*float64(i)/even)
	}
	return points
}

// turn finds the first share of the way, from 0 to 1, at which try becomes
// true, to within the last bits of a float64. It gives false when it never does.
func turn(try func(share float64) bool) (float64, bool) {
	before := 0.0
	for _, share := range scanPoints() {
		if try(share) {
			return bisect(before, share, try), true
		}
		before = share
	}
	return 0, false
}

// bisect narrows down the turn between a share where try is false and one where
// it is true, and gives the true side.
func bisect(no, yes float64, try func(float64) bool) float64 {
	for range 48 {
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
