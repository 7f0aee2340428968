// Package fit looks up limits and fits by name and works out what they mean for
// parts that are already measured.
//
//	Limits, ToleranceGrade   ISO 286 deviations of one class: H7, p6, IT7
//	ISOFit, InchFit, Named   a pair: H7/p6, FN2, RC4
//	BoreFor                  which bore to make for this measured bushing
//	Running                  clearance of a pin in a pressed-in bushing, cold and at work
//
// The tables are in iso286.csv (millimetre ranges) and ansi_b41.csv (inch
// ranges), one row per class and range with the source it was read from. None
// was read from the standard's publisher; a row that nobody could read is said
// to be from memory, here and in every result that uses it.
//
// A range is "over" its lower bound and "to" its upper: a size on a boundary
// belongs to the lower range.
package fit
