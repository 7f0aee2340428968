package main

import (
	"fmt"
	"io"
	"path/filepath"
	"strings"

	"gudgeon/checklists"
)

// listGaps tells of each translation among the files what it leaves to be read
// in English.
func (s *settings) listGaps(out io.Writer, files []string) error {
	for _, path := range files {
		if strings.EqualFold(filepath.Ext(path), ".md") {
			continue
		}
		f, err := readFile(path)
		if err != nil {
			return err
		}
		if kind, err := kindOfFile(f); err != nil || kind != translationFile {
			continue
		}
		shop, err := s.shopAround(path)
		if err != nil {
			return err
		}
		missing, err := shop.LintTranslation(f)
		if err != nil {
			return err
		}
		printGap(out, checklists.Gap{Name: path, Missing: missing})
	}
	return nil
}

// listUntranslated lists what is not translated of all that the shop has.
func (s *settings) listUntranslated(out io.Writer, language string) error {
	shop, err := s.openShop()
	if err != nil {
		return err
	}
	gaps, err := shop.Untranslated(language)
	if err != nil {
		return err
	}
	if len(gaps) == 0 {
		fmt.Fprintln(out, "Everything is translated.")
	}
	for _, g := range gaps {
		printGap(out, g)
	}
	return nil
}

func printGap(out io.Writer, g checklists.Gap) {
	if len(g.Missing) == 0 {
		return
	}
	fmt.Fprintf(out, "%s: not translated, read in English:\n", g.Name)
	for _, place := range g.Missing {
		fmt.Fprintln(out, "  "+place)
	}
}
