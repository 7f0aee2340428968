package setup

import (
	"cmp"

	"gudgeon/trade"
	"gudgeon/units"
)

// ToReference returns a length brought to 20 °C (68 °F).
//
//	L20 = L/(1 + a(T - 20 °C))
//
// L as it is at T, L20: m; a expansion: 1/K; T: K.
// Valid for L 1 mm to 100 m, T 230 to 450 K; otherwise an error. The form
// L(1 - a·dT) differs by under one in a million here.
//
// Source: NPL, correcting lengths to 20 °C; reference temperature: ISO 1.
func ToReference(length, expansion, temperature float64) (float64, error) {
	if err := cmp.Or(lengthRange.Check(length), expansionRange.Check(expansion), tempRange.Check(temperature)); err != nil {
		return 0, err
	}
	return length / (1 + expansion*(temperature-twenty)), nil
}

// WarmInput is a warm bore read with a gauge that has another temperature.
type WarmInput struct {
	Reading       float64 // diameter as the gauge says, m
	PartTemp      float64 // K
	PartExpansion float64 // 1/K
	GaugeTemp     float64 // K
	GaugeExpand   float64 // expansion of the gauge, 1/K
}

// WarmResult is what the bore will be.
type WarmResult struct {
	In        WarmInput
	Now       float64 // true diameter as warm as it is, m
	Reference float64 // diameter at 20 °C, m
	Shrinks   float64 // reading less Reference, m
}

// WarmBore returns what a warm bore will be at 20 °C (68 °F), read with a gauge
// that was set at 20 °C and has a temperature of its own.
//
//	now = reading·(1 + ag(Tg - 20 °C)); at 20 °C = now/(1 + ap(Tp - 20 °C))
//
// reading, answers: m; ap, ag expansion of part and gauge: 1/K; Tp, Tg: K. With
// equal metals and temperatures the reading is right as it stands.
//
// Valid for T 230 to 450 K; otherwise an error. Measure the temperature in the
// bore: weld heat sits there for hours.
//
// Source: linear expansion; NPL, correcting lengths to 20 °C.
func WarmBore(in WarmInput) (WarmResult, error) {
	if err := cmp.Or(
		lengthRange.Check(in.Reading), tempRange.Check(in.PartTemp), expansionRange.Check(in.PartExpansion),
		tempRange.Check(in.GaugeTemp), expansionRange.Check(in.GaugeExpand),
	); err != nil {
		return WarmResult{}, err
	}
	r := WarmResult{In: in, Now: in.Reading * (1 + in.GaugeExpand*(in.GaugeTemp-twenty))}
	r.Reference = r.Now / (1 + in.PartExpansion*(in.PartTemp-twenty))
	r.Shrinks = in.Reading - r.Reference
	return r, nil
}

// Steps gives the worked lines of the warm bore.
func (r WarmResult) Steps() []trade.Step {
	return []trade.Step{
		{Name: "bore as warm as it is", Formula: "reading·(1+ag(Tg-20 °C))", Kind: units.Length, Value: r.Now},
		{Name: "bore at 20 °C (68 °F)", Formula: "now/(1+ap(Tp-20 °C))", Kind: units.Length, Value: r.Reference},
		{Name: "reading is too large by", Formula: "reading - bore at 20 °C", Kind: units.Length, Value: r.Shrinks, Unit: "thou"},
	}
}
