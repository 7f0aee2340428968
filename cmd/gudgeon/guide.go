package main

import (
	"bufio"
	"errors"
	"fmt"
	"io"
	"os"
	"strings"

	"github.com/spf13/cobra"

	"gudgeon/checklists"
	"gudgeon/rules"
	"gudgeon/units"
)

func newGuide(s *settings) *cobra.Command {
	return &cobra.Command{
		Use:   "guide CHECKLIST [READINGS.yaml]",
		Short: "Be led through a job step by step",
		Long: `guide asks for one step after the other, says why it is done, and shows every
verdict as soon as its readings are in. Each answer is saved at once to the
readings file (CHECKLIST-readings.yaml unless named), and a later call goes on
where the job stands. At any question type ? to see what else can be answered.`,
		Example: `  gudgeon guide pre-lift
  gudgeon guide link job7.yaml`,
		Args: func(cmd *cobra.Command, args []string) error {
			if len(args) == 1 || len(args) == 2 {
				return nil
			}
			return errors.New("guide takes a checklist and, if you like, a file for the readings")
		},
		ValidArgsFunction: s.completeChecklist,
		RunE: func(cmd *cobra.Command, args []string) error {
			p, words, err := s.procedure(args[0])
			if err != nil {
				return err
			}
			path := p.ID + "-readings.yaml"
			if len(args) == 2 {
				path = args[1]
			}
			progress, err := loadProgress(p, path)
			if err != nil {
				return err
			}
			notes := &recall{settings: s}
			defer notes.close()
			g := &guide{path: path, notes: notes, asker: &asker{
				screen: s.screen(cmd.OutOrStdout()), in: bufio.NewScanner(cmd.InOrStdin()),
				run: checklists.NewRun(p, progress), words: words, system: s.units(),
				onQuit: "saves and ends; the same command goes on later",
			}}
			return g.lead()
		},
	}
}

// loadProgress reads an earlier session's file, or begins a new one.
func loadProgress(p *checklists.Procedure, path string) (*checklists.Progress, error) {
	if _, err := os.Stat(path); errors.Is(err, os.ErrNotExist) {
		return checklists.NewProgress(""), nil
	}
	f, err := readFile(path)
	if err != nil {
		return nil, err
	}
	return p.ReadProgress(f)
}

// guide leads one person through a job in the terminal.
type guide struct {
	*asker
	path  string
	notes *recall
}

func (g *guide) lead() error {
	p := g.run.Procedure
	g.line("%s", g.bold(g.words.Title(p)))
	g.labelled(0, "", g.words.About(p))
	for _, c := range g.words.Cautions(p) {
		g.labelled(2, "! ", c)
	}
	if n := len(g.run.Progress.Readings); n > 0 {
		g.gap()
		g.line(g.say("Going on with %s from %s."), g.count(n, "reading"), g.path)
	}
	g.line("%s", g.say("Answer each question; type ? for help."))
	for {
		step, i, open := g.run.Current()
		if !open {
			return g.end()
		}
		switch err := g.step(step, i); {
		case errors.Is(err, errQuit), errors.Is(err, io.EOF):
			g.gap()
			g.line(g.say("Saved in %s. Go on later with: gudgeon guide %s %s"), g.path, p.ID, g.path)
			return verdictError(rules.Worse(g.run.Report().Verdict, rules.Waiting))
		case errors.Is(err, errBack):
			if !g.run.Back() {
				g.line("  %s", g.say("This is the first step."))
			}
		case errors.Is(err, errSkip):
			if err := g.run.PutOff(step.Step); err != nil {
				g.line("  %s", g.say(err.Error()))
			}
		case err != nil:
			return err
		}
	}
}

func (g *guide) end() error {
	if n := g.run.PutOffCount(); n > 0 {
		g.gap()
		g.line(g.say("%s put off; the job is not finished."), g.count(n, "step"))
	}
	g.gap()
	printReport(g.screen, g.report(), g.system, false, g.notes)
	g.gap()
	g.line(g.say("Saved in %s."), g.path)
	return verdictError(g.run.Report().Verdict)
}

func (g *guide) save() error {
	return saveFile(g.path, g.run.Procedure.WriteProgress(g.run.Progress))
}

