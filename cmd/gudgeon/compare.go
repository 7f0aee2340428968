package main

import (
	"fmt"

	"github.com/spf13/cobra"

	"gudgeon/checklists"
	"gudgeon/rules"
	"gudgeon/rules/source"
)

func newCompare(s *settings) *cobra.Command {
	return &cobra.Command{
		Use:   "compare OLD NEW [READINGS.yaml…]",
		Short: "Say what changed between two versions of a sheet or checklist",
		Long: `compare lists in plain words what differs between two versions of a rule sheet or
a checklist. With readings files it also works each job through both versions and
lists what would now come out differently. A checklist is compiled with the sheets
that lie beside it or in a rules folder next to its own.`,
		Example: `  gudgeon compare old/truck.yaml new/truck.yaml
  gudgeon compare old/checklists/link.yaml new/checklists/link.yaml jobs/*.yaml`,
		Args: atLeast(2, "the old file, the new file and, if you like, readings files"),
		RunE: func(cmd *cobra.Command, args []string) error {
			old, err := readFile(args[0])
			if err != nil {
				return err
			}
			newer, err := readFile(args[1])
			if err != nil {
				return err
			}
			kind, err := sameKind(old, newer)
			if err != nil {
				return err
			}
			c := &comparison{screen: newScreen(cmd.OutOrStdout()), settings: s, old: old, newer: newer, kind: kind}
			if err := c.differences(); err != nil {
				return err
			}
			return c.jobs(args[2:])
		},
	}
}

func sameKind(old, newer *source.File) (string, error) {
	a, err := kindOfFile(old)
	if err != nil {
		return "", err
	}
	b, err := kindOfFile(newer)
	if err != nil {
		return "", err
	}
	if a != b {
		return "", dataError{fmt.Errorf("%s begins with %s: and %s with %s:; compare two of one kind", old.Name, a, newer.Name, b)}
	}
	return a, nil
}

// comparison is one look at two versions.
type comparison struct {
	*screen
	settings   *settings
	old, newer *source.File
	kind       string
}

func (c *comparison) differences() error {
	list, err := c.list()
	if err != nil {
		return err
	}
	if len(list) == 0 {
		c.line("Nothing that counts is different.")
		return nil
	}
	for _, text := range list {
		c.labelled(0, "- ", text)
	}
	return nil
}

func (c *comparison) list() ([]string, error) {
	switch c.kind {
	case checklistFile:
		return c.checklists()
	case sharedFile:
		return checklists.CompareShared(c.old, c.newer)
	case instrumentsFile, synonymsFile:
		return nil, dataError{fmt.Errorf("%s: name two sheets, two checklists or two files of shared steps", c.old.Name)}
	}
	old, err := rules.ReadSheet(c.old)
	if err != nil {
		return nil, err
	}
	newer, err := rules.ReadSheet(c.newer)
	if err != nil {
		return nil, err
	}
	return old.Compare(newer), nil
}

func (c *comparison) checklists() ([]string, error) {
	old, err := c.settings.shopAround(c.old.Name)
	if err != nil {
		return nil, err
	}
	newer, err := c.settings.shopAround(c.newer.Name)
	if err != nil {
		return nil, err
	}
	return checklists.Compare(checklists.Version{File: c.old, Shelf: old}, checklists.Version{File: c.newer, Shelf: newer})
}

// jobs works readings files through both versions.
func (c *comparison) jobs(paths []string) error {
	if len(paths) == 0 {
		return nil
	}
	old, err := c.procedure(c.old)
	if err != nil {
		return err
	}
	newer, err := c.procedure(c.newer)
	if err != nil {
		return err
	}
	c.gap()
	turned := 0
	for _, path := range paths {
		f, err := readFile(path)
		if err != nil {
			return err
		}
		turns, err := checklists.Turns(path, old, newer, f)
		if err != nil {
			return err
		}
		for _, t := range turns {
			c.line("%s: %s was %s and would now be %s", t.Job, t.What, t.Before, t.After)
		}
		if len(turns) > 0 {
			turned++
		}
	}
	c.line("%d of %s would come out differently.", turned, count(len(paths), "job"))
	return nil
}

// procedure compiles one version; a sheet alone stands as a checklist without
// steps.
func (c *comparison) procedure(f *source.File) (*checklists.Procedure, error) {
	shop, err := c.settings.shopAround(f.Name)
	if err != nil {
		return nil, err
	}
	switch c.kind {
	case checklistFile:
		return shop.Compile(f)
	case sharedFile:
		return nil, dataError{fmt.Errorf("%s: shared steps are no job; compare the checklists that take them in", f.Name)}
	}
	sheet, err := rules.ReadSheet(f)
	if err != nil {
		return nil, err
	}
	library, err := shop.Library()
	if err != nil {
		return nil, err
	}
	return checklists.OfSheet(library, shop, sheet)
}
