package kb

import (
	"errors"
	"fmt"
	"regexp"
	"slices"
	"strings"
	"time"
	"unicode/utf8"

	"github.com/goccy/go-yaml"
	"github.com/goccy/go-yaml/ast"
	"github.com/goccy/go-yaml/parser"
)

// field says how one key of the front matter is read. The keys a machinist may
// not know, such as the cause, can be left out.
type field struct {
	key  string
	must bool
	read func(*page, *Note, ast.Node)
}

func fields() []field {
	return []field{
		{"title", true, text(func(n *Note, s string) { n.Title = s })},
		{"part", true, readPart},
		{"machine", false, text(func(n *Note, s string) { n.Machine = s })},
		{"material", false, text(func(n *Note, s string) { n.Material = s })},
		{"process", true, readProcess},
		{"found", true, text(func(n *Note, s string) { n.Found = s })},
		{"cause", false, text(func(n *Note, s string) { n.Cause = s })},
		{"done", true, text(func(n *Note, s string) { n.Done = s })},
		{"next time", false, text(func(n *Note, s string) { n.NextTime = s })},
		{"measured", false, readMeasured},
		{"rules", false, readRules},
		{"date", true, readDate},
	}
}

// frontMatter reads the YAML between the fences into the note.
func (p *page) frontMatter(n *Note, end int) {
	source := strings.Join(p.lines[1:end-1], "\n")
	if len(source) > FrontLimit {
		p.mistake(0, 0, fmt.Sprintf("the front matter is larger than %d KiB", FrontLimit>>10), "Move the long texts below it.")
		return
	}
	tree, err := parser.ParseBytes([]byte(source), 0)
	if err != nil {
		p.syntax(err)
		return
	}
	entries, ok := p.entries(tree)
	if !ok {
		return
	}
	known := fields()
	seen := map[string]bool{}
	for _, e := range entries {
		key := e.Key.GetToken().Value
		i := slices.IndexFunc(known, func(f field) bool { return f.key == key })
		if i < 0 {
			p.at(e.Key, fmt.Sprintf("%q is not a key of a note", key), "Use one of: "+keyList(known)+".")
			continue
		}
		seen[key] = true
		known[i].read(p, n, e.Value)
	}
	for _, f := range known {
		if f.must && !seen[f.key] {
			p.mistake(end, 1, fmt.Sprintf("the key %q is missing", f.key), "Add it above this line.")
		}
	}
}

// syntax reports text that is no YAML at all.
func (p *page) syntax(err error) {
	line, column, what := 1, 1, err.Error()
	var broken *yaml.SyntaxError
	if errors.As(err, &broken) && broken.Token != nil {
		line, column = broken.Token.Position.Line, broken.Token.Position.Column
		what, _, _ = strings.Cut(broken.Message, "\n")
	}
	p.mistake(line+1, column, "the front matter cannot be read: "+what,
		`Write each key on its own line as "key: value"; put quotes round a value that holds ": " or " #".`)
}

func (p *page) entries(tree *ast.File) ([]*ast.MappingValueNode, bool) {
	if len(tree.Docs) == 1 {
		switch body := tree.Docs[0].Body.(type) {
		case *ast.MappingNode:
			return body.Values, true
		case *ast.MappingValueNode:
			return []*ast.MappingValueNode{body}, true
		}
	}
	p.mistake(2, 1, "the front matter holds no keys", `Write each key on its own line as "key: value".`)
	return nil, false
}

func keyList(known []field) string {
	keys := make([]string, len(known))
	for i, f := range known {
		keys[i] = f.key
	}
	return strings.Join(keys, ", ")
}

// at reports a mistake where the node stands; the opening fence is line 1.
func (p *page) at(node ast.Node, what, do string) {
	pos := node.GetToken().Position
	p.mistake(pos.Line+1, pos.Column, what, do)
}

// scalar gives a value as it was written, so that .050 stays .050.
func scalar(node ast.Node) (string, bool) {
	switch v := node.(type) {
	case *ast.StringNode:
		return strings.TrimSpace(v.Value), true
	case *ast.LiteralNode:
		return strings.TrimSpace(v.Value.Value), true
	case *ast.IntegerNode, *ast.FloatNode, *ast.BoolNode:
		return v.GetToken().Value, true
	}
	return "", false
}

