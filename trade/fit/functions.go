package fit

import (
	"gudgeon/trade"
	"gudgeon/units"
)

// Functions lists what a rule sheet can call from this package.
//
// Source: each function's own.
func Functions() []trade.Function {
	return []trade.Function{
		limitsFunction(), gradeFunction(), isoFunction(), inchFunction(), namedFunction(),
		boreForFunction(), boreForInchFunction(), runningFunction(),
	}
}

const (
	isoSource  = "ISO 286 limits read from restatements: Machine Drawing (Narayana, Kannaiah, Reddy) Tables 15.1 to 15.3, makers' catalogues and others, row by row in the worked lines; three k rows from memory"
	inchSource = "ANSI B4.1 limits read from Machinery's Handbook 27 and 31 Tables 8a to 12, row by row in the worked lines; LC1 to LC5, FN at 3.94 to 4.73 in and the hole of RC8 from memory"
	nominal    = "Nominal size, which picks the row of the table"
	memoryText = "A row is from memory: confirm it before cutting"
)

func length(name, about, unit string, round trade.Rounding) trade.Result {
	return trade.Result{Name: name, About: about, Kind: units.Length, Unit: unit, Round: round}
}

// classAt finds a class of one of the tables by the index that a call passes.
func classAt(pick func(*tables) *table, index float64) (*class, error) {
	t, err := load()
	if err != nil {
		return nil, err
	}
	return pick(t).indexed(index)
}

func holeTable(t *tables) *table  { return &t.holes }
func shaftTable(t *tables) *table { return &t.shafts }
func limitTable(t *tables) *table { return &t.limits }
func gradeTable(t *tables) *table { return &t.grades }
func inchTable(t *tables) *table  { return &t.inch }

func limitsFunction() trade.Function {
	return trade.Worked(trade.Function{
		Name:    "fit.limits",
		About:   "Limits of size of one ISO 286 class, such as H7 or p6.",
		Formula: "low = size + lower deviation; high = size + upper deviation",
		Params:  []trade.Param{isoSizeRange.Param("size", nominal), trade.Choice("class", "ISO class: capital for a hole, small for a shaft", Classes()...)},
		Results: []trade.Result{
			length("low", "Low limit of size", "inch", units.Up),
			length("high", "High limit of size", "inch", units.Down),
			length("lower", "Lower deviation", "thou", units.Nearest),
			length("upper", "Upper deviation", "thou", units.Nearest),
			{Name: "from_memory", About: memoryText, Kind: units.YesNo},
		},
		Source:  isoSource,
		Example: `fit.limits(mm(100), "H7").high`,
	}, func(x []float64) (LimitsResult, error) {
		c, err := classAt(limitTable, x[1])
		if err != nil {
			return LimitsResult{}, err
		}
		return limitsOf(c, x[0])
	}, func(r LimitsResult, out []float64) {
		out[0], out[1], out[2], out[3], out[4] = r.Low, r.High, r.Deviation.Lower, r.Deviation.Upper, trade.YesNo(r.FromMemory)
	})
}

func gradeFunction() trade.Function {
	return trade.Plain(trade.Function{
		Name:    "fit.tolerance",
		About:   "Width of an ISO 286 tolerance grade, such as IT7.",
		Formula: "a table",
		Params:  []trade.Param{isoSizeRange.Param("size", nominal), trade.Choice("grade", "Tolerance grade", Grades()...)},
		Results: []trade.Result{length("width", "Width of the tolerance", "thou", units.Down)},
		Source:  isoSource,
		Example: `fit.tolerance(mm(100), "IT7")`,
	}, func(x []float64) (float64, error) {
		c, err := classAt(gradeTable, x[1])
		if err != nil {
			return 0, err
		}
		return gradeOf(c, x[0])
	})
}

func pairResults() []trade.Result {
	return []trade.Result{
		length("hole_low", "Hole, low limit", "inch", units.Up),
		length("hole_high", "Hole, high limit", "inch", units.Down),
		length("shaft_low", "Shaft, low limit", "inch", units.Up),
		length("shaft_high", "Shaft, high limit", "inch", units.Down),
		length("least_clearance", "Least clearance; negative: interference", "thou", units.Down),
		length("most_clearance", "Most clearance; negative: interference", "thou", units.Up),
		length("least_interference", "Least interference; negative: clearance", "thou", units.Down),
		length("most_interference", "Most interference; negative: clearance", "thou", units.Up),
		{Name: "from_memory", About: memoryText, Kind: units.YesNo},
	}
}

func putPair(r FitResult, out []float64) {
	out[0], out[1] = r.Size+r.Hole.Lower, r.Size+r.Hole.Upper
	out[2], out[3] = r.Size+r.Shaft.Lower, r.Size+r.Shaft.Upper
	out[4], out[5] = r.LeastClearance, r.MostClearance
	out[6], out[7] = -r.MostClearance, -r.LeastClearance
	out[8] = trade.YesNo(r.FromMemory)
}

