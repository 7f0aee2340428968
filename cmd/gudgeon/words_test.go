package main

import (
	"go/ast"
	"go/parser"
	"go/token"
	"os"
	"regexp"
	"strconv"
	"strings"
	"testing"
	"unicode/utf8"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"gudgeon/rules"
	"gudgeon/units"
)

// TestEveryWordOfTheScreensHasASpanishOne looks for what the screens say in the
// program's own text.
func TestEveryWordOfTheScreensHasASpanishOne(t *testing.T) {
	es := &screen{language: spanishName}
	same := map[string]bool{"no": true}
	for _, text := range said(t) {
		assert.True(t, es.say(text) != text || same[text], "no Spanish for %q", text)
	}
}

// said lists the texts given to say, sayf and means.
func said(t *testing.T) []string {
	t.Helper()
	files, err := os.ReadDir(".")
	require.NoError(t, err)
	var list []string
	for _, file := range files {
		if name := file.Name(); !strings.HasSuffix(name, ".go") || strings.HasSuffix(name, "_test.go") {
			continue
		}
		tree, err := parser.ParseFile(token.NewFileSet(), file.Name(), nil, 0)
		require.NoError(t, err)
		ast.Inspect(tree, func(n ast.Node) bool {
			if call, ok := n.(*ast.CallExpr); ok {
				list = append(list, saidIn(call)...)
			}
			return true
		})
	}
	return list
}

func saidIn(call *ast.CallExpr) []string {
	f, ok := call.Fun.(*ast.SelectorExpr)
	if !ok || f.Sel.Name != "say" && f.Sel.Name != "sayf" && f.Sel.Name != "means" {
		return nil
	}
	var list []string
	for _, arg := range call.Args {
		text, ok := arg.(*ast.BasicLit)
		if !ok || text.Kind != token.STRING || f.Sel.Name == "sayf" && arg != call.Args[0] {
			continue
		}
		if value, err := strconv.Unquote(text.Value); err == nil {
			list = append(list, value)
		}
	}
	return list
}

var verb = regexp.MustCompile(`%[-+.0-9]*[a-z%]`)

// TestSpanishWordsTakeTheSameThings keeps a number out of the place of a name.
func TestSpanishWordsTakeTheSameThings(t *testing.T) {
	for _, words := range []map[string]string{spanish, spanishCard} {
		for english, text := range words {
			assert.Equal(t, verb.FindAllString(english, -1), verb.FindAllString(text, -1), english)
		}
	}
}

// TestCardSpeaksSpanish goes through all that the card can name.
func TestCardSpeaksSpanish(t *testing.T) {
	es := &screen{language: spanishName}
	known := func(text string) { assert.NotEqual(t, text, es.say(text), "no Spanish for %q", text) }
	for _, text := range subjects {
		known(text)
	}
	for _, f := range facts {
		known(f.label)
		for _, p := range f.parts {
			if p.format != "%s" {
				known(p.format)
			}
		}
	}
	for v, words := range verdictWords {
		known(words.plain)
		for _, r := range es.say(words.tall) {
			assert.Contains(t, letters, r, v.String())
		}
		for _, row := range tall(es.say(words.tall)) {
			assert.LessOrEqual(t, len(row), 74)
		}
		assert.LessOrEqual(t, utf8.RuneCountInString(v.In(spanishName)+"  "+es.say(words.plain)), 80, v.String())
	}
	for _, v := range shippedPrelift(t).Rules.Values {
		for _, f := range v.Type.Fields {
			if f.Kind == units.Ratio && f.Round == units.Up && f.Name != "use" && v.Name != "fork_reach" {
				known(strings.ReplaceAll(f.Name, "_", " "))
			}
		}
	}
}

func TestLanguageOfTheEnvironment(t *testing.T) {
	for _, name := range []string{"GUDGEON_LANG", "LC_ALL", "LC_MESSAGES", "LANG"} {
		t.Setenv(name, "")
	}
	s := &settings{}
	assert.Equal(t, rules.English, s.language())
	t.Setenv("LANG", "es_MX.UTF-8")
	assert.Equal(t, spanishName, s.language())
	t.Setenv("LC_ALL", "en_US.UTF-8")
	assert.Equal(t, rules.English, s.language(), "LC_ALL goes before LANG")
	t.Setenv("GUDGEON_LANG", "es")
	assert.Equal(t, spanishName, s.language())
	s.lang = "en"
	assert.Equal(t, rules.English, s.language(), "--lang goes before all")
}
