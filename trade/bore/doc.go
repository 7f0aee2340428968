// Package bore tells where a worn pin bore lies, how big and how round it is,
// and what is left to cut on the axis one means to bore.
//
//	Survey        readings at stations → circles, axis, cylinder, outliers
//	Compare       several features' centres → which agree, which is the odd one out
//	EccentricStock, LuneArea, LuneVolume   closed forms for an off-centre bore
//	Surface       the worn wall between the readings, seen from any axis
//	Inspect, CleanUp   the finished bore against its limits, and its voids
//
// Position: x points to 3 o'clock and y to 12 o'clock for somebody looking at
// the near face; z runs from the near face into the bore. A clock position is
// an angle clockwise from 12 o'clock. The origin is the axis the readings were
// taken from, as a rule the bar.
//
// Words are those of ISO 12181-1 (roundness) and JCGM 100 (uncertainty): LSCI,
// MZCI, MCCI and MICI are the least squares, minimum zone, minimum
// circumscribed and maximum inscribed reference circles. Uncertainties named U
// are standard ones; what is called expanded has k = [Coverage].
package bore
