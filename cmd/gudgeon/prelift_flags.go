package main

import (
	"errors"
	"fmt"
	"strings"

	"github.com/spf13/cobra"

	"gudgeon/checklists"
	"gudgeon/rules"
	"gudgeon/rules/source"
)

// preliftFlags are the answers that may be given with the call.
type preliftFlags struct {
	part   string
	reach  string
	clear  bool
	common [4]string
	set    []string
}

// commonFlags are the answers asked for most, each with the reading it stands for.
var commonFlags = [...]struct{ flag, reading, help string }{
	{"weight", "part_weight", "what it weighs, like 4600lb or 2.1t"},
	{"known", "weight_known_by", "how the weight is known: weighed, plate, shape or guessed"},
	{"by", "lifted_by", "what lifts it: slings, lug, eyebolts, forks, table or hand"},
	{"rig", "hitch", "how it is rigged on a crane: one leg, bridle, choker, basket or double basket"},
}

// reachReadings are what --reach may mean; the way of lifting decides.
var reachReadings = []string{"load_centre", "table_offset", "leg_reach", "lug_offset"}

func (f *preliftFlags) register(cmd *cobra.Command) {
	flags := cmd.Flags()
	flags.SortFlags = false
	flags.StringVar(&f.part, "part", "", "what it is, in your own words")
	for i, c := range commonFlags {
		flags.StringVar(&f.common[i], c.flag, "", c.help)
	}
	flags.StringVar(&f.reach, "reach", "", "how far out the balance point is, or the farthest lifting point")
	flags.BoolVar(&f.clear, "clear", false, "everybody is out from under it and out of where it could swing, tip or roll")
	flags.StringArrayVar(&f.set, "set", nil, "any reading of the checklist, as `name=value`; may be given many times")
}

// any reports whether an answer came with the call.
func (f *preliftFlags) any(cmd *cobra.Command) bool {
	names := []string{"part", "reach", "clear", "set"}
	for _, c := range commonFlags {
		names = append(names, c.flag)
	}
	for _, n := range names {
		if cmd.Flags().Changed(n) {
			return true
		}
	}
	return false
}

// apply takes the answers over; every mistake in them is told in one go.
func (f *preliftFlags) apply(cmd *cobra.Command, run *checklists.Run, words *rules.Translation) error {
	if f.part != "" {
		run.Progress.Part = f.part
	}
	var mistakes []error
	for i, c := range commonFlags {
		if cmd.Flags().Changed(c.flag) {
			mistakes = append(mistakes, setReading(run, words, "--"+c.flag, c.reading, f.common[i]))
		}
	}
	if cmd.Flags().Changed("clear") {
		answer := map[bool]string{true: "yes", false: "no"}[f.clear]
		mistakes = append(mistakes, setReading(run, words, "--clear", "people_clear", answer))
	}
	for _, text := range f.set {
		mistakes = append(mistakes, setNamed(run, words, text))
	}
	if cmd.Flags().Changed("reach") {
		mistakes = append(mistakes, setReach(run, words, f.reach))
	}
	if err := errors.Join(mistakes...); err != nil {
		return plainError{err}
	}
	return nil
}

// setNamed takes name=value.
func setNamed(run *checklists.Run, words *rules.Translation, text string) error {
	name, value, ok := strings.Cut(text, "=")
	if !ok {
		return fmt.Errorf("--set %s: write name=value, like --set crane_rating=10000lb", text)
	}
	return setReading(run, words, "--set", strings.TrimSpace(name), value)
}

func setReading(run *checklists.Run, words *rules.Translation, flag, name, value string) error {
	d, ok := run.Procedure.Rules.Reading(name)
	if !ok {
		return unknownReading(run, flag, name)
	}
	reading, err := words.Read(d, value)
	if err != nil {
		return fmt.Errorf("%s: %w", flag, err)
	}
	run.Set(name, reading)
	return nil
}

func unknownReading(run *checklists.Run, flag, name string) error {
	var names []string
	for _, d := range run.Procedure.Rules.Readings {
		names = append(names, d.Name)
	}
	text := fmt.Sprintf("%s: the checklist %s has no reading %s", flag, run.Procedure.ID, name)
	if hint := source.Suggest(name, names); hint != "" {
		text += "; " + hint
	}
	return errors.New(text)
}

// setReach finds which distance this way of lifting asks for.
func setReach(run *checklists.Run, words *rules.Translation, value string) error {
	for _, name := range reachReadings {
		if asksFor(run.Report(), name) {
			return setReading(run, words, "--reach", name, value)
		}
	}
	return errors.New("--reach: say with --by what lifts it, and with --rig how a crane is rigged; this lift asks for no reach")
}

// asksFor reports whether a step that is needed takes a reading.
func asksFor(report *checklists.Report, name string) bool {
	for _, s := range report.Steps {
		if s.State == checklists.Skipped || s.State == checklists.Undecided {
			continue
		}
		for _, d := range s.Step.Take {
			if d.Name == name {
				return true
			}
		}
	}
	return false
}
