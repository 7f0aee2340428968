package main

import (
	"fmt"
	"strings"

	"github.com/spf13/cobra"

	"gudgeon/checklists"
	"gudgeon/rules"
	"gudgeon/rules/source"
	"gudgeon/trade"
	"gudgeon/units"
)

func newWork(s *settings) *cobra.Command {
	var list bool
	cmd := &cobra.Command{
		Use:   "work 'EXPRESSION'",
		Short: "Work out an expression with units, with its worked line",
		Long: `work is the rule language as a calculator. Every number has its unit, written as
a function: inch(0.050), lb(1000), deg(45). Inches and pounds never mix.
--list shows the functions, or those whose name or description has the words given.`,
		Example: `  gudgeon work 'truck.capacity_at(lb(5000), inch(24), inch(28))'
  gudgeon work 'inch(3 + 1/8) - mm(79)'
  gudgeon work --list truck`,
		RunE: func(cmd *cobra.Command, args []string) error {
			out := newScreen(cmd.OutOrStdout())
			if list {
				return listFunctions(cmd, out, s, args)
			}
			if len(args) != 1 {
				return fmt.Errorf("work takes one expression, in quotes, like: gudgeon work 'inch(3) / 4'")
			}
			c, err := rules.Calculate(rules.Trade(), source.Plain("expression", args[0]), s.units())
			if err != nil {
				return dataError{err}
			}
			if s.json {
				return writeJSON(cmd.OutOrStdout(), calculationJSON(c))
			}
			printCalculation(out, c)
			return nil
		},
	}
	cmd.Flags().BoolVar(&list, "list", false, "list the functions that can be used")
	cmd.Flags().BoolVar(&s.json, "json", false, "print the result as JSON")
	return cmd
}

func printCalculation(s *screen, c *rules.Calculation) {
	first := c.Lines[0]
	if len(c.Fields) > 0 {
		printFields(s, c.Fields)
		first.Result = ""
	} else {
		s.line("%s", s.bold(first.Result))
	}
	s.row(0, "worked", 8, stepText(rules.Line{Symbols: first.Symbols, Result: first.Result}))
	for _, l := range c.Lines[1:] {
		s.labelled(8, "", stepText(l))
	}
	for i, text := range c.Sources {
		s.row(0, "formula", 8, c.Formulas[i])
		s.row(0, "source", 8, text)
	}
}

func printFields(s *screen, fields []rules.FieldValue) {
	for _, f := range fields {
		s.row(2, strings.ReplaceAll(f.Name, "_", " "), 24, f.Text)
	}
}

// calculationOut is a calculation for other programs.
type calculationOut struct {
	Result  string                          `json:"result"`
	Value   *checklists.ValueJSON           `json:"value,omitempty"`
	Fields  map[string]checklists.ValueJSON `json:"fields,omitempty"`
	Worked  []checklists.LineJSON           `json:"worked"`
	Sources []string                        `json:"sources"`
}

func calculationJSON(c *rules.Calculation) calculationOut {
	out := calculationOut{Result: c.Lines[0].Result, Sources: append([]string{}, c.Sources...)}
	if !c.Unit.IsZero() {
		out.Value = &checklists.ValueJSON{Value: c.Unit.FromSI(c.Value), Unit: c.Unit.Symbol}
	}
	for _, f := range c.Fields {
		if out.Fields == nil {
			out.Fields = map[string]checklists.ValueJSON{}
		}
		out.Fields[f.Name] = checklists.ValueJSON{Value: f.Unit.FromSI(f.Value), Unit: f.Unit.Symbol}
	}
	for _, l := range c.Lines {
		out.Worked = append(out.Worked, checklists.LineJSON{Name: l.Name, Symbols: l.Symbols, Numbers: l.Numbers, Result: l.Result})
	}
	return out
}

