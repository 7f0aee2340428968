package bore

import (
	"errors"
	"fmt"
	"math"
	"math/bits"
)

// Feature says what a candidate for the true centre was taken from.
type Feature uint8

// The features, those an earlier repair is least likely to have cut first.
const (
	OutsideOfBoss Feature = iota
	UntouchedShoulder
	OppositeBore
	GreaseHole
	Counterbore
	WornBore
	OtherFeature
)

var featureNames = [...]string{"outside of the boss", "untouched shoulder", "opposite bore", "grease hole",
	"counterbore", "worn bore", "other feature"}

func (f Feature) String() string {
	if int(f) >= len(featureNames) {
		return "unknown feature"
	}
	return featureNames[f]
}

// Suspect reports whether an earlier repair of the bore is likely to have cut
// the feature in the same set-up, so that it would share that repair's error.
func (f Feature) Suspect() bool { return f == WornBore || f == Counterbore }

// Candidate is a feature that the true centre could be taken from.
type Candidate struct {
	Name    string // as the machinist calls it; empty: the feature's name
	Feature Feature
	Centre  XY      // measured from the bar, m, within 1.5 m
	U       float64 // standard uncertainty of the centre in each direction, m, 1 nm to 100 mm
}

func (c Candidate) name() string {
	if c.Name != "" {
		return c.Name
	}
	return c.Feature.String()
}

// Pair compares two candidates.
type Pair struct {
	A, B     int     // indices of the candidates, A < B
	Distance float64 // between their centres, m
	U        float64 // standard uncertainty of that distance, m: √(uA² + uB²)
	En       float64 // normalised distance: Distance/(Coverage·U); 1 or less agrees
	Agree    bool
}

// Verdict is what the comparison comes to.
type Verdict uint8

// The verdicts.
const (
	AllAgree   Verdict = iota
	OddOneOut          // a majority agrees; one or more stand apart
	Undecided          // no group of two or more is clearly the larger
	OneFeature         // a single candidate: nothing to compare with
)

func (v Verdict) String() string {
	return [...]string{"all agree", "odd one out", "undecided", "one feature only"}[v]
}

// Odd is a candidate that does not agree with the group.
type Odd struct {
	Candidate int
	Off       Offset  // from the group's centre
	En        float64 // normalised distance from the group's centre, 1
}

// Comparison is the answer to: which centre is right?
type Comparison struct {
	Verdict    Verdict
	Candidates []Candidate
	Pairs      []Pair
	Group      []int   // the largest agreeing group, by index; nil unless AllAgree or OddOneOut
	Centre     XY      // of the group, mean weighted by 1/U², m
	U          float64 // its standard uncertainty in each direction, m
	Odd        []Odd
	Blind      float64 // greatest offset that two agreeing candidates could still hide, m: Coverage·U of the vaguest pair

	// EarlierRepair says that every odd one out is a feature which an earlier
	// repair would have cut, and that the group holds one it would not have.
	EarlierRepair bool
	// OnlySuspects says that all which agree could share one repair's error. If
	// something else then disagrees, the verdict is Undecided.
	OnlySuspects bool
	Next         []Feature // worth measuring next, best first
}

// Compare returns which candidates agree about the centre, and which do not.
//
//	En = |cA − cB| / (k·√(uA² + uB²)), k = Coverage; En <= 1 agrees
//
// The group is the largest set in which every pair agrees. Of two sets as large,
// the one with more features that an earlier repair leaves alone is taken; if
// that does not tell either, the verdict is Undecided. One to 12 candidates.
// Errors: none or too many, a centre or an uncertainty out of range (zero is:
// nobody measures without uncertainty). Source: En number as in ISO/IEC 17043
// and ISO 13528 (from memory); the choice of the group is ours.
func Compare(list []Candidate) (*Comparison, error) {
	if len(list) == 0 || len(list) > 12 {
		return nil, errors.New("give from one to twelve features to take the centre from")
	}
	for _, c := range list {
		if int(c.Feature) >= len(featureNames) {
			return nil, errors.New("unknown kind of feature")
		}
		if err := errors.Join(limShift.Check(c.Centre.X), limShift.Check(c.Centre.Y), limU.Check(c.U)); err != nil {
			return nil, fmt.Errorf("%s: %w", c.name(), err)
		}
	}
	cmp := &Comparison{Candidates: list}
	agrees := cmp.pairs()
	cmp.choose(agrees)
	cmp.settle()
	cmp.Next = cmp.next()
	return cmp, nil
}

