package source

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

type tool struct {
	Name  Text      `yaml:"name,required"`
	Sharp bool      `yaml:"sharp"`
	Uses  []Text    `yaml:"uses"`
	Parts Map[part] `yaml:"parts"`
	Notes []part    `yaml:"notes"`
	Maker *part     `yaml:"maker"`
}

type part struct {
	Size Text `yaml:"size,required"`
}

func decode(text string) (tool, error) {
	var t tool
	err := Decode(&File{Name: "tool.yaml", Text: text}, &t)
	return t, err
}

func TestDecodeKeepsPlacesAndOrder(t *testing.T) {
	got, err := decode("name: 'a drill'\nsharp: yes\nuses: [bore, \"ream\"]\nparts:\n  shank: {size: .050}\n  flute:\n    size: 12 ft 6 in\nmaker:\n  size: |\n    two\n    lines\n")
	require.NoError(t, err)
	assert.Equal(t, "a drill", got.Name.Value)
	assert.Equal(t, Pos{1, 8}, got.Name.Pos, "inside the quotes")
	assert.True(t, got.Sharp)
	assert.Equal(t, []string{"bore", "ream"}, []string{got.Uses[0].Value, got.Uses[1].Value})
	assert.Equal(t, Pos{3, 15}, got.Uses[1].Pos)
	assert.Equal(t, "shank", got.Parts[0].Key.Value)
	assert.Equal(t, ".050", got.Parts[0].Value.Size.Value, "as written, not as a number")
	assert.Equal(t, Pos{5, 17}, got.Parts[0].Value.Size.Pos)
	assert.Equal(t, "12 ft 6 in", got.Parts[1].Value.Size.Value)
	assert.Equal(t, "two\nlines", got.Maker.Size.Value)
	assert.Equal(t, Pos{10, 5}, got.Maker.Size.Pos, "where the block's text begins")

	one, err := decode("name: x\nuses: bore\n")
	require.NoError(t, err)
	assert.Len(t, one.Uses, 1, "a single text where a list is meant")
}

// The whole message, the mark included.
func TestDecodeRefuses(t *testing.T) {
	for _, c := range []struct{ text, want string }{
		{"name: x\nshrap: yes\n", "tool.yaml:2:1: \"shrap\" is not a key here\n  2 | shrap: yes\n    | ^^^^^\n  did you mean sharp?"},
		{"sharp: yes\n", "tool.yaml:1:1: \"name\" is missing\n  1 | sharp: yes\n    | ^^^^^\n  add the line name: …"},
		{"name:\n", "tool.yaml:1:1: \"name\" has nothing behind it\n  1 | name:\n    | ^^^^"},
		{"name: x\nsharp: perhaps\n", "tool.yaml:2:8: yes or no is expected here\n  2 | sharp: perhaps\n    |        ^^^^^^^"},
		{"name: two: colons\n", "tool.yaml:1:7: the YAML cannot be read: a colon is in the way\n  1 | name: two: colons\n    |       ^^^\n  put quotes round a value that holds \": \" or \" #\""},
		{"name: x\nname: y\n", "tool.yaml:2:1: \"name\" is given twice\n  2 | name: y\n    | ^^^^\n  keep one of them"},
		{"name: x\nparts:\n  a: {size: 1}\n  a: {size: 2}\n", "tool.yaml:4:3: \"a\" is given twice\n  4 |   a: {size: 2}\n    |   ^\n  keep one of them"},
		{"name: x\nuses: [}\n", "tool.yaml:2:7: the YAML cannot be read: sequence end token ']' not found\n  2 | uses: [}\n    |       ^"},
		{"name: [a, b]\n", "tool.yaml:1:7: one value is expected here\n  1 | name: [a, b]\n    |       ^"},
		{"name: x\nuses: {a: b}\n", "tool.yaml:2:7: a list is expected here\n  2 | uses: {a: b}\n    |       ^\n  write it as [one, two] or as lines that start with -"},
		{"name: &n x\n", "tool.yaml:1:7: anchors, aliases and tags are not used here\n  1 | name: &n x\n    |       ^\n  write the value out"},
		{"name: x\n---\nname: y\n", "tool.yaml:3:5: a second document starts here\n  3 | name: y\n    |     ^\n  keep one document in a file"},
		{"", "tool.yaml: the file is empty"},
		{"# only a comment\n", "tool.yaml: the file is empty"},
		{"name: \"\xff\"\n", "tool.yaml:1:8: there is a byte here that is not UTF-8 text\n  1 | name: \"\ufffd\"\n    |        ^\n  save the file as UTF-8 in your editor"},
		{"name: a\x00b\n", "tool.yaml:1:8: there is a control character (U+0000) here\n  1 | name: a\ufffdb\n    |        ^\n  delete the character"},
		{"name: a\x1b[31mb\n", "tool.yaml:1:8: there is a control character (U+001B) here\n  1 | name: a\ufffd[31mb\n    |        ^\n  delete the character"},
		{"name: \"\\e[31m\"\n", "tool.yaml:1:7: a control character is written here\n  1 | name: \"\\e[31m\"\n    |       ^^^^^\n  take it out"},
		{"name: ''\n", "tool.yaml:1:1: \"name\" has nothing behind it\n  1 | name: ''\n    | ^^^^"},
		{"name: " + strings.Repeat("[", 41), "tool.yaml:1:47: brackets are nested too deeply\n  1 | name: " + strings.Repeat("[", 41) + "\n    |                                               ^"},
		{"name: x\nuses: [" + strings.Repeat("a,\n", 20001) + "]", "tool.yaml:10002:1: the file has more than 20000 lines and commas\n  10002 | a,\n        | ^\n  split it, or check that it is the right file"},
		{strings.Repeat("a", Largest+1), "tool.yaml: the file is larger than 1024 KiB\n  split it, or check that it is the right file"},
	} {
		_, err := decode(c.text)
		assert.EqualError(t, err, c.want)
	}
}

