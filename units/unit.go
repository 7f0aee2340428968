package units

import (
	"math"
	"strings"
)

// Unit is one way to write a quantity: value in SI = written × Factor + Offset.
type Unit struct {
	Name   string // identifier in the rule language: inch(0.050)
	Symbol string // as printed: "in"
	Kind   Kind
	Factor float64
	Offset float64 // only temperatures have one
	// Aliases are further spellings that Parse takes, in lower case.
	Aliases []string
	places  int // most decimals worth printing
	fixed   bool
}

// IsZero reports whether u is no unit at all.
func (u Unit) IsZero() bool { return u.Name == "" }

// ToSI turns a number written in u into SI.
func (u Unit) ToSI(v float64) float64 { return v*u.Factor + u.Offset }

// FromSI turns an SI value into the number to write in u.
func (u Unit) FromSI(x float64) float64 { return (x - u.Offset) / u.Factor }

// spells reports whether text is a spelling of u.
func (u Unit) spells(text string) bool {
	if strings.EqualFold(text, u.Symbol) || strings.EqualFold(text, u.Name) {
		return true
	}
	for _, a := range u.Aliases {
		if a == text {
			return true
		}
	}
	return false
}

// Exact definitions: the inch (25.4 mm), the pound (0.453 592 37 kg) and
// standard gravity are exact by NIST SP 811 (2008) App. B; the rest follow.
const (
	inch   = 0.0254
	foot   = 12 * inch
	pound  = 0.45359237
	g      = 9.80665
	poundF = pound * g
	minute = 60
	hour   = 3600
	turn   = 2 * math.Pi
	degree = math.Pi / 180
	degF   = 5.0 / 9
)

