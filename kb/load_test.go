package kb

import (
	"errors"
	"fmt"
	"io/fs"
	"path/filepath"
	"strings"
	"testing"
	"testing/fstest"
	"time"

	"github.com/stretchr/testify/require"

	"gudgeon/rules/source"
)

const good = `---
title: Link bored to the wear
part: link
machine: wheel loader
material: cast steel
process: [find centre, bore]
found: The bore was .090 in off.
cause: Set by the worn hole.
done: Bored again from the far eye.
next time: Indicate on something untouched.
measured:
  offset: .090 in
  bore: 3-1/8 in
  count: 12
rules: [datum-agree]
date: 2025-03-14
---

What the next one should know.
`

func parseText(name, text string) (Note, error) { return Parse(&source.File{Name: name, Text: text}) }

func TestParseReadsEveryField(t *testing.T) {
	n, err := parseText("notes/bored-to-the-wear.md", good)
	require.NoError(t, err)
	require.Equal(t, Note{
		Name:     "bored-to-the-wear",
		Title:    "Link bored to the wear",
		Part:     "link",
		Machine:  "wheel loader",
		Material: "cast steel",
		Process:  []string{"find centre", "bore"},
		Found:    "The bore was .090 in off.",
		Cause:    "Set by the worn hole.",
		Done:     "Bored again from the far eye.",
		NextTime: "Indicate on something untouched.",
		Measured: []Measurement{{"offset", ".090 in"}, {"bore", "3-1/8 in"}, {"count", "12"}},
		Rules:    []string{"datum-agree"},
		Date:     time.Date(2025, 3, 14, 0, 0, 0, 0, time.UTC),
		Body:     "What the next one should know.",
	}, n)
}

func TestParseTakesWhatOtherSystemsWrite(t *testing.T) {
	want, err := parseText("a.md", good)
	require.NoError(t, err)
	got, err := parseText("a.md", "\ufeff"+strings.ReplaceAll(good, "\n", "\r\n"))
	require.NoError(t, err)
	require.Equal(t, want, got)
}

func TestParseTakesFoldedTextAndQuotes(t *testing.T) {
	text := swap("found: The bore was .090 in off.", "found: >\n  The bore was\n  .090 in off.")
	text = strings.Replace(text, "cause: Set by the worn hole.", `cause: "two things: wear, and haste"`, 1)
	n, err := parseText("a.md", text)
	require.NoError(t, err)
	require.Equal(t, "The bore was .090 in off.", n.Found)
	require.Equal(t, "two things: wear, and haste", n.Cause)
}

func TestParseLetsUnknownThingsOut(t *testing.T) {
	text := good
	for _, line := range []string{"machine: wheel loader\n", "material: cast steel\n", "cause: Set by the worn hole.\n",
		"next time: Indicate on something untouched.\n", "rules: [datum-agree]\n"} {
		text = strings.Replace(text, line, "", 1)
	}
	n, err := parseText("a.md", text)
	require.NoError(t, err)
	require.Empty(t, n.Machine+n.Material+n.Cause+n.NextTime)
	require.Empty(t, n.Rules)
}

// swap gives the good note with one piece of text replaced.
func swap(old, new string) string { return strings.Replace(good, old, new, 1) }

