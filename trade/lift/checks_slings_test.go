package lift

import (
	"math"

	"gudgeon/trade/outside"
)

const (
	srcSlingTable = "sling table citing 29 CFR 1910.184 and ASME B30.9, https://usnetting.com/commercial-netting/cargo-netting/cargo-lifting-slings/safety-tips"
	srcNavyBridle = "NAVEDTRA 14080 p. 3-23, https://enginemechanics.tpub.com/14080/css/Bridle-Hitch-99.htm"
	srcNavySWL    = "NAVEDTRA 14080 p. 3-24, http://enginemechanics.tpub.com/14080/css/Figure-3-23-Determination-Of-Bridle-Hitch-Sling-Capacity-100.htm"
	srcFactors    = "leg load factors 1.154 and 1.414, http://www.kwrs.com/products/212-determining-lifting-load-capacity-of-a-sling.aspx"
	src1918       = "29 CFR 1918 App. II Table 2, https://osha.gov/laws-regs/regulations/standardnumber/1918/1918AppII"
	src1915       = "29 CFR 1915.118 Table G-1, http://laws9.com/cfr/text/29/1915/118"
	srcOffCentre  = "centre of gravity and sling loading, https://www.certifiedslings.com/load-limits/center-of-gravity-and-sling-loading/"
	srcP307       = "exam preparation on NAVFAC P-307, https://navfacp307training.examzify.com/question/what-is-the-correct-equation-5afbe30542fdf3ff"
	srcUnequal    = "statics problem, https://brainmass.com/engineering/mechanical-engineering/graphs-static-force-systems-31814"
	srcChoker     = "choker factor 0.75, sling rating table"
	srcTray       = "four-leg tray problem of a statics text; answers worked here"
)

func slingCap(rating float64, hitch Hitch, angle float64) func() (float64, error) {
	return func() (float64, error) {
		c, err := SlingCapacity(rating*pound, hitch, angle*degree, 0.75)
		return in(pound, c, err)
	}
}

