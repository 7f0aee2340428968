package main

import (
	"bufio"
	"errors"
	"fmt"
	"io"
	"strings"

	"gudgeon/checklists"
	"gudgeon/rules"
	"gudgeon/units"
)

// asker puts the questions of a checklist to one person in the terminal.
type asker struct {
	*screen
	in     *bufio.Scanner
	run    *checklists.Run
	system units.System
	onQuit string // what quit does, for the help
}

// What a person may do instead of answering.
var (
	errQuit = errors.New("quit")
	errBack = errors.New("back")
	errSkip = errors.New("skip")
)

// take asks for one reading until it is understood, and gives the verdicts that
// it changed.
func (a *asker) take(step *checklists.Step, d *rules.ReadingDef) ([]checklists.Change, error) {
	now, given := a.run.Progress.Readings[d.Name]
	question := askText(d, a.system)
	switch {
	case given:
		question += fmt.Sprintf(" [now %s, Enter keeps it]", d.Show(now, a.system))
	case d.Usual != "":
		question += fmt.Sprintf(" [usually %s]", d.Usual)
	}
	for {
		answer, err := a.ask(question+":", step)
		if err != nil {
			return nil, err
		}
		if answer == "" && given {
			return nil, nil
		}
		if answer == "" {
			a.line("  A missing reading is never a pass. Type skip to come back to it.")
			continue
		}
		reading, changes, err := a.answer(d, answer)
		if err != nil {
			a.labelled(2, "", err.Error())
			continue
		}
		a.understood(d, reading)
		return changes, nil
	}
}

func (a *asker) answer(d *rules.ReadingDef, text string) (rules.Reading, []checklists.Change, error) {
	text, err := d.Shorthand(text)
	if err != nil {
		return rules.Reading{}, nil, err
	}
	return a.run.Answer(d.Name, text, d.With)
}

// understood shows a reading in both systems before it counts.
func (a *asker) understood(d *rules.ReadingDef, r rules.Reading) {
	if !d.Kind.Numeric() {
		a.line("  = %s", d.Show(r, a.system))
		return
	}
	inch, metric := d.Show(r, units.InchShop), d.Show(r, units.MetricShop)
	if inch == metric {
		a.line("  = %s", inch)
		return
	}
	a.line("  = %s (%s)", inch, metric)
}

// ask puts a question and gives the trimmed answer. Words that are no answer
// come back as errors, and ? is answered here.
func (a *asker) ask(question string, step *checklists.Step) (string, error) {
	for {
		fmt.Fprintf(a.out, "  %s ", question)
		if !a.in.Scan() {
			a.gap()
			if err := a.in.Err(); err != nil {
				return "", err
			}
			return "", io.EOF
		}
		answer := strings.TrimSpace(a.in.Text())
		switch strings.ToLower(answer) {
		case "?", "help":
			a.help(step)
		case "back":
			return "", errBack
		case "skip":
			return "", errSkip
		case "quit":
			return "", errQuit
		default:
			return answer, nil
		}
	}
}

func (a *asker) help(step *checklists.Step) {
	a.labelled(2, "How: ", step.How)
	for _, d := range step.Take {
		a.labelled(2, d.Name+": ", d.How)
	}
	a.labelled(2, "What goes wrong: ", step.Wrong)
	a.line("  back  goes to the step before, to look at it or correct it")
	a.line("  skip  comes back to this step later; a hold cannot be skipped")
	a.line("  quit  %s", a.onQuit)
}
