package source

import (
	"errors"
	"strings"
	"unicode/utf8"

	"github.com/goccy/go-yaml/ast"
	"github.com/goccy/go-yaml/parser"
	"github.com/goccy/go-yaml/token"

	goyaml "github.com/goccy/go-yaml"
)

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
