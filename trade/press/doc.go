// Package press holds the arithmetic of pressing a bushing into a boss, or
// shrinking it in, and of the press that does it.
//
//	Pressure, Stress       thick cylinder of two materials: pressure, stress, close-in
//	GreatestInterference   how much interference the weaker of the two can take
//	Boss                   the round ring that an uneven boss amounts to, or why there is none
//	Force, PushOut         force to press in at the most friction, hold at the least
//	HandbookForce          an old handbook's tonnage, to cross-check Force
//	Shrink, FreezeTo ...   temperatures for going in without a press
//	Capacity, OffCentre,
//	Daylight, Support ...  whether the press is big enough and the boss is held up
//
// All of it is elastic: the moment anything yields, the real pressure is lower
// than the formulas say. Diameters are diameters, interference is on diameter,
// quantities are SI. A machine's own plate governs over any figure here.
package press
