package press

import (
	"cmp"
	"errors"
	"math"

	"gudgeon/trade"
	"gudgeon/units"
)

const (
	// Metals shrink less and less as they get colder. From room temperature to
	// liquid nitrogen steel averages about 5 of its 6.5 millionths per °F.
	coldShare = 5.0 / 6.5 // from memory
	coldSpan  = 390.4 / perF
)

var (
	roomRange = trade.Between("room temperature", 255, 320, units.Temperature, "")
	coldRange = trade.Between("temperature of the frozen part", n2Temp, 320, units.Temperature, "nothing in a shop is colder than liquid nitrogen")
	hotRange  = trade.Between("temperature of the heated part", 255, fZero+600/perF, units.Temperature, "above 600 °F temper and size of a part are at risk (common practice, no source)")
	gapRange  = trade.Between("clearance wanted", 0, 0.1*inch, units.Length, "")
)

// ShrinkInput is a part that is cooled.
type ShrinkInput struct {
	Diameter    float64 // m
	Expansion   float64 // near room temperature, 1/K
	Room        float64 // K
	Temperature float64 // after cooling, K
}

// ShrinkResult is how much it shrinks.
type ShrinkResult struct {
	In         ShrinkInput
	AtRoomRate float64 // by the room-temperature expansion, on diameter, m
	Shrink     float64 // to count on, on diameter, m
	Overstates bool    // colder than dry ice: the room-temperature rate promises too much
}

// Shrink returns how much a part shrinks on its diameter when cooled: by the
// expansion near room temperature, and less as it really does in the cold.
//
//	room rate: dD = D·alpha·(T0-T)
//	to count on: dD = D·alpha·(T0-T)·(1 - (1-5/6.5)·(T0-T)/217 K)
//
// D diameter, dD shrinkage: m; alpha expansion: 1/K; T0 room, T cold: K.
//
// Valid for D 0.1 to 80 in, T0 255 to 320 K, T from liquid nitrogen (77 K) to
// T0; otherwise an error. Below dry ice (195 K) Overstates is true.
//
// Source: room rate, linear expansion with Callister Table B.6; the fall of
// the rate in the cold is from memory (steel averages about 5 millionths per
// °F down to liquid nitrogen), taken for every metal.
func Shrink(in ShrinkInput) (ShrinkResult, error) {
	if err := cmp.Or(
		diameterRange.Check(in.Diameter), expansionRange.Check(in.Expansion),
		roomRange.Check(in.Room), coldRange.Check(in.Temperature),
		trade.InRange("temperature of the frozen part", in.Temperature, n2Temp, in.Room, units.Temperature, "it is to be colder than the room"),
	); err != nil {
		return ShrinkResult{}, err
	}
	r := ShrinkResult{In: in, Overstates: in.Temperature < iceTemp}
	drop := in.Room - in.Temperature
	r.AtRoomRate = in.Diameter * in.Expansion * drop
	r.Shrink = r.AtRoomRate * (1 - (1-coldShare)*drop/coldSpan)
	return r, nil
}

// Steps gives the worked lines of the shrinkage.
func (r ShrinkResult) Steps() []trade.Step {
	steps := []trade.Step{
		{Name: "shrinkage at the room-temperature rate", Formula: "dD = D·alpha·(T0-T)", Kind: units.Length, Value: r.AtRoomRate, Unit: "thou"},
		{Name: "shrinkage to count on", Formula: "dD·(1 - 0.23·(T0-T)/217 K)", Kind: units.Length, Value: r.Shrink, Unit: "thou"},
	}
	if r.Overstates {
		steps[0].Name += " (overstates: metals shrink less in the deep cold)"
	}
	return steps
}

// EaseInput is a fit that is to slip together without a press.
type EaseInput struct {
	Diameter     float64 // m
	Interference float64 // on diameter, m
	Clearance    float64 // wanted while it goes in, on diameter, m
	Expansion    float64 // of the part that is cooled or heated, 1/K
	Room         float64 // K
}

func (in EaseInput) check() error {
	return cmp.Or(
		diameterRange.Check(in.Diameter), interferenceRange.Check(in.Interference), gapRange.Check(in.Clearance),
		expansionRange.Check(in.Expansion), roomRange.Check(in.Room),
	)
}

// FreezeResult is how cold a bushing must be.
type FreezeResult struct {
	In          EaseInput
	AtRoomRate  float64 // temperature by the room-temperature expansion, K
	Temperature float64 // to count on, K
	DryIce      bool    // dry ice is cold enough
}

// FreezeTo returns how cold a bushing must be to drop in with a clearance.
//
//	dD(T) = delta + c, solved for T, dD as in Shrink
//
// delta interference, c clearance, both on diameter: m; T: K.
//
// Valid as for Shrink, c 0 to 0.1 in. If liquid nitrogen does not shrink the
// bushing enough, an error that says to heat the hub as well. Source: Shrink's.
// Never breathe in a pit or a closed room where dry ice or nitrogen boils off.
func FreezeTo(in EaseInput) (FreezeResult, error) {
	if err := in.check(); err != nil {
		return FreezeResult{}, err
	}
	r := FreezeResult{In: in}
	drop := (in.Interference + in.Clearance) / (in.Diameter * in.Expansion)
	r.AtRoomRate = in.Room - drop
	// drop = x·(1 - k·x), the nearer root.
	k := (1 - coldShare) / coldSpan
	root := 1 - 4*k*drop
	if root < 0 {
		return FreezeResult{}, errTooTight
	}
	x := 2 * drop / (1 + math.Sqrt(root))
	r.Temperature = in.Room - x
	if r.Temperature < n2Temp {
		return FreezeResult{}, errTooTight
	}
	r.DryIce = r.Temperature >= iceTemp
	return r, nil
}

