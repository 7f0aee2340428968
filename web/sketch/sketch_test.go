package sketch

import (
	"encoding/xml"
	"flag"
	"io"
	"maps"
	"math"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"gudgeon/trade"
	"gudgeon/trade/bore"
	"gudgeon/trade/weld"
	"gudgeon/units"
)

var update = flag.Bool("update", false, "draw the golden files anew; look at them before you commit")

// crooked is an invented bore, off by so much at the near face towards a clock
// position, and true at the far one.
func crooked(t *testing.T, off, clock float64, layers int, sys units.System) Bore {
	t.Helper()
	var sweep trade.Survey
	for _, z := range []float64{0.5 * inch, 3 * inch, 5.5 * inch} {
		e := off * (1 - z/(6*inch))
		for k := range 12 {
			a := float64(k) * math.Pi / 6
			sin, cos := math.Sincos(a - clock)
			r := e*cos + math.Sqrt(1.52*1.52*inch*inch-e*e*sin*sin)
			sweep = append(sweep, trade.Point{Station: z, Clock: a, Read: r, U: 0.0002 * inch})
		}
	}
	s, err := bore.Survey(bore.Readings{Sweeps: sweep, Length: 6 * inch})
	require.NoError(t, err)
	wall, err := s.Surface()
	require.NoError(t, err)
	plan, err := weld.MakePlan(weld.Job{Surface: wall, Length: 6 * inch, Finish: 3 * inch, Truing: 3.06 * inch, Allowance: 0.03 * inch,
		Layer: 0.09 * inch, Layers: layers, Boss: 5 * inch})
	require.NoError(t, err)
	return Bore{Survey: s, Axis: s.Axis, Plan: plan, Units: sys}
}

// boreSamples are bores of every sort that the drawings must cope with.
func boreSamples(t *testing.T) map[string]*Drawing {
	out := map[string]*Drawing{}
	for name, b := range map[string]Bore{
		"short":    crooked(t, 0.125*inch, math.Pi/3, 1, units.InchShop),
		"six":      crooked(t, 0.125*inch, math.Pi, 1, units.MetricShop),
		"good":     crooked(t, 0.002*inch, math.Pi/3, 1, units.InchShop),
		"true":     crooked(t, 0, 0, 2, units.InchShop),
		"far off":  crooked(t, 0.9*inch, 5, 1, units.InchShop),
		"no weld":  crooked(t, 0.02*inch, 4, 0, units.InchShop),
		"sideways": crooked(t, 0.3*inch, 3*math.Pi/2, 1, units.MetricShop),
	} {
		out["end "+name], out["unrolled "+name], out["axis "+name] = EndView(b), Unrolled(b), AxisView(b)
	}
	return out
}

func everySample(t *testing.T) map[string]*Drawing {
	all := boreSamples(t)
	maps.Copy(all, samples())
	return all
}

// wellFormed reads the drawing as strict XML and returns its words.
func wellFormed(t *testing.T, svg string) string {
	t.Helper()
	d := xml.NewDecoder(strings.NewReader(svg))
	var words []string
	for {
		token, err := d.Token()
		if err == io.EOF {
			return strings.Join(words, "\n")
		}
		require.NoError(t, err)
		switch e := token.(type) {
		case xml.StartElement:
			assert.NotContains(t, []string{"script", "image", "foreignObject", "use", "a"}, e.Name.Local)
			for _, a := range e.Attr {
				assert.NotContains(t, a.Value, "NaN", e.Name.Local)
				assert.NotContains(t, a.Value, "Inf", e.Name.Local)
				assert.False(t, strings.HasPrefix(strings.ToLower(a.Name.Local), "on"), "no scripts")
			}
		case xml.CharData:
			if text := strings.TrimSpace(string(e)); text != "" {
				words = append(words, text)
			}
		}
	}
}

func TestDrawingsAreWellFormedAndAlone(t *testing.T) {
	for name, d := range everySample(t) {
		t.Run(name, func(t *testing.T) {
			svg := d.SVG()
			text := wellFormed(t, svg)
			assert.Contains(t, text, d.Title)
			assert.NotEmpty(t, d.Desc)
			assert.Contains(t, svg, `aria-labelledby="`+d.name+`-title `+d.name+`-desc"`)
			assert.Equal(t, 1, strings.Count(svg, "://"), "nothing but the name of the SVG language points elsewhere")
			assert.Less(t, len(svg), 60_000)
		})
	}
}

func TestNothingLeavesTheSheet(t *testing.T) {
	for name, d := range everySample(t) {
		t.Run(name, func(t *testing.T) {
			assert.GreaterOrEqual(t, d.ink.x1, 0.0)
			assert.GreaterOrEqual(t, d.ink.y1, 0.0)
			assert.LessOrEqual(t, d.ink.x2, width)
			assert.LessOrEqual(t, d.ink.y2, d.Height)
		})
	}
}

func TestTextDoesNotOverlap(t *testing.T) {
	for name, d := range everySample(t) {
		t.Run(name, func(t *testing.T) {
			for i, a := range d.text {
				for j, b := range d.text[:i] {
					assert.False(t, a.overlaps(b), "text %d %v over text %d %v", i, a, j, b)
				}
			}
		})
	}
}

func TestDrawingsAreTheSameEachTime(t *testing.T) {
	a, b := everySample(t), everySample(t)
	for name := range a {
		assert.Equal(t, a[name].SVG(), b[name].SVG(), name)
	}
}

