// Package units holds the quantities of the inch and the metric shop.
//
// Inside the program every quantity is a float64 in SI base units (metres,
// kilograms, newtons, pascals, radians, kelvins, seconds ...). A [Kind] says
// what the number means; a [Unit] says how people write it.
//
//	Parse(Length, `3-1/8"`)       → what a person typed, as SI
//	Show(x, Length, Inch, Down)   → a number to read, rounded to the safe side
//	Exact(x, unit)                → a text that Parse turns back into the same x
//
// The package does no I/O and knows nothing of rules, screens or storage.
package units
