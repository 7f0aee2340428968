// Package boresurvey reads the file in which a machinist writes down a worn
// bore, and works it out.
//
//	Read   file → Job: sweeps, diameters, candidate centres, plan data, and the
//	       sections on the work: heat, weld surface, passes, finished
//	Find   Job → Finding: the survey, the datum, the weld plan, what heat the part
//	       wants, the passes to size, the finished bore, a verdict
//
// A mistake in the file is named with its line and column. What is missing is no
// mistake: the finding then waits for it.
package boresurvey
