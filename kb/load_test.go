package kb

import (
	"errors"
	"fmt"
	"io/fs"
	"strings"
	"testing"
	"testing/fstest"
	"time"

	"github.com/stretchr/testify/require"
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

func TestParseReadsEveryField(t *testing.T) {
	n, err := Parse("notes/bored-to-the-wear.md", []byte(good))
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
	want, err := Parse("a.md", []byte(good))
	require.NoError(t, err)
	got, err := Parse("a.md", []byte("\ufeff"+strings.ReplaceAll(good, "\n", "\r\n")))
	require.NoError(t, err)
	require.Equal(t, want, got)
}

func TestParseTakesFoldedTextAndQuotes(t *testing.T) {
	text := swap("found: The bore was .090 in off.", "found: >\n  The bore was\n  .090 in off.")
	text = strings.Replace(text, "cause: Set by the worn hole.", `cause: "two things: wear, and haste"`, 1)
	n, err := Parse("a.md", []byte(text))
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
	n, err := Parse("a.md", []byte(text))
	require.NoError(t, err)
	require.Empty(t, n.Machine+n.Material+n.Cause+n.NextTime)
	require.Empty(t, n.Rules)
}

// swap gives the good note with one piece of text replaced.
func swap(old, new string) string { return strings.Replace(good, old, new, 1) }

func TestMistakes(t *testing.T) {
	keys := "Use one of: title, part, machine, material, process, found, cause, done, next time, measured, rules, date."
	for _, c := range []struct{ name, text, want string }{
		{"unknown key", swap("machine:", "machin:"), `a.md:4:1: "machin" is not a key of a note
    machin: wheel loader
    ^
  ` + keys},
		{"missing title", swap("title: Link bored to the wear\n", ""), `a.md:16:1: the key "title" is missing
    ---
    ^
  Add it above this line.`},
		{"empty title", swap("title: Link bored to the wear", "title:"), `a.md:2:7: there should be text here
    title:
          ^
  Write the value behind the colon, on the same line.`},
		{"title is a list", swap("title: Link bored to the wear", "title: [a, b]"), `a.md:2:8: there should be text here
    title: [a, b]
           ^
  Write the value behind the colon, on the same line.`},
		{"unknown part", swap("part: link", "part: linkage"), `a.md:3:7: part "linkage" is not known
    part: linkage
          ^
  Use one of: link, pin boss, bucket ear, boom foot, lever, hinge, cylinder eye, housing, bushing, pin, lifting gear, truck, press, other.`},
		{"unknown process", swap("[find centre, bore]", "[find centre, bored]"), `a.md:6:24: process "bored" is not known
    process: [find centre, bored]
                           ^
  Use one of: lift, move, set up, find centre, survey, bore, weld, preheat, measure, press, fit, inspect, record.`},
		{"process twice", swap("[find centre, bore]", "[bore, bore]"), `a.md:6:17: process "bore" stands here twice
    process: [bore, bore]
                    ^
  Delete one.`},
		{"process is no list", swap("[find centre, bore]", "bore"), `a.md:6:10: there should be a list here
    process: bore
             ^
  Write it in square brackets, such as [bore, weld].`},
		{"no process", swap("[find centre, bore]", "[]"), `a.md:6:10: the list is empty
    process: []
             ^
  Name at least one of: lift, move, set up, find centre, survey, bore, weld, preheat, measure, press, fit, inspect, record.`},
		{"bad date", swap("2025-03-14", "2025-02-30"), `a.md:16:7: "2025-02-30" is not a date
    date: 2025-02-30
          ^
  Write year, month and day, such as 2025-03-14.`},
		{"date the other way", swap("2025-03-14", "14.3.2025"), `a.md:16:7: "14.3.2025" is not a date
    date: 14.3.2025
          ^
  Write year, month and day, such as 2025-03-14.`},
		{"no quantity", swap("offset: .090 in", "offset: ninety thou"), `a.md:12:11: "ninety thou" is not a quantity
      offset: ninety thou
              ^
  Write a number and its unit, such as "3-1/8 in" or "225 F".`},
		{"measured is text", swap("measured:\n  offset: .090 in\n  bore: 3-1/8 in\n  count: 12", "measured: .090 in"), `a.md:11:11: there should be names with quantities here
    measured: .090 in
              ^
  Write them as "{bore: 3-1/8 in, offset: .090 in}".`},
		{"rule id", swap("[datum-agree]", "[Datum agree]"), `a.md:15:9: "Datum agree" is not a rule's id
    rules: [Datum agree]
            ^
  Write small letters, digits and single dashes, such as "sling-angle".`},
		{"rule twice", swap("[datum-agree]", "[datum-agree, datum-agree]"), `a.md:15:22: rule "datum-agree" stands here twice
    rules: [datum-agree, datum-agree]
                         ^
  Delete one.`},
		{"rules is text", swap("[datum-agree]", "datum-agree"), `a.md:15:8: there should be a list here
    rules: datum-agree
           ^
  Write it in square brackets, such as [bore-size].`},
		{"colon in a value", swap("Set by the worn hole.", "Two things: wear and haste"), `a.md:8:8: the front matter cannot be read: mapping value is not allowed in this context
    cause: Two things: wear and haste
           ^
  Write each key on its own line as "key: value"; put quotes round a value that holds ": " or " #".`},
		{"key twice", swap("cause:", "found:"), `a.md:8:1: the front matter cannot be read: mapping key "found" already defined at [6:1]
    found: Set by the worn hole.
    ^
  Write each key on its own line as "key: value"; put quotes round a value that holds ": " or " #".`},
		{"no keys", "---\njust words\n---\n", `a.md:2:1: the front matter holds no keys
    just words
    ^
  Write each key on its own line as "key: value".`},
		{"no front matter", "# A note\n", `a.md:1:1: the note does not begin with front matter
    # A note
    ^
  Begin the file with a line of three dashes, the keys below it, and three dashes again.`},
		{"empty file", "", `a.md:1:1: the note does not begin with front matter
  Begin the file with a line of three dashes, the keys below it, and three dashes again.`},
		{"not closed", "---\ntitle: x\n", `a.md:1:1: the front matter is not closed
    ---
    ^
  Put a line of three dashes between the keys and the text.`},
		{"not UTF-8", swap("far eye", "far \xff eye"), `a.md:9:32: there is a byte here that is not UTF-8 text
    done: Bored again from the far ` + "\ufffd" + ` eye.
                                   ^
  Save the file as UTF-8.`},
		{"control character", swap("far eye", "far\x1b[31m eye"), `a.md:9:31: there is a control character (U+001B) here
    done: Bored again from the far` + "\ufffd" + `[31m eye.
                                  ^
  Delete the character.`},
		{"too large", good + strings.Repeat("x", SizeLimit), `a.md: the note is larger than 64 KiB
  Shorten it, or split it in two.`},
		{"front matter too large", swap("title: Link", "title: "+strings.Repeat("[", FrontLimit)), `a.md: the front matter is larger than 8 KiB
  Move the long texts below it.`},
		{"two mistakes", strings.Replace(swap("part: link", "part: linkage"), "2025-03-14", "soon", 1), `a.md:3:7: part "linkage" is not known
    part: linkage
          ^
  Use one of: link, pin boss, bucket ear, boom foot, lever, hinge, cylinder eye, housing, bushing, pin, lifting gear, truck, press, other.
a.md:16:7: "soon" is not a date
    date: soon
          ^
  Write year, month and day, such as 2025-03-14.`},
	} {
		t.Run(c.name, func(t *testing.T) {
			_, err := Parse("a.md", []byte(c.text))
			require.EqualError(t, err, c.want)
		})
	}
}

func TestNameOfFile(t *testing.T) {
	_, err := Parse("notes/My Note.md", []byte(good))
	require.EqualError(t, err, `notes/My Note.md: "My Note" is no name for a note
  Rename the file with small letters, digits and single dashes, such as "cracked-ear.md".`)
}

func TestLoadGivesTheGoodNotesAndAllMistakes(t *testing.T) {
	notes, err := Load(fstest.MapFS{
		"b.md":         {Data: []byte(good)},
		"sub/a.md":     {Data: []byte(good)},
		"bad.md":       {Data: []byte(swap("part: link", "part: linkage"))},
		"worse.md":     {Data: []byte("")},
		"picture.jpeg": {Data: []byte{0xff}},
	})
	require.Equal(t, []string{"a", "b"}, names(notes))
	var m *Mistakes
	require.ErrorAs(t, err, &m)
	require.Len(t, m.List, 2)
	require.Equal(t, "bad.md", m.List[0].File)
	require.Equal(t, "worse.md", m.List[1].File)
	var one Mistake
	require.ErrorAs(t, err, &one)
	require.Equal(t, 3, one.Line)
}

func TestLoadRefusesOneNameTwice(t *testing.T) {
	_, err := Load(fstest.MapFS{"a.md": {Data: []byte(good)}, "sub/a.md": {Data: []byte(good)}})
	require.EqualError(t, err, "sub/a.md: there is a note of this name already, a.md\n  Rename one of them.")
}

func TestLoadCountsWhatIsOverTheLimit(t *testing.T) {
	files := fstest.MapFS{}
	for i := range MistakeLimit + 3 {
		files[fmt.Sprintf("n%02d.md", i)] = &fstest.MapFile{Data: []byte("no front matter")}
	}
	_, err := Load(files)
	var m *Mistakes
	require.ErrorAs(t, err, &m)
	require.Len(t, m.List, MistakeLimit)
	require.Equal(t, 3, m.Left)
	require.True(t, strings.HasSuffix(err.Error(), "\nand 3 more; mend these first."))
}

func TestLoadOfMissingFolder(t *testing.T) {
	_, err := Load(brokenFS{})
	require.EqualError(t, err, "reading notes: the disk is gone")
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
	_, err := Parse("a.md", []byte("---\n"+strings.Repeat("[", FrontLimit)+"\n---\n"))
	require.ErrorContains(t, err, "a.md:2:")
	require.Less(t, time.Since(start), 5*time.Second)
}
