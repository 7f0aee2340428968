package fit

import (
	_ "embed" // for the two tables
	"encoding/csv"
	"fmt"
	"strconv"
	"strings"
	"sync"

	"gudgeon/trade"
	"gudgeon/units"
)

//go:embed iso286.csv
var isoCSV string

//go:embed ansi_b41.csv
var ansiCSV string

// Band is a pair of limits as deviations from the nominal size.
type Band struct {
	Lower, Upper float64 // m
}

// row is one line of either table. An ISO row uses only one of the two bands.
type row struct {
	over, to    float64 // range of nominal sizes, m
	hole, shaft Band
	source      string
	memory      bool
}

// class is all rows of one name, in the order of the table.
type class struct {
	name string
	rows []row
}

// table is a list of classes; at finds one by name.
type table struct {
	classes []class
	at      map[string]int
}

type tables struct {
	holes, shafts, limits, grades, inch table // limits is holes and shafts together
}

// load reads both tables once; later look-ups allocate nothing.
var load = sync.OnceValues(func() (*tables, error) {
	t := &tables{}
	err := eachLine(isoCSV, 6, func(f []string, n []float64) {
		r := row{over: n[0] * mm, to: n[1] * mm, source: f[5]}
		r.memory = fromMemory(r.source)
		band := Band{n[2] * micron, n[3] * micron}
		switch {
		case strings.HasPrefix(f[0], "IT"):
			r.hole, r.shaft = band, band
			t.grades.add(f[0], r)
		case isHole(f[0]):
			r.hole = band
			t.holes.add(f[0], r)
			t.limits.add(f[0], r)
		default:
			r.shaft = band
			t.shafts.add(f[0], r)
			t.limits.add(f[0], r)
		}
	})
	if err != nil {
		return nil, fmt.Errorf("ISO 286 table: %w", err)
	}
	err = eachLine(ansiCSV, 8, func(f []string, n []float64) {
		t.inch.add(f[0], row{
			over: n[0] * inch, to: n[1] * inch,
			hole: Band{n[2] * thou, n[3] * thou}, shaft: Band{n[4] * thou, n[5] * thou},
			source: f[7], memory: fromMemory(f[7]),
		})
	})
	if err != nil {
		return nil, fmt.Errorf("ANSI B4.1 table: %w", err)
	}
	return t, nil
})

func isHole(name string) bool       { return name[0] >= 'A' && name[0] <= 'Z' }
func fromMemory(source string) bool { return strings.Contains(source, "from memory") }
func (t *table) add(name string, r row) {
	if t.at == nil {
		t.at = map[string]int{}
	}
	i, ok := t.at[name]
	if !ok {
		i = len(t.classes)
		t.at[name] = i
		t.classes = append(t.classes, class{name: name})
	}
	t.classes[i].rows = append(t.classes[i].rows, r)
}

// eachLine hands on the fields of every line after the heading, with those
// between the class and the source read as numbers.
func eachLine(text string, width int, use func(fields []string, numbers []float64)) error {
	reader := csv.NewReader(strings.NewReader(text))
	reader.FieldsPerRecord = width
	lines, err := reader.ReadAll()
	if err != nil {
		return err
	}
	for i, fields := range lines[1:] {
		var numbers []float64
		for _, f := range fields[1 : width-1] {
			n, err := strconv.ParseFloat(f, 64)
			if err != nil {
				return fmt.Errorf("line %d: %w", i+2, err)
			}
			numbers = append(numbers, n)
		}
		use(fields, numbers)
	}
	return nil
}

// names lists a table's classes in order.
func (t *table) names() []string {
	return trade.Names(t.classes, func(c class) string { return c.name })
}

// named finds a class, or says which ones there are.
func (t *table) named(name string) (*class, error) {
	i, ok := t.at[name]
	if !ok {
		return nil, fmt.Errorf("the table has no class %q; it has %s", name, strings.Join(t.names(), ", "))
	}
	return &t.classes[i], nil
}

// indexed finds a class by its place in names.
func (t *table) indexed(i float64) (*class, error) {
	at, ok := trade.Chosen(i, len(t.classes))
	if !ok {
		return nil, fmt.Errorf("class %v is not in the table", i)
	}
	return &t.classes[at], nil
}

// at finds the row of a nominal size.
func (c *class) at(size float64) (*row, error) {
	for i := range c.rows {
		r := &c.rows[i]
		if size > r.over+sameDim && size <= r.to+sameDim {
			return r, nil
		}
	}
	return nil, fmt.Errorf("the table has no %s at %s; it has it for %s", c.name, shown(size), c.ranges())
}

func (c *class) ranges() string {
	var list []string
	for i := 0; i < len(c.rows); i++ {
		from := c.rows[i].over
		for i+1 < len(c.rows) && c.rows[i+1].over == c.rows[i].to {
			i++
		}
		list = append(list, "over "+shown(from)+" to "+shown(c.rows[i].to))
	}
	return strings.Join(list, ", ")
}

// shown gives a size in both units, as nominal sizes go by either.
func shown(size float64) string {
	return units.Show(size, units.Length, units.InchShop, units.Nearest) +
		" (" + units.Show(size, units.Length, units.MetricShop, units.Nearest) + ")"
}
