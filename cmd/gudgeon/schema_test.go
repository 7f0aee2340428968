package main

import (
	"encoding/json"
	"fmt"
	"io/fs"
	"maps"
	"os"
	"path/filepath"
	"regexp"
	"slices"
	"strings"
	"testing"

	"github.com/goccy/go-yaml"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// against holds a value against a schema, for the keywords that ours use, and
// says where it does not fit.
func against(schema map[string]any, value any, at string) error {
	for _, keyword := range slices.Sorted(maps.Keys(schema)) {
		if err := keywordFits(schema, keyword, schema[keyword], value, at); err != nil {
			return err
		}
	}
	return nil
}

func keywordFits(schema map[string]any, keyword string, want, value any, at string) error {
	object, isObject := value.(map[string]any)
	switch keyword {
	case "$schema", "title", "description":
		return nil
	case "type":
		return typeFits(want, value, at)
	case "enum":
		if !slices.Contains(want.([]any), value) {
			return fmt.Errorf("%s: %v is none of %v", at, value, want)
		}
	case "anyOf":
		return oneFits(want.([]any), value, at)
	case "items":
		list, _ := value.([]any)
		for i, item := range list {
			if err := against(want.(map[string]any), item, fmt.Sprintf("%s[%d]", at, i)); err != nil {
				return err
			}
		}
	case "required":
		for _, key := range want.([]any) {
			if _, ok := object[key.(string)]; isObject && !ok {
				return fmt.Errorf("%s: %s is missing", at, key)
			}
		}
	case "properties":
		for key, part := range want.(map[string]any) {
			if v, ok := object[key]; ok {
				if err := against(part.(map[string]any), v, at+"."+key); err != nil {
					return err
				}
			}
		}
	case "additionalProperties":
		return othersFit(schema, want, object, at)
	default:
		return fmt.Errorf("%s: this test does not know the keyword %s", at, keyword)
	}
	return nil
}

func typeFits(want, value any, at string) error {
	is := map[string]bool{}
	switch value.(type) {
	case string:
		is["string"] = true
	case float64:
		is["number"] = true
	case bool:
		is["boolean"] = true
	case nil:
		is["null"] = true
	case []any:
		is["array"] = true
	case map[string]any:
		is["object"] = true
	}
	names, many := want.([]any)
	if !many {
		names = []any{want}
	}
	for _, name := range names {
		if is[name.(string)] {
			return nil
		}
	}
	return fmt.Errorf("%s: %v is no %v", at, value, want)
}

func oneFits(ways []any, value any, at string) error {
	var errs []string
	for _, way := range ways {
		err := against(way.(map[string]any), value, at)
		if err == nil {
			return nil
		}
		errs = append(errs, err.Error())
	}
	return fmt.Errorf("%s fits none of its forms: %s", at, strings.Join(errs, "; "))
}

func othersFit(schema map[string]any, want any, object map[string]any, at string) error {
	known, _ := schema["properties"].(map[string]any)
	for key, v := range object {
		if _, ok := known[key]; ok {
			continue
		}
		part, open := want.(map[string]any)
		if !open {
			return fmt.Errorf("%s: %s is no key here", at, key)
		}
		if key == "at" && at != "" { // of a survey's table
			continue
		}
		if err := against(part, v, at+"."+key); err != nil {
			return err
		}
	}
	return nil
}

// schemaNamed is the schema as it is printed.
func schemaNamed(t *testing.T, name string) map[string]any {
	for _, s := range schemas() {
		if s.name == name {
			var schema map[string]any
			require.NoError(t, json.Unmarshal([]byte(s.make().JSON()), &schema))
			return schema
		}
	}
	t.Fatalf("there is no schema %s", name)
	return nil
}

// parsed is YAML as an editor sees it: JSON values.
func parsed(t *testing.T, text string) any {
	var v, plain any
	require.NoError(t, yaml.Unmarshal([]byte(text), &v))
	data, err := json.Marshal(v)
	require.NoError(t, err)
	require.NoError(t, json.Unmarshal(data, &plain))
	return plain
}

func frontMatter(text string) string { return strings.Split(text, "\n---")[0] }

// Every file that the program itself takes fits its schema.
func TestShippedFilesFitTheirSchemas(t *testing.T) {
	for name, pattern := range map[string]string{
		"sheet": "../../rules/*.yaml", "checklist": "../../checklists/*.yaml", "steps": "../../checklists/parts/*.yaml",
		"note": "../../kb/notes/*.md", "readings": "../../testdata/[^s]*.yaml",
	} {
		schema := schemaNamed(t, name)
		files, err := filepath.Glob(pattern)
		require.NoError(t, err)
		require.NotEmpty(t, files, pattern)
		for _, file := range files {
			text, err := os.ReadFile(file)
			require.NoError(t, err)
			assert.NoError(t, against(schema, parsed(t, frontMatter(string(text))), ""), file)
		}
	}
}

// So do the scaffolds.
func TestScaffoldsFitTheirSchemas(t *testing.T) {
	for _, k := range scaffoldList() {
		text, err := k.text("swing-arm")
		require.NoError(t, err)
		assert.NoError(t, against(schemaNamed(t, k.name), parsed(t, frontMatter(text)), ""), k.name)
		assert.Regexp(t, `^(---\n)?# Help from an editor: gudgeon schema `+k.name, text)
		assert.NotRegexp(t, regexp.MustCompile(`NAME|WORD|DATE|PARTS|PROCESSES`), text)
	}
	files, err := fs.Glob(scaffolds, "scaffold/*")
	require.NoError(t, err)
	assert.Len(t, files, len(scaffoldList()))
}

// What the program refuses for its form, the schema refuses too.
func TestSchemasRefuse(t *testing.T) {
	const step = "checklist: x\ntitle: x\nsteps:\n  - {id: a, kind: do, title: A, why: B.}\n"
	for _, c := range []struct{ name, text, want string }{
		{"sheet", "sheet: x\nrulez: []\n", "rulez is no key here"},
		{"sheet", "about: x\n", "sheet is missing"},
		{"sheet", "sheet: x\nreadings: {a: {ask: A, kind: lenght}}\n", "lenght is none of"},
		{"sheet", "sheet: x\nreadings: {a: {ask: A, kind: length, can change: perhaps}}\n", "perhaps is none of"},
		{"sheet", "sheet: x\nvalues: {a: {unit: in}}\n", "is is missing"},
		{"sheet", "sheet: x\nrules: [{id: a, check: b, level: halt, says: s, do: d, source: s}]\n", "halt is none of"},
		{"checklist", "checklist: x\ntitle: x\n", "steps is missing"},
		{"checklist", step + "  - {steps of: b, when: c}\n", "when is no key here"},
		{"checklist", step + "  - {id: c, kind: dance, title: A, why: B.}\n", "dance is none of"},
		{"steps", "steps of: x\nsteps: [{steps of: y}]\n", "steps of is no key here"},
		{"note", "title: x\npart: linkage\nprocess: bore\nfound: x\ndone: x\ndate: 2025-01-01\n", "linkage is none of"},
		{"note", "title: x\npart: link\nprocess: [bored]\nfound: x\ndone: x\ndate: 2025-01-01\n", "bored is none of"},
		{"readings", "reading: {a: 1}\n", "reading is no key here"},
		{"readings", "readings: {a: {with: tape}}\n", "read is missing"},
		{"readings", "released: {a: {by: x}}\n", "reason is missing"},
	} {
		assert.ErrorContains(t, against(schemaNamed(t, c.name), parsed(t, c.text), ""), c.want, c.text)
	}
}

// Forms that may be short or long fit both ways.
func TestSchemasTakeShortAndLong(t *testing.T) {
	for _, c := range []struct{ name, text string }{
		{"sheet", "sheet: x\nuses: part\nvalues: {a: b, c: {is: d, unit: in}}\nreadings:\n"},
		{"note", "title: x\npart: link\nprocess: bore\nfound: x\ndone: x\ndate: 2025-01-01\ncause:\n"},
		{"readings", "part: 7\nreadings: {a: .050, b: yes, c: , d: {read: 3 in, by: R}, e: {at: [12, '1:30'], 0.5 in: [1, '-']}}\ndone: receive\n"},
	} {
		assert.NoError(t, against(schemaNamed(t, c.name), parsed(t, c.text), ""), c.text)
	}
}
