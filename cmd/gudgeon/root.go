package main

import (
	"fmt"
	"os"
	"path/filepath"

	"github.com/spf13/cobra"

	"gudgeon/checklists"
	"gudgeon/units"
)

// settings are the flags that every command has.
type settings struct {
	shop   string
	system string
	json   bool
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
	root.PersistentPreRunE = func(*cobra.Command, []string) error {
		if _, ok := units.ParseSystem(s.system); !ok {
			return fmt.Errorf("--units %s: write inch or metric", s.system)
		}
		return nil
	}
	root.AddCommand(newCheck(s), newPrelift(s), newGuide(s), newFind(s), newWork(s), newLint(s), newSurvey(s), newProve(s), newCompare(s), newDemo(s))
	root.CompletionOptions.HiddenDefaultCmd = false
	return root
}

func (s *settings) units() units.System {
	system, _ := units.ParseSystem(s.system)
	return system
}

// folder is the shop's own folder, and false when there is none.
func (s *settings) folder() (string, bool, error) {
	if s.shop != "" {
		info, err := os.Stat(s.shop)
		if err != nil || !info.IsDir() {
			return "", false, fmt.Errorf("--shop %s: not a folder", s.shop)
		}
		return s.shop, true, nil
	}
	config, err := os.UserConfigDir()
	if err != nil {
		return "", false, nil
	}
	own := filepath.Join(config, "gudgeon")
	if info, err := os.Stat(own); err != nil || !info.IsDir() {
		return "", false, nil
	}
	return own, true, nil
}

// openShop finds the shop's own files in front of the shipped ones. Further
// layers go in front of both.
func (s *settings) openShop(front ...checklists.Layer) (*checklists.Shop, error) {
	layers := front
	own, ok, err := s.folder()
	if err != nil {
		return nil, err
	}
	if ok {
		layers = append(layers, checklists.Layer{Sheets: folderAt(own, "rules"), Checklists: folderAt(own, "checklists")})
	}
	return checklists.OpenShop(append(layers, checklists.Shipped())...), nil
}

func folderAt(elements ...string) checklists.Folder {
	path := filepath.Join(elements...)
	return checklists.Folder{Name: path, FS: os.DirFS(path)}
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