// pairs compares all; bit j of agrees[i] says that i and j agree.
func (c *Comparison) pairs() (agrees [12]uint) {
	for i, a := range c.Candidates {
		agrees[i] |= 1 << i
		for j := i + 1; j < len(c.Candidates); j++ {
			b := c.Candidates[j]
			p := Pair{A: i, B: j, Distance: a.Centre.Sub(b.Centre).Len(), U: math.Hypot(a.U, b.U)}
			p.En = p.Distance / (Coverage * p.U)
			p.Agree = p.En <= 1
			if p.Agree {
				agrees[i] |= 1 << j
				agrees[j] |= 1 << i
				c.Blind = max(c.Blind, Coverage*p.U)
			}
			c.Pairs = append(c.Pairs, p)
		}
	}
	return agrees
}

// choose finds the largest agreeing set.
func (c *Comparison) choose(agrees [12]uint) {
	n := len(c.Candidates)
	best, rank, ties := uint(0), -1, 0
	for set := uint(1); set < 1<<n; set++ {
		if !clique(set, agrees) {
			continue
		}
		switch r := 100*bits.OnesCount(set) + c.untouched(set); {
		case r > rank:
			best, rank, ties = set, r, 0
		case r == rank:
			ties++
		}
	}
	switch size := bits.OnesCount(best); {
	case n == 1:
		c.Verdict = OneFeature
		return
	case size == n:
		c.Verdict = AllAgree
	case size < 2 || ties > 0:
		c.Verdict = Undecided
		return
	default:
		c.Verdict = OddOneOut
	}
	for i := range n {
		if best&(1<<i) != 0 {
			c.Group = append(c.Group, i)
		}
	}
}

func clique(set uint, agrees [12]uint) bool {
	for rest := set; rest != 0; rest &= rest - 1 {
		if set&^agrees[bits.TrailingZeros(rest)] != 0 {
			return false
		}
	}
	return true
}

func (c *Comparison) untouched(set uint) (n int) {
	for i, k := range c.Candidates {
		if set&(1<<i) != 0 && !k.Feature.Suspect() {
			n++
		}
	}
	return n
}

// settle works out the group's centre and how far the others are from it.
func (c *Comparison) settle() {
	if c.Group == nil {
		return
	}
	weights := 0.0
	in := map[int]bool{}
	c.OnlySuspects = true
	for _, i := range c.Group {
		k := c.Candidates[i]
		w := 1 / (k.U * k.U)
		weights += w
		c.Centre = c.Centre.Add(k.Centre.Times(w))
		in[i] = true
		c.OnlySuspects = c.OnlySuspects && k.Feature.Suspect()
	}
	c.Centre = c.Centre.Times(1 / weights)
	c.U = 1 / math.Sqrt(weights)
	c.EarlierRepair = !c.OnlySuspects
	for i, k := range c.Candidates {
		if in[i] {
			continue
		}
		d := k.Centre.Sub(c.Centre)
		u := math.Hypot(k.U, c.U)
		o := Offset{XY: d, Size: d.Len(), Clock: d.Clock(), U: u, Significant: d.Len() > Coverage*u}
		c.Odd = append(c.Odd, Odd{i, o, o.Size / (Coverage * u)})
		c.EarlierRepair = c.EarlierRepair && k.Feature.Suspect()
	}
	c.EarlierRepair = c.EarlierRepair && len(c.Odd) > 0
	if c.OnlySuspects && len(c.Odd) > 0 {
		// Outvoted, but by features that share one set-up: that is no majority.
		c.Verdict, c.Group, c.Odd, c.Centre, c.U = Undecided, nil, nil, XY{}, 0
	}
}

// next lists the features that have not been measured and would decide.
func (c *Comparison) next() (out []Feature) {
	var seen [len(featureNames)]bool
	for _, k := range c.Candidates {
		seen[k.Feature] = true
	}
	for f := OutsideOfBoss; f <= GreaseHole; f++ {
		if !seen[f] {
			out = append(out, f)
		}
	}
	return out
}

// Trusts reports whether a candidate belongs to the agreeing group, with at
// least one member that an earlier repair left alone.
func (c *Comparison) Trusts(candidate int) bool {
	if c.OnlySuspects {
		return false
	}
	for _, i := range c.Group {
		if i == candidate {
			return true
		}
	}
	return false
}