// Each mistake with its whole message.
func TestMistakes(t *testing.T) {
	for _, c := range []struct{ name, text, want string }{
		{"unknown key", swap("machine:", "machin:"), `a.md:4:1: "machin" is not a key here
  4 | machin: wheel loader
    | ^^^^^^
  did you mean machine?`},
		{"missing title", swap("title: Link bored to the wear\n", ""), `a.md:2:1: "title" is missing
  2 | part: link
    | ^^^^
  add the line title: …`},
		{"empty title", swap("title: Link bored to the wear", "title:"), `a.md:2:1: "title" has nothing behind it
  2 | title:
    | ^^^^^`},
		{"title is a list", swap("title: Link bored to the wear", "title: [a, b]"), `a.md:2:8: one value is expected here
  2 | title: [a, b]
    |        ^`},
		{"unknown part", swap("part: link", "part: linkage"), `a.md:3:7: part "linkage" is not known
  3 | part: linkage
    |       ^^^^^^^
  known here: link, pin boss, bucket ear, boom foot, lever, hinge, cylinder eye, housing, bushing, pin, lifting gear, truck, press, other`},
		{"unknown process", swap("[find centre, bore]", "[find centre, bored]"), `a.md:6:24: process "bored" is not known
  6 | process: [find centre, bored]
    |                        ^^^^^
  did you mean bore?`},
		{"process twice", swap("[find centre, bore]", "[bore, bore]"), `a.md:6:17: process "bore" stands here twice
  6 | process: [bore, bore]
    |                 ^^^^
  delete one`},
		{"process is a table", swap("[find centre, bore]", "{bore: weld}"), `a.md:6:10: a list is expected here
  6 | process: {bore: weld}
    |          ^
  write it as [one, two] or as lines that start with -`},
		{"no process", swap("[find centre, bore]", "[]"), `a.md:6:1: "process" has nothing behind it
  6 | process: []
    | ^^^^^^^`},
		{"bad date", swap("2025-03-14", "2025-02-30"), `a.md:16:7: "2025-02-30" is not a date
  16 | date: 2025-02-30
     |       ^^^^^^^^^^
  write year, month and day, such as 2025-03-14`},
		{"date the other way", swap("2025-03-14", "14.3.2025"), `a.md:16:7: "14.3.2025" is not a date
  16 | date: 14.3.2025
     |       ^^^^^^^^^
  write year, month and day, such as 2025-03-14`},
		{"no quantity", swap("offset: .090 in", "offset: ninety thou"), `a.md:12:11: "ninety thou" is not a quantity
  12 |   offset: ninety thou
     |           ^^^^^^^^^^^
  write a number and its unit, such as "3-1/8 in" or "225 F"`},
		{"measured is text", swap("measured:\n  offset: .090 in\n  bore: 3-1/8 in\n  count: 12", "measured: .090 in"), `a.md:11:11: keys with values are expected here
  11 | measured: .090 in
     |           ^^^^^^^
  write them as key: value`},
		{"rule id", swap("[datum-agree]", "[Datum agree]"), `a.md:15:9: "Datum agree" is not a rule's id
  15 | rules: [Datum agree]
     |         ^^^^^^^^^^^
  write small letters, digits and single hyphens, such as "sling-angle"`},
		{"rule twice", swap("[datum-agree]", "[datum-agree, datum-agree]"), `a.md:15:22: rule "datum-agree" stands here twice
  15 | rules: [datum-agree, datum-agree]
     |                      ^^^^^^^^^^^
  delete one`},
		{"rules is a table", swap("[datum-agree]", "{datum-agree: yes}"), `a.md:15:8: a list is expected here
  15 | rules: {datum-agree: yes}
     |        ^
  write it as [one, two] or as lines that start with -`},
		{"colon in a value", swap("Set by the worn hole.", "Two things: wear and haste"), `a.md:8:8: the YAML cannot be read: a colon is in the way
  8 | cause: Two things: wear and haste
    |        ^^^^^^^^^^
  put quotes round a value that holds ": " or " #"`},
		{"key twice", swap("cause:", "found:"), `a.md:8:1: "found" is given twice
  8 | found: Set by the worn hole.
    | ^^^^^
  keep one of them`},
		{"no keys", "---\njust words\n---\n", `a.md:2:1: keys with values are expected here
  2 | just words
    | ^^^^^^^^^^
  write them as key: value`},
		{"no front matter", "# A note\n", `a.md:1:1: the note does not begin with front matter
  1 | # A note
    | ^^^^^^^^
  begin the file with a line of three hyphens, the keys below it, and three hyphens again`},
		{"empty file", "", `a.md: the file is empty`},
		{"not closed", "---\ntitle: x\n", `a.md:1:1: the front matter is not closed
  1 | ---
    | ^^^
  put a line of three hyphens between the keys and the text`},
		{"not UTF-8", swap("far eye", "far \xff eye"), `a.md:9:32: there is a byte here that is not UTF-8 text
  9 | done: Bored again from the far ` + "\ufffd" + ` eye.
    |                                ^
  save the file as UTF-8 in your editor`},
		{"control character", swap("far eye", "far\x1b[31m eye"), `a.md:9:31: there is a control character (U+001B) here
  9 | done: Bored again from the far` + "\ufffd" + `[31m eye.
    |                               ^
  delete the character`},
		{"too large", good + strings.Repeat("x", source.Largest), `a.md: the file is larger than 1024 KiB
  split it, or check that it is the right file`},
		{"a line too long", swap("title: Link", "title: "+strings.Repeat("x", 5000)), `a.md:2:4001: the line is longer than 4000 characters
  2 | xxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxx
    |                                                                                ^
  break it into several lines`},
		{"two mistakes", strings.Replace(swap("part: link", "part: linkage"), "2025-03-14", "soon", 1), `a.md:3:7: part "linkage" is not known
  3 | part: linkage
    |       ^^^^^^^
  known here: link, pin boss, bucket ear, boom foot, lever, hinge, cylinder eye, housing, bushing, pin, lifting gear, truck, press, other
a.md:16:7: "soon" is not a date
  16 | date: soon
     |       ^^^^
  write year, month and day, such as 2025-03-14`},
	} {
		t.Run(c.name, func(t *testing.T) {
			_, err := parseText("a.md", c.text)
			require.EqualError(t, err, c.want)
		})
	}
}

