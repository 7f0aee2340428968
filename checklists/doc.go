// Package checklists holds the procedures that a foreman writes: the steps of a
// job, why each is done, what is read at it, which rule sheets watch over it and
// where work stops until a named person lets it go on.
//
//	Shop       where sheets and checklists are found, the shop's own first
//	Procedure  a checklist compiled with its sheets; immutable
//	Progress   what one job has so far: readings, ticks, releases, signatures
//	Report     where that job stands: steps, rules, the verdict, what is missing
//
// A Procedure and a Progress give a Report: pure, no clock, no I/O. Run walks a
// person through the steps of a Procedure.
package checklists
