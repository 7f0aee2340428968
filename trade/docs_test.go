package trade_test

import (
	"go/ast"
	"go/parser"
	"go/token"
	"io/fs"
	"path/filepath"
	"regexp"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// A calculation is an exported function or method that gives a value or else an
// error. Its comment says in which units it is, for which range it holds, what
// is an error and where it comes from; so a person who reads only the comment
// can use it and knows how far to trust it.

var (
	saysSource = regexp.MustCompile(`(?i)\bsources?\b|common practice`)
	saysErrors = regexp.MustCompile(`(?i)\berrors?\b`)
	saysRange  = regexp.MustCompile(`(?i)\b(valid|ranges?|outside|within|any\s+other|unknown|not in|at least|must|fewer|no|none)\b|\d[^;.]*\bto\b[^;.]*\d`)
	hasFigures = regexp.MustCompile(`\d[^;]*?\bto\b[^;]*?\d|±\s?\d|\b(under|over|above|below|least|most|more than|less than)\s+[\d.]|[<>≤≥]`)

	// A unit stands between spaces, brackets or the marks of a sentence. The
	// words are for what has no unit of its own.
	saysUnit = regexp.MustCompile(`(?:^|[\s(,;:/±])(?:[µm]?m[²³⁴]?|N|N·m|N/m²?|kN|MPa|GPa|Pa|1/Pa|1/K|rad|m/rad|rad/s|kg|kg/m|kg/m³|kg/s|K|W|J/m|J/m³|s|m/s|m³/s|Hz|V|A|%)(?:$|[\s),.;:/])` +
		`|(?:^|[(,:;]\s?)1(?:$|[\s),.;:])` +
		`|\b(?:shares?|ratios?|index|indices|degrees|hours|short tons)\b`)

	formula = regexp.MustCompile(`(?m)^\t.*$`)
)

// prose is a comment without its formulas, whose letters could pass for units.
func prose(comment string) string { return formula.ReplaceAllString(comment, "") }

// tradePackage is what the comments of one package say.
type tradePackage struct {
	structs map[string]*ast.StructType
	said    map[string]string // a type's or function's name and its comment
	funcs   []*ast.FuncDecl
}

func readPackage(t *testing.T, dir string) *tradePackage {
	p := &tradePackage{structs: map[string]*ast.StructType{}, said: map[string]string{}}
	files := token.NewFileSet()
	paths, err := filepath.Glob(filepath.Join(dir, "*.go"))
	require.NoError(t, err)
	for _, path := range paths {
		if strings.HasSuffix(path, "_test.go") {
			continue
		}
		file, err := parser.ParseFile(files, path, nil, parser.ParseComments)
		require.NoError(t, err)
		for _, d := range file.Decls {
			p.read(d)
		}
	}
	return p
}

func (p *tradePackage) read(d ast.Decl) {
	switch d := d.(type) {
	case *ast.FuncDecl:
		p.funcs = append(p.funcs, d)
		p.said[d.Name.Name] += d.Doc.Text()
	case *ast.GenDecl:
		for _, s := range d.Specs {
			s, ok := s.(*ast.TypeSpec)
			if !ok {
				continue
			}
			p.said[s.Name.Name] = d.Doc.Text() + s.Doc.Text()
			if st, ok := s.Type.(*ast.StructType); ok {
				p.structs[s.Name.Name] = st
			}
		}
	}
}

// typeName is the name of a type of the same package, through pointers and
// slices; other packages' and built-in types keep their own.
func typeName(e ast.Expr) string {
	switch e := e.(type) {
	case *ast.StarExpr:
		return typeName(e.X)
	case *ast.ArrayType:
		return typeName(e.Elt)
	case *ast.SelectorExpr:
		return typeName(e.X) + "." + e.Sel.Name
	case *ast.Ident:
		return e.Name
	}
	return ""
}

func typesOf(list *ast.FieldList) []string {
	var names []string
	if list == nil {
		return nil
	}
	for _, f := range list.List {
		names = append(names, typeName(f.Type))
	}
	return names
}

// isCalculation is true for what gives a value or else an error.
func isCalculation(f *ast.FuncDecl) bool {
	if !f.Name.IsExported() || f.Recv != nil && !ast.IsExported(typesOf(f.Recv)[0]) {
		return false
	}
	results := typesOf(f.Type.Results)
	return len(results) > 1 && results[len(results)-1] == "error"
}

// fields gives what a struct's comments say, its own fields and those of the
// structs in it.
func (p *tradePackage) fields(name string, seen map[string]bool) string {
	st := p.structs[name]
	if st == nil || seen[name] {
		return ""
	}
	seen[name] = true
	text := p.said[name]
	for _, f := range st.Fields.List {
		text += f.Doc.Text() + f.Comment.Text() + p.fields(typeName(f.Type), seen)
	}
	return text
}

var exportedName = regexp.MustCompile(`\b[A-Z]\w+`)

// figuresFor gathers what is said about the range: by the function, by the
// types that it takes, and by the functions that it refers to ("valid as Cut").
func (p *tradePackage) figuresFor(f *ast.FuncDecl, seen map[string]bool) string {
	text := f.Doc.Text()
	seen[f.Name.Name] = true
	for _, name := range append(typesOf(f.Type.Params), typesOf(f.Recv)...) {
		text += p.fields(name, map[string]bool{})
	}
	for _, name := range exportedName.FindAllString(f.Doc.Text(), -1) {
		for _, g := range p.funcs {
			if g.Name.Name == name && !seen[name] {
				text += p.figuresFor(g, seen)
			}
		}
	}
	return text
}

func takesOrGivesNumbers(f *ast.FuncDecl) bool {
	return slices.Contains(append(typesOf(f.Type.Params), typesOf(f.Type.Results)...), "float64")
}

// looksUp is true for a function that finds a row by its name or index: it has
// no range but the table.
func looksUp(f *ast.FuncDecl) bool {
	for _, param := range f.Type.Params.List {
		for _, n := range param.Names {
			if typeName(param.Type) == "float64" && n.Name != "index" && n.Name != "row" && n.Name != "tool" {
				return false
			}
		}
		if typeName(param.Type) != "string" && typeName(param.Type) != "float64" && typeName(param.Type) != "Pick" {
			return false
		}
	}
	return true
}

func tradePackages(t *testing.T) []string {
	var dirs []string
	require.NoError(t, filepath.WalkDir(".", func(path string, d fs.DirEntry, err error) error {
		if err != nil || !d.IsDir() || path == "." {
			return err
		}
		if slices.Contains([]string{"internal", "testdata", "outside"}, d.Name()) {
			return filepath.SkipDir
		}
		dirs = append(dirs, path)
		return nil
	}))
	return dirs
}

func TestCalculationsSayUnitRangeErrorsAndSource(t *testing.T) {
	counted := 0
	for _, dir := range tradePackages(t) {
		p := readPackage(t, dir)
		for _, f := range p.funcs {
			if !isCalculation(f) {
				continue
			}
			counted++
			t.Run(dir+"."+f.Name.Name, func(t *testing.T) {
				said := f.Doc.Text()
				assert.Regexp(t, saysSource, said, "no source")
				assert.Regexp(t, saysErrors, said, "it does not say what is an error")
				assert.Regexp(t, saysRange, said, "no range")
				if !looksUp(f) {
					assert.Regexp(t, hasFigures, p.figuresFor(f, map[string]bool{}), "no figures of the range, in the comment or its input's")
				}
				if takesOrGivesNumbers(f) {
					assert.Regexp(t, saysUnit, prose(said), "no unit")
				}
			})
		}
	}
	assert.Greater(t, counted, 100, "calculations were not found")
}

// TestNumbersSayTheirUnit: every number that a calculation takes or gives in a
// struct has its unit beside it, or in the comment of the struct.
func TestNumbersSayTheirUnit(t *testing.T) {
	for _, dir := range tradePackages(t) {
		p := readPackage(t, dir)
		for name, st := range p.structs {
			if !ast.IsExported(name) || saysUnit.MatchString(prose(p.said[name])) {
				continue
			}
			for _, f := range st.Fields.List {
				if typeName(f.Type) != "float64" || len(f.Names) == 0 || !f.Names[0].IsExported() {
					continue
				}
				assert.Regexp(t, saysUnit, f.Doc.Text()+f.Comment.Text(), "%s.%s.%s has no unit", dir, name, f.Names[0].Name)
			}
		}
	}
}