// listFunctions shows what can be called, narrowed to the words given.
func listFunctions(cmd *cobra.Command, s *screen, set *settings, words []string) error {
	var found []*trade.Function
	for _, f := range rules.Trade().Functions() {
		if matches(f.Name+" "+f.About, words) {
			found = append(found, f)
		}
	}
	if set.json {
		return writeJSON(cmd.OutOrStdout(), functionsJSON(found))
	}
	for _, f := range found {
		printFunction(s, f, set.units())
	}
	printLanguage(s, words)
	return nil
}

func matches(text string, words []string) bool {
	for _, w := range words {
		if !strings.Contains(strings.ToLower(text), strings.ToLower(w)) {
			return false
		}
	}
	return true
}

func printFunction(s *screen, f *trade.Function, system units.System) {
	s.line("%s", s.bold(f.Name))
	s.labelled(2, "", f.About)
	for _, p := range f.Params {
		s.row(4, p.Name, 20, paramText(p, system))
	}
	for _, r := range f.Results {
		name := r.Name
		if len(f.Results) == 1 {
			name = ""
		}
		kind := r.Kind.String()
		if r.Kind == units.Choice {
			kind = strings.Join(r.Options, " | ")
		}
		s.row(4, "→ "+name, 20, kind+about(r.About))
	}
	s.row(2, "formula", 10, f.Formula)
	s.row(2, "source", 10, f.Source)
	s.row(2, "example", 10, f.Example)
	s.gap()
}

func about(text string) string {
	if text == "" {
		return ""
	}
	return ", " + text
}

func paramText(p trade.Param, system units.System) string {
	text := p.Kind.String()
	switch {
	case p.Kind == units.Choice:
		text = strings.Join(p.Options, " | ")
	case p.Kind.Numeric():
		text += fmt.Sprintf(" %s to %s", units.Show(p.Low, p.Kind, system, units.Nearest), units.Show(p.High, p.Kind, system, units.Nearest))
	}
	text += about(p.About)
	if p.Optional {
		text += "; may be left out"
	}
	return text
}

// printLanguage lists the plain functions and the units.
func printLanguage(s *screen, words []string) {
	for _, f := range rules.PlainFunctions() {
		if matches(f.Name+" "+f.About, words) {
			s.row(0, f.Name, 14, f.About)
		}
	}
	if len(words) > 0 {
		return
	}
	s.heading("Units")
	byKind := map[units.Kind][]string{}
	var order []units.Kind
	for _, u := range units.All() {
		if len(byKind[u.Kind]) == 0 {
			order = append(order, u.Kind)
		}
		byKind[u.Kind] = append(byKind[u.Kind], u.Name)
	}
	for _, k := range order {
		s.row(2, k.String(), 24, strings.Join(byKind[k], ", "))
	}
}

type functionOut struct {
	Name    string      `json:"name"`
	About   string      `json:"about"`
	Formula string      `json:"formula"`
	Params  []paramOut  `json:"params"`
	Results []resultOut `json:"results"`
	Source  string      `json:"source"`
	Example string      `json:"example"`
}

type paramOut struct {
	Name     string   `json:"name"`
	Kind     string   `json:"kind"`
	Options  []string `json:"options,omitempty"`
	Optional bool     `json:"optional,omitempty"`
	About    string   `json:"about,omitempty"`
}

type resultOut struct {
	Name  string `json:"name,omitempty"`
	Kind  string `json:"kind"`
	About string `json:"about,omitempty"`
}

func functionsJSON(list []*trade.Function) []functionOut {
	out := []functionOut{}
	for _, f := range list {
		o := functionOut{Name: f.Name, About: f.About, Formula: f.Formula, Source: f.Source, Example: f.Example}
		for _, p := range f.Params {
			o.Params = append(o.Params, paramOut{p.Name, p.Kind.String(), p.Options, p.Optional, p.About})
		}
		for _, r := range f.Results {
			o.Results = append(o.Results, resultOut{r.Name, r.Kind.String(), r.About})
		}
		out = append(out, o)
	}
	return out
}