var errTooTight = errors.New("even liquid nitrogen does not shrink the bushing enough for that clearance; heat the hub as well, or press it in")

// Steps gives the worked lines of the freezing temperature.
func (r FreezeResult) Steps() []trade.Step {
	return []trade.Step{
		{Name: "shrinkage wanted", Formula: "delta + c", Kind: units.Length, Value: r.In.Interference + r.In.Clearance, Unit: "thou"},
		{Name: "temperature at the room-temperature rate", Formula: "T0 - (delta+c)/(D·alpha)", Kind: units.Temperature, Value: r.AtRoomRate},
		{Name: "temperature to count on", Formula: "dD(T) = delta + c", Kind: units.Temperature, Value: r.Temperature},
	}
}

// HeatResult is how hot a hub must be.
type HeatResult struct {
	In          EaseInput
	Temperature float64 // K
}

// HeatTo returns how hot a hub must be for the bushing to drop in with a clearance.
//
//	T = T0 + (delta + c)/(D·alpha)
//
// T0 room, T hot: K; delta interference, c clearance on diameter, D interface
// diameter: m; alpha the hub's expansion: 1/K. The whole ring must be hot, not
// the bore's skin.
//
// Valid for T0 255 to 320 K, c 0 to 0.1 in. Above 600 °F an error: common
// practice, no source. Source: linear expansion, Callister Table B.6.
func HeatTo(in EaseInput) (HeatResult, error) {
	if err := in.check(); err != nil {
		return HeatResult{}, err
	}
	t := in.Room + (in.Interference+in.Clearance)/(in.Diameter*in.Expansion)
	if err := hotRange.Check(t); err != nil {
		return HeatResult{}, err
	}
	return HeatResult{In: in, Temperature: t}, nil
}

// Steps gives the worked lines of the heating temperature.
func (r HeatResult) Steps() []trade.Step {
	return []trade.Step{
		{Name: "growth wanted", Formula: "delta + c", Kind: units.Length, Value: r.In.Interference + r.In.Clearance, Unit: "thou"},
		{Name: "temperature of the hub", Formula: "T0 + (delta+c)/(D·alpha)", Kind: units.Temperature, Value: r.Temperature},
	}
}

// SlipInput is a cold bushing and a hot hub.
type SlipInput struct {
	Diameter         float64 // m
	Interference     float64 // on diameter at room temperature, m
	BushingExpansion float64 // 1/K
	HubExpansion     float64 // 1/K
	Room             float64 // K
	BushingTemp      float64 // K, not above the room
	HubTemp          float64 // K, not below the room
}

// SlipResult is the clearance that cold and heat make.
type SlipResult struct {
	In        SlipInput
	Bushing   ShrinkResult
	HubGrowth float64 // on diameter, m
	Clearance float64 // on diameter, m; negative: still tight
}

// SlipIn returns the clearance on diameter when a cold bushing meets a hot hub.
//
//	c = dD(T) + D·alphah·(Th-T0) - delta
//
// c clearance, delta interference, D diameter, dD the bushing's shrinkage (see
// Shrink): m; alphah the hub's expansion: 1/K; Th hub, T0 room: K.
//
// Valid as for Shrink, Th from T0 to 600 °F; otherwise an error. A negative
// answer says it will stick. Both creep back to room temperature within
// minutes: use the temperatures at the moment of going in.
//
// Source: Shrink's and HeatTo's.
func SlipIn(in SlipInput) (SlipResult, error) {
	b, err := Shrink(ShrinkInput{in.Diameter, in.BushingExpansion, in.Room, in.BushingTemp})
	if err != nil {
		return SlipResult{}, err
	}
	if err := cmp.Or(
		interferenceRange.Check(in.Interference), expansionRange.Check(in.HubExpansion), hotRange.Check(in.HubTemp),
		trade.InRange("temperature of the heated part", in.HubTemp, in.Room, hotRange.High, units.Temperature, "it is to be no colder than the room"),
	); err != nil {
		return SlipResult{}, err
	}
	r := SlipResult{In: in, Bushing: b}
	r.HubGrowth = in.Diameter * in.HubExpansion * (in.HubTemp - in.Room)
	r.Clearance = b.Shrink + r.HubGrowth - in.Interference
	return r, nil
}

// Steps gives the worked lines of the slip-in clearance.
func (r SlipResult) Steps() []trade.Step {
	return append(r.Bushing.Steps(),
		trade.Step{Name: "growth of the hub's bore", Formula: "D·alphah·(Th-T0)", Kind: units.Length, Value: r.HubGrowth, Unit: "thou"},
		trade.Step{Name: "clearance while it goes in", Formula: "dD + growth - delta", Kind: units.Length, Value: r.Clearance, Unit: "thou"},
	)
}
