package setup

import (
	"cmp"
	"errors"
	"math"

	"gudgeon/trade"
	"gudgeon/units"
)

// ShimInput is a surface or bore that was indicated at two places.
type ShimInput struct {
	Near, Far float64 // indicator readings, high positive, m
	Span      float64 // between the two places, m
	Supports  float64 // between the two supports, m
}

// ShimResult is the shim that levels it.
type ShimResult struct {
	In   ShimInput
	Tilt float64 // up toward the far place, rad
	Far  float64 // shim under the far support, m; negative: under the near one
}

// Shim returns the shim that levels a part which was indicated at two places.
//
//	tilt = atan((far-near)/span); shim = -(far-near)·supports/span, under the far support
//
// Readings, span, distance of the supports, shim: m; tilt: rad. A negative shim
// goes under the near support.
//
// Valid for readings -1 to 1 in, distances 0.1 to 1000 in; otherwise an error.
// Source: similar triangles.
func Shim(in ShimInput) (ShimResult, error) {
	if err := cmp.Or(readingRange.Check(in.Near), readingRange.Check(in.Far), distanceRange.Check(in.Span), distanceRange.Check(in.Supports)); err != nil {
		return ShimResult{}, err
	}
	s := (in.Far - in.Near) / in.Span
	return ShimResult{In: in, Tilt: math.Atan(s), Far: -s * in.Supports}, nil
}

// Steps gives the worked lines of the shim.
func (r ShimResult) Steps() []trade.Step {
	return []trade.Step{
		{Name: "tilt, up toward the far place", Formula: "atan((far-near)/span)", Kind: units.Angle, Value: r.Tilt, Unit: "thou_per_ft"},
		{Name: "shim under the far support (negative: under the near one)", Formula: "-(far-near)·supports/span", Kind: units.Length, Value: r.Far, Unit: "thou"},
	}
}

// RimFaceInput is a part indicated on a rim (or bore) and on a face, sweeping
// from the machine's spindle, both zeroed at the top and read at the bottom.
type RimFaceInput struct {
	Rim    float64 // reading at the bottom of the rim, m
	Face   float64 // reading at the bottom of the face, m
	Circle float64 // diameter of the circle swept on the face, m
	Front  float64 // from the swept face to the front support, m
	Rear   float64 // from the swept face to the rear support, m
}

// RimFaceResult is how much to raise each support.
type RimFaceResult struct {
	In          RimFaceInput
	Offset      float64 // of the axis at the swept face, upward needed, m
	Tilt        float64 // rad
	Front, Rear float64 // raise by, m; negative: lower
}

// RimAndFace returns how much to raise the front and rear support from a rim
// and a face reading.
//
//	front = face·B/D - rim/2; rear = face·A/D - rim/2
//
// Readings at the bottom, zeroed at the top: rim, face; D circle swept on the
// face, B front and A rear support from that face, answers: m, raise positive.
//
// Valid for readings -1 to 1 in, distances 0.1 to 1000 in, rear not nearer than
// front; otherwise an error.
//
// Source: a published rim-and-face alignment formula sheet (fdocuments.us).
func RimAndFace(in RimFaceInput) (RimFaceResult, error) {
	if err := cmp.Or(
		readingRange.Check(in.Rim), readingRange.Check(in.Face), distanceRange.Check(in.Circle),
		distanceRange.Check(in.Front), distanceRange.Check(in.Rear),
	); err != nil {
		return RimFaceResult{}, err
	}
	if in.Rear < in.Front {
		return RimFaceResult{}, errors.New("the rear support is nearer than the front one; check which is which")
	}
	r := RimFaceResult{In: in, Offset: -in.Rim / 2, Tilt: math.Atan(in.Face / in.Circle)}
	r.Front = in.Face*in.Front/in.Circle + r.Offset
	r.Rear = in.Face*in.Rear/in.Circle + r.Offset
	return r, nil
}

// Steps gives the worked lines of rim and face.
func (r RimFaceResult) Steps() []trade.Step {
	return []trade.Step{
		{Name: "offset at the face, to be raised", Formula: "-rim/2", Kind: units.Length, Value: r.Offset, Unit: "thou"},
		{Name: "tilt", Formula: "atan(face/D)", Kind: units.Angle, Value: r.Tilt, Unit: "thou_per_ft"},
		{Name: "raise the front support by", Formula: "face·B/D - rim/2", Kind: units.Length, Value: r.Front, Unit: "thou"},
		{Name: "raise the rear support by", Formula: "face·A/D - rim/2", Kind: units.Length, Value: r.Rear, Unit: "thou"},
	}
}