func isoPair(size, hole, shaft float64) (FitResult, error) {
	h, err := classAt(holeTable, hole)
	if err != nil {
		return FitResult{}, err
	}
	s, err := classAt(shaftTable, shaft)
	if err != nil {
		return FitResult{}, err
	}
	return isoFitOf(h, s, size)
}

func inchPair(size, index float64) (FitResult, error) {
	c, err := classAt(inchTable, index)
	if err != nil {
		return FitResult{}, err
	}
	return inchFitOf(c, size)
}

func isoFunction() trade.Function {
	return trade.Worked(trade.Function{
		Name:    "fit.iso",
		About:   "Limits and clearance of a hole and a shaft by ISO 286, such as H7 and p6.",
		Formula: "least clearance = EI - es; most = ES - ei",
		Params: []trade.Param{
			isoSizeRange.Param("size", nominal),
			trade.Choice("hole", "ISO class of the hole", HoleClasses()...),
			trade.Choice("shaft", "ISO class of the shaft or bushing", ShaftClasses()...),
		},
		Results: pairResults(),
		Source:  isoSource,
		Example: `fit.iso({size: mm(100), hole: "H7", shaft: "p6"}).most_interference`,
	}, func(x []float64) (FitResult, error) { return isoPair(x[0], x[1], x[2]) }, putPair)
}

func inchFunction() trade.Function {
	return trade.Worked(trade.Function{
		Name:    "fit.inch",
		About:   "Limits and clearance of a fit by ANSI B4.1, such as FN2 or RC4.",
		Formula: "least clearance = hole low - shaft high; most = hole high - shaft low",
		Params:  []trade.Param{inchSizeRange.Param("size", nominal), trade.Choice("class", "ANSI class of fit", InchFits()...)},
		Results: pairResults(),
		Source:  inchSource,
		Example: `fit.inch(inch(3), "FN2").most_interference`,
	}, func(x []float64) (FitResult, error) { return inchPair(x[0], x[1]) }, putPair)
}

func boreResults() []trade.Result {
	return []trade.Result{
		length("low", "Bore, low limit", "inch", units.Up),
		length("high", "Bore, high limit", "inch", units.Down),
		length("target", "Bore to aim at", "inch", units.Nearest),
		{Name: "from_memory", About: memoryText, Kind: units.YesNo},
	}
}

func putBore(r BoreResult, out []float64) {
	out[0], out[1], out[2], out[3] = r.Low, r.High, r.Target, trade.YesNo(r.Fit.FromMemory)
}

const boreFormula = "low = measured + least clearance; high = measured + most clearance; target midway"

func boreForFunction() trade.Function {
	return trade.Worked(trade.Function{
		Name:    "fit.bore_for",
		About:   "Bore to make for a measured bushing or pin, to get an ISO 286 fit.",
		Formula: boreFormula,
		Params: []trade.Param{
			measuredRange.Param("measured", "Measured outside diameter of the bushing or pin"),
			isoSizeRange.Param("size", nominal),
			trade.Choice("hole", "ISO class of the hole", HoleClasses()...),
			trade.Choice("shaft", "ISO class of the shaft or bushing", ShaftClasses()...),
		},
		Results: boreResults(),
		Source:  isoSource + "; 2 % between measured and nominal: common practice, no source",
		Example: `fit.bore_for({measured: mm(100.05), size: mm(100), hole: "H7", shaft: "p6"}).target`,
	}, func(x []float64) (BoreResult, error) {
		f, err := isoPair(x[1], x[2], x[3])
		if err != nil {
			return BoreResult{}, err
		}
		return BoreFor(x[0], f)
	}, putBore)
}

func boreForInchFunction() trade.Function {
	return trade.Worked(trade.Function{
		Name:    "fit.bore_for_inch",
		About:   "Bore to make for a measured bushing or pin, to get an ANSI B4.1 fit.",
		Formula: boreFormula,
		Params: []trade.Param{
			measuredRange.Param("measured", "Measured outside diameter of the bushing or pin"),
			inchSizeRange.Param("size", nominal),
			trade.Choice("class", "ANSI class of fit", InchFits()...),
		},
		Results: boreResults(),
		Source:  inchSource + "; 2 % between measured and nominal: common practice, no source",
		Example: `fit.bore_for_inch({measured: inch(3.0031), size: inch(3), class: "FN2"}).target`,
	}, func(x []float64) (BoreResult, error) {
		f, err := inchPair(x[1], x[2])
		if err != nil {
			return BoreResult{}, err
		}
		return BoreFor(x[0], f)
	}, putBore)
}
