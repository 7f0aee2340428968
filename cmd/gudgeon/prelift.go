package main

import (
	"errors"

	"github.com/spf13/cobra"

	"gudgeon/checklists"
)

// preliftChecklist is the checklist that the card is made of; a shop's own one
// of that name takes its place.
const preliftChecklist = "pre-lift"

// prelift is one call of the command.
type prelift struct {
	*settings
	given  preliftFlags
	ask    bool
	save   string // file to keep the readings in
	sketch string // file for the picture

	words *checklists.Translation // of the checklist; nil for English
}

func newPrelift(s *settings) *cobra.Command {
	p := &prelift{settings: s}
	cmd := &cobra.Command{
		Use:   "prelift [READINGS.yaml]",
		Short: "One minute before a lift: go or stop, on a card",
		Long: `prelift says whether a part may be lifted the way you mean to lift it, and prints
a card to take along: what it is, what it weighs, what carries it and how much of
that is used up, what stops it and what would help.

Without arguments it asks, and only what your answers make necessary. It also
takes a file of readings (- for standard input), or the answers as flags; flags
go before the file, and --ask asks for the rest. Nothing is written unless you
name a file with --save or --sketch.

A choice may be shortened to a word of it: --by table. --reach is the distance
that tips the lift: from the fork face, or from the middle of the table, to the
part's balance point; of a sling the farthest lifting point from the plumb line;
of a single lug how far it is off the balance point. Every other reading goes in
with --set, by the names that the card lists as still to do.

The plate, the tag and the mark govern over this card, and so does a qualified
rigger.

Exit status: 0 go, 1 caution, 2 stop, 3 waiting for a reading, 64 wrong call,
65 a mistake in a file.`,
		Example: `  gudgeon prelift
  gudgeon prelift --part 'Link 7' --weight 1850lb --known weighed --by forks --reach 26in
  gudgeon prelift --by table --weight 900lb --set table_rating=2000lb --ask
  gudgeon prelift bucket.yaml --sketch bucket.svg
  gudgeon prelift bucket.yaml --set 'sling_length=8 ft' --json`,
		Args: func(_ *cobra.Command, args []string) error {
			if len(args) <= 1 {
				return nil
			}
			return errors.New("prelift takes at most one file of readings, like: gudgeon prelift readings.yaml")
		},
		ValidArgsFunction: func(*cobra.Command, []string, string) ([]string, cobra.ShellCompDirective) {
			return []string{"yaml"}, cobra.ShellCompDirectiveFilterFileExt
		},
		RunE: p.run,
	}
	p.given.register(cmd)
	flags := cmd.Flags()
	flags.BoolVar(&p.ask, "ask", false, "ask for what the flags or the file leave open")
	flags.StringVar(&p.save, "save", "", "keep the readings in this `FILE`, for check, guide or prelift")
	flags.StringVar(&p.sketch, "sketch", "", "draw the lift into this `FILE`, as SVG")
	flags.BoolVar(&s.json, "json", false, "print the report as JSON")
	return cmd
}

func (p *prelift) run(cmd *cobra.Command, args []string) error {
	procedure, words, err := p.procedure(preliftChecklist)
	if err != nil {
		return err
	}
	progress, err := p.begin(procedure, args)
	if err != nil {
		return err
	}
	p.words = words
	run := checklists.NewRun(procedure, progress)
	if err := p.given.apply(cmd, run, words.Sheets()); err != nil {
		return err
	}
	if p.ask || len(args) == 0 && !p.given.any(cmd) {
		if err := p.question(cmd, run); err != nil {
			return err
		}
	}
	return p.finish(cmd, run)
}

func (p *prelift) begin(procedure *checklists.Procedure, args []string) (*checklists.Progress, error) {
	if len(args) == 0 {
		return checklists.NewProgress(""), nil
	}
	if args[0] == "-" && p.ask {
		return nil, plainError{errors.New("--ask needs standard input for your answers; name a file of readings instead of -")}
	}
	f, err := readFile(args[0])
	if err != nil {
		return nil, err
	}
	return procedure.ReadProgress(f)
}

// question asks in the terminal. With --json the questions go beside the report,
// not into it.
func (p *prelift) question(cmd *cobra.Command, run *checklists.Run) error {
	out := cmd.OutOrStdout()
	if p.json {
		out = cmd.ErrOrStderr()
	}
	return askPrelift(p.screen(out), cmd.InOrStdin(), run, p.words, p.units())
}

// finish writes the files first, so that the card never speaks of one that could
// not be written.
func (p *prelift) finish(cmd *cobra.Command, run *checklists.Run) error {
	report := run.Report().In(p.words)
	if p.save != "" {
		if err := saveFile(p.save, run.Procedure.WriteProgress(run.Progress)); err != nil {
			return err
		}
	}
	picture, err := p.draw(report)
	if err != nil {
		return err
	}
	if !p.json {
		c := &card{screen: p.screen(cmd.OutOrStdout()), report: report, system: p.units(), picture: picture, saved: p.save}
		c.print()
		return verdictError(report.Verdict)
	}
	if picture != "" {
		cmd.PrintErrln(picture)
	}
	if err := writeJSON(cmd.OutOrStdout(), preliftJSON(run.Report(), p.units())); err != nil {
		return err
	}
	return verdictError(report.Verdict)
}

// draw writes the picture and says on one line what became of it.
func (p *prelift) draw(report *checklists.Report) (string, error) {
	if p.sketch == "" {
		return "", nil
	}
	s := p.screen(nil)
	sheet, ok := preliftSheet(s, report, p.units())
	if !ok {
		return s.say("No picture: too little is known of the lift, or there is nothing to draw."), nil
	}
	return s.sayf("Picture: %s", p.sketch), saveFile(p.sketch, sheet)
}
