package main

import (
	"io"

	"github.com/spf13/cobra"

	"gudgeon/checklists/boresurvey"
)

func newSurvey(s *settings) *cobra.Command {
	var svg string
	cmd := &cobra.Command{
		Use:   "survey READINGS.yaml",
		Short: "Work out a worn bore: its axis, its datum, weld, passes and finish",
		Long: `survey takes the readings of a worn bore and says where its old axis lies, which
features agree about the true centre, whether the planned weld will clean up,
where it falls short and what to lay by hand there. READINGS.yaml may be - for
standard input.

The file, in a machinist's words (every measure with its unit):

  part: Link, lower bore
  bore length: 6 in
  datum: agreed              # bar, agreed, worn bore, or the name of a centre
  sweep:
    set radius: 1.520 in     # where the indicator read zero; plus is outward
    unit: thou
    with: dial indicator
    readings:
      at:     [12, 1:30, 3, 4:30, 6, 7:30, 9, 10:30]
      0.5 in: [55, 114, 101, 26, -60, -, -98, -33]
      5.5 in: [6, 13, 12, 2, -5, -9, -7, -2]
  centres:
    - feature: outside of the boss
      set radius: 2.5 in
      unit: thou
      good to: 8 thou        # how far it may be off itself
      at:    [12, 3, 6, 9]
      reads: [-2, 2, 7, -2]
    - feature: untouched shoulder
      set radius: 1.875 in
      unit: thou
      good to: 3 thou
      at:    [12, 3, 6, 9]
      reads: [-1, 1, 1, -1]
  plan:
    finish diameter: 3.000 in
    clean-up allowance: .030 in
    truing bore: 3.060 in
    layer: .090 in
    layers: 1

Write - where a reading could not be taken, and brackets round one that is not to
count: (14). A station read twice holds two lists. Inside-micrometer diameters go
into a table of their own, diameters:.

Three more sections follow the job to its end; testdata/survey-whole.yaml has
them all. The finish diameter then carries its limits, 3.000 +.002/-.000 in.

  heat:      steel, group and thickest metal; preheat and interpass as read
  passes:    bar, work metal, feeds, speeds and power; weld surface: is a sweep
             of the weld, where there is one
  finished:  diameters at three depths, loaded zone, voids (a list, or none)

Exit status: 0 go, 1 caution, 2 stop (it will not clean up as planned, the datum
is wrong, preheat is not reached, no pass plan can do it, or the bore is out), 3
something is missing, 65 a mistake in the file.`,
		Example: `  gudgeon survey link-lower-bore.yaml
  gudgeon survey link-lower-bore.yaml --svg link.svg
  gudgeon survey link-lower-bore.yaml --json`,
		Args: exactly(1, "a file of readings, like: gudgeon survey link-lower-bore.yaml"),
		RunE: func(cmd *cobra.Command, args []string) error {
			f, err := readFile(args[0])
			if err != nil {
				return err
			}
			shop, err := s.openShop()
			if err != nil {
				return err
			}
			library, err := shop.Library()
			if err != nil {
				return err
			}
			job, err := boresurvey.ReadWith(library.Instruments, f)
			if err != nil {
				return err
			}
			finding, err := boresurvey.Find(job)
			if err != nil {
				return err
			}
			return s.report(cmd.OutOrStdout(), finding, svg)
		},
	}
	cmd.Flags().BoolVar(&s.json, "json", false, "print the finding as JSON")
	cmd.Flags().StringVar(&svg, "svg", "", "draw the finding into this file, as SVG")
	return cmd
}

// report writes the drawing first, so that the text never speaks of one that
// could not be written.
func (s *settings) report(out io.Writer, f *boresurvey.Finding, svg string) error {
	drawn := ""
	if svg != "" {
		sheet, any := surveySheet(f, s.units())
		drawn = "Nothing to draw: there is no axis yet."
		if any {
			if err := saveFile(svg, sheet); err != nil {
				return err
			}
			drawn = "Drawn into " + svg + "."
		}
	}
	if s.json {
		if err := writeJSON(out, surveyJSON(f, s.units())); err != nil {
			return err
		}
		return verdictError(f.Verdict)
	}
	printSurvey(&surveyScreen{newScreen(out), f, s.units()}, drawn)
	return verdictError(f.Verdict)
}
