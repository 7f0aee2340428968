// Package rules is the language in which a foreman writes what readings must
// meet, and the engine that evaluates it.
//
//	source.File → Sheet      what was written, with every place kept
//	Sheets      → Set        names resolved, kinds checked, compiled once
//	Set + Readings → Report  verdicts, margins, worked lines
//
// A Set is immutable and may be used from many goroutines. Evaluation is pure:
// no clock, no I/O. Inside, every quantity is a float64 in SI units and NaN
// means "not known yet", so that a missing reading can never become a go.
//
// Expressions are written in the syntax of expr-lang/expr. Its parser gives the
// syntax tree; the pass in check.go gives every node a kind (inches are never
// added to pounds); the pass in program.go turns the numeric part into Go
// closures. The language has no loops and no I/O, and its size is bounded.
package rules
