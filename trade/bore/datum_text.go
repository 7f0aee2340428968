package bore

import (
	"fmt"
	"strings"

	"gudgeon/units"
)

// Text says the comparison as one machinist would to another.
func (c *Comparison) Text(sys units.System) string {
	length := func(x float64, r units.Rounding) string { return units.Show(x, units.Length, sys, r) }
	var say []string
	switch c.Verdict {
	case OneFeature:
		say = append(say, fmt.Sprintf("Only the %s was measured. One feature proves nothing about the centre.", c.name(0)))
	case Undecided:
		say = append(say, "These features do not agree, and none of them has the majority. Do not cut yet.")
		for _, p := range c.Pairs {
			if !p.Agree {
				say = append(say, fmt.Sprintf("The %s and the %s are %s apart; their uncertainties explain %s.",
					c.name(p.A), c.name(p.B), length(p.Distance, units.Nearest), length(Coverage*p.U, units.Up)))
			}
		}
	case AllAgree:
		say = append(say, fmt.Sprintf("The %s agree about the centre, within their uncertainties.", c.names(c.Group)))
		say = append(say, fmt.Sprintf("They could still hide an offset of %s.", length(c.Blind, units.Up)))
	case OddOneOut:
		say = append(say, fmt.Sprintf("The %s agree about the centre.", c.names(c.Group)))
		for _, o := range c.Odd {
			say = append(say, fmt.Sprintf("The %s does not: it is %s off towards %s, where %s would be explained.",
				c.name(o.Candidate), length(o.Off.Size, units.Nearest), ClockWords(o.Off.Clock), length(Coverage*o.Off.U, units.Up)))
		}
	}
	return strings.Join(append(say, c.meaning()...), " ")
}

// meaning says what the verdict suggests and what to measure next.
func (c *Comparison) meaning() (say []string) {
	switch {
	case c.OnlySuspects:
		say = append(say, "Those that agree may all have been cut in one set-up by an earlier repair, so they would agree even if it was off centre.")
	case c.EarlierRepair:
		say = append(say, "That looks like an earlier repair that was bored off centre. Set up on the features that agree, not on the old bore.")
	case c.Verdict == OddOneOut:
		say = append(say, "Look at the odd one out again: a burr, a bent boss, a wrong reading, or a feature that was never concentric.")
	}
	if len(c.Next) == 0 {
		return say
	}
	sure := c.Verdict == AllAgree || (c.Verdict == OddOneOut && len(c.Group) > 2)
	if sure && !c.OnlySuspects {
		return append(say, fmt.Sprintf("To be surer still, measure the %s.", c.Next[0]))
	}
	names := make([]string, len(c.Next))
	for i, f := range c.Next {
		names[i] = f.String()
	}
	return append(say, "Before cutting, measure the "+join(names, "or the")+".")
}

func (c *Comparison) name(i int) string { return c.Candidates[i].name() }

func (c *Comparison) names(list []int) string {
	out := make([]string, len(list))
	for i, k := range list {
		out[i] = c.name(k)
	}
	return join(out, "and the")
}

func join(names []string, word string) string {
	n := len(names)
	if n == 1 {
		return names[0]
	}
	return strings.Join(names[:n-1], ", the ") + " " + word + " " + names[n-1]
}