func TestAllMistakesComeAtOnce(t *testing.T) {
	var text strings.Builder
	text.WriteString("name: x\n")
	for i := range 30 {
		text.WriteString("wrong" + string(rune('a'+i%26)) + string(rune('a'+i/26)) + ": x\n")
	}
	_, err := decode(text.String())
	var list Errors
	require.ErrorAs(t, err, &list)
	assert.Len(t, list, most+1)
	assert.Contains(t, list[most].Error(), "and 10 more mistakes")
	assert.Less(t, list[0].Pos.Line, list[1].Pos.Line)
}

func TestLongLinesAreCutRoundTheMark(t *testing.T) {
	e := &Error{File: "x", Pos: Pos{1, 500}, Line: strings.Repeat("a", 1000), Width: 5, What: "wrong"}
	for _, line := range strings.Split(e.Error(), "\n") {
		assert.LessOrEqual(t, len(line), widest+10)
	}
}

// The parser's time grows with the square of a line, so long ones never reach it.
func TestLongLinesAreRefused(t *testing.T) {
	_, err := decode("name: x\nuses: [" + strings.Repeat("a, ", 400000/3) + "]\n")
	require.ErrorContains(t, err, "tool.yaml:2:4001: the line is longer than 4000 characters")
	assert.ErrorContains(t, err, "break it into several lines")
	_, err = decode("name: '" + strings.Repeat("é", longestLine-8) + "'\n")
	require.NoError(t, err)
}

func TestByteOrderMarkIsPassed(t *testing.T) {
	got, err := decode("\ufeffname: x\r\nsharp: yes\r\n")
	require.NoError(t, err)
	assert.Equal(t, Pos{1, 7}, got.Name.Pos)
	assert.True(t, got.Sharp)
}

func TestNearest(t *testing.T) {
	near, ok := Nearest("part_wieght", []string{"part_weight", "load_centre"})
	assert.True(t, ok)
	assert.Equal(t, "part_weight", near)
	_, ok = Nearest("nothing", []string{"part_weight"})
	assert.False(t, ok)
	assert.Equal(t, "known here: a, b", Suggest("xyz", []string{"a", "b"}))
}

func TestCompare(t *testing.T) {
	a, err := decode("name: x\nuses: [a]\n")
	require.NoError(t, err)
	b, err := decode("name: y\nsharp: yes\nuses: [a, b]\n")
	require.NoError(t, err)
	assert.Equal(t, []string{`tool: name was "x", now "y"`, `tool: sharp was "no", now "yes"`, `tool: uses was "a", now "a, b"`}, Compare("tool", a, b))
	assert.Equal(t, []string{"step a: taken out", "step c: new"}, CompareNames("step", []string{"a", "b"}, []string{"b", "c"}))
	assert.Equal(t, []string{"steps: the order is now b, a"}, CompareNames("step", []string{"a", "b"}, []string{"b", "a"}))
}

func FuzzDecode(f *testing.F) {
	f.Add("name: x\nparts: {a: {size: 1}}\n")
	f.Add("name: [[[{{{")
	f.Add("? a\n: b\n")
	f.Add("name: !!binary x\n")
	f.Fuzz(func(t *testing.T, text string) {
		if _, err := decode(text); err != nil {
			require.NotEmpty(t, err.Error())
		}
	})
}
