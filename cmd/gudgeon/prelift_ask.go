package main

import (
	"bufio"
	"errors"
	"io"

	"gudgeon/checklists"
	"gudgeon/rules"
	"gudgeon/units"
)

// quickAsker leads through the checklist with bare questions: no headings, no
// reasons unless asked for, nothing saved.
type quickAsker struct {
	*asker
	shown string // the step whose title was shown last
}

// askPrelift asks for what is still open. The end of the input, or quit, leaves
// the rest open: the card then says what is missing.
func askPrelift(s *screen, in io.Reader, run *checklists.Run, words *checklists.Translation, system units.System) error {
	q := &quickAsker{asker: &asker{screen: s, in: bufio.NewScanner(in), run: run, words: words, system: system, onQuit: "ends the questions and prints the card as it stands"}}
	q.line(q.say("%s: answer each question; type ? for help."), q.bold(words.Title(run.Procedure)))
	err := q.part()
	for err == nil {
		step, _, open := run.Current()
		if !open {
			break
		}
		err = q.step(step)
	}
	q.gap()
	if errors.Is(err, errQuit) || errors.Is(err, io.EOF) {
		return nil
	}
	return err
}

// part asks what it is; a name is no reading, so it may be passed.
func (q *quickAsker) part() error {
	if q.run.Progress.Part != "" {
		return nil
	}
	name, err := q.ask(q.say("What is it:"), &checklists.Step{How: q.say("Its name or number, so that the card can be told from another.")})
	if errors.Is(err, errBack) || errors.Is(err, errSkip) {
		return nil
	}
	q.run.Progress.Part = name
	return err
}

// step takes what a step is still waiting for. What is done with the hands
// comes on the card.
func (q *quickAsker) step(s checklists.StepReport) error {
	list := open(s)
	if len(list) == 0 {
		return q.pass(s.Step)
	}
	for i := 0; i < len(list); i++ {
		err := q.reading(s.Step, list[i])
		switch {
		case errors.Is(err, errBack) && i > 0:
			i -= 2
		case errors.Is(err, errBack):
			if !q.run.Back() {
				q.line("  %s", q.say("This is the first question."))
			}
			return nil
		case errors.Is(err, errSkip):
		case err != nil:
			return err
		}
	}
	return q.pass(s.Step)
}

// open lists the readings to ask for: those missing, or all when a finished step
// was gone back to. A table of readings is for the guide.
func open(s checklists.StepReport) []*rules.ReadingDef {
	missing := map[string]bool{}
	for _, name := range s.Missing {
		missing[name] = true
	}
	var list []*rules.ReadingDef
	for _, d := range s.Step.Take {
		if d.Kind != units.Survey && (missing[d.Name] || len(missing) == 0) {
			list = append(list, d)
		}
	}
	return list
}

// pass goes on; what a step still lacks stays on the list of what is missing.
func (q *quickAsker) pass(step *checklists.Step) error {
	if err := q.run.PutOff(step); err != nil {
		return errQuit // a hold: only the guide releases it
	}
	return nil
}

func (q *quickAsker) reading(step *checklists.Step, d *rules.ReadingDef) error {
	if q.shown != step.ID {
		q.heading(q.words.Step(step).Title)
		q.shown = step.ID
	}
	changes, err := q.take(step, d)
	if err != nil {
		return err
	}
	for _, c := range changes {
		if v := c.Result.Verdict; v == rules.Stop || v == rules.Caution {
			q.line("  %s", q.verdict(v))
			q.labelled(4, "", says(q.report().Rules, c.Index, q.system))
		}
	}
	return nil
}

// says is what a rule has to say, or why it could not be worked out.
func says(r *rules.Report, i int, system units.System) string {
	if r.Results[i].Err != nil {
		return sentence(r.Worked(i, system).Result)
	}
	return r.Says(i, system)
}
