package boresurvey

import (
	"cmp"
	"fmt"
	"slices"

	"gudgeon/rules"
	"gudgeon/trade/bore"
	"gudgeon/trade/weld"
	"gudgeon/units"
)

// Heat is what heat the part wants, and whether it has it.
type Heat struct {
	weld.Advice
	Wanted    float64 // the table's preheat or the procedure's, whichever is more, K
	HeatInput float64 // J/m; 0: not known
	Reached   Reach
	Coldest   Temperature // between layers; zero when not read
	Hottest   Temperature
	Held      Reach    // between layers
	Care      []string // what hurts people or the repair
}

// Reach is how a reading stands against a limit.
type Reach uint8

// The reaches.
const (
	NotRead  Reach = iota
	Reached        // by more than the instrument is off
	TooClose       // by less
	NotReached
)

func (r Reach) String() string {
	return [...]string{"not read", "reached", "too close to call", "not reached"}[r]
}

// Held is the word for a temperature between layers.
func (r Reach) Held() string {
	return [...]string{"not read", "held", "too close to call", "not held"}[r]
}

// reach compares what is left to a limit with the uncertainty of a reading.
func reach(room, u float64) Reach {
	switch {
	case room < 0:
		return NotReached
	case room < bore.Coverage*u:
		return TooClose
	}
	return Reached
}

// heat works the section out, as far as it goes.
func (f *Finding) heat() error {
	data := f.Job.Heat
	if data == nil {
		return nil
	}
	f.Missing = append(f.Missing, data.Missing...)
	if !data.ready {
		return nil
	}
	advice, err := weld.Advise(data.HeatJob)
	if err != nil {
		return mistake(data.at, err)
	}
	h := &Heat{Advice: advice, Wanted: max(advice.Preheat, data.Procedure), Care: data.care(advice.Cautions)}
	if data.Volts > 0 && data.Amps > 0 && data.Travel > 0 {
		if h.HeatInput, err = weld.HeatInput(data.Volts, data.Amps, data.Travel, 1); err != nil {
			return mistake(data.at, err)
		}
	}
	h.compare(data)
	f.Heat = h
	return nil
}

// compare sets the readings against what is wanted.
func (h *Heat) compare(data *HeatData) {
	if t := data.Preheat; t.K > 0 {
		h.Reached = reach(t.K-h.Wanted, t.U)
	}
	if len(data.Interpass) == 0 {
		return
	}
	byK := func(a, b Temperature) int { return cmp.Compare(a.K, b.K) }
	h.Coldest, h.Hottest = slices.MinFunc(data.Interpass, byK), slices.MaxFunc(data.Interpass, byK)
	h.Held = reach(h.Coldest.K-h.Wanted, h.Coldest.U)
	if data.MostInterpass > 0 {
		h.Held = max(h.Held, reach(data.MostInterpass-h.Hottest.K, h.Hottest.U))
	}
}

// care lists what to mind: the trade's cautions, and the way of the current.
func (d *HeatData) care(list []weld.Caution) (out []string) {
	for _, c := range list {
		if c != weld.FollowProcedure { // every finding says that already
			out = append(out, c.String())
		}
	}
	out = append(out, "Clamp the ground to bare metal of this part, beside the weld, so that no bearing, pin, slide or cylinder carries the current.")
	if d.Electronics || d.OnMachine {
		out = append(out, "Take the battery off and unplug the control boxes before the arc is struck.")
	}
	return out
}

// judgeHeat says what stands against welding.
func (f *Finding) judgeHeat() {
	if f.Job.Heat == nil {
		return
	}
	f.judgeFacts()
	if f.Heat == nil {
		return
	}
	f.judgeSteel()
	f.judgePreheat()
	f.judgeInterpass()
}

// judgeFacts turns what is near into notices: it does not depend on the steel.
func (f *Finding) judgeFacts() {
	d := f.Job.Heat
	if d.Cavity && !d.Drained {
		f.notice(rules.Stop, plain("A closed cylinder, tank or cavity is near the heat and can burst. Open, drain and vent it, then write drained and vented: yes."))
	}
	if d.Coated {
		f.notice(rules.Caution, plain("The metal is galvanised or plated. Take the coating off well back from the weld, then write galvanised or plated: no. Never burn it off: zinc fume makes ill, and cadmium fume kills."))
	}
	if d.Hoses {
		f.notice(rules.Caution, plain("Hoses are near the heat. Release the pressure and take them away, with seals and grease."))
	}
	if d.Electronics || d.OnMachine {
		f.notice(rules.Caution, plain("The current may find its way through bearings and control boxes. Battery off, boxes unplugged, ground clamp on this part beside the weld."))
	}
}

