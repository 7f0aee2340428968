package setup

import (
	"gudgeon/trade"
	"gudgeon/units"
)

func shimFunctions() []trade.Function {
	return []trade.Function{shimFunction(), rimFaceFunction(), levelFunction(), boresFunction()}
}

func shimFunction() trade.Function {
	return trade.Worked(trade.Function{
		Name:    "setup.shim",
		About:   "Shim that levels a part which was indicated at two places.",
		Formula: "shim = -(far-near)·supports/span, under the far support; negative: under the near one",
		Params: []trade.Param{
			readingRange.Param("near", "Indicator at the near place, high positive"),
			readingRange.Param("far", "Indicator at the far place, high positive"),
			distanceRange.Param("span", "Distance between the two places"),
			distanceRange.Param("supports", "Distance between the two supports"),
		},
		Results: []trade.Result{
			trade.ResultOf("shim", "Shim under the far support; negative: under the near one", units.Length, "thou", units.Nearest),
			trade.ResultOf("tilt", "Tilt, up toward the far place", units.Angle, "thou_per_ft", units.Nearest),
		},
		Source:  "similar triangles",
		Example: "setup.shim({near: thou(0), far: thou(-6), span: inch(12), supports: inch(30)}).shim",
	}, func(x []float64) (ShimResult, error) {
		return Shim(ShimInput{Near: x[0], Far: x[1], Span: x[2], Supports: x[3]})
	}, func(r ShimResult, out []float64) { out[0], out[1] = r.Far, r.Tilt })
}

func rimFaceFunction() trade.Function {
	return trade.Worked(trade.Function{
		Name:    "setup.rim_and_face",
		About:   "How much to raise front and rear support from a rim and a face reading, zeroed at the top, read at the bottom.",
		Formula: "front = face·B/D - rim/2; rear = face·A/D - rim/2",
		Params: []trade.Param{
			readingRange.Param("rim", "Rim or bore reading at the bottom"),
			readingRange.Param("face", "Face reading at the bottom"),
			distanceRange.Param("circle", "Diameter of the circle swept on the face"),
			distanceRange.Param("front", "From that face to the front support"),
			distanceRange.Param("rear", "From that face to the rear support"),
		},
		Results: []trade.Result{
			trade.ResultOf("front", "Raise the front support by; negative: lower", units.Length, "thou", units.Nearest),
			trade.ResultOf("rear", "Raise the rear support by; negative: lower", units.Length, "thou", units.Nearest),
		},
		Source:  "a published rim-and-face alignment formula sheet (fdocuments.us)",
		Example: "setup.rim_and_face({rim: thou(-10), face: thou(6), circle: inch(5), front: inch(12), rear: inch(30)}).front",
	}, func(x []float64) (RimFaceResult, error) {
		return RimAndFace(RimFaceInput{Rim: x[0], Face: x[1], Circle: x[2], Front: x[3], Rear: x[4]})
	}, func(r RimFaceResult, out []float64) { out[0], out[1] = r.Front, r.Rear })
}

func placeParams() []trade.Param {
	return []trade.Param{
		placeRange.Param("x1", "Place of support 1"), placeRange.Param("y1", "Place of support 1, across"),
		placeRange.Param("x2", "Place of support 2"), placeRange.Param("y2", "Place of support 2, across"),
		placeRange.Param("x3", "Place of support 3"), placeRange.Param("y3", "Place of support 3, across"),
	}
}

func raiseResults() []trade.Result {
	return []trade.Result{
		trade.ResultOf("raise1", "Raise support 1 by", units.Length, "thou", units.Nearest),
		trade.ResultOf("raise2", "Raise support 2 by", units.Length, "thou", units.Nearest),
		trade.ResultOf("raise3", "Raise support 3 by", units.Length, "thou", units.Nearest),
	}
}

func points(x []float64) [3]Point { return [3]Point{{x[0], x[1]}, {x[2], x[3]}, {x[4], x[5]}} }

func levelFunction() trade.Function {
	return trade.Worked(trade.Function{
		Name:    "setup.level_three",
		About:   "How much to raise each of three jacks to bring the part level at the highest.",
		Formula: "raise = highest - z; tilt = atan(√(a²+b²)) of the plane z = ax + by + c",
		Params: append(placeParams(),
			readingRange.Param("z1", "Height read over support 1"),
			readingRange.Param("z2", "Height read over support 2"),
			readingRange.Param("z3", "Height read over support 3")),
		Results: append(raiseResults(), trade.ResultOf("tilt", "Tilt of the part", units.Angle, "thou_per_ft", units.Up)),
		Source:  "geometry; supports nearly in one line: common practice, no source",
		Example: "setup.level_three({x1: inch(0), y1: inch(0), x2: inch(24), y2: inch(0), x3: inch(10), y3: inch(18), z1: thou(12), z2: thou(-4), z3: thou(7)}).raise2",
	}, func(x []float64) (LevelResult, error) {
		return LevelThree(LevelInput{Jacks: points(x), Heights: [3]float64{x[6], x[7], x[8]}})
	}, func(r LevelResult, out []float64) {
		out[0], out[1], out[2], out[3] = r.Raise[0], r.Raise[1], r.Raise[2], r.Tilt
	})
}

func boresFunction() trade.Function {
	return trade.Worked(trade.Function{
		Name:    "setup.supports_from_bores",
		About:   "How much to raise each of three supports so that two bores come level, along and across.",
		Formula: "along = ((f1-n1)+(f2-n2))/(2·span); across = ((n2-n1)+(f2-f1))/(2·between); raise = highest - z at the support",
		Params: append([]trade.Param{
			readingRange.Param("near1", "Near reading of bore 1, high positive"),
			readingRange.Param("far1", "Far reading of bore 1"),
			readingRange.Param("near2", "Near reading of bore 2"),
			readingRange.Param("far2", "Far reading of bore 2"),
			distanceRange.Param("span", "Distance between near and far"),
			distanceRange.Param("between", "Distance from bore 1 to bore 2"),
		}, placeParams()...),
		Results: append(raiseResults(),
			trade.ResultOf("along", "Tilt along the bores, up toward far", units.Angle, "thou_per_ft", units.Nearest),
			trade.ResultOf("across", "Tilt across, up toward bore 2", units.Angle, "thou_per_ft", units.Nearest),
			trade.ResultOf("disagree", "By how much the two bores' tilts differ over the span", units.Length, "thou", units.Nearest)),
		Source:  "least-squares plane through four readings; supports nearly in one line: common practice, no source",
		Example: "setup.supports_from_bores({near1: thou(0), far1: thou(4), near2: thou(3), far2: thou(7), span: inch(8), between: inch(30), x1: inch(0), y1: inch(0), x2: inch(40), y2: inch(0), x3: inch(20), y3: inch(30)}).raise1",
	}, func(x []float64) (BoresResult, error) {
		return SupportsFromBores(BoresInput{Near1: x[0], Far1: x[1], Near2: x[2], Far2: x[3], Span: x[4], Between: x[5], Supports: points(x[6:])})
	}, func(r BoresResult, out []float64) {
		out[0], out[1], out[2] = r.Raise[0], r.Raise[1], r.Raise[2]
		out[3], out[4], out[5] = r.Along, r.Across, r.Disagree
	})
}
