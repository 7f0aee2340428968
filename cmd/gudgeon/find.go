package main

import (
	"fmt"
	"strings"
	"time"

	"github.com/spf13/cobra"

	"gudgeon/index"
	"gudgeon/kb"
)

func newFind(s *settings) *cobra.Command {
	var o index.Options
	var from, to, name string
	cmd := &cobra.Command{
		Use:   "find WORDS…",
		Short: "Find repair notes by words, sizes or part numbers",
		Long: `find searches the repair notes, the shop's own and the shipped ones. Sizes find
each other however they are written: 3-1/8 in, 3.125" and 79.4 mm. Without words
it lists the newest notes that the filters leave.`,
		Example: `  gudgeon find oval bore off centre
  gudgeon find 3-1/8 in --part link
  gudgeon find --read bent-boring-bar`,
		RunE: func(cmd *cobra.Command, args []string) error {
			notes, err := s.notes()
			if err != nil {
				return err
			}
			out := newScreen(cmd.OutOrStdout())
			if name != "" {
				return readNote(out, notes, name)
			}
			if o.From, err = day("--from", from); err != nil {
				return err
			}
			if o.To, err = day("--to", to); err != nil {
				return err
			}
			hits, err := s.search(notes, strings.Join(args, " "), o)
			if err != nil {
				return err
			}
			if s.json {
				return writeJSON(cmd.OutOrStdout(), hits)
			}
			printHits(out, hits)
			return nil
		},
	}
	f := cmd.Flags()
	f.StringVar(&o.Part, "part", "", "only notes about this kind of part: "+strings.Join(kb.Parts(), ", "))
	f.StringVar(&o.Process, "process", "", "only notes about this work: "+strings.Join(kb.Processes(), ", "))
	f.StringVar(&o.Material, "material", "", "only notes about this material")
	f.StringVar(&from, "from", "", "first day, like 2025-01-31")
	f.StringVar(&to, "to", "", "last day, like 2025-12-31")
	f.IntVar(&o.Limit, "limit", 5, "most notes to show")
	f.StringVar(&name, "read", "", "print one note whole, by its name")
	f.BoolVar(&s.json, "json", false, "print the notes as JSON")
	return cmd
}

func day(flag, text string) (time.Time, error) {
	if text == "" {
		return time.Time{}, nil
	}
	t, err := time.Parse(time.DateOnly, text)
	if err != nil {
		return t, fmt.Errorf("%s %s: write the day like 2025-01-31", flag, text)
	}
	return t, nil
}

func (s *settings) search(notes []kb.Note, words string, o index.Options) ([]index.Hit, error) {
	ix, err := s.buildIndex(notes)
	if err != nil {
		return nil, err
	}
	defer ix.Close()
	return ix.Search(words, o)
}

func printHits(s *screen, hits []index.Hit) {
	if len(hits) == 0 {
		s.line("No note fits. Try fewer words, or other ones.")
		return
	}
	for i, h := range hits {
		if i > 0 {
			s.gap()
		}
		printHit(s, h)
	}
	s.gap()
	s.line("Read one whole with: gudgeon find --read %s", hits[0].Note.Name)
}

func printHit(s *screen, h index.Hit) {
	s.line("%s", s.bold(h.Note.Title))
	s.labelled(2, "", fmt.Sprintf("%s, %s, %s  [%s]", h.Note.Part, h.Note.Material, h.Note.Date.Format(time.DateOnly), h.Note.Name))
	for _, snippet := range h.Snippets {
		s.labelled(2, "… ", snippet.Marked(s.marks()))
	}
	s.row(2, "done", 12, h.Note.Done)
	s.row(2, "next time", 12, h.Note.NextTime)
}

// marks are put round the words that were found.
func (s *screen) marks() (open, close string) {
	if s.colour {
		return "\x1b[1m", "\x1b[0m"
	}
	return "", ""
}

func readNote(s *screen, notes []kb.Note, name string) error {
	for _, n := range notes {
		if n.Name == name {
			printNote(s, n)
			return nil
		}
	}
	return dataError{fmt.Errorf("there is no note %s; find lists the names in [brackets]", name)}
}

func printNote(s *screen, n kb.Note) {
	s.line("%s", s.bold(n.Title))
	s.row(2, "part", 12, strings.Trim(strings.Join([]string{n.Part, n.Machine, n.Material}, ", "), ", "))
	s.row(2, "date", 12, n.Date.Format(time.DateOnly))
	for _, m := range n.Measured {
		s.row(2, "measured", 12, m.Name+" "+m.Text)
	}
	s.row(2, "found", 12, n.Found)
	s.row(2, "cause", 12, n.Cause)
	s.row(2, "done", 12, n.Done)
	s.row(2, "next time", 12, n.NextTime)
	for _, paragraph := range strings.Split(strings.TrimSpace(n.Body), "\n\n") {
		s.gap()
		s.labelled(2, "", paragraph)
	}
	if len(n.Rules) > 0 {
		s.gap()
		s.row(2, "rules", 12, strings.Join(n.Rules, ", "))
	}
}
