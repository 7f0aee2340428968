package finiteelement

import (
	"flag"
	"fmt"
	"math"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"gudgeon/trade"
	"gudgeon/trade/lift"
	"gudgeon/trade/outside"
	"gudgeon/trade/press"
)

var ccx = flag.String("ccx", "", "CalculiX's solver; without it the tests that need it are skipped")

const (
	pull = 800 * 0.45359237 // kg, as in the example of lift.hook_stress
	bar  = 31.75            // mm
	mpa  = 1e6
)

// meshed is a figure on a coarse and on a fine mesh, in the order of what is
// compared: they must agree, or the fine one means nothing either.
type meshed struct{ coarse, fine []float64 }

func (m meshed) converges(t *testing.T, within float64) {
	for i := range m.fine {
		assert.InEpsilon(t, m.fine[i], m.coarse[i], within, "figure %d: %v and %v", i, m.coarse[i], m.fine[i])
	}
}

// check holds the fine mesh's figure, to the four digits that a mesh is worth,
// against the closed formula. share of it is the tolerance, why its reason.
func (m meshed) check(i int, id, what, why string, confidence outside.Confidence, unit string, share, got float64) outside.Check {
	want, _ := strconv.ParseFloat(strconv.FormatFloat(m.fine[i], 'g', 4, 64), 64)
	return outside.Check{id, fmt.Sprintf("%s (coarse mesh %.4g)", what, m.coarse[i]), "CalculiX ccx, finite elements. " + why,
		confidence, unit, want, share * math.Abs(want), func() (float64, error) { return got, nil }}
}

// pullHook gives the stress at the inside and the outside of a bent bar, MPa.
func pullHook(t *testing.T, bend, nu float64) meshed {
	solve := func(fine int) []float64 {
		h := hook{bar: bar, bend: bend, pull: pull * trade.StandardGravity, modulus: 207e3, nu: nu, fine: fine}
		r, err := run(*ccx, t.TempDir(), "hook", h.deck())
		require.NoError(t, err)
		return []float64{r.stress[h.inside][1], r.stress[h.outside][1]}
	}
	m := meshed{solve(2), solve(4)}
	m.converges(t, 0.015)
	return m
}

func hookChecks(t *testing.T) []outside.Check {
	formula := func(bend float64) lift.HookResult {
		r, err := lift.HookStress(lift.Hook{Load: pull, Section: lift.Round, Depth: bar / 1e3, Inside: (bend - bar/2) / 1e3, Arm: bend / 1e3})
		require.NoError(t, err)
		return r
	}
	const (
		usual, tight = 2.5 * bar, bar // radius of the bend to the bar's centre line
		plane        = "Without Poisson's effect the formula's plane sections hold; the mesh is good to 1 %"
		poisson      = "The formula knows no stress across the bar; with Poisson's ratio 0.3 the inside of this bend bears 3 % more"
		tightest     = "As above in the tightest bend that the formula takes: 7 to 8 % more"
	)
	var list []outside.Check
	for _, c := range []struct {
		id, what, why string
		bend, nu      float64
		share         float64
	}{
		{"FE-1", "1-1/4 in bar, 2-1/2 in inside radius, Poisson's ratio 0", plane, usual, 0, 0.015},
		{"FE-2", "1-1/4 in bar, 2-1/2 in inside radius, steel", poisson, usual, 0.3, 0.04},
		{"FE-3", "1-1/4 in bar, 5/8 in inside radius, steel", tightest, tight, 0.3, 0.09},
	} {
		m, f := pullHook(t, c.bend, c.nu), formula(c.bend)
		list = append(list,
			m.check(0, c.id, c.what+": stress inside", c.why, outside.Synthetic, "MPa", c.share, f.Inside/mpa),
			m.check(1, c.id, c.what+": stress outside", c.why, outside.Synthetic, "MPa", c.share, f.Outside/mpa))
	}
	return list
}

// fitChecks presses the bronze bushing of PF-9 into its steel hub.
func fitChecks(t *testing.T) []outside.Check {
	solve := func(fine int) []float64 {
		f := pressFit{bore: 40, joint: 60, outside: 120, interference: 0.1, hub: elastic{210e3, 0.3}, bushing: elastic{105e3, 0.3}, fine: fine}
		r, err := run(*ccx, t.TempDir(), "fit", f.deck())
		require.NoError(t, err)
		return []float64{-r.stress[f.hubAtJoint][0], r.stress[f.hubAtJoint][2], r.stress[f.atJoint][2], r.stress[f.atBore][2], -2 * r.displacement[f.atBore][0]}
	}
	m := meshed{solve(8), solve(32)}
	m.converges(t, 0.005)
	p, err := press.Pressure(press.Joint{Diameter: 0.06, BushingBore: 0.04, HubDiameter: 0.12, Interference: 1e-4,
		Hub: press.Elastic{Modulus: 210e9, Poisson: 0.3}, Bushing: press.Elastic{Modulus: 105e9, Poisson: 0.3}})
	require.NoError(t, err)
	const why = "The sizes and metals of PF-9; the formula is exact for parts that slide on each other along the axis, the mesh is good to 0.1 %"
	of := func(i int, what, unit string, got float64) outside.Check {
		return m.check(i, "FE-4", "bronze bushing in steel: "+what, why, outside.Computed, unit, 0.002, got)
	}
	return []outside.Check{
		of(0, "pressure", "MPa", p.Pressure/mpa),
		of(1, "hoop stress at the hub's bore", "MPa", p.HubHoop/mpa),
		of(2, "hoop stress at the bushing's outside", "MPa", p.BushingHoop/mpa),
		of(3, "hoop stress at the bushing's bore", "MPa", p.BushingHoopBore/mpa),
		of(4, "close-in of the bore on diameter", "mm", p.CloseIn*1e3),
	}
}

func TestChecks(t *testing.T) {
	if *ccx == "" {
		t.Skip("make finite-element runs this")
	}
	outside.Run(t, "finite-element", append(hookChecks(t), fitChecks(t)...))
}

// The parts of a mesh can be tested without the solver: loads must sum to the
// whole, or a wrong mesh would only show as a wrong stress.
func TestEndFaceSumsToTheSection(t *testing.T) {
	h := hook{bar: bar, bend: 2.5 * bar, pull: 1, modulus: 1, fine: 3}
	sum := 0.0
	text := h.deck().rest.String()
	_, loads, ok := strings.Cut(text, "*CLOAD\n")
	require.True(t, ok)
	loads, _, _ = strings.Cut(loads, "*")
	for _, line := range strings.Split(strings.TrimSpace(loads), "\n") {
		v, err := strconv.ParseFloat(strings.TrimSpace(strings.Split(line, ",")[2]), 64)
		require.NoError(t, err)
		sum += v
	}
	assert.InDelta(t, 0.5, sum, 1e-4, "half the pull; a circle of curved sides is short by that much")
}

func TestReadResult(t *testing.T) {
	r, err := readResult(strings.NewReader(` -4  DISP        4    1
 -5  D1          1    2    1    0
 -1         1 1.00000E+00-2.00000E+00 3.00000E-01
 -3
 -4  STRESS      6    1
 -1        12-1.00000E+00 2.00000E+00 0.00000E+00 0.00000E+00 0.00000E+00 4.50000E+01
 -3
`))
	require.NoError(t, err)
	assert.Equal(t, []float64{1, -2, 0.3}, r.displacement[1])
	assert.Equal(t, []float64{-1, 2, 0, 0, 0, 45}, r.stress[12])
	_, err = readResult(strings.NewReader(""))
	assert.ErrorContains(t, err, "no displacements")
}
