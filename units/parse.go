package units

import (
	"fmt"
	"math"
	"strconv"
	"strings"
	"unicode/utf8"
)

// Measure is what a person typed, understood.
type Measure struct {
	Value float64 // SI
	Unit  Unit    // the unit it was written in
	Bare  bool    // no unit was written, so Unit is the asked one

	// Limits of a toleranced size, as deviations from Value in SI:
	// 3.000 +.002/-.000 has Upper 0.002 in and Lower 0.
	HasLimits    bool
	Upper, Lower float64

	// U is the half width typed after ±, in SI, taken as an expanded
	// uncertainty with k = 2 (JCGM 100, 6.2); 0 when none was typed.
	U float64
}

// ParseError says what could not be understood and how to write it.
type ParseError struct {
	Text string // what was typed
	What string // what is wrong with it
	Hint string // how to write it
}

func (e *ParseError) Error() string {
	if e.Hint == "" {
		return fmt.Sprintf("%q: %s", e.Text, e.What)
	}
	return fmt.Sprintf("%q: %s; %s", e.Text, e.What, e.Hint)
}

// longest text worth reading as one quantity.
const longest = 100

// Parse reads a quantity of kind k as people type it: 3-1/8", .050, 50 thou,
// 1,250 lb, 12 ft 6 in, 350 °F, 3.000 +.002/-.000, 3.002 ± .0005. A bare number
// is in unit bare; give the zero Unit when a unit must be written. What could
// mean two things is refused with a *ParseError that shows how to write it.
func Parse(k Kind, text string, bare Unit) (Measure, error) {
	p := parser{kind: k, bare: bare, text: text}
	switch {
	case len(text) > longest:
		p.text = text[:cut(text, 40)] + "…"
		return Measure{}, p.fail("too long for one measurement", p.example())
	case !utf8.ValidString(text):
		return Measure{}, p.fail("not readable text", p.example())
	case !k.Numeric():
		return Measure{}, p.fail("a "+k.String()+" is not a quantity", "")
	}
	return p.measure()
}

func cut(text string, n int) int {
	for n > 0 && !utf8.RuneStart(text[n]) {
		n--
	}
	return n
}

type parser struct {
	kind Kind
	bare Unit
	text string
}

func (p *parser) fail(what, hint string) error {
	return &ParseError{Text: p.text, What: what, Hint: hint}
}

var plainSpelling = strings.NewReplacer(
	"−", "-", "–", "-", "’", "'", "‘", "'", "”", `"`, "“", `"`, "''", `"`, "+/-", "±", "+-", "±", "\u00a0", " ", "\t", " ",
	"½", " 1/2", "¼", " 1/4", "¾", " 3/4", "⅛", " 1/8", "⅜", " 3/8", "⅝", " 5/8", "⅞", " 7/8",
)

func (p *parser) measure() (Measure, error) {
	text := strings.TrimSpace(plainSpelling.Replace(p.text))
	if text == "" {
		return Measure{}, p.fail("nothing written", p.example())
	}
	if body, plus, found := strings.Cut(text, "±"); found {
		return p.withUncertainty(body, plus)
	}
	if i := strings.IndexByte(text, '+'); i > 0 && !isExponent(text, i) {
		return p.withLimits(text[:i], text[i:])
	}
	return p.plain(text)
}

// isExponent tells 1e+3 from 3 +.002.
func isExponent(text string, i int) bool {
	return i >= 2 && (text[i-1] == 'e' || text[i-1] == 'E') && isDigit(text[i-2]) && i+1 < len(text) && isDigit(text[i+1])
}

func isDigit(c byte) bool { return '0' <= c && c <= '9' }

// plain reads one quantity, possibly compound as in 12 ft 6-1/2 in.
func (p *parser) plain(text string) (Measure, error) {
	number, rest, err := p.number(text)
	if err != nil {
		return Measure{}, err
	}
	spelled, more := splitUnit(rest)
	unit, err := p.unit(spelled)
	if err != nil {
		return Measure{}, err
	}
	if err := p.checkComma(text, unit); err != nil {
		return Measure{}, err
	}
	if spelled == "" && unit.Name == "percent" && 0 < number && number <= 1 {
		return Measure{}, p.fail("a share of one or a part of a percent", fmt.Sprintf("write %v%% or %v%%", number, number*100))
	}
	m := Measure{Value: unit.ToSI(number), Unit: unit, Bare: spelled == ""}
	if more != "" {
		small, err := p.smaller(unit, more)
		if err != nil {
			return Measure{}, err
		}
		m.Value += math.Copysign(small, number)
	}
	if math.IsNaN(m.Value) || math.IsInf(m.Value, 0) {
		return Measure{}, p.fail("not a finite number", p.example())
	}
	if p.kind == Temperature && m.Value < 0 {
		return Measure{}, p.fail("colder than absolute zero", p.example())
	}
	return m, nil
}

