package source

import (
	"fmt"
	"slices"
	"strings"
	"unicode/utf8"

	"github.com/goccy/go-yaml/ast"
	"github.com/goccy/go-yaml/token"
)

// Node is a piece of a parsed file.
type Node struct {
	file *File
	node ast.Node
}

// Fail records a mistake at n.
func (n Node) Fail(report *Report, what, hint string) {
	report.Append(errorAt(n.file, n.token(), what, hint))
}

// token is where n starts: a mapping's own token is its first colon, so take
// its first key.
func (n Node) token() *token.Token {
	if m, ok := n.node.(*ast.MappingNode); ok && len(m.Values) > 0 && m.Start.Value != "{" {
		return m.Values[0].Key.GetToken()
	}
	if m, ok := n.node.(*ast.MappingValueNode); ok {
		return m.Key.GetToken()
	}
	return n.node.GetToken()
}

// IsMapping reports whether n is a table of keys and values.
func (n Node) IsMapping() bool {
	switch n.node.(type) {
	case *ast.MappingNode, *ast.MappingValueNode:
		return true
	}
	return false
}

// Has reports whether n is a table with the key.
func (n Node) Has(key string) bool {
	var none Report
	return n.IsMapping() && slices.ContainsFunc(n.Pairs(&none), func(p Pair) bool { return p.Key.Value == key })
}

// IsList reports whether n is a list.
func (n Node) IsList() bool {
	_, ok := n.node.(*ast.SequenceNode)
	return ok
}

// IsEmpty reports whether n has no value, as in key: or key: "".
func (n Node) IsEmpty() bool {
	switch node := n.node.(type) {
	case nil:
		return true
	case *ast.NullNode:
		return node.GetToken().Value == "" || node.GetToken().Type == token.ImplicitNullType
	case *ast.StringNode:
		return strings.TrimSpace(node.Value) == ""
	case *ast.LiteralNode:
		return strings.TrimSpace(node.Value.Value) == ""
	}
	return false
}

// holdsNothing reports whether n is empty, or a list or table without entries.
func (n Node) holdsNothing() bool {
	switch node := n.node.(type) {
	case *ast.SequenceNode:
		return len(node.Values) == 0
	case *ast.MappingNode:
		return len(node.Values) == 0
	}
	return n.IsEmpty()
}

// Text reads n as one value, exactly as it was written.
func (n Node) Text(report *Report) Text {
	t := n.node.GetToken()
	at := Pos{t.Position.Line, t.Position.Column}
	value := t.Value
	switch node := n.node.(type) {
	case *ast.LiteralNode:
		value = node.Value.Value
		at = Pos{at.Line + 1, blockColumn(n.file, at.Line+1)}
	case *ast.StringNode:
		value = node.Value
		if t.Type == token.DoubleQuoteType || t.Type == token.SingleQuoteType {
			at.Column++
		}
	case *ast.IntegerNode, *ast.FloatNode, *ast.BoolNode, *ast.NullNode, *ast.InfinityNode, *ast.NanNode:
	case *ast.AnchorNode, *ast.AliasNode, *ast.MergeKeyNode, *ast.TagNode:
		n.Fail(report, "anchors, aliases and tags are not used here", "write the value out")
		return Text{}
	default:
		n.Fail(report, "one value is expected here", "")
		return Text{}
	}
	if n.IsEmpty() {
		value = ""
	}
	if strings.ContainsFunc(value, garbles) {
		n.Fail(report, "a control character is written here", "take it out")
		return Text{}
	}
	return Text{Value: strings.TrimSpace(value), Pos: at, file: n.file}
}

// blockColumn is where the text of a line starts.
func blockColumn(f *File, line int) int {
	text := f.Line(line)
	return utf8.RuneCountInString(text[:len(text)-len(strings.TrimLeft(text, " "))]) + 1
}

// Pairs reads n as a mapping, in the order written.
func (n Node) Pairs(report *Report) []Pair {
	var values []*ast.MappingValueNode
	switch m := n.node.(type) {
	case *ast.MappingNode:
		values = m.Values
	case *ast.MappingValueNode:
		values = []*ast.MappingValueNode{m}
	default:
		if !n.IsEmpty() {
			n.Fail(report, "keys with values are expected here", "write them as key: value")
		}
		return nil
	}
	var pairs []Pair
	seen := map[string]bool{}
	for _, v := range values {
		key := Node{n.file, v.Key.(ast.Node)}.Text(report)
		if key.Value == "" {
			continue
		}
		if seen[key.Value] {
			report.At(key, fmt.Sprintf("%q is given twice", key.Value), "keep one of them")
			continue
		}
		seen[key.Value] = true
		pairs = append(pairs, Pair{key, Node{n.file, v.Value}})
	}
	return pairs
}

// Pair is one key of a mapping and its value.
type Pair struct {
	Key   Text
	Value Node
}

// Items reads n as a list.
func (n Node) Items(report *Report) []Node {
	list, ok := n.node.(*ast.SequenceNode)
	if !ok {
		if !n.IsEmpty() {
			n.Fail(report, "a list is expected here", "write it as [one, two] or as lines that start with -")
		}
		return nil
	}
	items := make([]Node, 0, len(list.Values))
	for _, v := range list.Values {
		items = append(items, Node{n.file, v})
	}
	return items
}
