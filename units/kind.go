package units

// Kind says what a number measures. Two kinds may share dimensions and still
// be different: a torque is not an energy, a temperature is not a temperature
// difference, a line load is not a stiffness.
type Kind uint8

// The kinds. The comment gives the SI unit in which values are held.
const (
	Invalid               Kind = iota
	Number                     // a bare number or count, 1
	Ratio                      // a share, 1 (0.99 is 99 %)
	Length                     // m
	Area                       // m²
	Volume                     // m³
	SecondMoment               // second moment of area, m⁴
	Mass                       // kg
	Density                    // kg/m³
	Force                      // N
	Pressure                   // pressure or stress, Pa
	Torque                     // torque or moment, N·m
	Energy                     // J
	Power                      // W
	Stiffness                  // N/m
	LineLoad                   // force per length of weld, N/m
	Angle                      // rad
	Temperature                // K
	TemperatureDifference      // K
	Expansion                  // thermal expansion, 1/K
	Time                       // s
	Speed                      // m/s
	Rotation                   // rotational speed, rad/s
	Feed                       // advance per turn, m/rad
	Current                    // A
	Voltage                    // V
	HeatInput                  // energy per length of weld, J/m
	MassPerLength              // kg/m
	MassRate                   // kg/s

	// The kinds below are not quantities; they complete the language of the sheets.

	YesNo  // 0 or 1
	Choice // one of a list of words, held as its index
	Survey // a table of readings round a bore
)

// Dimension holds the exponents of length, mass, time, temperature, current
// and angle. Angle is kept apart from the bare number so that degrees never
// slip into a formula that wants a ratio.
type Dimension [6]int8

// Mul gives the dimension of a product.
func (d Dimension) Mul(e Dimension) Dimension {
	for i := range d {
		d[i] += e[i]
	}
	return d
}

// Div gives the dimension of a quotient.
func (d Dimension) Div(e Dimension) Dimension {
	for i := range d {
		d[i] -= e[i]
	}
	return d
}

type kindInfo struct {
	name string // as written in a sheet
	dim  Dimension
}

var kinds = [...]kindInfo{
	Invalid:               {"invalid", Dimension{}},
	Number:                {"number", Dimension{}},
	Ratio:                 {"ratio", Dimension{}},
	Length:                {"length", Dimension{1}},
	Area:                  {"area", Dimension{2}},
	Volume:                {"volume", Dimension{3}},
	SecondMoment:          {"second moment", Dimension{4}},
	Mass:                  {"mass", Dimension{0, 1}},
	Density:               {"density", Dimension{-3, 1}},
	Force:                 {"force", Dimension{1, 1, -2}},
	Pressure:              {"pressure", Dimension{-1, 1, -2}},
	Torque:                {"torque", Dimension{2, 1, -2}},
	Energy:                {"energy", Dimension{2, 1, -2}},
	Power:                 {"power", Dimension{2, 1, -3}},
	Stiffness:             {"stiffness", Dimension{0, 1, -2}},
	LineLoad:              {"line load", Dimension{0, 1, -2}},
	Angle:                 {"angle", Dimension{0, 0, 0, 0, 0, 1}},
	Temperature:           {"temperature", Dimension{0, 0, 0, 1}},
	TemperatureDifference: {"temperature difference", Dimension{0, 0, 0, 1}},
	Expansion:             {"expansion", Dimension{0, 0, 0, -1}},
	Time:                  {"time", Dimension{0, 0, 1}},
	Speed:                 {"speed", Dimension{1, 0, -1}},
	Rotation:              {"rotation", Dimension{0, 0, -1, 0, 0, 1}},
	Feed:                  {"feed", Dimension{1, 0, 0, 0, 0, -1}},
	Current:               {"current", Dimension{0, 0, 0, 0, 1}},
	Voltage:               {"voltage", Dimension{2, 1, -3, 0, -1}},
	HeatInput:             {"heat input", Dimension{1, 1, -2}},
	MassPerLength:         {"mass per length", Dimension{-1, 1}},
	MassRate:              {"mass rate", Dimension{0, 1, -1}},
	YesNo:                 {"yes/no", Dimension{}},
	Choice:                {"choice", Dimension{}},
	Survey:                {"survey", Dimension{}},
}

// String is the kind's name as written in a sheet.
func (k Kind) String() string {
	if int(k) >= len(kinds) {
		return "invalid"
	}
	return kinds[k].name
}

// Dim gives the kind's dimension.
func (k Kind) Dim() Dimension { return kinds[k].dim }

// Numeric reports whether the kind is a quantity or a number, not a word,
// a yes/no or a table.
func (k Kind) Numeric() bool { return k > Invalid && k < YesNo }

// ParseKind finds a kind by the name a sheet gives it.
func ParseKind(name string) (Kind, bool) {
	for k := Number; int(k) < len(kinds); k++ {
		if kinds[k].name == name {
			return k, true
		}
	}
	return Invalid, false
}

// KindNames lists every kind's name in declaration order.
func KindNames() []string {
	var names []string
	for k := Number; int(k) < len(kinds); k++ {
		names = append(names, kinds[k].name)
	}
	return names
}
