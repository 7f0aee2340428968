// Package finiteelement checks closed formulas of the trade against the finite
// elements of CalculiX (ccx), a program of its own that shares nothing with the
// formulas but the sizes and the metals.
//
// make finite-element runs it. Its figures are kept in testdata/checks, so that
// testdata/CHECKS.md shows them on a machine without ccx, where the tests that
// run it are skipped.
package finiteelement
