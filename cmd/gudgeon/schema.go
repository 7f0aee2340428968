package main

import (
	"fmt"
	"io"
	"strings"

	"github.com/spf13/cobra"

	"gudgeon/checklists"
	"gudgeon/kb"
	"gudgeon/rules"
	"gudgeon/rules/source"
)

// fileSchema describes one sort of file.
type fileSchema struct {
	name, of string
	make     func() source.Schema
}

func schemas() []fileSchema {
	return []fileSchema{
		{"sheet", "a rule sheet", rules.SheetSchema},
		{"checklist", "a checklist", checklists.Schema},
		{"steps", "shared steps", checklists.SharedSchema},
		{"note", "the front matter of a note", kb.Schema},
		{"readings", "a file of readings", checklists.ReadingsSchema},
	}
}

func newSchema() *cobra.Command {
	var names []string
	long := "schema prints a JSON Schema (draft 2020-12), so that an editor can show which keys\nthere are, what they mean and what is misspelled, while a file is being written:\n"
	for _, s := range schemas() {
		names = append(names, s.name)
		long += fmt.Sprintf("\n  %-11s%s", s.name, s.of)
	}
	return &cobra.Command{
		Use:       "schema " + strings.Join(names, "|"),
		Short:     "Print a JSON Schema for sheets, checklists, notes or readings",
		Long:      long,
		Example:   "  gudgeon schema sheet > sheet.schema.json",
		ValidArgs: names,
		Args:      exactly(1, "one of: "+strings.Join(names, ", ")),
		RunE: func(cmd *cobra.Command, args []string) error {
			for _, s := range schemas() {
				if s.name == args[0] {
					_, err := io.WriteString(cmd.OutOrStdout(), s.make().JSON())
					return err
				}
			}
			return fmt.Errorf("schema %s: write one of: %s", args[0], strings.Join(names, ", "))
		},
	}
}
