package lift

import (
	"cmp"
	"errors"

	"gudgeon/trade"
	"gudgeon/units"
)

var chainSizeRange = trade.Between("chain size", 0.25*inch-touch, 1.5*inch+touch, units.Length, "")

// ChainCapacity is the field rule for common open-link chain, 8·D² short tons
// with D in inches, in kg; it holds a safety factor of 6.
//
// diameter: of the link's stock at its thinnest, m, 1/4 to 1-1/2 in. Out of
// range is an error. A cross-check only: a sling chain's tag governs, and chain
// without one is not for lifting. Source: US Army FM 5-125 (1995) p. 3-2.
func ChainCapacity(diameter float64) (float64, error) {
	d := diameter / inch
	return 8 * d * d * shortTon, chainSizeRange.CheckAs("chain diameter", diameter)
}

// chainRow is the least thickness left at any point of a link, in inches, by
// nominal size.
type chainRow struct {
	size  string
	least float64
}

var chainWear = []chainRow{
	{"1/4 in", 13. / 64}, {"3/8 in", 19. / 64}, {"1/2 in", 25. / 64}, {"5/8 in", 31. / 64},
	{"3/4 in", 19. / 32}, {"7/8 in", 45. / 64}, {"1 in", 13. / 16}, {"1-1/8 in", 29. / 32},
	{"1-1/4 in", 1}, {"1-3/8 in", 1 + 3./32}, {"1-1/2 in", 1 + 3./16},
}

func chainSizes() []string {
	return trade.Names(chainWear, func(r chainRow) string { return r.size })
}

// ChainWearLimit is the least thickness in m that may be left at any point of a
// chain link of a nominal size ("1/4 in" to "1-1/2 in"); any other name is an
// error. Source: Mich. Admin. Code R 408.14923 Table 1.
func ChainWearLimit(size string) (float64, error) {
	for _, c := range chainWear {
		if c.size == size {
			return c.least * inch, nil
		}
	}
	return 0, errors.New("no wear limit is listed for chain of size " + size)
}

// TieDowns is a load held on a vehicle by ties of one kind.
type TieDowns struct {
	Weight float64 // of the load, kg, 0.1 to 500 000
	Rating float64 // working load limit of one tie, kg, 0.1 to 500 000
	Direct float64 // ties from the vehicle to the load: each counts half; 0 to 100, whole, 1
	Over   float64 // ties from the vehicle over or through the load and back to it: each counts in full; 0 to 100, whole, 1
}

// TieDownsResult compares what the ties hold with what they must.
type TieDownsResult struct {
	In     TieDowns
	Needed float64 // kg
	Total  float64 // kg
	Use    float64 // Needed/Total, a ratio
}

var tieRange = trade.Between("tie", 0, 100, units.Number, "")

// TieDown compares the working load limits of all ties with half the weight:
// needed = W/2, total = rating·(direct/2 + over), use = needed/total.
//
// No ties, part of a tie, or anything out of range is an error. Sources: 49 CFR
// 393.102 (half the weight) and 393.106 as of 2002 (a tie to the load counts
// half).
func TieDown(in TieDowns) (TieDownsResult, error) {
	err := cmp.Or(loadRange.CheckAs("weight", in.Weight), loadRange.CheckAs("tie's working load limit", in.Rating),
		tieRange.CheckAs("ties to the load", in.Direct), tieRange.CheckAs("ties over the load", in.Over))
	if err != nil {
		return TieDownsResult{}, err
	}
	if in.Direct != float64(int(in.Direct)) || in.Over != float64(int(in.Over)) {
		return TieDownsResult{}, errors.New("count whole ties")
	}
	r := TieDownsResult{In: in, Needed: in.Weight / 2, Total: in.Rating * (in.Direct/2 + in.Over)}
	if r.Total == 0 {
		return TieDownsResult{}, errors.New("the load is not tied down at all")
	}
	r.Use = r.Needed / r.Total
	return r, nil
}
