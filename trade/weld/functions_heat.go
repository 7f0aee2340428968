package weld

import (
	"gudgeon/trade"
	"gudgeon/units"
)

func element(name string, l trade.Range) trade.Param {
	return l.Param(name, "Share of "+name+" by mass")
}

func alloy(name string) trade.Param { return element(name, limElement).Usual(0) }

var paramsIIW = []trade.Param{element("carbon", limCarbon), element("manganese", limElement),
	alloy("chromium"), alloy("molybdenum"), alloy("vanadium"), alloy("nickel"), alloy("copper")}

func iiw(x []float64) Composition {
	return Composition{C: x[0], Mn: x[1], Cr: x[2], Mo: x[3], V: x[4], Ni: x[5], Cu: x[6]}
}

func heatFunctions() []trade.Function {
	return append(carbonFunctions(), trade.Plain(trade.Function{
		Name: "weld.weldability", About: "Rough word for how a steel welds, from its IIW carbon equivalent.",
		Formula: "to 0.35 % excellent, to 0.40 % very good, to 0.45 % good, to 0.50 % fair, else poor",
		Params:  []trade.Param{limCE.Param("carbon_equivalent", "IIW carbon equivalent")},
		Results: []trade.Result{trade.WordOf("grade", "how well it welds", "excellent", "very good", "good", "fair", "poor")},
		Source:  "a steel supplier's bands; guidance, no code", Example: "weld.weldability(percent(0.42))",
	}, func(x []float64) (float64, error) {
		v, err := WeldabilityOf(x[0])
		return float64(v), err
	}), trade.Plain(trade.Function{
		Name: "weld.preheat", About: "Least preheat and interpass temperature of the structural steel table.",
		Formula: "A: 32, 150, 225, 300 °F; B: 32, 50, 150, 225 °F; C: 50, 150, 225, 300 °F; to 3/4, to 1-1/2, to 2-1/2 in, over",
		Params:  []trade.Param{paramCategory, limBase.Param("thickness", "Thickest part at the joint")},
		Results: []trade.Result{trade.ResultOf("temperature", "Least preheat, also between layers", units.Temperature, "degF", units.Up)},
		Source:  "AWS D1.1:2015 Table 3.3; US Army TI 809-26 (2000) Table 3-1, as restated", Example: `weld.preheat("B", inch(2))`,
	}, func(x []float64) (float64, error) {
		i, ok := trade.Chosen(x[0], len(categoryNames))
		if !ok {
			return 0, errCategory
		}
		return Preheat(Category(i), x[1])
	}), trade.Plain(trade.Function{
		Name: "weld.heat_input", About: "Energy of the arc per length of bead.",
		Formula: "H = η·V·I/S",
		Params: []trade.Param{limVoltage.Param("voltage", "Arc voltage"), limCurrent.Param("current", "Welding current"),
			limTravel.Param("travel_speed", "Speed of the bead"), limArcShare.Param("efficiency", "Arc efficiency; left out: 1, as in the AWS formula").Usual(1)},
		Results: []trade.Result{trade.ResultOf("heat_input", "Energy per length", units.HeatInput, "kJ_per_in", units.Nearest)},
		Source:  "AWS D1.1 and D1.5, ASME IX, as restated", Example: "weld.heat_input(V(29), A(325), ipm(12.5))",
	}, func(x []float64) (float64, error) { return HeatInput(x[0], x[1], x[2], x[3]) }))
}

func carbonFunctions() []trade.Function {
	ce := trade.ResultOf("carbon_equivalent", "Carbon equivalent, share by mass", units.Ratio, "percent", units.Up)
	return []trade.Function{trade.Plain(trade.Function{
		Name: "weld.carbon_equivalent", About: "IIW carbon equivalent; silicon is not in it.",
		Formula: "CE = C + Mn/6 + (Cr + Mo + V)/5 + (Ni + Cu)/15",
		Params:  paramsIIW, Results: []trade.Result{ce},
		Source:  "International Institute of Welding, as restated in engineering references",
		Example: "weld.carbon_equivalent(percent(0.405), percent(0.875), percent(0.95), percent(0.2), percent(0), percent(0), percent(0))",
	}, func(x []float64) (float64, error) { return CarbonEquivalent(iiw(x)) }), trade.Plain(trade.Function{
		Name: "weld.carbon_equivalent_si", About: "Carbon equivalent of the preheat annex of AWS D1.1: the IIW's plus Si/6; never mix the two.",
		Formula: "CE = C + (Mn + Si)/6 + (Cr + Mo + V)/5 + (Ni + Cu)/15",
		Params:  append(append([]trade.Param(nil), paramsIIW...), alloy("silicon")), Results: []trade.Result{ce},
		Source:  "AWS D1.1, annex on alternative methods for preheat, as restated",
		Example: "weld.carbon_equivalent_si(percent(0.405), percent(0.875), percent(0.95), percent(0.2), percent(0), percent(0), percent(0), percent(0.25))",
	}, func(x []float64) (float64, error) {
		c := iiw(x)
		c.Si = x[7]
		return CarbonEquivalentSi(c)
	}), trade.Plain(trade.Function{
		Name: "weld.pcm", About: "Crack-sensitivity parameter of Ito and Bessyo, for low-carbon steels.",
		Formula: "Pcm = C + Si/30 + (Mn + Cu + Cr)/20 + Ni/60 + Mo/15 + V/10 + 5·B",
		Params:  append(append([]trade.Param(nil), paramsIIW...), alloy("silicon"), element("boron", limBoron).Usual(0)),
		Results: []trade.Result{trade.ResultOf("pcm", "Crack-sensitivity parameter, share by mass", units.Ratio, "percent", units.Up)},
		Source:  "Ito and Bessyo (1968), as restated",
		Example: "weld.pcm(percent(0.12), percent(1.4), percent(0), percent(0), percent(0), percent(0), percent(0), percent(0.3), percent(0))",
	}, func(x []float64) (float64, error) {
		c := iiw(x)
		c.Si, c.B = x[7], x[8]
		return Pcm(c)
	}), trade.Plain(trade.Function{
		Name: "weld.carbon_equivalent_of", About: "IIW carbon equivalent of a named steel, at the middle or the top of its range.",
		Formula: "CE = C + Mn/6 + (Cr + Mo + V)/5 + (Ni + Cu)/15",
		Params: []trade.Param{trade.Choice("steel", "Steel", Steels()...),
			trade.Choice("range", "Which composition of its range; the top is on the safe side", "middle", "top").Usual(1)},
		Results: []trade.Result{ce},
		Source:  "International Institute of Welding, as restated; ranges of SAE and ASTM tables from memory", Example: `weld.carbon_equivalent_of("4140", "top")`,
	}, func(x []float64) (float64, error) {
		i, ok := trade.Chosen(x[0], len(steels))
		if !ok {
			return 0, errNoSteel
		}
		p, ok := trade.Chosen(x[1], 2)
		if !ok {
			return 0, errPick
		}
		c, err := steels[i].pick(Pick(p))
		if err != nil {
			return 0, err
		}
		return CarbonEquivalent(c)
	})}
}