// line reads a value that must be there, as plain text.
func (p *page) line(node ast.Node) (string, bool) {
	s, ok := scalar(node)
	if !ok || s == "" {
		p.at(node, "there should be text here", "Write the value behind the colon, on the same line.")
		return "", false
	}
	return s, true
}

func text(set func(*Note, string)) func(*page, *Note, ast.Node) {
	return func(p *page, n *Note, node ast.Node) {
		if s, ok := p.line(node); ok {
			set(n, strings.Join(strings.Fields(s), " "))
		}
	}
}

func readPart(p *page, n *Note, node ast.Node) {
	s, ok := p.line(node)
	if !ok {
		return
	}
	if !slices.Contains(Parts(), s) {
		p.at(node, fmt.Sprintf("part %q is not known", s), "Use one of: "+strings.Join(Parts(), ", ")+".")
		return
	}
	n.Part = s
}

func readProcess(p *page, n *Note, node ast.Node) {
	items, ok := p.list(node, "[bore, weld]")
	if !ok {
		return
	}
	if len(items) == 0 {
		p.at(node, "the list is empty", "Name at least one of: "+strings.Join(Processes(), ", ")+".")
		return
	}
	for _, item := range items {
		s, ok := p.line(item)
		if !ok {
			continue
		}
		if !slices.Contains(Processes(), s) {
			p.at(item, fmt.Sprintf("process %q is not known", s), "Use one of: "+strings.Join(Processes(), ", ")+".")
			continue
		}
		if slices.Contains(n.Process, s) {
			p.at(item, fmt.Sprintf("process %q stands here twice", s), "Delete one.")
			continue
		}
		n.Process = append(n.Process, s)
	}
}

func readRules(p *page, n *Note, node ast.Node) {
	items, ok := p.list(node, "[bore-size]")
	if !ok {
		return
	}
	for _, item := range items {
		s, ok := p.line(item)
		if !ok {
			continue
		}
		if !isName(s) {
			p.at(item, fmt.Sprintf("%q is not a rule's id", s), `Write small letters, digits and single dashes, such as "sling-angle".`)
			continue
		}
		if slices.Contains(n.Rules, s) {
			p.at(item, fmt.Sprintf("rule %q stands here twice", s), "Delete one.")
			continue
		}
		n.Rules = append(n.Rules, s)
	}
}

func (p *page) list(node ast.Node, example string) ([]ast.Node, bool) {
	seq, ok := node.(*ast.SequenceNode)
	if !ok {
		p.at(node, "there should be a list here", "Write it in square brackets, such as "+example+".")
		return nil, false
	}
	return seq.Values, true
}

func readMeasured(p *page, n *Note, node ast.Node) {
	var entries []*ast.MappingValueNode
	switch v := node.(type) {
	case *ast.MappingNode:
		entries = v.Values
	case *ast.MappingValueNode:
		entries = []*ast.MappingValueNode{v}
	default:
		p.at(node, "there should be names with quantities here", `Write them as "{bore: 3-1/8 in, offset: .090 in}".`)
		return
	}
	for _, e := range entries {
		s, ok := p.line(e.Value)
		if !ok {
			continue
		}
		if !quantity.MatchString(s) {
			p.at(e.Value, fmt.Sprintf("%q is not a quantity", s), `Write a number and its unit, such as "3-1/8 in" or "225 F".`)
			continue
		}
		n.Measured = append(n.Measured, Measurement{Name: e.Key.GetToken().Value, Text: s})
	}
}

// quantity is loose on purpose: "3.000 +.002/-.000 in" and "4 to 6 h" are fine too.
var quantity = regexp.MustCompile(`^[-+±]?\.?\d`)

func readDate(p *page, n *Note, node ast.Node) {
	s, ok := p.line(node)
	if !ok {
		return
	}
	day, err := time.Parse(DateLayout, s)
	if err != nil {
		p.at(node, fmt.Sprintf("%q is not a date", s), "Write year, month and day, such as 2025-03-14.")
		return
	}
	n.Date = day
}

var kebab = regexp.MustCompile(`^[a-z0-9]+(-[a-z0-9]+)*$`)

// isName holds for file names and rule ids alike: small letters, digits, dashes.
func isName(s string) bool { return utf8.RuneCountInString(s) <= 80 && kebab.MatchString(s) }
