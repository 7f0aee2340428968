package boresurvey

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"gudgeon/rules"
	"gudgeon/trade/bar"
	"gudgeon/trade/weld"
	"gudgeon/units"
)

// whole is the example that goes from survey to inspection, with changes: pairs
// of what is written and what stands there instead.
func whole(t *testing.T, changes ...string) *Finding {
	t.Helper()
	file := example(t, "survey-whole.yaml")
	for i := 0; i < len(changes); i += 2 {
		require.Contains(t, file.Text, changes[i])
		file.Text = strings.Replace(file.Text, changes[i], changes[i+1], 1)
	}
	return find(t, file)
}

func worst(f *Finding) string {
	if len(f.Notices) == 0 {
		return ""
	}
	return f.Notices[0].Text(units.InchShop)
}

func TestWholeJobGoes(t *testing.T) {
	f := whole(t)
	assert.Equal(t, rules.Go, f.Verdict, "%s %v", worst(f), f.Missing)
	assert.Equal(t, Reached, f.Heat.Reached)
	assert.Equal(t, Reached, f.Heat.Held)
	assert.InDelta(t, 0.0026+0.009/6+0.002/15, f.Heat.CE, 1e-9, "the top of A36")
	assert.InDelta(t, 24*220*60/0.254, f.Heat.HeatInput, 1)
	require.NotNil(t, f.Passes.Plan)
	n := f.Passes.Plan.Count
	assert.Equal(t, bar.TruingPass, f.Passes.Plan.Passes[n-2].Kind)
	assert.Equal(t, bar.LightPass, f.Passes.Plan.Passes[n-1].Kind)
	assert.InDelta(t, 3.001*inch, f.Passes.Aim, 1e-9, "the middle of the limits")
	assert.InDelta(t, 1.5005*inch-1.429*inch, f.Passes.Stock.Most, 0.2e-3*inch, "the nearest place of the weld")
	assert.Empty(t, f.Finished.Surface.Loaded)
}

// Each fact by itself, and what it comes to.
func TestWhatHeatComesTo(t *testing.T) {
	for _, c := range []struct {
		from, to string
		want     rules.Verdict
		says     string
	}{
		{"preheat: 190 °F", "preheat: 150 °F", rules.Caution, "too close to call"},
		{"preheat: 190 °F", "preheat: 149 °F", rules.Stop, "not reached"},
		{"preheat: 190 °F", "preheat: 155 ± 4 °F", rules.Go, ""},
		{"interpass: [210 °F, 240 °F]", "interpass: 120 °F", rules.Stop, "was not held"},
		{"interpass: [210 °F, 240 °F]", "interpass: [210 °F, 495 °F]", rules.Caution, "too close to call"},
		{"casting: no", "casting: yes", rules.Caution, "outside the preheat table"},
		{"galvanised or plated: no", "galvanised or plated: yes", rules.Caution, "galvanised"},
		{"cylinders near: no", "cylinders near: yes", rules.Stop, "burst"},
		{"cylinders near: no", "cylinders near: yes\n  drained and vented: yes", rules.Go, ""},
		{"hoses near: no", "hoses near: yes", rules.Caution, "Hoses"},
		{"on the machine: no", "on the machine: yes", rules.Caution, "Battery off"},
		{"steel: A36", "steel: 4140", rules.Stop, "hardens"},
		{"steel: A36", "steel: 1045\n  procedure preheat: 180 °F", rules.Caution, "too close to call"},
		{"steel: A36", "steel: A36\n  procedure preheat: 100 °F", rules.Stop, "under the table's"},
		{"steel: A36", "composition: {C: 0.2 %, Mn: 0.9 %, Cr: 0.5 %, Mo: 0.2 %}", rules.Stop, "carbon equivalent 0.49%"},
		{"steel: A36", "metal now: 20 °F\n  steel: A36", rules.Caution, "frost"},
		{"with: temperature stick", "metal now: 60 °F", rules.Waiting, ""},
		{"casting: no", "", rules.Waiting, ""},
		{"amps: 220 A", "", rules.Waiting, ""},
	} {
		f := whole(t, c.from, c.to)
		assert.Equal(t, c.want, f.Verdict, c.to)
		assert.Contains(t, worst(f), c.says, c.to)
	}
}

func TestMiddleOfTheRange(t *testing.T) {
	f := whole(t, "steel: A36", "steel: a36\n  range: middle")
	assert.Equal(t, weld.MidRange, f.Job.Heat.Pick)
	assert.InDelta(t, 0.00205+0.0075/6+0.001/15, f.Heat.CE, 1e-9)
}

