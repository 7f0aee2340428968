package setup

import (
	"gudgeon/trade"
	"gudgeon/trade/press"
	"gudgeon/units"
)

const npl = "NPL, correcting lengths to 20 °C; reference temperature: ISO 1; expansions: press's table of metals"

func sizeFunctions() []trade.Function {
	return []trade.Function{referenceFunction(), warmFunction(), centringFunction()}
}

func referenceFunction() trade.Function {
	return trade.Plain(trade.Function{
		Name:    "setup.at_20_c",
		About:   "A length brought to 20 °C (68 °F).",
		Formula: "L20 = L/(1 + a(T - 20 °C))",
		Params: []trade.Param{
			lengthRange.Param("length", "Length as it is"),
			trade.Choice("metal", "Metal of the part", press.MaterialNames()...),
			tempRange.Param("temperature", "Temperature of the part"),
		},
		Results: []trade.Result{trade.ResultOf("length", "Length at 20 °C", units.Length, "inch", units.Nearest)},
		Source:  npl,
		Example: `setup.at_20_c({length: inch(6.0035), metal: "A36 steel", temperature: degF(104)})`,
	}, func(x []float64) (float64, error) {
		m, err := press.MaterialAt(x[1])
		if err != nil {
			return 0, err
		}
		return ToReference(x[0], m.Expansion, x[2])
	})
}

func warmFunction() trade.Function {
	return trade.Worked(trade.Function{
		Name:    "setup.warm_bore",
		About:   "What a warm bore will be at 20 °C (68 °F), read with a gauge of another temperature.",
		Formula: "at 20 °C = reading·(1 + ag(Tg-20 °C))/(1 + ap(Tp-20 °C))",
		Params: []trade.Param{
			lengthRange.Param("reading", "Diameter as the gauge says"),
			trade.Choice("metal", "Metal of the part", press.MaterialNames()...),
			tempRange.Param("part_temperature", "Temperature in the bore"),
			tempRange.Param("gauge_temperature", "Temperature of the gauge"),
			expansionRange.Param("gauge_expansion", "Expansion of the gauge; steel 11.5 millionths per °C").Usual(11.5e-6),
		},
		Results: []trade.Result{
			trade.ResultOf("diameter", "Bore at 20 °C", units.Length, "inch", units.Nearest),
			trade.ResultOf("too_large", "By how much the reading is too large", units.Length, "thou", units.Nearest),
		},
		Source:  npl + "; gauge steel 11.5: Swyt, J. Res. NIST 99 (1994)",
		Example: `setup.warm_bore({reading: inch(6.0035), metal: "A36 steel", part_temperature: degF(104), gauge_temperature: degF(80)}).diameter`,
	}, func(x []float64) (WarmResult, error) {
		m, err := press.MaterialAt(x[1])
		if err != nil {
			return WarmResult{}, err
		}
		return WarmBore(WarmInput{Reading: x[0], PartExpansion: m.Expansion, PartTemp: x[2], GaugeTemp: x[3], GaugeExpand: x[4]})
	}, func(r WarmResult, out []float64) { out[0], out[1] = r.Reference, r.Shrinks })
}

func centringFunction() trade.Function {
	return trade.Worked(trade.Function{
		Name:    "setup.centring",
		About:   "How far a line bar may be off the true centre. " + ConeCaution,
		Formula: "cones: wear on radius; spacers: clearance/2",
		Params: []trade.Param{
			trade.Choice("method", "Cones in the bore's ends, or spacers on an untouched surface", CentringMethods()...),
			wearRange.Param("wear", "How much deeper the worst side is worn than the best, on radius"),
			clearanceRange.Param("clearance", "Clearance of spacer in seat and bar in spacer, on diameter"),
		},
		Results: []trade.Result{trade.ResultOf("off_centre", "The bar may be off by", units.Length, "thou", units.Up)},
		Source:  "geometry",
		Example: `setup.centring({method: "spacers", wear: thou(60), clearance: thou(2)})`,
	}, func(x []float64) (CentringResult, error) {
		m, err := pick[CentringMethod]("the way of centring", x[0], 2)
		if err != nil {
			return CentringResult{}, err
		}
		return Centring(CentringInput{Method: m, Wear: x[1], Clearance: x[2]})
	}, func(r CentringResult, out []float64) { out[0] = r.Error })
}
