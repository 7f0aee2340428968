// Package sketch draws what is quicker seen than said, as SVG line drawings in
// the manner of a trade handbook.
//
//	EndView     the bore round the clock: worn, true, weld, wall
//	Unrolled    the bore cut open: stock by clock position and depth
//	AxisView    the old axis against the true one, from the side
//	Slings      a hook, its slings and their angles
//	Hanging     a part on its lug, with the plumb line
//	ForkLoad    a load on forks and its moment
//	TableLoad   a load on a lift table, off its middle
//	BarBend     a boring bar under its cutting force
//	Sheet       several of them on one sheet, with its own title
//
// Every drawing is 360 units wide, which is a phone's width in pixels, and as
// high as it needs. Meaning is carried by line and hatching; the one colour only
// repeats it. Where something is drawn larger than it is, the drawing says how
// many times. Functions are pure: same input, same text. Nothing a drawing shows
// replaces the plate, the rigger or the engineer; captions say whose word counts.
package sketch
