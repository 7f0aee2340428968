package outside

import (
	"encoding/csv"
	"errors"
	"fmt"
	"math"
	"os"
	"path/filepath"
	"slices"
	"strconv"
	"strings"
)

// row is a check that has been worked, as a section's file keeps it.
type row struct {
	ID, What, Source                 string
	Confidence                       Confidence
	Unit, Expected, Computed, Within string
}

var header = []string{"id", "what", "source", "confidence", "unit", "expected", "computed", "tolerance"}

func (r row) fields() []string {
	return []string{r.ID, r.What, r.Source, string(r.Confidence), r.Unit, r.Expected, r.Computed, r.Within}
}

func worked(c Check, got float64) row {
	return row{ID: c.ID, What: c.What, Source: c.Source, Confidence: c.Confidence, Unit: c.Unit,
		Expected: strconv.FormatFloat(c.Want, 'g', 10, 64),
		Computed: figure(got, c.Want, c.Tol),
		Within:   strconv.FormatFloat(c.Tol, 'g', 2, 64)}
}

func exponent(x float64) int { return int(math.Floor(math.Log10(math.Abs(x)))) }

// lastPlace is the power of ten that a computed figure is rounded to: a tenth of
// the tolerance's first digit shows agreement, and eight digits hide what
// differs between processors.
func lastPlace(want, tol float64) int {
	place := exponent(tol) - 1
	if want != 0 {
		place = max(place, exponent(want)-7)
	}
	return place
}

func figure(x, want, tol float64) string {
	place := lastPlace(want, tol)
	unit := math.Pow10(place)
	x = math.Round(x/unit) * unit
	switch {
	case x == 0:
		return "0"
	case place < -9:
		return strconv.FormatFloat(x, 'e', max(0, exponent(x)-place), 64)
	}
	return strconv.FormatFloat(x, 'f', max(0, -place), 64)
}

// sameRow is true where nothing differs but the last place of the computed
// figure, which another processor may round the other way.
func sameRow(a, b row) bool {
	x, err1 := strconv.ParseFloat(a.Computed, 64)
	y, err2 := strconv.ParseFloat(b.Computed, 64)
	want, err3 := strconv.ParseFloat(a.Expected, 64)
	tol, err4 := strconv.ParseFloat(a.Within, 64)
	if errors.Join(err1, err2, err3, err4) != nil || math.Abs(x-y) > 1.5*math.Pow10(lastPlace(want, tol)) {
		return false
	}
	a.Computed = b.Computed
	return a == b
}

// Root is the folder of go.mod.
func Root() (string, error) {
	dir, err := os.Getwd()
	if err != nil {
		return "", err
	}
	for {
		if _, err := os.Stat(filepath.Join(dir, "go.mod")); err == nil {
			return dir, nil
		}
		if dir == filepath.Dir(dir) {
			return "", errors.New("no go.mod here or above")
		}
		dir = filepath.Dir(dir)
	}
}

func sectionFile(root, name string) string {
	return filepath.Join(root, "testdata", "checks", name+".csv")
}

func readSection(file string) ([]row, error) {
	f, err := os.Open(file)
	if err != nil {
		return nil, err
	}
	defer f.Close()
	lines, err := csv.NewReader(f).ReadAll()
	if err != nil {
		return nil, err
	}
	if len(lines) == 0 || !slices.Equal(lines[0], header) {
		return nil, fmt.Errorf("%s does not begin with %s", file, strings.Join(header, ","))
	}
	rows := make([]row, 0, len(lines)-1)
	for _, l := range lines[1:] {
		rows = append(rows, row{l[0], l[1], l[2], Confidence(l[3]), l[4], l[5], l[6], l[7]})
	}
	return rows, nil
}

func writeSection(file string, rows []row) error {
	var text strings.Builder
	w := csv.NewWriter(&text)
	lines := [][]string{header}
	for _, r := range rows {
		lines = append(lines, r.fields())
	}
	if err := w.WriteAll(lines); err != nil {
		return err
	}
	if err := os.MkdirAll(filepath.Dir(file), 0o755); err != nil {
		return err
	}
	return os.WriteFile(file, []byte(text.String()), 0o644)
}