// all lists every unit. The first of a kind for each system in usual is what
// reports print.
var all = [...]Unit{
	{Name: "percent", Symbol: "%", Kind: Ratio, Factor: 0.01, places: 2},
	{Name: "ratio", Symbol: "", Kind: Ratio, Factor: 1, places: 4},
	{Name: "number", Symbol: "", Kind: Number, Factor: 1, places: 4},

	{Name: "inch", Symbol: "in", Kind: Length, Factor: inch, Aliases: []string{`"`, "″", "inches", "in."}, places: 4, fixed: true},
	{Name: "thou", Symbol: "thou", Kind: Length, Factor: inch / 1000, Aliases: []string{"thousandth", "thousandths"}, places: 1, fixed: true},
	{Name: "ft", Symbol: "ft", Kind: Length, Factor: foot, Aliases: []string{"'", "′", "foot", "feet", "ft."}, places: 3, fixed: true},
	{Name: "mm", Symbol: "mm", Kind: Length, Factor: 0.001, Aliases: []string{"millimetre", "millimetres", "millimeter", "millimeters"}, places: 3, fixed: true},
	{Name: "um", Symbol: "µm", Kind: Length, Factor: 1e-6, Aliases: []string{"μm", "micron", "microns", "micrometre", "micrometer"}, places: 1, fixed: true},
	{Name: "cm", Symbol: "cm", Kind: Length, Factor: 0.01, places: 3, fixed: true},
	{Name: "m", Symbol: "m", Kind: Length, Factor: 1, Aliases: []string{"metre", "metres", "meter", "meters"}, places: 4, fixed: true},

	{Name: "sqin", Symbol: "in²", Kind: Area, Factor: inch * inch, Aliases: []string{"in2", "in^2", "sq in", "sq. in."}, places: 4},
	{Name: "sqmm", Symbol: "mm²", Kind: Area, Factor: 1e-6, Aliases: []string{"mm2", "mm^2", "sq mm"}, places: 2},
	{Name: "sqft", Symbol: "ft²", Kind: Area, Factor: foot * foot, Aliases: []string{"ft2", "ft^2", "sq ft"}, places: 3},
	{Name: "sqm", Symbol: "m²", Kind: Area, Factor: 1, Aliases: []string{"m2", "m^2"}, places: 4},

	{Name: "cuin", Symbol: "in³", Kind: Volume, Factor: inch * inch * inch, Aliases: []string{"in3", "in^3", "cu in"}, places: 3},
	{Name: "cumm", Symbol: "mm³", Kind: Volume, Factor: 1e-9, Aliases: []string{"mm3", "mm^3"}, places: 1},
	{Name: "cucm", Symbol: "cm³", Kind: Volume, Factor: 1e-6, Aliases: []string{"cm3", "cm^3", "cc"}, places: 2},
	{Name: "litre", Symbol: "L", Kind: Volume, Factor: 1e-3, Aliases: []string{"liter", "litres", "liters"}, places: 3},
	{Name: "cum", Symbol: "m³", Kind: Volume, Factor: 1, Aliases: []string{"m3", "m^3"}, places: 6},

	{Name: "in4", Symbol: "in⁴", Kind: SecondMoment, Factor: inch * inch * inch * inch, Aliases: []string{"in^4"}, places: 4},
	{Name: "m4", Symbol: "m⁴", Kind: SecondMoment, Factor: 1, Aliases: []string{"m^4"}, places: 9},
	{Name: "mm4", Symbol: "mm⁴", Kind: SecondMoment, Factor: 1e-12, Aliases: []string{"mm^4"}, places: 0},

	{Name: "lb", Symbol: "lb", Kind: Mass, Factor: pound, Aliases: []string{"lbs", "lbm", "pound", "pounds", "#", "lb.", "lbs."}, places: 3},
	{Name: "kg", Symbol: "kg", Kind: Mass, Factor: 1, Aliases: []string{"kilo", "kilos", "kgs"}, places: 3},
	{Name: "t", Symbol: "t", Kind: Mass, Factor: 1000, Aliases: []string{"tonne", "tonnes", "metric ton", "metric tons"}, places: 3},
	{Name: "short_ton", Symbol: "short ton", Kind: Mass, Factor: 2000 * pound, Aliases: []string{"short tons", "us ton", "us tons"}, places: 3},
	{Name: "long_ton", Symbol: "long ton", Kind: Mass, Factor: 2240 * pound, Aliases: []string{"long tons", "uk ton", "uk tons"}, places: 3},
	{Name: "oz", Symbol: "oz", Kind: Mass, Factor: pound / 16, Aliases: []string{"ounce", "ounces"}, places: 2},
	{Name: "g", Symbol: "g", Kind: Mass, Factor: 0.001, Aliases: []string{"gram", "grams"}, places: 2},
	{Name: "cwt", Symbol: "long cwt", Kind: Mass, Factor: 112 * pound, places: 3},

	{Name: "lb_per_in3", Symbol: "lb/in³", Kind: Density, Factor: pound / (inch * inch * inch), Aliases: []string{"lb/in3", "lb/in^3", "lb/cu in"}, places: 4},
	{Name: "lb_per_ft3", Symbol: "lb/ft³", Kind: Density, Factor: pound / (foot * foot * foot), Aliases: []string{"lb/ft3", "lb/ft^3", "pcf"}, places: 2},
	{Name: "kg_per_m3", Symbol: "kg/m³", Kind: Density, Factor: 1, Aliases: []string{"kg/m3", "kg/m^3"}, places: 1},
	{Name: "g_per_cm3", Symbol: "g/cm³", Kind: Density, Factor: 1000, Aliases: []string{"g/cm3", "g/cc", "g/cm^3"}, places: 3},

	{Name: "lbf", Symbol: "lbf", Kind: Force, Factor: poundF, Aliases: []string{"lb", "lbs", "pound", "pounds", "lb force", "pound force"}, places: 2},
	{Name: "N", Symbol: "N", Kind: Force, Factor: 1, Aliases: []string{"newton", "newtons"}, places: 2},
	{Name: "kN", Symbol: "kN", Kind: Force, Factor: 1000, places: 3},
	{Name: "kip", Symbol: "kip", Kind: Force, Factor: 1000 * poundF, Aliases: []string{"kips"}, places: 3},
	{Name: "kgf", Symbol: "kgf", Kind: Force, Factor: g, Aliases: []string{"kg", "kilo", "kilos"}, places: 2},
	{Name: "short_tonf", Symbol: "short ton-force", Kind: Force, Factor: 2000 * poundF, Aliases: []string{"short ton", "short tons", "us ton", "us tons", "short tonf"}, places: 2},
	{Name: "long_tonf", Symbol: "long ton-force", Kind: Force, Factor: 2240 * poundF, Aliases: []string{"long ton", "long tons", "uk ton", "uk tons", "long tonf"}, places: 2},
	{Name: "tonne_force", Symbol: "t-force", Kind: Force, Factor: 1000 * g, Aliases: []string{"t", "tf", "tonne", "tonnes", "metric ton", "metric tons"}, places: 3},

	{Name: "psi", Symbol: "psi", Kind: Pressure, Factor: poundF / (inch * inch), Aliases: []string{"lb/in2", "lb/in²", "lbf/in2", "lbf/in²"}, places: 1},
	{Name: "ksi", Symbol: "ksi", Kind: Pressure, Factor: 1000 * poundF / (inch * inch), Aliases: []string{"kpsi"}, places: 2},
	{Name: "Pa", Symbol: "Pa", Kind: Pressure, Factor: 1, places: 0},
	{Name: "kPa", Symbol: "kPa", Kind: Pressure, Factor: 1e3, places: 2},
	{Name: "MPa", Symbol: "MPa", Kind: Pressure, Factor: 1e6, Aliases: []string{"n/mm2", "n/mm²"}, places: 2},
	{Name: "GPa", Symbol: "GPa", Kind: Pressure, Factor: 1e9, places: 2},
	{Name: "bar", Symbol: "bar", Kind: Pressure, Factor: 1e5, places: 2},

	{Name: "lbf_ft", Symbol: "lbf·ft", Kind: Torque, Factor: poundF * foot, Aliases: []string{"lbf ft", "lb ft", "lb-ft", "lb·ft", "ft lb", "ft-lb", "ft·lb", "ft lbs", "ft-lbs", "ft·lbf", "ft-lbf", "lbf-ft", "foot pounds"}, places: 2},
	{Name: "lbf_in", Symbol: "lbf·in", Kind: Torque, Factor: poundF * inch, Aliases: []string{"lbf in", "lb in", "lb-in", "lb·in", "in lb", "in-lb", "in lbs", "in-lbs", "in·lb", "lbf-in", "inch pounds"}, places: 1},
	{Name: "Nm", Symbol: "N·m", Kind: Torque, Factor: 1, Aliases: []string{"n m", "n-m", "newton metres", "newton meters"}, places: 2},

	{Name: "J", Symbol: "J", Kind: Energy, Factor: 1, Aliases: []string{"joule", "joules"}, places: 1},
	{Name: "kJ", Symbol: "kJ", Kind: Energy, Factor: 1000, places: 3},
	{Name: "ft_lbf", Symbol: "ft·lbf", Kind: Energy, Factor: poundF * foot, Aliases: []string{"ft lb", "ft-lb", "ft lbf", "ft-lbf", "foot pounds"}, places: 1},

	{Name: "hp", Symbol: "hp", Kind: Power, Factor: 550 * poundF * foot, Aliases: []string{"horsepower"}, places: 2},
	{Name: "W", Symbol: "W", Kind: Power, Factor: 1, Aliases: []string{"watt", "watts"}, places: 1},
	{Name: "kW", Symbol: "kW", Kind: Power, Factor: 1000, places: 3},

	{Name: "lbf_per_in", Symbol: "lbf/in", Kind: Stiffness, Factor: poundF / inch, Aliases: []string{"lb/in"}, places: 0},
	{Name: "N_per_mm", Symbol: "N/mm", Kind: Stiffness, Factor: 1000, places: 1},
	{Name: "N_per_m", Symbol: "N/m", Kind: Stiffness, Factor: 1, places: 0},

	{Name: "kip_per_in", Symbol: "kip/in", Kind: LineLoad, Factor: 1000 * poundF / inch, places: 3},
	{Name: "lbf_per_inch_of_weld", Symbol: "lbf/in", Kind: LineLoad, Factor: poundF / inch, Aliases: []string{"lb/in"}, places: 0},
	{Name: "N_per_m_of_weld", Symbol: "N/m", Kind: LineLoad, Factor: 1, places: 0},
	{Name: "N_per_mm_of_weld", Symbol: "N/mm", Kind: LineLoad, Factor: 1000, places: 1},

	{Name: "deg", Symbol: "°", Kind: Angle, Factor: degree, Aliases: []string{"degree", "degrees"}, places: 3},
	{Name: "rad", Symbol: "rad", Kind: Angle, Factor: 1, Aliases: []string{"radian", "radians"}, places: 6},
	{Name: "arcmin", Symbol: "arcmin", Kind: Angle, Factor: degree / 60, places: 2},
	{Name: "arcsec", Symbol: "arcsec", Kind: Angle, Factor: degree / 3600, places: 1},
	// Small slopes: the angle whose radian measure is the slope; 12 thou/ft is
	// 1 mm/m. The tangent differs by under one part in a million there.
	{Name: "thou_per_ft", Symbol: "thou/ft", Kind: Angle, Factor: 0.001 / 12, Aliases: []string{"thou per ft", "thou per foot", "thou/foot"}, places: 2},
	{Name: "mm_per_m", Symbol: "mm/m", Kind: Angle, Factor: 0.001, Aliases: []string{"mm per m"}, places: 3},
	{Name: "hours", Symbol: "o'clock", Kind: Angle, Factor: math.Pi / 6, places: 2},

	{Name: "degF", Symbol: "°F", Kind: Temperature, Factor: degF, Offset: 459.67 * degF, Aliases: []string{"f", "deg f", "degrees f", "fahrenheit"}, places: 1},
	{Name: "degC", Symbol: "°C", Kind: Temperature, Factor: 1, Offset: 273.15, Aliases: []string{"c", "deg c", "degrees c", "celsius"}, places: 1},
	{Name: "K", Symbol: "K", Kind: Temperature, Factor: 1, Aliases: []string{"kelvin"}, places: 2},
	{Name: "delta_degF", Symbol: "°F", Kind: TemperatureDifference, Factor: degF, Aliases: []string{"f", "deg f", "degrees f"}, places: 1},
	{Name: "delta_degC", Symbol: "°C", Kind: TemperatureDifference, Factor: 1, Aliases: []string{"c", "deg c", "degrees c", "k"}, places: 1},
	{Name: "per_degF", Symbol: "/°F", Kind: Expansion, Factor: 1 / degF, Aliases: []string{"per f", "/f"}, places: 9},
	{Name: "per_degC", Symbol: "/°C", Kind: Expansion, Factor: 1, Aliases: []string{"per c", "/c", "/k"}, places: 9},

	{Name: "s", Symbol: "s", Kind: Time, Factor: 1, Aliases: []string{"sec", "second", "seconds"}, places: 2},
	{Name: "min", Symbol: "min", Kind: Time, Factor: minute, Aliases: []string{"minute", "minutes", "mins"}, places: 2},
	{Name: "hour", Symbol: "h", Kind: Time, Factor: hour, Aliases: []string{"hr", "hrs"}, places: 2},

	{Name: "sfpm", Symbol: "ft/min", Kind: Speed, Factor: foot / minute, Aliases: []string{"fpm", "sfm", "surface feet per minute"}, places: 1},
	{Name: "ipm", Symbol: "in/min", Kind: Speed, Factor: inch / minute, Aliases: []string{"inches per minute"}, places: 3},
	{Name: "m_per_min", Symbol: "m/min", Kind: Speed, Factor: 1.0 / minute, places: 2},
	{Name: "mm_per_min", Symbol: "mm/min", Kind: Speed, Factor: 0.001 / minute, places: 1},
	{Name: "m_per_s", Symbol: "m/s", Kind: Speed, Factor: 1, places: 3},
	{Name: "mph", Symbol: "mph", Kind: Speed, Factor: 5280 * foot / hour, places: 1},

	{Name: "rpm", Symbol: "rpm", Kind: Rotation, Factor: turn / minute, Aliases: []string{"rev/min", "r/min"}, places: 1},
	{Name: "rad_per_s", Symbol: "rad/s", Kind: Rotation, Factor: 1, places: 3},
	{Name: "ipr", Symbol: "in/rev", Kind: Feed, Factor: inch / turn, Aliases: []string{"in per rev", `"/rev`}, places: 5},
	{Name: "mm_per_rev", Symbol: "mm/rev", Kind: Feed, Factor: 0.001 / turn, Aliases: []string{"mm per rev"}, places: 4},

	{Name: "m_per_rad", Symbol: "m/rad", Kind: Feed, Factor: 1, places: 6},

	{Name: "A", Symbol: "A", Kind: Current, Factor: 1, Aliases: []string{"amp", "amps", "ampere", "amperes"}, places: 1},
	{Name: "V", Symbol: "V", Kind: Voltage, Factor: 1, Aliases: []string{"volt", "volts"}, places: 1},

	{Name: "kJ_per_in", Symbol: "kJ/in", Kind: HeatInput, Factor: 1000 / inch, places: 2},
	{Name: "J_per_in", Symbol: "J/in", Kind: HeatInput, Factor: 1 / inch, places: 0},
	{Name: "J_per_m", Symbol: "J/m", Kind: HeatInput, Factor: 1, places: 0},
	{Name: "kJ_per_mm", Symbol: "kJ/mm", Kind: HeatInput, Factor: 1e6, places: 3},

	{Name: "lb_per_ft", Symbol: "lb/ft", Kind: MassPerLength, Factor: pound / foot, places: 3},
	{Name: "lb_per_in", Symbol: "lb/in", Kind: MassPerLength, Factor: pound / inch, places: 4},
	{Name: "kg_per_m", Symbol: "kg/m", Kind: MassPerLength, Factor: 1, places: 3},
	{Name: "lb_per_hour", Symbol: "lb/h", Kind: MassRate, Factor: pound / hour, Aliases: []string{"lb/hr", "lb per hour"}, places: 2},
	{Name: "kg_per_s", Symbol: "kg/s", Kind: MassRate, Factor: 1, places: 6},
	{Name: "kg_per_hour", Symbol: "kg/h", Kind: MassRate, Factor: 1.0 / hour, Aliases: []string{"kg/hr"}, places: 3},
}

