// Package outside holds the program's figures against figures from outside it:
// printed tables, worked examples of books, other programs.
//
// A test lists its checks and runs them. Run also keeps the list as a file in
// testdata/checks, and testdata/CHECKS.md is put together from those files, so
// that a reader sees every figure, where it comes from and how well it agrees.
// A file that is out of date fails the test; make checks writes all anew.
package outside
