// Package weld plans the build-up of a worn bore before the first bead, and
// does the arithmetic of filler, heat and preheat.
//
//	MakePlan     worn wall, true axis, sizes, layers → stock everywhere, what stays short
//	ApplyHandWeld   the same plan with its hand-weld list added
//	MakeFiller   deposit volume → filler, arc time
//	CarbonEquivalent, CarbonEquivalentSi, Pcm   three formulas that must not be mixed
//	Preheat, HeatInput, Advise   heat, with the cautions that go with it
//
// Positions and clock positions are those of package bore. Weld is laid on the
// trued surface and measured towards the axis. Nothing here replaces the welding
// procedure, the code that applies at the place, or a welding inspector.
package weld
