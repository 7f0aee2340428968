package main

import (
	_ "embed" // for the demo's job
	"fmt"
	"maps"
	"math"
	"strings"

	"github.com/spf13/cobra"

	"gudgeon/checklists"
	"gudgeon/index"
	"gudgeon/kb"
	"gudgeon/rules"
	"gudgeon/rules/source"
	"gudgeon/units"
)

//go:embed demo/link.yaml
var demoJob string

// demoSource is a job told in scenes. What each takes is a readings file.
type demoSource struct {
	Checklist source.Text   `yaml:"checklist,required"`
	Part      source.Text   `yaml:"part,required"`
	Scenes    []sceneSource `yaml:"scenes,required"`
}

type sceneSource struct {
	Title   source.Text   `yaml:"title,required"`
	Tells   source.Text   `yaml:"tells,required"`
	Takes   source.Text   `yaml:"takes,required"`
	LooksAt []source.Text `yaml:"looks at"`
	Finds   source.Text   `yaml:"finds"`
}

func newDemo(s *settings) *cobra.Command {
	return &cobra.Command{
		Use:   "demo",
		Short: "Go through an invented job, from first lift to pressed bushing",
		Long: `demo works through an invented job in an invented shop: a link with a worn pin
bore comes in, is lifted, bored, welded, bored again and gets its bushing. The
readings are made up; every verdict, margin, way out and note is worked out as
it runs. Nothing is written to disk.`,
		Example: "  gudgeon demo",
		Args:    exactly(0, "no arguments"),
		RunE: func(cmd *cobra.Command, _ []string) error {
			d, err := newTelling(s, newScreen(cmd.OutOrStdout()))
			if err != nil {
				return err
			}
			defer d.index.Close()
			return d.tell()
		},
	}
}

// telling is a demo on its way.
type telling struct {
	*screen
	job       demoSource
	procedure *checklists.Procedure
	progress  *checklists.Progress
	index     *index.Index
	system    units.System
}

func newTelling(s *settings, out *screen) (*telling, error) {
	d := &telling{screen: out, system: s.units()}
	if err := source.Decode(&source.File{Name: "demo/link.yaml", Text: demoJob}, &d.job); err != nil {
		return nil, err
	}
	var err error
	if d.procedure, err = checklists.OpenShop(checklists.Shipped()).Procedure(d.job.Checklist.Value); err != nil {
		return nil, err
	}
	notes, err := kb.Shipped()
	if err != nil {
		return nil, err
	}
	d.index, err = index.Build(notes)
	d.progress = checklists.NewProgress(d.job.Part.Value)
	return d, err
}

func (d *telling) tell() error {
	d.line("%s", d.bold(d.job.Part.Value))
	d.labelled(0, "", fmt.Sprintf("An invented job. Checklist %q, %s, %s.", d.procedure.Title, count(len(d.procedure.Steps), "step"), count(len(d.procedure.Rules.Rules), "rule")))
	for i := range d.job.Scenes {
		if err := d.scene(&d.job.Scenes[i]); err != nil {
			return err
		}
	}
	d.end()
	return nil
}

func (d *telling) scene(s *sceneSource) error {
	d.heading("— " + s.Title.Value)
	d.labelled(0, "", s.Tells.Value)
	taken, err := d.procedure.ReadProgress(&source.File{Name: s.Title.Value, Text: s.Takes.Value})
	if err != nil {
		return err
	}
	d.take(taken)
	d.gap()
	report := d.procedure.Evaluate(d.progress)
	for _, id := range s.LooksAt {
		d.result(report.Rules, id.Value)
	}
	d.holds(taken)
	if s.Finds.Value == "" {
		return nil
	}
	return d.find(s.Finds.Value)
}

// take adds what a scene brings, and lists its short readings.
func (d *telling) take(taken *checklists.Progress) {
	var parts []string
	for _, def := range d.procedure.Rules.Readings {
		if r, ok := taken.Readings[def.Name]; ok {
			parts = append(parts, strings.ReplaceAll(def.Name, "_", " ")+" "+def.Show(r, d.system))
		}
	}
	maps.Copy(d.progress.Readings, taken.Readings)
	maps.Copy(d.progress.Done, taken.Done)
	maps.Copy(d.progress.Released, taken.Released)
	if more := len(parts) - mostShown; more > 0 {
		parts = append(parts[:mostShown], fmt.Sprintf("and %d more", more))
	}
	d.labelled(2, "written down: ", strings.Join(parts, "; "))
}

// mostShown is how many readings of a scene are worth listing.
const mostShown = 12

// result prints one rule: in full when it stops or cautions, else in a line.
func (d *telling) result(r *rules.Report, id string) {
	for i := range r.Results {
		result := &r.Results[i]
		if result.Rule.ID != id {
			continue
		}
		if result.Verdict == rules.Stop || result.Verdict == rules.Caution {
			printResult(d.screen, r, i, d.system, false)
			return
		}
		line := r.Worked(i, d.system)
		d.labelled(0, d.verdict(result.Verdict)+"  ", id+": "+d.joinWorked(line, result))
	}
}

func (d *telling) holds(taken *checklists.Progress) {
	for _, step := range d.procedure.Steps {
		if s, ok := taken.Released[step.ID]; ok {
			d.labelled(0, "HOLD ", fmt.Sprintf("%s released by %s: %s", step.ID, s.By, s.Reason))
		}
	}
}

func (d *telling) find(words string) error {
	hits, err := d.index.Search(words, index.Options{Limit: 1})
	if err != nil || len(hits) == 0 {
		return err
	}
	n := hits[0].Note
	d.gap()
	d.labelled(0, "A note from the shelf: ", n.Title)
	d.row(2, "found", 12, n.Found)
	d.row(2, "next time", 12, n.NextTime)
	return nil
}

// end sums the job up by its worst and its tightest rule.
func (d *telling) end() {
	report := d.procedure.Evaluate(d.progress)
	d.heading(fmt.Sprintf("The job: %s", strings.ToUpper(report.Verdict.String())))
	decided, tightest := 0, -1
	for i := range report.Rules.Results {
		result := &report.Rules.Results[i]
		if result.Verdict != rules.Go {
			continue
		}
		decided++
		if !math.IsNaN(result.Use) && (tightest < 0 || result.Use > report.Rules.Results[tightest].Use) {
			tightest = i
		}
	}
	d.line("%s looked at and go, %d not needed on this job.", count(decided, "rule"), len(report.Rules.Results)-decided)
	if tightest >= 0 {
		result := &report.Rules.Results[tightest]
		d.labelled(0, "The tightest: ", result.Rule.ID+", "+d.joinWorked(report.Rules.Worked(tightest, d.system), result))
	}
	for _, name := range report.Waiting {
		d.labelled(2, "still open: ", name)
	}
	d.gap()
	d.labelled(0, "", "Try one of your own: gudgeon guide pre-lift. The equipment's own plates, local codes and qualified people govern over everything printed here.")
}
