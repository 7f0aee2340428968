package rules

import (
	"cmp"
	"math"
	"slices"

	"gudgeon/units"
)

// WayOut is a change of readings that turns a rule to go and no other rule to
// the worse. It has been worked through with the rounded values.
type WayOut struct {
	Changes  []Change
	Relative float64 // the largest relative change in it, by which ways are ranked
}

// Change is one reading made another value.
type Change struct {
	Reading  *ReadingDef
	From, To float64 // SI
	Text     string  // the new value as a shop writes it
}

// most ways out worth showing for one rule.
const mostWays = 4

// WaysOut finds, for the i-th rule, the nearest changes of readings marked can
// change that turn it to go: each reading alone, and pairs where none does it
// alone. Values are rounded to the safe side, in shop fractions, and checked
// again with all rules. It is empty for a rule that is go, not needed or
// waiting.
func (r *Report) WaysOut(i int, s units.System) []WayOut {
	result := &r.Results[i]
	if result.Verdict != Stop && result.Verdict != Caution && !result.Noted {
		return nil
	}
	f := &finder{report: r, index: i, rule: result.Rule, system: s, probe: r.set.newProbe(result.Rule, r.readings)}
	free := f.free()
	var ways []WayOut
	for _, d := range free {
		ways = append(ways, f.single(d)...)
	}
	if len(ways) == 0 {
		ways = f.pairs(free)
	}
	slices.SortStableFunc(ways, func(a, b WayOut) int { return cmp.Compare(a.Relative, b.Relative) })
	return ways[:min(len(ways), mostWays)]
}

// finder looks for the ways out of one rule.
type finder struct {
	report *Report
	index  int
	rule   *Rule
	system units.System
	probe  *probe
}

// free lists the readings of the rule that are given and can be changed.
func (f *finder) free() []*ReadingDef {
	var list []*ReadingDef
	for _, name := range f.rule.Needs {
		d := f.report.set.readings[name]
		if _, given := f.report.readings[name]; given && d.CanChange && d.Kind != units.Survey {
			list = append(list, d)
		}
	}
	return list
}

// single finds the ways that change one reading.
func (f *finder) single(d *ReadingDef) []WayOut {
	from := f.report.readings[d.Name].Value
	defer f.probe.with(move{d, from})
	if !d.Kind.Numeric() {
		return f.words(d, from)
	}
	if d.Whole {
		return f.counts(d, from)
	}
	var ways []WayOut
	for _, up := range []bool{true, false} {
		end := d.reach(from, up)
		at, ok := f.probe.turn(func(share float64) bool { return f.probe.isGo(move{d, from + share*(end-from)}) })
		if !ok {
			continue
		}
		if way, ok := f.rounded([]leg{{d, from, from + at*(end-from)}}); ok {
			ways = append(ways, way)
		}
	}
	return ways
}

// words tries the other options of a choice, or the other answer.
func (f *finder) words(d *ReadingDef, from float64) []WayOut {
	var ways []WayOut
	for answer := range d.answers() {
		to := float64(answer)
		if to == from {
			continue
		}
		change := Change{Reading: d, From: from, To: to, Text: d.Show(Reading{Value: to}, f.system)}
		if f.probe.isGo(move{d, to}) && f.holds([]Change{change}) {
			ways = append(ways, WayOut{Changes: []Change{change}, Relative: 1})
		}
	}
	return ways
}

// counts tries the nearest whole numbers up and down.
func (f *finder) counts(d *ReadingDef, from float64) []WayOut {
	var ways []WayOut
	for _, step := range []float64{1, -1} {
		for to := from + step; to >= d.From && to <= d.To && math.Abs(to-from) <= 50; to += step {
			change := Change{Reading: d, From: from, To: to, Text: d.Show(Reading{Value: to}, f.system)}
			if f.probe.isGo(move{d, to}) && f.holds([]Change{change}) {
				ways = append(ways, WayOut{Changes: []Change{change}, Relative: move{d, to}.relative(from)})
				break
			}
		}
	}
	return ways
}

