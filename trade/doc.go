// Package trade and the packages below it hold the engineering of the repair:
// pure functions, SI inside, no I/O, no clock.
//
//	lift    weight, centre of gravity, slings, lugs, shackles
//	truck   forklifts and lift tables
//	press   interference, press force, ram, heat and freeze
//	fit     ISO 286 and ANSI B4.1 limits, running clearance
//	bar     boring bars: deflection, cutting force, pass plan
//	setup   shims, levelling, clamping, conversions
//	bore    survey of a worn bore, its axis, its stock, inspection
//	weld    build-up plan, filler, preheat, heat input
//
// Each package offers typed Go functions and a Functions list that makes them
// callable from a rule sheet. This package holds what they share: the Function
// itself and what makes one (catalogue.go), the Range of an input, tables.
package trade