// smaller reads the second part of a compound quantity, the 6 in of 12 ft 6 in.
func (p *parser) smaller(big Unit, text string) (float64, error) {
	text = strings.TrimPrefix(text, "-")
	number, rest, err := p.number(text)
	if err != nil {
		return 0, err
	}
	spelled, more := splitUnit(rest)
	unit, ok := Lookup(p.kind, spelled)
	if spelled == "" || !ok || more != "" || number < 0 {
		return 0, p.fail("too many parts", p.example())
	}
	feetInches := big.Name == "ft" && unit.Name == "inch"
	poundsOunces := big.Name == "lb" && unit.Name == "oz"
	if !feetInches && !poundsOunces {
		return 0, p.fail("only feet and inches, or pounds and ounces, go together", p.example())
	}
	if unit.ToSI(number) >= big.ToSI(1) {
		return 0, p.fail(fmt.Sprintf("%s is a whole %s or more", strings.TrimSpace(text), big.Symbol), "carry it over into the "+big.Symbol)
	}
	return unit.ToSI(number), nil
}

// withUncertainty reads 3.002 ± .0005 in and 3.002 in ± .5 thou.
func (p *parser) withUncertainty(body, plus string) (Measure, error) {
	m, half, err := p.pair(body, plus)
	if err != nil {
		return Measure{}, err
	}
	if half <= 0 {
		return Measure{}, p.fail("what stands after ± must be more than zero", p.example())
	}
	m.U = half
	return m, nil
}

// withLimits reads 3.000 +.002/-.000, units before, after or nowhere.
func (p *parser) withLimits(body, limits string) (Measure, error) {
	upper, lower, found := strings.Cut(limits, "/")
	if !found {
		upper, lower, found = cutBefore(limits, '-')
	}
	lower = strings.TrimSpace(lower)
	if !found || (!strings.HasPrefix(lower, "-") && !strings.HasPrefix(lower, "+")) {
		return Measure{}, p.fail("limits need both signs", "write them like 3.000 +.002/-.000")
	}
	number, unitAfter, err := p.number(lower)
	if err != nil {
		return Measure{}, err
	}
	unitAfter = strings.TrimSpace(unitAfter)
	if _, rest, err := p.number(strings.TrimSpace(body)); err == nil && strings.TrimSpace(rest) == "" {
		body += " " + unitAfter
	}
	m, err := p.plain(strings.TrimSpace(body))
	if err != nil {
		return Measure{}, err
	}
	if unitAfter != "" {
		after, err := p.unit(unitAfter)
		if err != nil {
			return Measure{}, err
		}
		if after.Name != m.Unit.Name {
			return Measure{}, p.fail("size and limits are in different units", "write both in "+m.Unit.Symbol)
		}
	}
	up, rest, err := p.number(strings.TrimSpace(upper))
	if err != nil {
		return Measure{}, err
	}
	if strings.TrimSpace(rest) != "" {
		return Measure{}, p.fail("limits cannot be read", "write them like 3.000 +.002/-.000")
	}
	m.HasLimits, m.Upper, m.Lower = true, up*m.Unit.Factor, number*m.Unit.Factor
	if m.Lower > m.Upper {
		return Measure{}, p.fail("the lower limit is above the upper", "write them like 3.000 +.002/-.000")
	}
	return m, nil
}

func cutBefore(text string, c byte) (before, after string, found bool) {
	i := strings.LastIndexByte(text, c)
	if i < 0 {
		return text, "", false
	}
	return text[:i], text[i:], true
}

// pair reads a body and a half width that may share one unit at the end.
func (p *parser) pair(body, plus string) (Measure, float64, error) {
	body, plus = strings.TrimSpace(body), strings.TrimSpace(plus)
	number, rest, err := p.number(plus)
	if err != nil {
		return Measure{}, 0, err
	}
	rest = strings.TrimSpace(rest)
	if _, unitBefore, err := p.number(body); err == nil && strings.TrimSpace(unitBefore) == "" && rest != "" {
		body += " " + rest
	}
	m, err := p.plain(body)
	if err != nil {
		return Measure{}, 0, err
	}
	width := m.Unit
	if rest != "" {
		if width, err = p.unit(rest); err != nil {
			return Measure{}, 0, err
		}
	}
	return m, number * width.Factor, nil
}