// leg is one reading on its way to a value at which the rule turns.
type leg struct {
	def      *ReadingDef
	from, to float64
}

// pairs finds the ways that change two readings by the same share of
// themselves.
func (f *finder) pairs(free []*ReadingDef) []WayOut {
	var ways []WayOut
	for i, a := range free {
		for _, b := range free[i+1:] {
			if a.Kind.Numeric() && b.Kind.Numeric() && !a.Whole && !b.Whole {
				ways = append(ways, f.pair(a, b)...)
			}
		}
	}
	return ways
}

func (f *finder) pair(a, b *ReadingDef) []WayOut {
	xa, xb := f.report.readings[a.Name].Value, f.report.readings[b.Name].Value
	defer f.probe.with(move{a, xa}, move{b, xb})
	var ways []WayOut
	for corner := range 4 {
		ea, eb := a.reach(xa, corner&1 == 0), b.reach(xb, corner&2 == 0)
		at, ok := f.probe.turn(func(share float64) bool {
			return f.probe.isGo(move{a, xa + share*(ea-xa)}, move{b, xb + share*(eb-xb)})
		})
		if !ok {
			continue
		}
		if way, ok := f.rounded([]leg{{a, xa, xa + at*(ea-xa)}, {b, xb, xb + at*(eb-xb)}}); ok {
			ways = append(ways, way)
		}
	}
	return ways
}

// rounded moves each leg on to a value that a shop would set, coarse ones
// first, and gives the first that holds.
func (f *finder) rounded(legs []leg) (WayOut, bool) {
	for fineness := range units.Finenesses {
		var way WayOut
		for _, l := range legs {
			to, text := units.ShopValue(l.to, displayUnit(l.def.Unit, f.system), f.report.set.coarse(l.def), l.to > l.from, l.to-l.from, fineness)
			way.Changes = append(way.Changes, Change{Reading: l.def, From: l.from, To: to, Text: text})
			way.Relative = max(way.Relative, move{l.def, to}.relative(l.from))
		}
		if f.holds(way.Changes) {
			return way, true
		}
	}
	return WayOut{}, false
}

// coarse reports whether a reading is taken to fractions of an inch, not to
// thousandths.
func (s *Set) coarse(d *ReadingDef) bool {
	i, ok := s.library.Instruments.Find(d.With, d.Kind)
	const sixtyFourth = 0.0254 / 64
	return d.Kind == units.Length && (!ok && d.Unit.Name == "inch" && d.To > 1 || ok && i.Within >= sixtyFourth)
}

func touches(rule *Rule, changes []Change) bool {
	for _, c := range changes {
		if slices.Contains(rule.Needs, c.Reading.Name) {
			return true
		}
	}
	return false
}

// holds works the whole set through with the changes: the rule must be go and
// no rule worse than it was.
func (f *finder) holds(changes []Change) bool {
	readings := make(Readings, len(f.report.readings))
	for name, r := range f.report.readings {
		readings[name] = r
	}
	for _, c := range changes {
		if c.Reading.InRange(c.To) != nil {
			return false
		}
		r := readings[c.Reading.Name]
		r.Value = c.To
		readings[c.Reading.Name] = r
	}
	after := f.report.set.Evaluate(readings)
	for i := range after.Results {
		now, before := &after.Results[i], &f.report.Results[i]
		if i == f.index && (now.Verdict != Go || now.Noted) {
			return false
		}
		if now.Verdict > max(before.Verdict, Go) || now.Noted && !before.Noted {
			return false
		}
		if i != f.index && now.Verdict == Stop && now.Rule.LifeSafety && touches(now.Rule, changes) {
			return false // no way out that still ends at a life-safety stop on the same reading
		}
	}
	return true
}
