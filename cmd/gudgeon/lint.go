package main

import (
	"fmt"
	"io/fs"
	"path/filepath"
	"strings"

	"github.com/spf13/cobra"

	"gudgeon/checklists"
	"gudgeon/kb"
	"gudgeon/rules"
	"gudgeon/rules/source"
)

func newLint(s *settings) *cobra.Command {
	return &cobra.Command{
		Use:   "lint PATH…",
		Short: "Find mistakes in sheets, checklists and notes",
		Long: `lint reads rule sheets and checklists (*.yaml) and notes (*.md), alone or in
folders, and names every mistake with its file, line and column. Exit status 0
means none, 65 some.`,
		Example: `  gudgeon lint my-shop/rules/truck.yaml
  gudgeon lint my-shop`,
		Args: atLeast(1, "one or more files or folders, like: gudgeon lint my-shop"),
		RunE: func(cmd *cobra.Command, args []string) error {
			files, err := textFiles(args)
			if err != nil {
				return err
			}
			var report source.Report
			for _, file := range files {
				report.Merge(s.lintFile(file))
			}
			if err := report.Err(); err != nil {
				return err
			}
			fmt.Fprintf(cmd.OutOrStdout(), "%s, no mistakes.\n", count(len(files), "file"))
			return nil
		},
	}
}

func count(n int, what string) string {
	if n == 1 {
		return "1 " + what
	}
	if strings.HasSuffix(what, "ch") {
		what += "e"
	}
	return fmt.Sprintf("%d %ss", n, what)
}

// textFiles lists the files named, and those in the folders named.
func textFiles(paths []string) ([]string, error) {
	var files []string
	for _, path := range paths {
		before := len(files)
		err := filepath.WalkDir(path, func(p string, d fs.DirEntry, err error) error {
			switch ext := strings.ToLower(filepath.Ext(p)); {
			case err != nil:
				return plainFileError(p, err)
			case !d.IsDir() && (ext == ".yaml" || ext == ".yml" || ext == ".md" || p == path):
				files = append(files, p)
			}
			return nil
		})
		if err != nil {
			return nil, err
		}
		if len(files) == before {
			return nil, dataError{fmt.Errorf("%s: there is no sheet, checklist or note in it", path)}
		}
	}
	return files, nil
}

func (s *settings) lintFile(path string) error {
	f, err := readFile(path)
	if err != nil {
		return err
	}
	if strings.EqualFold(filepath.Ext(path), ".md") {
		_, err := kb.Parse(f)
		return err
	}
	kind, err := kindOfFile(f)
	if err != nil {
		return err
	}
	shop, err := s.shopAround(path)
	if err != nil {
		return err
	}
	switch kind {
	case checklistFile:
		procedure, err := shop.Compile(f)
		if err != nil {
			return err
		}
		return procedure.Lint()
	case sharedFile:
		return checklists.LintShared(rules.Trade(), shop, f)
	}
	sheet, err := rules.ReadSheet(f)
	if err != nil {
		return err
	}
	set, err := rules.CompileSheet(rules.Trade(), shop, sheet)
	if err != nil {
		return err
	}
	return sheet.Lint(set, shop)
}

// What a file holds is told by its first key.
const (
	sheetFile     = "sheet"
	checklistFile = "checklist"
	sharedFile    = "steps of"
)

// kindOfFile tells a sheet, a checklist and shared steps apart.
func kindOfFile(f *source.File) (string, error) {
	node, err := source.Parse(f)
	if err != nil {
		return "", err
	}
	for _, key := range []string{sheetFile, checklistFile, sharedFile} {
		if node.Has(key) {
			return key, nil
		}
	}
	return "", &source.Error{File: f.Name, What: "this is neither a sheet nor a checklist", Hint: "begin it with sheet: name, checklist: name or steps of: name"}
}