// System is the set of units a shop thinks in.
type System uint8

// The two shops.
const (
	InchShop System = iota
	MetricShop
)

// ParseSystem reads "inch" or "metric".
func ParseSystem(name string) (System, bool) {
	switch name {
	case "inch":
		return InchShop, true
	case "metric":
		return MetricShop, true
	}
	return InchShop, false
}

var usual = map[Kind][2]string{
	Number: {"number", "number"}, Ratio: {"percent", "percent"},
	Length: {"inch", "mm"}, Area: {"sqin", "sqmm"}, Volume: {"cuin", "cucm"}, SecondMoment: {"in4", "mm4"},
	Mass: {"lb", "kg"}, Density: {"lb_per_in3", "kg_per_m3"}, Force: {"lbf", "kN"}, Pressure: {"psi", "MPa"},
	Torque: {"lbf_ft", "Nm"}, Energy: {"ft_lbf", "J"}, Power: {"hp", "kW"}, Stiffness: {"lbf_per_in", "N_per_mm"},
	LineLoad: {"kip_per_in", "N_per_mm_of_weld"}, Angle: {"deg", "deg"}, Temperature: {"degF", "degC"},
	TemperatureDifference: {"delta_degF", "delta_degC"}, Expansion: {"per_degF", "per_degC"}, Time: {"min", "min"},
	Speed: {"sfpm", "m_per_min"}, Rotation: {"rpm", "rpm"}, Feed: {"ipr", "mm_per_rev"}, Current: {"A", "A"},
	Voltage: {"V", "V"}, HeatInput: {"kJ_per_in", "kJ_per_mm"}, MassPerLength: {"lb_per_ft", "kg_per_m"},
	MassRate: {"lb_per_hour", "kg_per_hour"},
}

// Usual gives the unit in which a shop of system s writes kind k. It is the
// zero Unit for kinds that are not quantities.
func Usual(k Kind, s System) Unit {
	pair, ok := usual[k]
	if !ok {
		return Unit{}
	}
	u, _ := Named(pair[s])
	return u
}

// Named finds a unit by the identifier used in the rule language.
func Named(name string) (Unit, bool) {
	for i := range all {
		if all[i].Name == name {
			return all[i], true
		}
	}
	return Unit{}, false
}

// Lookup finds the unit of kind k that text spells: "in", `"`, "inches".
func Lookup(k Kind, text string) (Unit, bool) {
	low := strings.ToLower(text)
	for i := range all {
		if all[i].Kind == k && all[i].spells(low) {
			return all[i], true
		}
	}
	return Unit{}, false
}

// All lists every unit, in the order of their kinds.
func All() []Unit { return append([]Unit(nil), all[:]...) }

// OfKind lists the units in which kind k may be written.
func OfKind(k Kind) []Unit {
	var list []Unit
	for i := range all {
		if all[i].Kind == k {
			list = append(list, all[i])
		}
	}
	return list
}
