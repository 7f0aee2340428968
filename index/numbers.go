package index

import (
	"cmp"
	"math"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"unicode"
	"unicode/utf8"

	"gudgeon/units"
)

// A quantity is a number with its unit as found in running text.
type quantity struct {
	kind       units.Kind
	value      float64 // SI
	slack      float64 // half width, SI: what the digits leave open
	digits     string  // the number as written, without thousands commas
	start, end int
}

func (q quantity) term() string {
	kind := strings.ReplaceAll(q.kind.String(), " ", "-")
	return string(quantityMark) + kind + ":" + strconv.FormatFloat(q.value, 'g', 6, 64)
}

// near reports whether two quantities may be the same one, written differently.
func (q quantity) near(other quantity) bool {
	return q.kind == other.kind && math.Abs(q.value-other.value) <= max(q.slack, other.slack)
}

// A spelling is one way to write a unit, in lower case.
type spelling struct {
	text string // as it stands in running text
	kind units.Kind
	read string // as package units reads it
}

// searched lists the kinds people search by. What two kinds share, as lb is
// both a weight and a force, goes to the first: a search decides nothing.
func searched() []units.Kind {
	return []units.Kind{
		units.Length, units.Mass, units.Temperature, units.Torque, units.Pressure, units.Force,
		units.Angle, units.HeatInput, units.Rotation, units.Speed, units.Feed, units.Time,
		units.Current, units.Voltage, units.Power, units.Ratio,
	}
}

// spellings lists every unit's spellings by their first byte, longest first.
func spellings() map[byte][]spelling {
	list := []spelling{
		{"ton", units.Mass, "short tons"}, // in these notes always 2,000 lb
		{"tons", units.Mass, "short tons"},
		{"inch", units.Length, "in"},
		{"hours", units.Time, "h"},
	}
	for _, k := range searched() {
		for _, u := range units.OfKind(k) {
			for _, s := range append([]string{u.Symbol}, u.Aliases...) {
				if s != "" && !strings.HasSuffix(s, ".") { // the point may end the sentence
					list = append(list, spelling{strings.ToLower(s), k, s})
				}
			}
		}
	}
	slices.SortStableFunc(list, func(a, b spelling) int { return cmp.Compare(len(b.text), len(a.text)) })
	byFirst := map[byte][]spelling{}
	for _, s := range list {
		byFirst[s.text[0]] = append(byFirst[s.text[0]], s)
	}
	return byFirst
}

// firstByte is the first byte of a text in lower case, 0 when there is none.
func firstByte(text string) byte {
	if text == "" {
		return 0
	}
	if c := text[0]; 'A' <= c && c <= 'Z' {
		return c + 'a' - 'A'
	}
	return text[0]
}

// number takes 1,850 and 3-1/8 and .050 and 12.5.
var number = regexp.MustCompile(`^(?:\d{1,3}(?:,\d{3})+(?:\.\d+)?|\d+[- ]\d+/\d+|\d+/\d+|\d*\.\d+|\d+)`)

// quantities finds the quantities in a text.
func (r *reader) quantities(text string) []quantity {
	var found []quantity
	for i := 0; i < len(text); i++ {
		if !beginsNumber(text[i:]) {
			continue
		}
		end := i + len(number.FindString(text[i:]))
		if q, ok := r.quantity(text, i, end); ok && !inWord(text, i, end) {
			found = append(found, q)
		}
		i = end
	}
	return found
}

func beginsNumber(text string) bool {
	if text[0] == '.' && len(text) > 1 {
		return class(text[1]) == figure
	}
	return class(text[0]) == figure
}

// inWord holds for the digits of E7018, 40-2217-C and 1.2.3.
func inWord(text string, start, end int) bool {
	before, _ := utf8.DecodeLastRuneInString(text[:start])
	if before == '-' { // a range, 5-7 mm, has a quantity behind its dash; a code has not
		before, _ = utf8.DecodeLastRuneInString(text[:start-1])
		return unicode.IsLetter(before) || strings.HasPrefix(text[end:], "-")
	}
	return start > 0 && (unicode.IsLetter(before) || unicode.IsDigit(before) || strings.ContainsRune("./,", before))
}

// quantity reads the number at text[start:end] with the unit behind it. A
// decimal or a fraction without one is inches, as everywhere in the shop.
func (r *reader) quantity(text string, start, end int) (quantity, bool) {
	digits := text[start:end]
	rest := text[end:]
	gap := 0
	if rest != "" && (rest[0] == ' ' || rest[0] == '-') {
		gap = 1
	}
	for _, s := range r.units[firstByte(rest[gap:])] {
		if !startsWith(rest[gap:], s) {
			continue
		}
		if q, ok := measure(digits, s.kind, s.read); ok {
			q.start, q.end = start, end+gap+len(s.text)
			return q, true
		}
	}
	if !strings.ContainsAny(digits, "./") || continues(rest) {
		return quantity{}, false
	}
	q, ok := measure(digits, units.Length, "in")
	q.start, q.end = start, end
	return q, ok
}

// continues tells that a number is the head of something longer, as in 3.2.1 or 40.5B.
func continues(rest string) bool {
	if len(rest) > 1 && (rest[0] == '.' || rest[0] == '-' || rest[0] == '/') {
		rest = rest[1:]
	}
	next, _ := utf8.DecodeRuneInString(rest)
	return unicode.IsDigit(next) || unicode.IsLetter(next)
}

// startsWith looks for a unit's spelling that ends where a word may end.
func startsWith(text string, s spelling) bool {
	if len(text) < len(s.text) || !strings.EqualFold(text[:len(s.text)], s.text) {
		return false
	}
	if s.text == "a" && text[0] == 'a' { // "had 3 a day" is no current
		return false
	}
	last, _ := utf8.DecodeLastRuneInString(s.text)
	next, _ := utf8.DecodeRuneInString(text[len(s.text):])
	return !unicode.IsLetter(last) || !unicode.IsLetter(next) && !unicode.IsDigit(next)
}

func measure(digits string, kind units.Kind, unit string) (quantity, bool) {
	m, err := units.Parse(kind, digits+" "+unit, units.Unit{})
	if err != nil {
		return quantity{}, false
	}
	written := (m.Value - m.Unit.Offset) / m.Unit.Factor
	return quantity{
		kind: kind, value: m.Value, slack: slack(digits, written) * m.Unit.Factor,
		digits: plainDigits(digits),
	}, true
}

// The digits say how close a number is meant, but never closer than a drawing
// rounds when it changes units, and never as wide as a different size.
const (
	closest = 0.0005
	widest  = 0.025
)

// slack is half of the last digit that means something, within bounds.
func slack(digits string, written float64) float64 {
	half := 0.0
	if _, decimals, found := strings.Cut(digits, "."); found {
		half = 0.5 * math.Pow10(-len(decimals))
	} else if !strings.Contains(digits, "/") {
		half = 0.5 * math.Pow10(roundedZeros(plainDigits(digits)))
	}
	size := math.Abs(written)
	return min(max(half, closest*size), widest*size)
}

// roundedZeros counts the zeros at the end of 840 and 1850, which are rounded; the
// one of 80 mm is not.
func roundedZeros(whole string) int {
	if len(whole) < 3 {
		return 0
	}
	return len(whole) - len(strings.TrimRight(whole, "0"))
}

func plainDigits(s string) string { return strings.ReplaceAll(s, ",", "") }
