// Package setup holds the arithmetic of setting a part up on the machine.
//
//	Shim, RimAndFace         shims from indicator readings
//	LevelThree               three jacks brought level
//	SupportsFromBores        three supports set from readings along two bores
//	Slope, Taper, ...        thou per foot, degrees, mm per metre, tapers, sine bar
//	Cosine, HalfTIR          what an indicator really says
//	ToReference, WarmBore    sizes brought to 20 °C (68 °F)
//	TensileArea, Preload     bolts: area, torque, pull
//	StrapClamp, Hold         clamps: force on the part, grip against the cut
//	Centring                 spacers and cones on a line bar
//
// Heights and readings count up (high is positive); quantities are SI.
package setup
