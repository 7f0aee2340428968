package main

import (
	"fmt"
	"path/filepath"
	"strings"

	"github.com/spf13/cobra"

	"gudgeon/checklists"
	"gudgeon/rules"
	"gudgeon/rules/source"
)

func newProve(s *settings) *cobra.Command {
	return &cobra.Command{
		Use:   "prove [PATH…]",
		Short: "Run the examples of sheets and checklists",
		Long: `prove runs the examples that sheets and checklists carry, and says which rules no
example ever showed to go or to fail, and which steps none ever reached. Without
a path it proves everything that is shipped or in the shop's folder.
Exit status 0 means all as expected and nothing unproven, 1 something unproven,
65 an example that came out differently.`,
		Example: `  gudgeon prove
  gudgeon prove my-shop/rules/truck.yaml`,
		RunE: func(cmd *cobra.Command, args []string) error {
			p := &prover{screen: newScreen(cmd.OutOrStdout()), settings: s}
			if err := p.all(args); err != nil {
				return err
			}
			return p.sum()
		},
	}
}

// prover runs examples and keeps count.
type prover struct {
	*screen
	settings *settings

	sheets, checklists, examples, rules, failed, unproven int
}

func (p *prover) all(paths []string) error {
	if len(paths) > 0 {
		return p.paths(paths)
	}
	shop, err := p.settings.openShop()
	if err != nil {
		return err
	}
	for _, name := range shop.SheetNames() {
		sheet, err := shop.Sheet(name)
		if err != nil {
			return err
		}
		if err := p.sheet(shop, sheet); err != nil {
			return err
		}
	}
	for _, name := range shop.ChecklistNames() {
		procedure, err := shop.Procedure(name)
		if err != nil {
			return err
		}
		if err := p.checklist(procedure); err != nil {
			return err
		}
	}
	return nil
}

func (p *prover) paths(paths []string) error {
	files, err := textFiles(paths)
	if err != nil {
		return err
	}
	for _, path := range files {
		if filepath.Ext(path) == ".md" {
			continue
		}
		f, err := readFile(path)
		if err != nil {
			return err
		}
		if err := p.file(path, f); err != nil {
			return err
		}
	}
	return nil
}

func (p *prover) file(path string, f *source.File) error {
	kind, err := kindOfFile(f)
	if err != nil {
		return err
	}
	shop, err := p.settings.shopAround(path)
	if err != nil {
		return err
	}
	switch kind {
	case checklistFile:
		procedure, err := shop.Compile(f)
		if err != nil {
			return err
		}
		return p.checklist(procedure)
	case sharedFile:
		p.line("%-10s %-14s proven in the checklists that take them in", "steps of", strings.TrimSuffix(filepath.Base(path), ".yaml"))
		return nil
	case instrumentsFile, synonymsFile:
		return nil // nothing in them to prove
	}
	sheet, err := rules.ReadSheet(f)
	if err != nil {
		return err
	}
	return p.sheet(shop, sheet)
}

func (p *prover) sheet(shop *checklists.Shop, sheet *rules.Sheet) error {
	library, err := shop.Library()
	if err != nil {
		return err
	}
	set, err := rules.CompileSheet(library, shop, sheet)
	if err != nil {
		return err
	}
	proof, err := sheet.Prove(set)
	if err != nil {
		return err
	}
	p.sheets++
	p.rules += len(proof.Seen)
	p.show("sheet", proof, count(len(proof.Seen), "rule"))
	p.missing("unproven", proof.Unseen)
	return nil
}

func (p *prover) checklist(procedure *checklists.Procedure) error {
	proof, err := procedure.Prove()
	if err != nil {
		return err
	}
	p.checklists++
	p.show("checklist", proof.Proof, count(len(procedure.Steps), "step"))
	p.missing("never reached", proof.NeverReached)
	return nil
}

// show prints a proof; what came out differently as a diff.
func (p *prover) show(what string, proof rules.Proof, size string) {
	p.examples += proof.Examples
	p.failed += len(proof.Failures)
	p.line("%-10s %-14s %s, %s", what, proof.Name, count(proof.Examples, "example"), size)
	for _, f := range proof.Failures {
		p.line("  %s, %s", f.Example, f.What)
		p.line("  - %s", f.Want)
		p.line("  + %s", f.Got)
		p.labelled(4, "", f.Because)
	}
}

func (p *prover) missing(label string, names []string) {
	p.unproven += len(names)
	for _, name := range names {
		p.row(2, label, 15, name)
	}
}

func (p *prover) sum() error {
	p.gap()
	p.line("%s and %s: %s run, %d came out differently, %d unproven.",
		count(p.sheets, "sheet"), count(p.checklists, "checklist"), count(p.examples, "example"), p.failed, p.unproven)
	switch {
	case p.failed > 0:
		return dataError{fmt.Errorf("%s came out differently", count(p.failed, "verdict"))}
	case p.unproven > 0:
		return verdictError(rules.Caution)
	}
	return nil
}
