// Package survey times a bore's survey and its weld plan, and hands the same
// readings to SciPy.
package survey

import (
	"encoding/json"
	"flag"
	"math"
	"os"
	"testing"

	"github.com/stretchr/testify/require"

	"gudgeon/trade"
	"gudgeon/trade/bore"
	"gudgeon/trade/weld"
)

const (
	inch      = 0.0254
	setRadius = 1.5 * inch
	length    = 6 * inch
)

var pointsFile = flag.String("points", "", "file to write the points to, x and y in metres, station by station")

// sweep is an invented link: three stations of 24 readings in a bore that an
// earlier repair left 1/8 in off at one face and nearly true at the other.
func sweep() trade.Survey {
	var out trade.Survey
	near, far := bore.Polar(math.Pi/3, 0.125*inch), bore.Polar(math.Pi/3, 0.015*inch)
	axis := bore.LineThrough(near, far, length)
	for _, z := range []float64{0.5 * inch, 3 * inch, 5.5 * inch} {
		e := axis.At(z)
		for i := range 24 {
			clock := float64(i) * math.Pi / 12
			sin, cos := math.Sincos(clock)
			along, across := e.X*sin+e.Y*cos, e.X*cos-e.Y*sin
			r := 1.52*inch + 0.002*inch*math.Cos(2*clock)
			read := along + math.Sqrt(r*r-across*across) - 0.004*inch*math.Cos(clock) - setRadius
			out = append(out, trade.Point{Station: z, Clock: clock, Read: read, U: 0.0005 * inch})
		}
	}
	return out
}

// stations are the points of each station.
func stations() (list [][]bore.XY) {
	for i, p := range sweep() {
		if i%24 == 0 {
			list = append(list, nil)
		}
		last := len(list) - 1
		list[last] = append(list[last], bore.Polar(p.Clock, setRadius+p.Read))
	}
	return list
}

// TestCircles prints the circles, to be held against those of SciPy.
func TestCircles(t *testing.T) {
	for i, points := range stations() {
		c, err := bore.FitCircle(points, nil)
		require.NoError(t, err)
		t.Logf("station %d: x %.9f y %.9f r %.9f mm", i+1, c.Centre.X*1000, c.Centre.Y*1000, c.R*1000)
	}
	if *pointsFile != "" {
		text, err := json.Marshal(stations())
		require.NoError(t, err)
		require.NoError(t, os.WriteFile(*pointsFile, text, 0o600))
	}
}

func BenchmarkThreeCircles(b *testing.B) {
	list := stations()
	b.ReportAllocs()
	for b.Loop() {
		for _, points := range list {
			if _, err := bore.FitCircle(points, nil); err != nil {
				b.Fatal(err)
			}
		}
	}
}

func readings() bore.Readings {
	return bore.Readings{Sweeps: sweep(), SetRadius: setRadius, Length: length}
}

func BenchmarkSurvey(b *testing.B) {
	r := readings()
	b.ReportAllocs()
	for b.Loop() {
		if _, err := bore.Survey(r); err != nil {
			b.Fatal(err)
		}
	}
}

func BenchmarkSurveyToWeldPlan(b *testing.B) {
	r := readings()
	b.ReportAllocs()
	for b.Loop() {
		if _, err := plan(r); err != nil {
			b.Fatal(err)
		}
	}
}

func plan(r bore.Readings) (*weld.Plan, error) {
	s, err := bore.Survey(r)
	if err != nil {
		return nil, err
	}
	wall, err := s.Surface()
	if err != nil {
		return nil, err
	}
	return weld.MakePlan(weld.Job{Surface: wall, Length: length, Finish: 3 * inch, Truing: 3.06 * inch, Allowance: 0.03 * inch,
		Layer: 0.09 * inch, Layers: 1, Boss: 5 * inch, LeastWall: 0.75 * inch, LeastWeld: 0.06 * inch, U: 0.002 * inch})
}