// number reads the number at the head of text: -1,250.5, .050, 1/8, 3-1/8, 3 1/8, 1e3.
func (p *parser) number(text string) (value float64, rest string, err error) {
	sign, body := 1.0, text
	if body != "" && (body[0] == '-' || body[0] == '+') {
		if body[0] == '-' {
			sign = -1
		}
		body = body[1:]
	}
	head := scanDecimal(body)
	if head == "" {
		return 0, "", p.fail("no number found", p.example())
	}
	rest = body[len(head):]
	if strings.HasPrefix(rest, "/") {
		value, rest, err = p.fraction(head, rest)
		return sign * value, rest, err
	}
	whole, err := p.decimal(head)
	if err != nil {
		return 0, "", err
	}
	if numerator, tail, ok := mixed(rest); ok {
		if strings.ContainsAny(head, ".,eE") {
			return 0, "", p.fail("a decimal and a fraction together", "write 3-1/8 or 3.125")
		}
		part, after, err := p.fraction(numerator, tail)
		if err != nil {
			return 0, "", err
		}
		if part >= 1 {
			return 0, "", p.fail("the fraction is one or more", "write it like 3-1/8")
		}
		return sign * (whole + part), after, nil
	}
	return sign * whole, rest, nil
}

// mixed recognises the -1/8 or the space 1/8 after a whole number.
func mixed(rest string) (numerator, tail string, ok bool) {
	if rest == "" || (rest[0] != '-' && rest[0] != ' ') {
		return "", "", false
	}
	after := strings.TrimLeft(rest[1:], " ")
	if rest[0] == '-' {
		after = rest[1:]
	}
	n := scanDigits(after)
	if n == "" || !strings.HasPrefix(after[len(n):], "/") {
		return "", "", false
	}
	return n, after[len(n):], true
}

// fraction reads /8 after its numerator.
func (p *parser) fraction(numerator, slash string) (float64, string, error) {
	denominator := scanDigits(slash[1:])
	if denominator == "" || strings.ContainsAny(numerator, ".,eE") {
		return 0, "", p.fail("the fraction cannot be read", "write it like 1/8 or 3-1/8")
	}
	n, _ := strconv.ParseFloat(numerator, 64)
	d, _ := strconv.ParseFloat(denominator, 64)
	if d == 0 {
		return 0, "", p.fail("division by zero", "write it like 1/8 or 3-1/8")
	}
	rest := slash[1+len(denominator):]
	if strings.HasPrefix(rest, "/") || strings.HasPrefix(rest, ".") {
		return 0, "", p.fail("the fraction cannot be read", "write it like 1/8 or 3-1/8")
	}
	return n / d, rest, nil
}

func scanDigits(text string) string {
	i := 0
	for i < len(text) && isDigit(text[i]) {
		i++
	}
	return text[:i]
}

// scanDecimal takes the longest head made of digits, commas, points and an exponent.
func scanDecimal(text string) string {
	i := 0
	for i < len(text) && (isDigit(text[i]) || text[i] == '.' || text[i] == ',') {
		i++
	}
	head := strings.TrimRight(text[:i], ",")
	i = len(head)
	if !strings.ContainsAny(head, "0123456789") {
		return ""
	}
	if i < len(text) && (text[i] == 'e' || text[i] == 'E') {
		j := i + 1
		if j < len(text) && (text[j] == '+' || text[j] == '-') {
			j++
		}
		if digits := scanDigits(text[min(j, len(text)):]); digits != "" {
			return text[:j+len(digits)]
		}
	}
	return head
}

// decimal reads digits with thousands commas. A comma anywhere else could be a
// decimal comma, so it is refused.
func (p *parser) decimal(head string) (float64, error) {
	if strings.Contains(head, ",") && !thousands(head) {
		return 0, p.fail("the comma could be a decimal mark or a thousands mark", "write 1250 or 1,250 for thousands and 1.25 for decimals")
	}
	v, err := strconv.ParseFloat(strings.ReplaceAll(head, ",", ""), 64)
	if err != nil {
		return 0, p.fail("not a number", p.example())
	}
	return v, nil
}