func slingChecks() []outside.Check {
	load := func(weight, legs, angle float64) func() (float64, error) {
		return func() (float64, error) {
			w, err := LegLoad(weight*pound, legs, angle*degree)
			return in(pound, w, err)
		}
	}
	share := func(side int, weight, left, right float64) func() (float64, error) {
		return func() (float64, error) {
			l, r, err := VerticalLegs(weight*pound, left*foot, right*foot)
			return in(pound, [2]float64{l, r}[side], err)
		}
	}
	unequal := func(side int) func() (float64, error) {
		return func() (float64, error) {
			l, r, err := AngledLegs(20000, 40*degree, 70*degree)
			return in(1000, [2]float64{l, r}[side], err)
		}
	}
	tray := func() (float64, error) {
		r, err := LoadFourLegs(FourLegs{20 * 112 * pound, 4 * foot, 4 * foot, math.Sqrt(41) * foot, 2 * foot, 2 * foot})
		return in(112*pound, r.Load, err)
	}
	trayLeg := func() (float64, error) {
		r, err := LoadFourLegs(FourLegs{20 * 112 * pound, 4 * foot, 4 * foot, 6.403 * foot, 2 * foot, 2 * foot})
		return in(foot, r.Longest, err)
	}
	bridle := func() (float64, error) {
		a, err := LegAngle(8*foot, 10*foot)
		if err != nil {
			return 0, err
		}
		c, err := SlingCapacity(5000*pound, Bridle, a, 0.75)
		return in(pound, c, err)
	}
	proof := func(what ProofKind) func() (float64, error) {
		return func() (float64, error) { w, err := ProofLoad(1000, what); return in(1000, w, err) }
	}
	return []outside.Check{
		{"S1", "one leg, 90 degrees", srcSlingTable, outside.Published, "lb", 1000, 1, slingCap(1000, OneLeg, 90)},
		{"S1", "one leg, 75 degrees", srcSlingTable, outside.Published, "lb", 966, 1, slingCap(1000, OneLeg, 75)},
		{"S1", "one leg, 60 degrees", srcSlingTable, outside.Published, "lb", 866, 1, slingCap(1000, OneLeg, 60)},
		{"S1", "one leg, 45 degrees", srcSlingTable, outside.Published, "lb", 707, 1, slingCap(1000, OneLeg, 45)},
		{"S1", "one leg, 30 degrees", srcSlingTable, outside.Published, "lb", 500, 1, slingCap(1000, OneLeg, 30)},
		{"S3", "leg load, 90 degrees", srcNavyBridle, outside.Published, "lb", 500, 0.5, load(1000, 2, 90)},
		{"S3", "leg load, 30 degrees", srcNavyBridle, outside.Published, "lb", 1000, 0.5, load(1000, 2, 30)},
		{"S4", "leg load, 60 degrees", srcFactors, outside.Published, "lb", 577, 1, load(1000, 2, 60)},
		{"S4", "leg load, 45 degrees", srcFactors, outside.Published, "lb", 707, 1, load(1000, 2, 45)},
		{"S6", "choker", srcChoker, outside.Published, "lb", 7425, 1, slingCap(9900, Choker, 90)},
		{"S6", "choker", srcChoker, outside.Published, "lb", 12470, 1, slingCap(16627, Choker, 60)},
		{"S7", "choker at 45 degrees", "NAVEDTRA 14081 p. 13-20, http://enginemechanics.tpub.com/14081/css/Figure-13-38-Determination-Of-Double-Basket-Hitch-Sling-Capacity-374.htm", outside.Published, "lb", 750, 0.5, slingCap(1000, Choker, 45)},
		{"S9", "four legs count as two", srcNavySWL, outside.Published, "lb", 1000, 0.5, load(1000, 4, 30)},
		{"S9", "three legs count as two", srcNavySWL, outside.Published, "lb", 1000, 0.5, load(1000, 3, 30)},
		{"S10", "bridle, H 8 over L 10", srcNavySWL, outside.Computed, "lb", 8000, 0.5, bridle},
		{"S18", "leg nearer the centre of gravity", srcOffCentre, outside.Published, "lb", 8000, 0.5, share(0, 10000, 2, 8)},
		{"S18", "leg farther from it", srcOffCentre, outside.Published, "lb", 2000, 0.5, share(1, 10000, 2, 8)},
		{"S19", "farther point carries less", srcP307, outside.Published, "lb", 3333, 0.5, share(0, 10000, 6, 3)},
		{"S19", "2 and 6 ft: nearer carries three quarters", srcP307, outside.Computed, "lb", 7500, 0.5, share(0, 10000, 2, 6)},
		{"S22", "40 degree leg", srcUnequal, outside.Computed, "kN", 7.28, 0.005, unequal(0)},
		{"S22", "70 degree leg", srcUnequal, outside.Computed, "kN", 16.30, 0.005, unequal(1)},
		{"S24", "tray, two diagonal legs carry all", srcTray, outside.Computed, "long cwt", 10.93, 0.005, tray},
		{"S24", "tray, 7 ft legs give this height", srcTray, outside.Computed, "ft", 7, 0.001, trayLeg},
		{"S25", "proof of a custom accessory", "29 CFR 1926.251(a)(4), http://www.complianceregs.com/29cfr/1926/subH/1926-251.html", outside.Published, "x rating", 1.25, 0.001, proof(ProofAccessory)},
		{"S26", "proof of a sling leg", "NAVEDTRA 14251, https://constructionmanuals.tpub.com/14251/css/Sling-Safe-Working-Loads-157.htm", outside.Published, "x rating", 2, 0.001, proof(ProofSlingLeg)},
		{"K5", "proof of a hook without data", "WAC 296-304-07005, https://app.leg.wa.gov/wac/default.aspx?cite=296-304-07005", outside.Published, "x rating", 2, 0.001, proof(ProofHook)},
		{"S27", "design factor of slings", "DOE-STD-1090-96, https://www.yumpu.com/en/document/view/51680234/doe-std-1090-96-doe-standard-hoisting-and-rigging-manual-/187", outside.Published, "lb", 1000, 0.5, func() (float64, error) { w, err := WorkingLoad(5000*pound, 5); return in(pound, w, err) }},
	}
}