// step shows one step and takes what it asks for.
func (g *guide) step(s checklists.StepReport, i int) error {
	step := s.Step
	words := g.words.Step(step)
	g.heading(g.sayf("Step %d of %d: %s", i+1, len(g.run.Procedure.Steps), words.Title))
	g.labelled(2, "", words.Do)
	g.labelled(2, g.say("Why: "), words.Why)
	for _, c := range words.Cautions {
		g.labelled(2, "! ", c)
	}
	switch step.Kind {
	case checklists.Do:
		return g.tick(step)
	case checklists.Hold:
		return g.hold(s)
	}
	for _, d := range step.Take {
		if err := g.take(step, d); err != nil {
			return err
		}
	}
	g.run.Leave()
	return nil
}

func (g *guide) tick(step *checklists.Step) error {
	answer, err := g.ask(g.say("Done? (Enter when done)"), step)
	if err != nil {
		return err
	}
	if answer == "" || answer == "y" || g.means(answer, "yes") || g.means(answer, "done") {
		g.run.Tick(step)
		return g.save()
	}
	g.line("  %s", g.say("Press Enter when it is done, or type skip to come back to it."))
	return nil
}

// take asks for one reading, saves it and shows what it changed.
func (g *guide) take(step *checklists.Step, d *rules.ReadingDef) error {
	if d.Kind == units.Survey {
		return g.survey(step, d)
	}
	changes, err := g.asker.take(step, d)
	if err != nil {
		return err
	}
	if err := g.save(); err != nil {
		return err
	}
	g.show(changes)
	return nil
}

// show prints the verdicts that an answer has changed.
func (g *guide) show(changes []checklists.Change) {
	for _, c := range changes {
		switch c.Result.Verdict {
		case rules.Stop, rules.Caution:
			g.gap()
			printResult(g.screen, g.report().Rules, c.Index, g.system, false)
			g.notes.print(g.screen, g.report(), c.Index, g.system)
			g.gap()
		case rules.Go:
			line := g.report().Rules.Worked(c.Index, g.system)
			g.labelled(2, g.verdict(rules.Go)+"  ", c.Result.Rule.ID+": "+g.joinWorked(line, c.Result))
		}
	}
}

// hold shows what stands against a hold, and takes a release when nothing does.
func (g *guide) hold(s checklists.StepReport) error {
	if s.State == checklists.Blocked {
		return g.blocked(s)
	}
	who := g.words.Step(s.Step).ReleasedBy
	g.line("  "+g.say("Work stops here until this is released by: %s"), who)
	by, err := g.ask(g.sayf("Name of the %s who releases it:", who), s.Step)
	if err != nil {
		return err
	}
	if by == "" {
		g.line("  %s", g.say("Not released."))
		return errQuit
	}
	reason, err := g.ask(g.say("Reason, or what was looked at:"), s.Step)
	if err != nil {
		return err
	}
	if err := g.run.Release(s.Step, checklists.Signature{By: by, Reason: reason}); err != nil {
		g.line("  %s", g.say(err.Error()))
		return nil
	}
	return g.save()
}

// blocked lists what stands against a hold and lets one thing be signed.
func (g *guide) blocked(s checklists.StepReport) error {
	g.line("  %s", g.say("This hold stays shut. Against it stand:"))
	for n, result := range s.Against {
		g.labelled(4, fmt.Sprintf("%d ", n+1), fmt.Sprintf("%s %s: %s", g.verdict(result.Verdict), result.Rule.ID, g.against(result)))
	}
	answer, err := g.ask(g.say("Type back to correct a reading, or the number of a rule to sign past it:"), s.Step)
	if err != nil {
		return err
	}
	for n, result := range s.Against {
		if answer == fmt.Sprint(n+1) {
			return g.sign(result, s.Step)
		}
	}
	return nil
}

func (g *guide) against(result *rules.Result) string {
	if result.Verdict == rules.Waiting {
		return g.sayf("waits for %s", strings.Join(result.Missing, ", "))
	}
	report := g.report().Rules
	for i := range report.Results {
		if &report.Results[i] == result {
			return report.Says(i, g.system)
		}
	}
	return ""
}

func (g *guide) sign(result *rules.Result, step *checklists.Step) error {
	if result.Verdict == rules.Waiting {
		g.line("  %s", g.say("A missing reading is never a pass: type back and take it."))
		return nil
	}
	by, err := g.ask(g.say("Your name:"), step)
	if err != nil {
		return err
	}
	reason, err := g.ask(g.say("Reason:"), step)
	if err != nil {
		return err
	}
	if err := g.run.Sign(result.Rule, checklists.Signature{By: by, Reason: reason}); err != nil {
		g.line("  %s", g.say(err.Error()))
		return nil
	}
	return g.save()
}
