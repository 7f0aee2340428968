package bore

import (
	"encoding/csv"
	"encoding/json"
	"math"
	"os"
	"strconv"
	"testing"

	"github.com/stretchr/testify/require"

	"gudgeon/trade"
)

const (
	in    = 0.0254
	deg   = math.Pi / 180
	thou1 = in / 1000
)

// table reads a CSV of numbers without its head; other text reads as 0.
func table(name string) [][]float64 {
	f, err := os.Open("testdata/" + name + ".csv")
	if err != nil {
		panic(err)
	}
	defer f.Close()
	rows, err := csv.NewReader(f).ReadAll()
	if err != nil {
		panic(err)
	}
	var out [][]float64
	for _, row := range rows[1:] {
		var numbers []float64
		for _, cell := range row {
			v, err := strconv.ParseFloat(cell, 64)
			if err != nil {
				panic(err)
			}
			numbers = append(numbers, v)
		}
		out = append(out, numbers)
	}
	return out
}

// points reads a set of points in the file's own units: x, y or angle, radius.
func points(name string) []XY {
	var out []XY
	for _, row := range table(name) {
		if len(row) == 2 {
			out = append(out, XY{row[0], row[1]})
			continue
		}
		n := len(row)
		sin, cos := math.Sincos(row[n-2] * deg)
		out = append(out, XY{row[n-1] * cos, row[n-1] * sin})
	}
	return out
}

// tilted is the three-station set as a survey: angles from the x axis become
// clock positions, inches become metres.
func tilted() trade.Survey {
	var out trade.Survey
	for _, row := range table("S5_tilt3x24") {
		out = append(out, trade.Point{Station: row[1] * in, Clock: math.Pi/2 - row[3]*deg, Read: row[4] * in})
	}
	return out
}

type placed struct{ Xc, Yc, R float64 }

type fitWant struct {
	Taubin    placed
	Geometric struct {
		placed
		SumSqResid float64 `json:"sum_sq_resid"`
		RMS        float64 `json:"rms_div_n"`
		LSC        float64 `json:"lsc_roundness"`
	}
	MinZone *struct {
		Xc, Yc, Width float64
		Outer         []int `json:"outer_pts"`
		Inner         []int `json:"inner_pts"`
	} `json:"min_zone"`
	MinCircumscribed *struct {
		placed
		Pts []int
	} `json:"min_circumscribed"`
	MaxInscribed *struct {
		placed
		Pts []int
	} `json:"max_inscribed_local"`
}

type tiltWant struct {
	Stations []struct {
		placed
		Z     float64
		SumSq float64 `json:"sum_sq"`
		LSC   float64 `json:"lsc_roundness"`
	}
	Line struct {
		X0     float64 `json:"x_at_z0"`
		MX     float64 `json:"slope_x"`
		Y0     float64 `json:"y_at_z0"`
		MY     float64 `json:"slope_y"`
		Tilt   float64 `json:"tilt_deg"`
		ThouFt float64 `json:"thou_per_foot"`
		Taper  float64 `json:"dia_taper_per_unit"`
	} `json:"centre_line"`
	Cylinder struct {
		X0    float64 `json:"x_at_z0"`
		Y0    float64 `json:"y_at_z0"`
		MX    float64 `json:"slope_x"`
		MY    float64 `json:"slope_y"`
		R     float64
		SumSq float64 `json:"sum_sq"`
		Width float64 `json:"max_minus_min"`
	} `json:"cylinder_ls"`
}

type geometryWant struct {
	Lunes []struct {
		RNew   float64 `json:"R_new"`
		ROld   float64 `json:"r_old"`
		E      float64
		Phi    float64 `json:"phi_deg"`
		Area   float64 `json:"area_removed"`
		Lens   float64
		Radius []struct {
			Theta float64 `json:"theta_deg"`
			ROld  float64 `json:"r_old"`
		}
	}
	Volumes []struct {
		RNew   float64 `json:"R_new"`
		R0     float64 `json:"r_old_0"`
		RL     float64 `json:"r_old_L"`
		E0     float64 `json:"e_0"`
		EL     float64 `json:"e_L"`
		L      float64
		Volume float64
		Breaks []float64
	}
}

func expected[T any](file, key string) (out T) {
	text, err := os.ReadFile("testdata/" + file + ".json")
	if err != nil {
		panic(err)
	}
	if key == "" {
		if err := json.Unmarshal(text, &out); err != nil {
			panic(err)
		}
		return out
	}
	var all map[string]json.RawMessage
	if err := json.Unmarshal(text, &all); err != nil {
		panic(err)
	}
	if err := json.Unmarshal(all[key], &out); err != nil {
		panic(err)
	}
	return out
}

func TestDataIsWhole(t *testing.T) {
	require.Len(t, tilted(), 72)
	require.Len(t, points("S1_oval24"), 24)
	require.Len(t, expected[geometryWant]("geometry_expected", "").Volumes, 4)
	require.Len(t, expected[tiltWant]("fit_expected", "S5_tilt3x24").Stations, 3)
}
