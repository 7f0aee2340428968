package rules

import (
	"strings"

	"gudgeon/units"
)

// Needed says what the one missing reading of a waiting rule would have to be:
// "go if wall is at least 0.41 in". It is empty when more than one is missing,
// or the missing one is not a quantity with a range.
func (r *Report) Needed(i int, s units.System) string {
	result := &r.Results[i]
	if result.Verdict != Waiting || len(result.Missing) != 1 {
		return ""
	}
	d := r.set.readings[result.Missing[0]]
	switch {
	case d.Kind == units.Choice || d.Kind == units.YesNo:
		return r.neededWord(result.Rule, d, s)
	case !d.Kind.Numeric() || d.From < -1e300 || d.To > 1e300:
		return ""
	}
	return r.neededRange(result.Rule, d, s)
}

func (r *Report) neededWord(rule *Rule, d *ReadingDef, s units.System) string {
	p := r.set.newProbe(rule, r.readings)
	options := d.Options
	if d.Kind == units.YesNo {
		options = []string{"no", "yes"}
	}
	var good []string
	for i, o := range options {
		if p.isGo(move{d, float64(i)}) {
			good = append(good, o)
		}
	}
	switch len(good) {
	case 0, len(options):
		return ""
	}
	return r.words.phrasef("go if %s is %s", d.Name, strings.Join(r.words.answers(d, good), r.words.phrase(" or ")))
}

// span is a stretch of a reading's range in which a rule is go.
type span struct{ from, to float64 }

func (r *Report) neededRange(rule *Rule, d *ReadingDef, s units.System) string {
	spans, known := r.spans(rule, d)
	if !known || len(spans) > 3 {
		return ""
	}
	u := displayUnit(d.Unit, s)
	if len(spans) == 0 {
		return r.words.phrasef("no %s from %s to %s makes this go", d.Name, units.ShowIn(d.From, u, units.Nearest), units.ShowIn(d.To, u, units.Nearest))
	}
	var parts []string
	for _, p := range spans {
		low, high := units.ShowIn(p.from, u, units.Up), units.ShowIn(p.to, u, units.Down)
		switch {
		case p.from == d.From && p.to == d.To:
			return ""
		case p.from == d.From:
			parts = append(parts, r.words.phrasef("at most %s", high))
		case p.to == d.To:
			parts = append(parts, r.words.phrasef("at least %s", low))
		default:
			parts = append(parts, r.words.phrasef("from %s to %s", low, high))
		}
	}
	return r.words.phrasef("go if %s is %s", d.Name, strings.Join(parts, r.words.phrase(" or ")))
}

// spans finds where in its range a missing reading makes a rule go. It gives
// false when the rule still waits with the reading in.
func (r *Report) spans(rule *Rule, d *ReadingDef) ([]span, bool) {
	p := r.set.newProbe(rule, r.readings)
	value := func(share float64) float64 { return d.From + share*(d.To-d.From) }
	is := func(share float64) bool { return p.isGo(move{d, value(share)}) }
	if p.with(move{d, value(0.5)}).Verdict == Waiting {
		return nil, false
	}
	var spans []span
	was := is(0)
	if was {
		spans = append(spans, span{from: d.From})
	}
	before := 0.0
	for _, share := range p.scanPoints() {
		now := is(share)
		switch {
		case now && !was:
			spans = append(spans, span{from: value(p.bisect(before, share, is))})
		case was && !now:
			spans[len(spans)-1].to = value(p.bisect(share, before, is))
		}
		was, before = now, share
	}
	if was {
		spans[len(spans)-1].to = d.To
	}
	return spans, true
}