func TestNameOfFile(t *testing.T) {
	_, err := parseText("notes/My Note.md", good)
	require.EqualError(t, err, `notes/My Note.md: "My Note" is no name for a note
  rename the file with small letters, digits and single hyphens, such as "cracked-ear.md"`)
}

func TestLoadGivesTheGoodNotesAndAllMistakes(t *testing.T) {
	notes, err := Load(fstest.MapFS{
		"b.md":         {Data: []byte(good)},
		"sub/a.md":     {Data: []byte(good)},
		"bad.md":       {Data: []byte(swap("part: link", "part: linkage"))},
		"worse.md":     {Data: []byte("")},
		"picture.jpeg": {Data: []byte{0xff}},
	}, filepath.Join("my-shop", "kb"))
	require.Equal(t, []string{"a", "b"}, names(notes))
	var list source.Errors
	require.ErrorAs(t, err, &list)
	require.Len(t, list, 2)
	require.Equal(t, filepath.Join("my-shop", "kb", "bad.md"), list[0].File, "as the user would name it")
	require.Equal(t, source.Pos{Line: 3, Column: 7}, list[0].Pos)
	require.Equal(t, filepath.Join("my-shop", "kb", "worse.md"), list[1].File)
}

func TestLoadRefusesOneNameTwice(t *testing.T) {
	_, err := Load(fstest.MapFS{"a.md": {Data: []byte(good)}, "sub/a.md": {Data: []byte(good)}}, "kb")
	require.EqualError(t, err, filepath.FromSlash("kb/sub/a.md: there is a note of this name already, kb/a.md\n  rename one of them"))
}

func TestLoadCountsWhatIsOverTheLimit(t *testing.T) {
	files := fstest.MapFS{}
	for i := range 23 {
		files[fmt.Sprintf("n%02d.md", i)] = &fstest.MapFile{Data: []byte("no front matter")}
	}
	_, err := Load(files, "kb")
	require.ErrorContains(t, err, "and 3 more mistakes")
}

func TestLoadOfMissingFolder(t *testing.T) {
	_, err := Load(brokenFS{}, "kb")
	require.EqualError(t, err, "reading the notes in kb: the disk is gone")
}

type brokenFS struct{}

func (brokenFS) Open(string) (fs.File, error) { return nil, errors.New("the disk is gone") }

func TestOverlay(t *testing.T) {
	shipped := []Note{{Name: "b", Title: "shipped"}, {Name: "c"}}
	own := []Note{{Name: "b", Title: "own"}, {Name: "a"}}
	all := Overlay(shipped, own)
	require.Equal(t, []string{"a", "b", "c"}, names(all))
	require.Equal(t, "own", all[1].Title)
	require.Equal(t, "shipped", shipped[0].Title)
}

func names(notes []Note) []string {
	var list []string
	for _, n := range notes {
		list = append(list, n.Name)
	}
	return list
}

func TestNestingIsReadInReasonableTime(t *testing.T) {
	start := time.Now()
	_, err := parseText("a.md", "---\n"+strings.Repeat("[", 8000)+"\n---\n")
	require.ErrorContains(t, err, "a.md:2:41: brackets are nested too deeply")
	require.Less(t, time.Since(start), 5*time.Second)
}