func TestWhatPassesComeTo(t *testing.T) {
	for _, c := range []struct {
		from, to string
		want     rules.Verdict
		says     string
	}{
		{"power at the spindle: 3 hp", "power at the spindle: 0.1 hp", rules.Stop, "the power allows"},
		{"depth limit: .040 in", "depth limit: .005 in", rules.Stop, "the depth limit allows"},
		{"set radius: 1.440 in", "set radius: 1.491 in", rules.Stop, "One of these would do: weld until"},
		{"set radius: 1.440 in", "set radius: 1.510 in", rules.Stop, "does not reach the finish size"},
		{"set radius: 1.440 in", "set radius: 1.4798 in", rules.Caution, "too close to call"},
		{"bar diameter: 2 in", "bar diameter: 2.9 in", rules.Stop, "does not go through the weld"},
		{"bar diameter: 2 in", "bar diameter: 1 in", rules.Caution, "4 in is the most to try"},
		{"depth limit: .040 in", "light pass: .020 in", rules.Caution, "about 0.005 in is right"},
		{"overhang: 7-1/2 in", "", rules.Waiting, ""},
		{"work metal: 42CrMo4", "", rules.Waiting, ""},
		{"finish diameter: 3.000 +.002/-.000 in", "finish diameter: 3.000 in", rules.Waiting, ""},
	} {
		f := whole(t, c.from, c.to)
		assert.Equal(t, c.want, f.Verdict, "%s: %s", c.to, worst(f))
		assert.Contains(t, worst(f), c.says, c.to)
	}
}

// A way out, followed, gives a plan; a little less does not.
func TestWaysOutHold(t *testing.T) {
	f := whole(t, "power at the spindle: 3 hp", "power at the spindle: 0.1 hp")
	require.Len(t, f.Passes.Ways, 2)
	power := f.Passes.Ways[1]
	assert.Equal(t, units.Power, power.kind)
	at := func(w float64) bool {
		d := *f.Job.Passes
		f.completePasses(&d)
		d.Power = w
		_, err := d.plan(f.Passes.Set, f.Passes.Aim, f.Passes.Stock)
		return err == nil
	}
	assert.True(t, at(power.Value))
	assert.False(t, at(power.Value*0.99))
}

func TestWithoutADepthLimitTheBarSetsIt(t *testing.T) {
	f := whole(t, "depth limit: .040 in", "")
	assert.Equal(t, f.Passes.Set.Stable, f.Passes.Set.DepthLimit)
	assert.Equal(t, rules.Go, f.Verdict)
}

func TestWhatTheFinishedBoreComesTo(t *testing.T) {
	for _, c := range []struct {
		from, to string
		want     rules.Verdict
		says     string
	}{
		{"3.0009, 3.0011", "3.0009, 3.0023", rules.Stop, "too large, by 0.0003 in"},
		{"3.0009, 3.0011", "2.9997, 3.0011", rules.Stop, "too small, by 0.0003 in"},
		{"[3.0010, 3.0012]", "[3.0018, 3.0019]", rules.Caution, "greatest diameter"},
		{"[3.0010, 3.0012]", "[3.0001, 3.0018]", rules.Stop, "out of round, by 0.00035 in"},
		{"taper: 1 thou", "taper: .1 thou", rules.Stop, "tapers too much"},
		{"with: bore gauge", "within: .0010 in", rules.Caution, "gauge is good to"},
		{"with: bore gauge", "", rules.Waiting, ""},
		{"    3 in:   [3.0009, 3.0011]", "", rules.Waiting, ""},
		{"at: 10:40", "at: 7", rules.Stop, "in the loaded zone"},
		{"depth: 2.2 in", "depth: 5.95 in", rules.Stop, "at an edge"},
		{"across: .06 in", "across: 5 in", rules.Stop, "in the loaded zone"},
		{"voids:\n", "voids: none\n#" /* the list is now a comment */, rules.Go, ""},
		{"loaded zone: {from: 4, to: 8}", "", rules.Waiting, ""},
	} {
		f := whole(t, c.from, c.to)
		assert.Equal(t, c.want, f.Verdict, "%s: %s", c.to, worst(f))
		assert.Contains(t, worst(f), c.says, c.to)
	}
}

func TestTooMuchVoid(t *testing.T) {
	f := whole(t, "across: .06 in, along: .10 in", "across: .9 in, along: .9 in")
	assert.Equal(t, rules.Stop, f.Verdict)
	assert.Contains(t, worst(f), "of the surface cleaned up")
}
