package rules

import "fmt"

// Verdict is the outcome of a rule, or the worst of several.
type Verdict uint8

// The verdicts, from best to worst: a job's verdict is its worst. Waiting is
// worse than a caution, since a caution can be signed and a missing reading
// cannot.
const (
	NotNeeded Verdict = iota // its when does not hold
	Go
	Caution
	Waiting // a reading it needs is missing
	Stop
)

var verdictNames = [...]string{"not needed", "go", "caution", "waiting", "stop"}

func (v Verdict) String() string { return verdictNames[v] }

// MarshalText writes the verdict's name.
func (v Verdict) MarshalText() ([]byte, error) { return []byte(v.String()), nil }

// UnmarshalText reads a verdict's name.
func (v *Verdict) UnmarshalText(text []byte) error {
	for i, name := range verdictNames {
		if name == string(text) {
			*v = Verdict(i)
			return nil
		}
	}
	return fmt.Errorf("%q is not a verdict", text)
}

// Worse gives the worse of two verdicts.
func Worse(a, b Verdict) Verdict { return max(a, b) }

// Level says how grave it is when a rule's check does not hold.
type Level uint8

// The levels.
const (
	LevelNote Level = iota // worth knowing; the verdict stays go
	LevelCaution
	LevelStop
)

var levelNames = [...]string{"note", "caution", "stop"}

func (l Level) String() string { return levelNames[l] }

// MarshalText writes the level's name.
func (l Level) MarshalText() ([]byte, error) { return []byte(l.String()), nil }

// ParseLevel reads a level's name.
func ParseLevel(name string) (Level, bool) {
	for i, n := range levelNames {
		if n == name {
			return Level(i), true
		}
	}
	return LevelStop, false
}

// verdict is what a failing check of this level gives.
func (l Level) verdict() Verdict {
	switch l {
	case LevelNote:
		return Go
	case LevelCaution:
		return Caution
	}
	return Stop
}
