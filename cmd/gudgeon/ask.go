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
	words  *checklists.Translation // nil for English
	system units.System
	onQuit string // what quit does, for the help
}

// report is where the job stands, in the language of the person asked.
func (a *asker) report() *checklists.Report { return a.run.Report().In(a.words) }

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
	own := a.words.Sheets()
	question := a.askText(own, d, a.system)
	switch {
	case given:
		question += a.sayf(" [now %s, Enter keeps it]", own.Show(d, now, a.system))
	case d.Usual != "":
		question += a.sayf(" [usually %s]", d.Usual)
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
			a.line("  %s", a.say("A missing reading is never a pass. Type skip to come back to it."))
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
	reading, err := a.words.Sheets().Read(d, text)
	if err != nil {
		return reading, nil, err
	}
	return reading, a.run.Set(d.Name, reading), nil
}

// understood shows a reading in both systems before it counts.
func (a *asker) understood(d *rules.ReadingDef, r rules.Reading) {
	if !d.Kind.Numeric() {
		a.line("  = %s", a.words.Sheets().Show(d, r, a.system))
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
		switch {
		case answer == "?", a.means(answer, "help"):
			a.help(step)
		case a.means(answer, "back"):
			return "", errBack
		case a.means(answer, "skip"):
			return "", errSkip
		case a.means(answer, "quit"):
			return "", errQuit
		default:
			return answer, nil
		}
	}
}

func (a *asker) help(step *checklists.Step) {
	words := a.words.Step(step)
	a.labelled(2, a.say("How: "), words.How)
	for _, d := range step.Take {
		a.labelled(2, d.Name+": ", a.words.Sheets().How(d))
	}
	a.labelled(2, a.say("What goes wrong: "), words.Wrong)
	width := max(visible(a.say("back")), visible(a.say("skip")), visible(a.say("quit"))) + 2
	a.row(2, a.say("back"), width, a.say("goes to the step before, to look at it or correct it"))
	a.row(2, a.say("skip"), width, a.say("comes back to this step later; a hold cannot be skipped"))
	a.row(2, a.say("quit"), width, a.say(a.onQuit))
}
