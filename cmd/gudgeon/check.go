package main

import (
	"encoding/json"
	"io"
	"math"
	"strings"
	"unicode"
	"unicode/utf8"

	"github.com/spf13/cobra"

	"gudgeon/checklists"
	"gudgeon/rules"
	"gudgeon/units"
)

func newCheck(s *settings) *cobra.Command {
	var worked bool
	cmd := &cobra.Command{
		Use:   "check CHECKLIST READINGS.yaml",
		Short: "Say whether readings are go, caution or stop, and why",
		Long: `check evaluates a file of readings against a checklist and its rule sheets.
CHECKLIST is the name of a checklist or the path of one; READINGS.yaml may be -
for standard input. A missing reading is never a pass: the verdict is then waiting.`,
		Example: `  gudgeon check pre-lift readings.yaml
  gudgeon check link job7.yaml --json`,
		Args: exactly(2, "a checklist and a file of readings, like: gudgeon check pre-lift readings.yaml"),
		RunE: func(cmd *cobra.Command, args []string) error {
			p, words, err := s.procedure(args[0])
			if err != nil {
				return err
			}
			f, err := readFile(args[1])
			if err != nil {
				return err
			}
			progress, err := p.ReadProgress(f)
			if err != nil {
				return err
			}
			report := p.Evaluate(progress)
			notes := &recall{settings: s}
			defer notes.close()
			if s.json {
				err = printJSON(cmd, report, s.units(), notes)
			} else {
				printReport(s.screen(cmd.OutOrStdout()), report.In(words), s.units(), worked, notes)
			}
			if err != nil {
				return err
			}
			return verdictError(report.Verdict)
		},
	}
	cmd.Flags().BoolVar(&s.json, "json", false, "print the report as JSON")
	cmd.Flags().BoolVar(&worked, "worked", false, "show every rule down to the last number")
	cmd.ValidArgsFunction = s.completeChecklist
	return cmd
}

// completeChecklist offers checklist names to the shell, then files.
func (s *settings) completeChecklist(_ *cobra.Command, args []string, _ string) ([]string, cobra.ShellCompDirective) {
	if len(args) > 0 {
		return []string{"yaml"}, cobra.ShellCompDirectiveFilterFileExt
	}
	shop, err := s.openShop()
	if err != nil {
		return nil, cobra.ShellCompDirectiveError
	}
	return shop.ChecklistNames(), cobra.ShellCompDirectiveDefault
}

func writeJSON(w io.Writer, v any) error {
	e := json.NewEncoder(w)
	e.SetEscapeHTML(false)
	e.SetIndent("", "  ")
	return e.Encode(v)
}

// printReport writes a whole report: what stops first, what is in order last.
func printReport(s *screen, r *checklists.Report, system units.System, worked bool, notes *recall) {
	s.line("%s: %s", s.bold(r.Words().Title(r.Procedure)), s.verdict(r.Verdict))
	if r.Progress.Part != "" {
		s.line("%s", r.Progress.Part)
	}
	for _, v := range []rules.Verdict{rules.Stop, rules.Caution} {
		for i := range r.Rules.Results {
			if r.Rules.Results[i].Verdict == v {
				s.gap()
				printResult(s, r.Rules, i, system, worked)
				notes.print(s, r, i, system)
			}
		}
	}
	printNotes(s, r.Rules, system)
	printWaiting(s, r, system)
	printGo(s, r, system, worked)
	printCautions(s, r)
	notes.end(s)
}

// printResult writes one rule that stops or cautions.
func printResult(s *screen, r *rules.Report, i int, system units.System, worked bool) {
	result := &r.Results[i]
	name := result.Rule.ID
	if result.Rule.LifeSafety {
		name += s.say(" (life safety)")
	}
	s.line("%s  %s", s.verdict(result.Verdict), name)
	line := r.Worked(i, system)
	if result.Err != nil {
		s.labelled(2, "", sentence(line.Result))
		s.labelled(2, "", line.Symbols)
	} else {
		s.labelled(2, "", reason(r, i, system))
		s.labelled(2, "", line.Symbols)
		s.labelled(2, "", s.joinWorked(line, result))
	}
	printSteps(s, r.Steps(i, system), worked)
	s.row(2, s.say("do"), 10, r.Do(i, system))
	printWays(s, r, i, system)
	s.row(2, s.say("source"), 10, result.Rule.Source)
}

