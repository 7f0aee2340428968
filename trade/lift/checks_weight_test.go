package lift

import "gudgeon/trade/outside"

func weightChecks() []outside.Check {
	const (
		srcPlate   = "plate weights, http://www.bushwickmetals.com/formulas.html"
		srcBar     = "shop rules for steel, http://bamsite.org/Shopnotes/steellb.html"
		srcPipe    = "weight calculation, https://scribd.com/document/475037118/Weight-calculation-pdf"
		srcBlock   = "rigger's exercise, https://www.scribd.com/document/671440053/If-no-load-weight-information-has-been-provided"
		srcHibb    = "Hibbeler prob. 9-89, https://www.prepscholar.com/solutions/engineering-mechanics-statics-and-dynamics-14th-edition-chapter-9-problem-89P/"
		srcScales  = "two-axle weighing, https://qammunity.org/11379316"
		srcTruss   = "Hibbeler prob. 9-51, https://questionai.com/amp/textbooksolution-120614/1141032-book-Engineering-Mechanics-Statics-book-Problems"
		srcBlocks  = "two blocks; the source prints 1.47, 2.68, 2.82 against its own sums, https://slideplayer.com./amp/5090084"
		srcUnits   = "riggers' unit weights, https://www.certifiedslings.com/load-limits/center-of-gravity-and-sling-loading/"
		srcDensity = "density table, https://www.easymanua.ls/lust/cda3000/manual/691667?p=323"
	)
	steel := 7850.0
	block := func(l, w, h, density, unit float64) func() (float64, error) {
		return func() (float64, error) { x, err := BlockWeight(l, w, h, density); return in(unit, x, err) }
	}
	bar := func(d, l float64) func() (float64, error) {
		return func() (float64, error) { x, err := BossWeight(d*inch, 0, l*inch, steel); return in(pound, x, err) }
	}
	density := func(name string, unit float64) func() (float64, error) {
		return func() (float64, error) { x, err := Density(name); return in(unit, x, err) }
	}
	blocks := func(axis int) func() (float64, error) {
		return func() (float64, error) {
			b, err := Centre([]Piece{{3.125, [3]float64{4, 1, 2}}, {18.75, [3]float64{1, 3, 3}}})
			return b.Centre[axis], err
		}
	}
	lbft3 := pound / (foot * foot * foot)
	return []outside.Check{
		{"G1", "two scales, 5,800 and 6,500 N over 3.20 m", srcScales, outside.Published, "m", 1.69, 0.005, func() (float64, error) { r, err := CentreFromScales(Scales{5800, 6500, 3.2}); return r.FromFront, err }},
		{"G3", "truss of five equal members", srcTruss, outside.Published, "m", 3, 1e-9, func() (float64, error) {
			var pieces []Piece
			for x := 1.0; x <= 5; x++ {
				pieces = append(pieces, Piece{4, [3]float64{x, 0, 0}})
			}
			b, err := Centre(pieces)
			return b.Centre[0], err
		}},
		{"G4", "two blocks, x", srcBlocks, outside.Computed, "in", 1.43, 0.005, blocks(0)},
		{"G4", "two blocks, y", srcBlocks, outside.Computed, "in", 2.71, 0.005, blocks(1)},
		{"G4", "two blocks, z", srcBlocks, outside.Computed, "in", 2.86, 0.005, blocks(2)},
		{"G8", "steel plate, a square foot an inch thick", srcPlate, outside.Published, "lb", 40.8, 0.05, block(foot, foot, inch, steel, pound)},
		{"G8", "steel plate, a square foot 1/4 in thick", srcPlate, outside.Published, "lb", 10.2, 0.05, block(foot, foot, inch/4, steel, pound)},
		{"G9", "3 in round, a foot", srcBar, outside.Published, "lb", 24.0, 0.06, bar(3, 12)},
		{"G10", "4 x 1 flat, a foot", srcBar, outside.Published, "lb", 13.6, 0.05, block(foot, 4*inch, inch, steel, pound)},
		{"G11", "disc, 1 in by 1 in", srcPlate, outside.Published, "lb", 0.2225, 0.0003, bar(1, 1)},
		{"G12", "pipe, 282.36 lb/ft, 20 ft", srcPipe, outside.Published, "lb", 5647, 0.5, func() (float64, error) {
			x, err := WeightByLength(282.36*pound/foot, 20*foot)
			return in(pound, x, err)
		}},
		{"G13", "aluminium block", srcBlock, outside.Published, "lb", 11880, 0.5, block(6*foot, 3*foot, 4*foot, 165*lbft3, pound)},
		{"G14", "steel plate 150 x 225 x 30 mm", srcHibb, outside.Published, "kg", 7.95, 0.005, block(0.15, 0.225, 0.03, steel, 1)},
		{"G15", "density of steel", srcUnits, outside.Published, "lb/ft³", 490, 0.5, density("steel", lbft3)},
		{"G15", "density of concrete", srcUnits, outside.Published, "lb/ft³", 150, 0.5, density("concrete", lbft3)},
		{"G15", "density of wood", srcUnits, outside.Published, "lb/ft³", 50, 0.5, density("wood", lbft3)},
		{"G15", "density of water; the physical value is kept", srcUnits, outside.Published, "lb/ft³", 62, 0.5, density("water", lbft3)},
		{"G15", "density of sand", srcUnits, outside.Published, "lb/ft³", 120, 0.5, density("sand or gravel", lbft3)},
		{"G15", "density of copper", srcUnits, outside.Published, "lb/ft³", 560, 0.5, density("copper", lbft3)},
		{"G15", "density of oil", srcUnits, outside.Published, "lb/ft³", 58, 0.5, density("oil", lbft3)},
		{"G15", "density of cast iron", srcDensity, outside.Published, "kg/m³", 7600, 0.5, density("cast iron", 1)},
		{"G15", "density of brass, upper value", srcDensity, outside.Published, "kg/m³", 8900, 0.5, density("brass", 1)},
		{"G15", "density of aluminium", srcDensity, outside.Published, "kg/m³", 2700, 0.5, density("aluminium", 1)},
		{"G15", "density of zinc", srcDensity, outside.Published, "kg/m³", 7130, 0.5, density("zinc", 1)},
	}
}

