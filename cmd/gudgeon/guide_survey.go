package main

import (
	"fmt"
	"strings"

	"gudgeon/checklists"
	"gudgeon/rules"
	"gudgeon/rules/source"
	"gudgeon/trade"
	"gudgeon/units"
)

// survey asks for a table of readings: the clock positions, then station by
// station, one reading at a time.
func (g *guide) survey(step *checklists.Step, d *rules.ReadingDef) error {
	if now, given := g.run.Progress.Readings[d.Name]; given {
		answer, err := g.ask(g.sayf("%s has %s. Enter keeps them, again takes them anew:", g.words.Sheets().Ask(d), g.count(len(now.Survey), "point")), step)
		if err != nil || !g.means(answer, "again") {
			return err
		}
	}
	g.labelled(2, "", g.sayf("%s (%s). Type - where a reading cannot be taken.", g.words.Sheets().Ask(d), d.Unit.Symbol))
	clocks, err := g.clocks(step)
	if err != nil {
		return err
	}
	points, err := g.stations(step, d, clocks)
	if err != nil {
		return err
	}
	changes := g.run.Set(d.Name, rules.Reading{Value: 1, Survey: points, With: d.With})
	if err := g.save(); err != nil {
		return err
	}
	g.line("  = %s", g.count(len(points), "point"))
	g.show(changes)
	return nil
}

func (g *guide) clocks(step *checklists.Step) ([]string, error) {
	for {
		answer, err := g.ask(g.say("Clock positions, with spaces [12 1:30 3 4:30 6 7:30 9 10:30]:"), step)
		if err != nil {
			return nil, err
		}
		if answer == "" {
			answer = "12 1:30 3 4:30 6 7:30 9 10:30"
		}
		list := strings.Fields(answer)
		if err := checkClocks(list); err != nil {
			g.labelled(2, "", err.Error())
			continue
		}
		return list, nil
	}
}

func checkClocks(list []string) error {
	seen := map[float64]bool{}
	for _, text := range list {
		angle, err := rules.ReadClock(text)
		if err != nil {
			return err
		}
		if seen[angle] {
			return fmt.Errorf("%s is there twice", text)
		}
		seen[angle] = true
	}
	return nil
}

func (g *guide) stations(step *checklists.Step, d *rules.ReadingDef, clocks []string) (trade.Survey, error) {
	var points trade.Survey
	for {
		answer, err := g.ask(g.say("Depth of the station from the near face (Enter when there are no more):"), step)
		if err != nil {
			return nil, err
		}
		if answer == "" && len(points) > 0 {
			return points, nil
		}
		depth, err := units.Parse(units.Length, answer, d.Unit)
		if err != nil {
			g.labelled(2, "", err.Error())
			continue
		}
		row, err := g.station(step, d, depth.Value, clocks)
		if err != nil {
			return nil, err
		}
		points = append(points, row...)
	}
}

// station asks for the readings of one station.
func (g *guide) station(step *checklists.Step, d *rules.ReadingDef, depth float64, clocks []string) (trade.Survey, error) {
	var points trade.Survey
	for i := 0; i < len(clocks); {
		answer, err := g.ask(g.sayf("  at %s:", clocks[i]), step)
		if err != nil {
			return nil, err
		}
		var report source.Report
		p, ok := d.ReadPoint(source.Plain(d.Name, answer), &report)
		if err := report.Err(); err != nil {
			g.labelled(4, "", err.Error())
			continue
		}
		if ok {
			p.Station = depth
			p.Clock, _ = rules.ReadClock(clocks[i])
			points = append(points, p)
		}
		i++
	}
	return points, nil
}
