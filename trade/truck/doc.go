// Package truck works out what forks and lift tables may carry: a truck's
// capacity when the load sits or hangs further out than its plate assumes, how
// far the forks reach under the load, how the load is shared across the forks,
// how worn the forks are, and a lift table with its load off the middle.
//
//	capacity.go   load moment, load hung past the tips, engagement
//	forks.go      share across the forks, wear, extensions
//	table.go      lift table with the load off its middle
//	grade.go      slopes
//	catalogue.go  all of it for rule sheets
//
// Everything is SI; loads and capacities are masses in kg, as plates are
// marked. The plate governs: a truck's capacity at its own load centre, height
// and attachment is what its maker says, and every answer here is an estimate
// that never goes above it. A use is demand over capacity: above 1 is
// overloaded.
package truck