func thousands(head string) bool {
	whole, _, _ := strings.Cut(head, ".")
	groups := strings.Split(whole, ",")
	if len(groups[0]) == 0 || len(groups[0]) > 3 || groups[0][0] == '0' {
		return false
	}
	for _, g := range groups[1:] {
		if len(g) != 3 {
			return false
		}
	}
	return !strings.Contains(strings.TrimPrefix(head, whole), ",")
}

// checkComma refuses 3,125 in: nobody measures three thousand inches, but many
// write 3,125 for three and an eighth.
func (p *parser) checkComma(text string, u Unit) error {
	if u.Kind != Length || u.Name == "um" {
		return nil
	}
	head := scanDecimal(strings.TrimLeft(text, "+-"))
	if strings.Count(head, ",") == 1 && !strings.Contains(head, ".") {
		v := strings.Replace(head, ",", "", 1)
		return p.fail("the comma could be a decimal mark or a thousands mark", fmt.Sprintf("write %s %s or %s %s", v, u.Symbol, strings.Replace(head, ",", ".", 1), u.Symbol))
	}
	return nil
}

// splitUnit cuts the unit at the head of text from a further number behind it.
func splitUnit(text string) (unit, more string) {
	text = strings.TrimSpace(text)
	for i := 0; i < len(text); i++ {
		startsNumber := isDigit(text[i]) || (text[i] == '.' && i+1 < len(text) && isDigit(text[i+1]))
		glued := i > 0 && text[i-1] != ' ' && text[i-1] != '\'' && text[i-1] != '-' // the 2 of in2
		if startsNumber && i > 0 && !glued {
			return strings.TrimRight(strings.TrimSpace(text[:i]), "-"), text[i:]
		}
	}
	return text, ""
}

// unit finds the unit that is spelled, or the asked one when none is.
func (p *parser) unit(spelled string) (Unit, error) {
	if spelled == "" {
		if p.bare.IsZero() {
			return Unit{}, p.fail("no unit", p.example())
		}
		return p.bare, nil
	}
	spelled = strings.Join(strings.Fields(spelled), " ")
	if u, ok := Lookup(p.kind, spelled); ok {
		return u, nil
	}
	if hint, ok := p.ambiguous(strings.ToLower(spelled)); ok {
		return Unit{}, p.fail(spelled+" can mean more than one unit", hint)
	}
	for _, u := range all {
		if u.Kind != p.kind && u.spells(strings.ToLower(spelled)) && u.Kind.Numeric() {
			return Unit{}, p.fail(fmt.Sprintf("%s measures %s, but %s is asked for", spelled, u.Kind, p.kind), p.example())
		}
	}
	return Unit{}, p.fail(fmt.Sprintf("unit %q is not known for %s", spelled, p.kind), p.example())
}

// ambiguous knows the words that shops use for different sizes.
func (p *parser) ambiguous(spelled string) (hint string, ok bool) {
	switch spelled {
	case "ton", "tons", "ton-force", "tonf":
		if p.kind == Mass || p.kind == Force {
			return "write short ton (2,000 lb), long ton (2,240 lb) or t (1,000 kg)", true
		}
	case "mil", "mils":
		if p.kind == Length {
			return "write thou (0.001 in) or mm", true
		}
	case "tenth", "tenths":
		if p.kind == Length {
			return "write .0001 in, or .1 of the unit you mean", true
		}
	}
	return "", false
}

// example shows how to write a quantity of the asked kind.
func (p *parser) example() string {
	examples := map[Kind]string{
		Number: "3", Ratio: "95 % or 0.95", Length: "3-1/8 in, .050 in, 50 thou or 79.4 mm", Area: "2.5 sq in",
		Volume: "12 cu in", Mass: "1,250 lb or 570 kg", Force: "800 lbf or 3.5 kN", Pressure: "2,500 psi or 17 MPa",
		Torque: "75 lbf-ft or 100 N·m", Angle: "45 deg", Temperature: "350 °F or 175 °C",
		TemperatureDifference: "40 °F or 20 °C", Time: "12 min", Speed: "300 ft/min", Rotation: "120 rpm",
		Feed: ".008 in/rev", Current: "180 A", Voltage: "24 V", Power: "5 hp", HeatInput: "45 kJ/in",
	}
	if e, ok := examples[p.kind]; ok {
		return "write it like " + e
	}
	return "write it like 1.5 " + Usual(p.kind, InchShop).Symbol
}