// slingTableChecks compares the sine rule with regulation tables, which are
// rounded by hand: the tolerances are how far those tables stray from it.
func slingTableChecks() []outside.Check {
	rows := []struct {
		id, rope, source string
		vertical         float64
		hitch            Hitch
		at               [4]float64 // at 90, 60, 45 and 30 degrees; 0 where the table has none
		part             float64
	}{
		{"S12", "natural rope 1/2 in", src1918, 550, Basket, [4]float64{1100, 900, 750, 550}, 0.06},
		{"S13", "natural rope 1 in", src1918, 1800, Basket, [4]float64{3600, 3100, 2600, 1800}, 0.025},
		{"S14", "natural rope 2 in", src1918, 6200, Basket, [4]float64{12500, 10500, 8800, 6200}, 0.025},
		{"S15", "natural rope 2-5/8 in", src1918, 10500, Basket, [4]float64{21000, 18000, 14500, 10500}, 0.025},
		{"S16", "manila bridle", src1915, 120, Bridle, [4]float64{0, 204, 170, 120}, 0.02},
	}
	names := [4]string{"90 degrees", "60 degrees", "45 degrees", "30 degrees"}
	angles := [4]float64{90, 60, 45, 30}
	var all []outside.Check
	for _, r := range rows {
		for i, want := range r.at {
			if want == 0 {
				continue
			}
			all = append(all, outside.Check{r.id, r.rope + ", " + names[i], r.source, outside.Published, "lb", want, r.part * want, slingCap(r.vertical, r.hitch, angles[i])})
		}
	}
	return all
}

func chainChecks() []outside.Check {
	const (
		srcWear  = "Mich. Admin. Code R 408.14923 Table 1, https://www.law.cornell.edu/regulations/michigan/Mich-Admin-Code-R-408-14923"
		srcChain = "US Army FM 5-125 (1995) p. 3-2, https://studylib.net/doc/10727400/h-o-i-s-t-s-section-i.-chains-and-hooks"
		srcTie   = "59 FR (6 July 1994), 49 CFR 393.102, http://federal.elaws.us/fr/7/6/1994/94-16069"
	)
	wear := []struct {
		size  string
		least float64
	}{
		{"1/4 in", 0.2031}, {"3/8 in", 0.2969}, {"1/2 in", 0.3906}, {"5/8 in", 0.4844}, {"3/4 in", 0.5938}, {"7/8 in", 0.7031},
		{"1 in", 0.8125}, {"1-1/8 in", 0.9063}, {"1-1/4 in", 1}, {"1-3/8 in", 1.0938}, {"1-1/2 in", 1.1875},
	}
	var all []outside.Check
	for _, w := range wear {
		all = append(all, outside.Check{"S28", "wear limit of " + w.size, srcWear, outside.Published, "in", w.least, 5e-5 + 1e-9, func() (float64, error) { x, err := ChainWearLimit(w.size); return in(inch, x, err) }})
	}
	tie := func(field int) func() (float64, error) {
		return func() (float64, error) {
			r, err := TieDown(TieDowns{Weight: 20000 * pound, Rating: 5000 * pound, Direct: 4})
			return in(pound, [2]float64{r.Needed, r.Total}[field], err)
		}
	}
	return append(all,
		outside.Check{"S29", "3/4 in chain", srcChain, outside.Published, "lb", 9000, 1, func() (float64, error) { w, err := ChainCapacity(0.75 * inch); return in(pound, w, err) }},
		outside.Check{"C9", "half of 20,000 lb", srcTie, outside.Computed, "lb", 10000, 0.5, tie(0)},
		outside.Check{"C9", "four ties to the load count half", "49 CFR 393.106 (2002), " + srcTie, outside.Computed, "lb", 10000, 0.5, tie(1)})
}
