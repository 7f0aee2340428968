package source

import (
	"errors"
	"fmt"
	"reflect"
	"slices"
	"strings"
	"unicode/utf8"

	"github.com/goccy/go-yaml/ast"
	"github.com/goccy/go-yaml/parser"
	"github.com/goccy/go-yaml/token"

	goyaml "github.com/goccy/go-yaml"
)

// Decode reads the YAML of f into the struct that into points to. Field tags
// are `yaml:"key"` or `yaml:"key,required"`. Keys that no field has, keys given
// twice, anchors and aliases are mistakes. All mistakes come back together as
// Errors.
//
// Fields may be Text, bool, a struct, a slice, a *struct, a Map, or any type
// that is a Decoder.
func Decode(f *File, into any) error {
	node, err := Parse(f)
	if err != nil {
		return err
	}
	var report Report
	node.Decode(into, &report)
	return report.Err()
}

// Node is a piece of a parsed file.
type Node struct {
	file *File
	node ast.Node
}

// Decoder is a type that reads itself, such as one that may be written short
// or long.
type Decoder interface {
	DecodeNode(n Node, report *Report)
}

// Parse reads the YAML of f.
func Parse(f *File) (Node, error) {
	if text, marked := strings.CutPrefix(f.Text, "\ufeff"); marked { // as some editors begin a file
		f = &File{Name: f.Name, Text: text}
	}
	if err := f.Check(); err != nil {
		return Node{}, err
	}
	if err := f.checkShape(); err != nil {
		return Node{}, err
	}
	tree, err := parser.ParseBytes([]byte(f.Text), 0)
	if err != nil {
		return Node{}, syntaxError(f, err)
	}
	var body ast.Node
	for _, doc := range tree.Docs {
		if doc.Body == nil {
			continue
		}
		if body != nil {
			return Node{}, errorAt(f, doc.Body.GetToken(), "a second document starts here", "keep one document in a file")
		}
		body = doc.Body
	}
	if body == nil {
		return Node{}, &Error{File: f.Name, What: "the file is empty"}
	}
	return Node{file: f, node: body}, nil
}

func syntaxError(f *File, err error) error {
	var at goyaml.Error
	if !errors.As(err, &at) {
		return &Error{File: f.Name, What: "the YAML cannot be read: " + err.Error()}
	}
	what := at.GetMessage()
	switch {
	case strings.HasPrefix(what, "mapping key ") && strings.Contains(what, "already defined"):
		key, _, _ := strings.Cut(strings.TrimPrefix(what, "mapping key "), " already defined")
		return errorAt(f, at.GetToken(), key+" is given twice", "keep one of them")
	case strings.Contains(what, "mapping value is not allowed"):
		return errorAt(f, at.GetToken(), "the YAML cannot be read: a colon is in the way", `put quotes round a value that holds ": " or " #"`)
	}
	return errorAt(f, at.GetToken(), "the YAML cannot be read: "+what, "")
}

func errorAt(f *File, t *token.Token, what, hint string) *Error {
	e := &Error{File: f.Name, What: what, Hint: hint, Width: 1}
	if t != nil && t.Position != nil {
		e.Pos = Pos{t.Position.Line, t.Position.Column}
		e.Line = f.Line(e.Pos.Line)
		e.Width = utf8.RuneCountInString(strings.TrimSpace(t.Value))
	}
	return e
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

// Map is a mapping whose keys are names, kept in the order written.
type Map[T any] []Entry[T]

// Entry is one named value of a Map.
type Entry[T any] struct {
	Key   Text
	Value T
}

// DecodeNode reads the mapping.
func (m *Map[T]) DecodeNode(n Node, report *Report) {
	for _, pair := range n.Pairs(report) {
		e := Entry[T]{Key: pair.Key}
		pair.Value.Decode(&e.Value, report)
		*m = append(*m, e)
	}
}

// Get finds a value by its name.
func (m Map[T]) Get(name string) (T, bool) {
	for i := range m {
		if m[i].Key.Value == name {
			return m[i].Value, true
		}
	}
	var none T
	return none, false
}

// Decode reads n into what into points to.
func (n Node) Decode(into any, report *Report) {
	if d, ok := into.(Decoder); ok {
		d.DecodeNode(n, report)
		return
	}
	v := reflect.ValueOf(into).Elem()
	switch target := v.Addr().Interface().(type) {
	case *Text:
		*target = n.Text(report)
		return
	case *bool:
		n.decodeBool(target, report)
		return
	}
	switch v.Kind() {
	case reflect.Struct:
		n.decodeStruct(v, report)
	case reflect.Pointer:
		v.Set(reflect.New(v.Type().Elem()))
		n.Decode(v.Interface(), report)
	case reflect.Slice:
		n.decodeSlice(v, report)
	default:
		panic("source: cannot decode into " + v.Type().String()) // a mistake in this program, found by its first test
	}
}

func (n Node) decodeBool(target *bool, report *Report) {
	switch t := n.Text(report); strings.ToLower(t.Value) {
	case "true", "yes":
		*target = true
	case "false", "no":
	default:
		report.At(t, "yes or no is expected here", "")
	}
}

// decodeSlice takes a list, or a single value where a list of texts is meant.
func (n Node) decodeSlice(v reflect.Value, report *Report) {
	if v.Type().Elem() == reflect.TypeFor[Text]() && !n.IsList() && !n.IsMapping() && !n.IsEmpty() {
		v.Set(reflect.ValueOf([]Text{n.Text(report)}))
		return
	}
	for _, item := range n.Items(report) {
		e := reflect.New(v.Type().Elem())
		item.Decode(e.Interface(), report)
		v.Set(reflect.Append(v, e.Elem()))
	}
}

func (n Node) decodeStruct(v reflect.Value, report *Report) {
	given := map[string]bool{}
	for _, pair := range n.Pairs(report) {
		i, ok := fieldOf(v.Type(), pair.Key.Value)
		if !ok {
			report.At(pair.Key, fmt.Sprintf("%q is not a key here", pair.Key.Value), suggest(pair.Key.Value, keysOf(v.Type())))
			continue
		}
		given[pair.Key.Value] = true
		if _, required := tagOf(v.Type().Field(i)); required && pair.Value.holdsNothing() {
			report.At(pair.Key, fmt.Sprintf("%q has nothing behind it", pair.Key.Value), "")
			continue
		}
		pair.Value.Decode(v.Field(i).Addr().Interface(), report)
	}
	for i := range v.NumField() {
		key, required := tagOf(v.Type().Field(i))
		if required && !given[key] && (n.IsMapping() || n.IsEmpty()) {
			n.Fail(report, fmt.Sprintf("%q is missing", key), "add the line "+key+": …")
		}
	}
}

func tagOf(f reflect.StructField) (key string, required bool) {
	key, rest, _ := strings.Cut(f.Tag.Get("yaml"), ",")
	return key, rest == "required"
}

func fieldOf(t reflect.Type, name string) (int, bool) {
	for i := range t.NumField() {
		if key, _ := tagOf(t.Field(i)); key == name && key != "" {
			return i, true
		}
	}
	return 0, false
}

func keysOf(t reflect.Type) []string {
	var keys []string
	for i := range t.NumField() {
		if key, _ := tagOf(t.Field(i)); key != "" {
			keys = append(keys, key)
		}
	}
	return keys
}
