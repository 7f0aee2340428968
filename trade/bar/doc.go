// Package bar holds the arithmetic of boring: how the bar gives, what the cut
// asks of it, and in how many passes a rough bore comes round and to size.
//
//	Cantilever, LineBar        deflection and stiffness at the cutter
//	Overhang                   length-to-diameter limits by bar material
//	Frequency, StableDepth     natural frequency, depth of cut without chatter
//	Cut, CutByUnitPower        force, torque, power (Kienzle; power per volume)
//	Roughness, SurfaceSpeed    theoretical finish, speeds to start from
//	Copying                    how much out-of-round a pass leaves
//	Plan                       the passes from rough stock to size
//
// Depth of cut is on radius, stock is on radius, diameters are diameters. Feed
// is held per radian, as everywhere in the program; a result that speaks of a
// turn says so. Quantities are SI.
package bar