func hardwareChecks() []outside.Check {
	const (
		srcField   = "NAVEDTRA 14251, https://constructionmanuals.tpub.com/14251/css/Beam-Clamps-164.htm"
		srcEyeInch = "vendor's eyebolt table, http://www.kingwingmetal.com/a/CUSTOMER_CARE/Case_Show/20190314/143.html"
		srcEyeMM   = "metric eyebolt table, https://boltdepot.com/fastener-information/Eye-Bolts/Metric-Machinery-Eye-Bolt-Working-Load-Limits"
		srcThread  = "eyebolt page, https://www.yumpu.com/en/document/view/30608519/zeqqt/96"
		srcSide    = "side load chart, bands of WAC 296-155-33905, http://app.leg.wa.gov/wac/default.aspx?cite=296-155-33905; figures https://www.katradis.com/rigging/207-shackle-precautions"
	)
	rule := func(d, unit float64) func() (float64, error) {
		return func() (float64, error) { w, err := ShackleFieldRule(d); return in(unit, w, err) }
	}
	eye := func(rating, angle float64) func() (float64, error) {
		return func() (float64, error) {
			h, err := Eyebolt(100*pound, rating*pound, angle*degree, true)
			return in(pound, h.Capacity, err)
		}
	}
	side := func(angle float64) func() (float64, error) {
		return func() (float64, error) {
			h, err := Shackle(100, 1000, angle*degree, 0)
			return in(1000, h.Capacity, err)
		}
	}
	all := []outside.Check{
		{"K1", "5/8 in shackle by the field rule", srcField, outside.Published, "lb", 2343.8, 0.1, rule(0.625*inch, pound)},
		{"K2", "1.59 cm shackle; the source's metric form is 1.1 % low, then rounded", srcField, outside.Published, "t", 1.05, 0.0167, rule(0.0159, tonne)},
		{"K6", "side load at 5 degrees", srcSide, outside.Memory, "1", 1, 1e-9, side(5)},
		{"K6", "side load at 45 degrees", srcSide, outside.Published, "1", 0.7, 1e-9, side(45)},
		{"K6", "side load at 90 degrees", srcSide, outside.Published, "1", 0.5, 1e-9, side(90)},
		{"K6", "side load between 5 and 45 degrees", srcSide, outside.Memory, "1", 0.7, 1e-9, side(6)},
		{"K6", "side load between 45 and 90 degrees", srcSide, outside.Memory, "1", 0.5, 1e-9, side(46)},
		{"K7", "3/8 in shouldered eyebolt, 15 degrees", srcEyeInch, outside.Published, "lb", 1240, 0.5, eye(1550, 15)},
		{"K7", "3/8 in shouldered eyebolt, 30 degrees", srcEyeInch, outside.Published, "lb", 0.65 * 1550, 0.5, eye(1550, 30)},
		{"K9", "thread of a 1/2 in eyebolt", srcThread, outside.Published, "in", 0.75, 1e-9, func() (float64, error) { x, err := EyeboltThread(inch / 2); return in(inch, x, err) }},
		{"D1", "load let go suddenly counts twice", "energy balance in any strength of materials text", outside.Memory, "1", 2, 1e-9, func() (float64, error) { return SnatchFactor(0, 0.01) }},
		{"D2", "hoisting at 50 ft/min", "CMAA 70, hoist load factor", outside.Memory, "1", 1.25, 1e-9, func() (float64, error) { return HoistFactor(50 * foot / 60) }},
		{"D2", "hoisting slowly", "CMAA 70, hoist load factor", outside.Memory, "1", 1.15, 1e-9, func() (float64, error) { return HoistFactor(10 * foot / 60) }},
	}
	for _, m := range []struct {
		size           string
		straight, at45 float64
	}{
		{"M6", 462, 116}, {"M8", 1110, 278}, {"M10", 1628, 407}, {"M12", 2266, 567},
		{"M16", 3520, 880}, {"M20", 6292, 1573}, {"M24", 8470, 2118}, {"M30", 14080, 3520},
	} {
		all = append(all, outside.Check{"K8", m.size + " eyebolt, 45 degrees", srcEyeMM, outside.Published, "lb", m.at45, 0.5 + 1e-9, eye(m.straight, 45)})
	}
	return all
}
