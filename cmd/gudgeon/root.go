package main

import (
	"fmt"

	"github.com/spf13/cobra"

	"gudgeon/units"
)

// settings are the flags that every command has.
type settings struct {
	shop   string
	system string
	json   bool
	lang   string
}

func newRoot() *cobra.Command {
	s := &settings{}
	root := &cobra.Command{
		Use:   "gudgeon",
		Short: "A repair shop's checklists, rules and notes for worn pin bores",
		Long: `gudgeon keeps a repair shop's procedure, arithmetic and memory for bringing worn
pin bores in heavy parts back to size. It takes the measurements as they come,
says go, caution or stop, shows the working, and finds the notes of earlier jobs.

It does not replace the equipment's own plate, the code that applies where you
work, or a qualified rigger, welder or engineer.

Exit status: 0 go, 1 caution, 2 stop, 3 waiting for a reading, 64 wrong call,
65 a mistake in a file or an expression.`,
		Example: `  gudgeon demo
  gudgeon guide link
  gudgeon check pre-lift readings.yaml
  gudgeon work 'truck.capacity_at(lb(5000), inch(24), inch(28))'
  gudgeon find oval bore`,
		SilenceErrors: true,
		SilenceUsage:  true,
	}
	flags := root.PersistentFlags()
	flags.StringVar(&s.shop, "shop", "", "folder with the shop's own rules, checklists and notes (default: gudgeon in the user's config folder)")
	flags.StringVar(&s.system, "units", "inch", "units to show: inch or metric (both are always read)")
	flags.StringVar(&s.lang, "lang", "", "language of checklists, rules and screens: en or es (default: GUDGEON_LANG, or the computer's own)")
	root.PersistentPreRunE = func(*cobra.Command, []string) error {
		if err := checkLanguage(s.lang); err != nil {
			return err
		}
		if _, ok := units.ParseSystem(s.system); !ok {
			return fmt.Errorf("--units %s: write inch or metric", s.system)
		}
		return nil
	}
	root.AddCommand(newCheck(s), newPrelift(s), newGuide(s), newFind(s), newWork(s), newLint(s), newSurvey(s), newProve(s), newCompare(s), newDemo(s), newNew(s), newSchema())
	root.CompletionOptions.HiddenDefaultCmd = false
	return root
}

func (s *settings) units() units.System {
	system, _ := units.ParseSystem(s.system)
	return system
}

// exactly checks the number of arguments and says what they are.
func exactly(n int, usage string) cobra.PositionalArgs {
	return func(cmd *cobra.Command, args []string) error {
		if len(args) == n {
			return nil
		}
		return fmt.Errorf("%s takes %s", cmd.Name(), usage)
	}
}

func atLeast(n int, usage string) cobra.PositionalArgs {
	return func(cmd *cobra.Command, args []string) error {
		if len(args) >= n {
			return nil
		}
		return fmt.Errorf("%s takes %s", cmd.Name(), usage)
	}
}
