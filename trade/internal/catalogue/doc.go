// Package catalogue tests what the catalogue of any trade package must hold: it
// is whole, its examples run, and what it allows is what its functions take.
package catalogue