func TestShortAreasAreNumberedAndSaid(t *testing.T) {
	b := crooked(t, 0.125*inch, math.Pi/3, 1, units.InchShop)
	require.Len(t, b.Plan.Short, 1)
	where := b.Plan.Short[0].Window.Text(units.InchShop)
	for _, d := range []*Drawing{EndView(b), Unrolled(b)} {
		assert.Contains(t, d.Desc, where)
		assert.Contains(t, d.Desc, "Area 1.")
		assert.Contains(t, d.SVG(), ">1</text>")
	}
}

func TestMagnificationIsStated(t *testing.T) {
	b := crooked(t, 0.125*inch, math.Pi/3, 1, units.InchShop)
	assert.Contains(t, EndView(b).Desc, "drawn 4 times as large")
	assert.Contains(t, AxisView(b).Desc, "drawn 6 times as large as depths")
	assert.Contains(t, AxisView(b).Desc, "0.125 in towards 2 o'clock at the near face")
}

func TestMagnificationIsRound(t *testing.T) {
	for x, want := range map[float64]float64{0: 1, 0.3: 1, 1.7: 1.5, 7.9: 6, 8: 8, 99: 80, 100: 100, 470: 400} {
		assert.Equal(t, want, magnification(x), "%g", x)
	}
	assert.Equal(t, 1.0, magnification(math.NaN()))
}

func TestTextIsEscaped(t *testing.T) {
	evil := `</text><script>alert("x")</script> & 'q' ` + "\x00\x1b\xff\uFFFE"
	d := Slings(Rig{Weight: 100, Legs: []Leg{{deg(60), 500}}, Note: evil})
	sheet := Sheet(evil, evil, d)
	assert.NotContains(t, sheet, "<script")
	assert.Contains(t, wellFormed(t, sheet), "alert")
	wellFormed(t, d.SVG())
}

func TestSheetStacksItsDrawings(t *testing.T) {
	b := crooked(t, 0.125*inch, math.Pi/3, 1, units.InchShop)
	sheet := Sheet("Link <left> with a title far too long for a sheet three hundred and sixty units wide", "It will not clean up.", EndView(b), Unrolled(b), AxisView(b))
	text := wellFormed(t, sheet)
	for _, word := range []string{"End view at the near face", "the bore cut open", "The old axis from the side", "It will not clean up."} {
		assert.Contains(t, text, word)
	}
	assert.Equal(t, 4, strings.Count(sheet, "<svg "))
	ids := map[string]bool{}
	for _, part := range strings.Split(sheet, ` id="`)[1:] {
		id, _, _ := strings.Cut(part, `"`)
		assert.False(t, ids[id], "id %s is there twice", id)
		ids[id] = true
	}
}

// The golden files are small; a change in one is to be looked at, not waved
// through.
func TestGolden(t *testing.T) {
	all := samples()
	for _, name := range slices.Sorted(maps.Keys(all)) {
		if !slices.Contains([]string{"slings", "hanging", "forks", "table", "bar"}, name) {
			continue
		}
		file := filepath.Join("testdata", name+".svg")
		if *update {
			require.NoError(t, os.MkdirAll("testdata", 0o755))
			require.NoError(t, os.WriteFile(file, []byte(all[name].SVG()), 0o644))
		}
		want, err := os.ReadFile(file)
		require.NoError(t, err)
		assert.Equal(t, string(want), all[name].SVG(), name)
	}
}

// Whatever a shop may lift, the drawing holds it.
func TestPreLiftDrawingsHoldAnySize(t *testing.T) {
	fits := func(what string, d *Drawing) {
		assert.GreaterOrEqual(t, d.ink.x1, 0.0, what)
		assert.LessOrEqual(t, d.ink.x2, width, what)
		assert.GreaterOrEqual(t, d.ink.y1, 0.0, what)
		assert.LessOrEqual(t, d.ink.y2, d.Height, what)
		wellFormed(t, d.SVG())
	}
	for angle := 5.0; angle <= 90; angle += 2.5 {
		fits("slings", Slings(Rig{Weight: 12345678, Legs: []Leg{{deg(angle), 1e6}, {deg(95 - angle), 1e6}, {deg(angle), 0}}}))
		for _, end := range []float64{-1, 1} {
			tilt := end * deg(min(angle, 60))
			fits("hanging", Hanging(Hung{LugOffset: 0.3 * math.Tan(tilt), LugHeight: 0.3, Length: 2, Tilt: tilt, Drop: 1}))
		}
	}
	for _, far := range []float64{0.02, 0.3, 1, 5, 10} {
		fits("forks", ForkLoad(Carried{Weight: 3000, LoadCentre: far, Rating: 2500, RatingCentre: 0.6, Capacity: 900, ForkLength: 1.2, Units: units.MetricShop}))
		for _, half := range []float64{0.2, 1} {
			fits("table", TableLoad(OnTable{Weight: 3000, Rating: 2000, PlatformHalf: half, BaseHalf: 2 * half, Offset: far, NearEnd: 5000, FarEnd: -2000}))
		}
		for _, share := range []float64{0.02, 0.5, 0.98} {
			fits("bar", BarBend(Bent{Span: far, Station: share * far, Diameter: 0.05, Force: 900, Deflection: 3e-5}))
			fits("bar", BarBend(Bent{Span: far, Station: share * far, OneEnd: true, Diameter: 0.05, Force: 900, Deflection: 3e-5}))
		}
	}
}