// judgeSteel stops a weld on steel that hardens without a procedure.
func (f *Finding) judgeSteel() {
	d, h := f.Job.Heat, f.Heat
	switch outside, hard := has(h.Cautions, weld.OutsideTable), has(h.Cautions, weld.Hardenable); {
	case d.Procedure > 0 && d.Procedure < h.Preheat:
		f.notice(rules.Stop, func(sys units.System) string {
			return fmt.Sprintf("The procedure's preheat of %s is under the table's %s for this thickness. Ask whoever signed it; until then the higher one counts.",
				degrees(d.Procedure, sys, units.Nearest), degrees(h.Preheat, sys, units.Up))
		})
	case d.Procedure > 0:
	case hard:
		f.notice(rules.Stop, func(sys units.System) string {
			return fmt.Sprintf("This steel hardens beside the weld (carbon equivalent %s, over 0.45 %%), and no procedure is given. "+
				"Get one, with its preheat and slow cooling, from a welding engineer or the filler's maker, and write procedure preheat.",
				units.Show(h.CE, units.Ratio, sys, units.Up))
		})
	case outside:
		f.notice(rules.Caution, plain("A casting is outside the preheat table: its preheat is a floor. Ask for a procedure, and write procedure preheat."))
	}
	if has(h.Cautions, weld.ColdMetal) {
		f.notice(rules.Caution, plain(weld.ColdMetal.String()))
	}
}

func (f *Finding) judgePreheat() {
	h, read := f.Heat, f.Job.Heat.Preheat
	switch h.Reached {
	case NotReached:
		f.notice(rules.Stop, func(sys units.System) string {
			return fmt.Sprintf("Preheat is not reached: the coldest place reads %s, and %s is wanted. Heat on slowly from the thick side; read it again a minute after the flame is off.",
				degrees(read.K, sys, units.Down), degrees(h.Wanted, sys, units.Up))
		})
	case TooClose:
		f.notice(rules.Caution, func(sys units.System) string {
			return fmt.Sprintf("Preheat is too close to call: it reads %s, good to ±%s, and %s is wanted. Heat until it reads %s.", degrees(read.K, sys, units.Down),
				spread(read.U, sys), degrees(h.Wanted, sys, units.Up), degrees(h.Wanted+bore.Coverage*read.U, sys, units.Up))
		})
	}
}

func (f *Finding) judgeInterpass() {
	h, most := f.Heat, f.Job.Heat.MostInterpass
	if h.Held != NotReached && h.Held != TooClose {
		return
	}
	verdict, what := rules.Stop, "was not held"
	if h.Held == TooClose {
		verdict, what = rules.Caution, "is too close to call"
	}
	f.notice(verdict, func(sys units.System) string {
		text := fmt.Sprintf("Interpass temperature %s: it read %s to %s between layers, good to ±%s, and %s or more is wanted", what,
			degrees(h.Coldest.K, sys, units.Down), degrees(h.Hottest.K, sys, units.Up), spread(max(h.Coldest.U, h.Hottest.U), sys), degrees(h.Wanted, sys, units.Up))
		if most > 0 {
			text += fmt.Sprintf(", %s at most", degrees(most, sys, units.Down))
		}
		return text + ". Too cold, heat again before the next bead, and look at the cold beads with dye. Too hot, wait."
	})
}

func has(list []weld.Caution, c weld.Caution) bool { return slices.Contains(list, c) }

// plain is a notice that reads the same in every shop.
func plain(text string) func(units.System) string {
	return func(units.System) string { return text }
}

func degrees(k float64, sys units.System, r units.Rounding) string {
	return units.Show(k, units.Temperature, sys, r)
}

// spread is twice a standard uncertainty of a temperature, in words.
func spread(u float64, sys units.System) string {
	return units.Show(bore.Coverage*u, units.TemperatureDifference, sys, units.Up)
}