// reason says why a rule is not go: what the sheet says, or, when the check holds
// by less than it is sure to, what the doubt is.
func reason(r *rules.Report, i int, system units.System) string {
	if doubt, ok := r.Doubt(i, system); ok {
		return doubt.String()
	}
	return r.Says(i, system)
}

// sentence makes a phrase stand alone.
func sentence(text string) string {
	first, size := utf8.DecodeRuneInString(text)
	return string(unicode.ToUpper(first)) + text[size:] + "."
}

// printWays lists what would make a rule go.
func printWays(s *screen, r *rules.Report, i int, system units.System) {
	label := s.say("way out")
	for _, way := range r.WaysOut(i, system) {
		var parts []string
		for _, c := range way.Changes {
			from := r.Language().Show(c.Reading, rules.Reading{Value: c.From}, system)
			parts = append(parts, s.sayf("%s: %s instead of %s", r.Language().Ask(c.Reading), changeText(r, c, system), from))
		}
		s.row(2, label, 10, strings.Join(parts, s.say(", and ")))
		label = s.say("or")
	}
}

// changeText is what a reading is to become: a number as a shop would set it, or
// the answer in words.
func changeText(r *rules.Report, c rules.Change, system units.System) string {
	if c.Reading.Kind.Numeric() {
		return c.Text
	}
	return r.Language().Show(c.Reading, rules.Reading{Value: c.To}, system)
}

func (s *screen) joinWorked(line rules.Line, result *rules.Result) string {
	text := line.Result
	if line.Numbers != "" {
		text = line.Numbers + ": " + line.Result
	}
	if result.NonLinear && result.Margin < 3*result.U {
		text += s.say(" (the rule bends here: its uncertainty is only roughly known)")
	}
	if !math.IsNaN(result.Use) {
		text += s.sayf(" (use %.0f %%)", math.Ceil(result.Use*100-1e-9))
	}
	return text
}

// printSteps writes the lines that lead to a rule; the steps inside the trade's
// functions only when asked.
func printSteps(s *screen, lines []rules.Line, all bool) {
	for _, l := range lines {
		if (l.Inner || l.Word) && !all {
			continue
		}
		s.labelled(4, "", stepText(l))
	}
}

func stepText(l rules.Line) string {
	parts := []string{}
	for _, p := range []string{l.Symbols, l.Numbers, l.Result} {
		if p != "" && (len(parts) == 0 || parts[len(parts)-1] != p) {
			parts = append(parts, p)
		}
	}
	sign := " = "
	if l.Word {
		sign = ": " // its symbols have equals signs of their own
	}
	text := strings.Join(parts, sign)
	if l.Name != "" && l.Inner {
		return l.Name + ": " + text
	}
	if l.Name != "" {
		return l.Name + " = " + text
	}
	return text
}

func printNotes(s *screen, r *rules.Report, system units.System) {
	for i := range r.Results {
		if r.Results[i].Noted {
			s.gap()
			s.line("%s  %s", s.say("NOTE"), r.Results[i].Rule.ID)
			s.labelled(2, "", r.Says(i, system))
			s.labelled(2, "", s.joinWorked(r.Worked(i, system), &r.Results[i]))
			s.row(2, s.say("do"), 10, r.Do(i, system))
		}
	}
}

func printGo(s *screen, r *checklists.Report, system units.System, worked bool) {
	var inOrder []int
	unneeded := 0
	width := 0
	for i := range r.Rules.Results {
		switch result := &r.Rules.Results[i]; {
		case result.Verdict == rules.Go && !result.Noted:
			inOrder = append(inOrder, i)
			width = max(width, len(result.Rule.ID))
		case result.Verdict == rules.NotNeeded:
			unneeded++
		}
	}
	if len(inOrder) > 0 {
		s.heading(s.say("In order"))
	}
	for _, i := range inOrder {
		result := &r.Rules.Results[i]
		s.row(2, result.Rule.ID, width+2, s.joinWorked(r.Rules.Worked(i, system), result))
		if worked {
			printSteps(s, r.Rules.Steps(i, system), true)
		}
	}
	if unneeded > 0 {
		s.gap()
		s.line(s.say("%d more rules do not apply to this job."), unneeded)
	}
}

func printCautions(s *screen, r *checklists.Report) {
	cautions := r.Words().Cautions(r.Procedure)
	if len(cautions) == 0 {
		return
	}
	s.heading(s.say("Take care"))
	for _, c := range cautions {
		s.labelled(2, "- ", c)
	}
}
