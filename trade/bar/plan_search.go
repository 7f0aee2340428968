package bar

import (
	"errors"
	"fmt"
	"math"

	"gudgeon/units"
)

// feasible gives the reasons that hold whatever the number of passes.
func (r *PlanResult) feasible() error {
	in := r.In
	if in.LeastStock < in.Truing+in.Light {
		return fmt.Errorf("no plan: where there is least stock there is %s on radius, and the truing and the light pass need %s: it will not clean up and true; add weld there",
			onRadius(in.LeastStock), onRadius(in.Truing+in.Light))
	}
	if r.DepthLimit < in.Truing {
		why := "the depth limit"
		if r.DepthLimit < in.DepthLimit {
			why = "the power"
		}
		return fmt.Errorf("no plan: %s allows a depth of %s on radius, and the truing pass needs %s", why, onRadius(r.DepthLimit), onRadius(in.Truing))
	}
	return nil
}

func onRadius(x float64) string {
	return units.Show(x, units.Length, units.InchShop, units.Nearest)
}

// fine shows a form error, which needs more places than a size.
func fine(x float64, round units.Rounding) string {
	return units.ShowDigits(x, units.Usual(units.Length, units.InchShop), round, 2)
}

// search tries more and more heavy passes, each taking less, until the bore
// comes round enough or the truing pass no longer cuts deep all round.
func (r *PlanResult) search(heavy, light float64) error {
	in := r.In
	stock := in.MostStock - in.Light
	fewest := max(1, int(math.Ceil(stock/r.DepthLimit-1e-9)))
	if fewest > mostPasses-1 {
		return fmt.Errorf("no plan: it would take more than %d passes; use a stiffer bar or a machine with more power", mostPasses)
	}
	reason, at := sound, 0
	for n := fewest; n < mostPasses; n++ {
		r.lay(n, heavy, light)
		f := r.judge()
		if f == sound {
			return nil
		}
		if f == shallow && reason != sound {
			break // more passes take still less each; what stood in the way before is the reason
		}
		reason, at = f, n
		if f == shallow {
			break
		}
	}
	r.lay(at, heavy, light)
	return r.refusal(reason)
}

// lay writes the plan of n heavy passes and the light one.
func (r *PlanResult) lay(n int, heavy, light float64) {
	in := r.In
	least, most := in.LeastStock, in.MostStock
	step := (in.MostStock - in.Light) / float64(n)
	r.Count, r.Time, r.MostPower = 0, 0, 0
	for i := 1; i <= n; i++ {
		// The high places come down to this line; the bar gives, so the tool
		// is set beyond it.
		line := in.MostStock - float64(i)*step
		tool := (line - r.HeavyShare*most) / (1 - r.HeavyShare)
		kind := RoughPass
		if i == n {
			kind = TruingPass
		}
		least, most = r.add(kind, tool, r.HeavyShare, heavy, least, most)
	}
	// The light pass brings the mean to size.
	tool := -r.LightShare * (least + most) / 2 / (1 - r.LightShare)
	least, most = r.add(LightPass, tool, r.LightShare, light, least, most)
	r.OutOfRound = most - least
}

// add appends a pass whose tool is set to leave the stock tool, and returns
// the stock that it does leave.
func (r *PlanResult) add(kind PassKind, tool, share, push, least, most float64) (newLeast, newMost float64) {
	in := r.In
	newMost = tool + share*(most-tool)
	newLeast = least
	if least > tool { // lower places than the tool's path are not touched
		newLeast = tool + share*(least-tool)
	}
	feed, speed := in.RoughFeed, in.RoughSpeed
	if kind == LightPass {
		feed, speed = in.FineFeed, in.FineSpeed
	}
	p := Pass{
		Kind: kind, Tool: in.Finish - 2*tool, Diameter: in.Finish - (newLeast + newMost),
		Least: least - newLeast, Most: most - newMost, OutOfRound: newMost - newLeast,
		Feed: feed,
	}
	p.Rotation = 2 * speed / p.Diameter
	p.Time = in.Length / (feed * p.Rotation)
	p.Push = push * p.Most
	p.Power = p.Push / in.PushShare * speed
	r.Passes[r.Count] = p
	r.Count++
	r.Time += p.Time
	r.MostPower = max(r.MostPower, p.Power)
	return newLeast, newMost
}

// fault is what a laid plan lacks.
type fault uint8

const (
	sound   fault = iota
	shallow       // the truing pass does not cut deep all round
	weak          // the light pass needs more power than there is
	uncut         // the light pass does not cut all round
	tooOval       // the bore does not come round
)

const dust = 1e-12 // float error, m

func (r *PlanResult) judge() fault {
	in := r.In
	truing, light := &r.Passes[r.Count-2], &r.Passes[r.Count-1]
	switch {
	case truing.Least < in.Truing-dust:
		return shallow
	case light.Power > in.PowerLimit:
		return weak
	case light.Least < in.Light/2-dust:
		return uncut
	case 2*r.OutOfRound > roundShare*in.Tolerance+dust:
		return tooOval
	}
	return sound
}

// refusal puts the fault of a laid plan in words.
func (r *PlanResult) refusal(f fault) error {
	in := r.In
	truing := &r.Passes[r.Count-2]
	const help = "use a stiffer bar, a finer truing feed, or more stock for another heavy pass"
	switch f {
	case shallow:
		return fmt.Errorf("no plan: split into %d passes, the truing pass takes only %s on radius where there is least stock, and it needs %s; add weld there, or allow deeper passes",
			r.Count, onRadius(truing.Least), onRadius(in.Truing))
	case weak:
		return errors.New("no plan: the light pass needs more power than there is; slow it down")
	case uncut:
		return fmt.Errorf("no plan: the truing pass leaves %s out of round on radius, too much for the light pass to cut all round; %s", onRadius(truing.OutOfRound), help)
	}
	return fmt.Errorf("no plan: the bore would stay %s out of round on radius, and the tolerance leaves room for %s; %s",
		fine(r.OutOfRound, units.Up), fine(roundShare*in.Tolerance/2, units.Down), help)
}
