package main

import (
	"fmt"
	"slices"
	"strings"

	"github.com/spf13/cobra"

	"gudgeon/checklists"
	"gudgeon/index"
	"gudgeon/kb"
	"gudgeon/rules"
	"gudgeon/units"
)

// recall brings up the notes that bear on a rule which stops or cautions. Notes
// are read, and the index is built, only when the first such rule asks.
type recall struct {
	settings *settings
	began    bool
	notes    []kb.Note
	index    *index.Index
	err      error // a mistake in the notes is no mistake in the job
	shown    bool
}

// mostRecalled is how many notes a rule brings up.
const mostRecalled = 2

// about gives the notes that name a rule, those on the same kind of part first.
// What words alone would bring up is left out: held against the shipped rules, it
// was beside the point about as often as not.
func (r *recall) about(report *checklists.Report, i int, system units.System) []kb.Note {
	rule := report.Rules.Results[i].Rule
	if !r.begin() || !slices.ContainsFunc(r.notes, func(n kb.Note) bool { return slices.Contains(n.Rules, rule.ID) }) {
		return nil
	}
	if r.index == nil {
		if r.index, r.err = r.settings.buildIndex(r.notes); r.err != nil {
			return nil
		}
	}
	words := report.Progress.Part + " " + report.Rules.In(nil).Says(i, system) // the notes are in English
	hits, err := r.index.ForRule(rule.ID, report.Procedure.Part, words, mostRecalled)
	if r.err = err; err != nil {
		return nil
	}
	var notes []kb.Note
	for _, h := range hits {
		notes = append(notes, h.Note)
	}
	return notes
}

// begin reads the notes once, and reports whether there are any to use.
func (r *recall) begin() bool {
	if !r.began {
		r.began = true
		r.notes, r.err = r.settings.notes()
	}
	return r.err == nil
}

func (r *recall) close() {
	if r.index != nil {
		r.index.Close()
	}
}

// print writes the notes under a rule.
func (r *recall) print(s *screen, report *checklists.Report, i int, system units.System) {
	label := s.say("note")
	for _, n := range r.about(report, i, system) {
		s.row(2, label, 10, n.Title+" ["+n.Name+"]")
		if n.NextTime != "" {
			s.row(2, "", 10, s.say("Next time: ")+n.NextTime)
		}
		label, r.shown = "", true
	}
}

// end says how to read on, or why there are no notes.
func (r *recall) end(s *screen) {
	if r.err != nil {
		s.gap()
		s.labelled(0, "", r.trouble())
		return
	}
	if r.shown {
		s.gap()
		s.line("%s", s.say("Read a note whole with: gudgeon find --read NAME"))
	}
}

// trouble is what is wrong with the notes, in a line; empty when nothing is.
func (r *recall) trouble() string {
	if r.err == nil {
		return ""
	}
	first, _, _ := strings.Cut(r.err.Error(), "\n")
	return "The notes are left out: " + first + ". The verdict does not depend on them."
}

// fill adds the notes to a report for other programs.
func (r *recall) fill(out *checklists.ReportJSON, report *checklists.Report, system units.System) {
	for i := range out.Rules {
		if v := out.Rules[i].Verdict; v != rules.Stop && v != rules.Caution {
			continue
		}
		for _, n := range r.about(report, i, system) {
			out.Rules[i].Notes = append(out.Rules[i].Notes, checklists.NoteJSON{Name: n.Name, Title: n.Title, NextTime: n.NextTime})
		}
	}
}

// printJSON writes a report for other programs. Trouble with the notes goes beside
// it.
func printJSON(cmd *cobra.Command, r *checklists.Report, system units.System, notes *recall) error {
	out := r.JSON(system)
	notes.fill(&out, r, system)
	if trouble := notes.trouble(); trouble != "" {
		fmt.Fprintln(cmd.ErrOrStderr(), "gudgeon: "+trouble)
	}
	return writeJSON(cmd.OutOrStdout(), out)
}
