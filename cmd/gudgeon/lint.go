package main

import (
	"fmt"
	"io/fs"
	"path/filepath"
	"strings"

	"github.com/spf13/cobra"

	"gudgeon/checklists"
	"gudgeon/index"
	"gudgeon/kb"
	"gudgeon/rules"
	"gudgeon/rules/source"
)

func newLint(s *settings) *cobra.Command {
	var language string
	cmd := &cobra.Command{
		Use:   "lint PATH…",
		Short: "Find mistakes in sheets, checklists and notes",
		Long: `lint reads rule sheets, checklists and what goes with them (*.yaml: shared steps,
instruments, synonyms) and notes (*.md), alone or in folders, and names every
mistake with its file, line and column. Exit status 0 means none, 65 some.

What a translation (rules/es/NAME.yaml) leaves to be read in English is no mistake
and is listed; --untranslated es lists it for everything the shop has.`,
		Example: `  gudgeon lint my-shop/rules/truck.yaml
  gudgeon lint my-shop
  gudgeon lint --untranslated es`,
		Args: func(cmd *cobra.Command, args []string) error {
			if language != "" {
				return exactly(0, "no file with --untranslated, like: gudgeon lint --untranslated es")(cmd, args)
			}
			return atLeast(1, "one or more files or folders, like: gudgeon lint my-shop")(cmd, args)
		},
		RunE: func(cmd *cobra.Command, args []string) error {
			if language != "" {
				return s.listUntranslated(cmd.OutOrStdout(), language)
			}
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
			return s.listGaps(cmd.OutOrStdout(), files)
		},
	}
	cmd.Flags().StringVar(&language, "untranslated", "", "list what is not translated into this `LANGUAGE`, such as es")
	return cmd
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
	switch kind {
	case instrumentsFile:
		_, err := rules.ReadInstruments(f)
		return err
	case synonymsFile:
		return index.CheckSynonyms(f)
	}
	shop, err := s.shopAround(path)
	if err != nil {
		return err
	}
	library, err := shop.Library()
	if err != nil {
		return err
	}
	switch kind {
	case translationFile:
		_, err := shop.LintTranslation(f)
		return err
	case checklistFile:
		procedure, err := shop.Compile(f)
		if err != nil {
			return err
		}
		return procedure.Lint()
	case sharedFile:
		return checklists.LintShared(library, shop, f)
	}
	return lintSheet(library, shop, f)
}

func lintSheet(library *rules.Library, shop *checklists.Shop, f *source.File) error {
	sheet, err := rules.ReadSheet(f)
	if err != nil {
		return err
	}
	set, err := rules.CompileSheet(library, shop, sheet)
	if err != nil {
		return err
	}
	return sheet.Lint(set, shop)
}

// What a file holds is told by its first key.
const (
	sheetFile       = "sheet"
	checklistFile   = "checklist"
	sharedFile      = "steps of"
	instrumentsFile = "instruments"
	synonymsFile    = "synonyms"
	translationFile = "language" // of any of the first three
)

// kindOfFile tells the sorts of file apart.
func kindOfFile(f *source.File) (string, error) {
	node, err := source.Parse(f)
	if err != nil {
		return "", err
	}
	for _, key := range []string{translationFile, sheetFile, checklistFile, sharedFile, instrumentsFile} {
		if node.Has(key) {
			return key, nil
		}
	}
	if node.Has("same") || node.Has("near") || node.Has("skip") {
		return synonymsFile, nil
	}
	return "", &source.Error{File: f.Name, What: "this is neither a sheet nor a checklist", Hint: "begin it with sheet: name, checklist: name or steps of: name"}
}
