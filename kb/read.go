package kb

import (
	"fmt"
	"path/filepath"
	"regexp"
	"slices"
	"strings"
	"time"
	"unicode/utf8"

	"gudgeon/rules/source"
)

// noteSource is the front matter as it was written. What a machinist may not
// know, such as the cause, can be left out.
type noteSource struct {
	Title    source.Text             `yaml:"title,required" about:"what happened, in one line"`
	Part     source.Text             `yaml:"part,required" about:"the kind of part"`
	Machine  source.Text             `yaml:"machine" about:"what it came from"`
	Material source.Text             `yaml:"material" about:"what it is made of"`
	Process  []source.Text           `yaml:"process,required" about:"the work it is about"`
	Found    source.Text             `yaml:"found,required" about:"what was found"`
	Cause    source.Text             `yaml:"cause" about:"why it was so"`
	Done     source.Text             `yaml:"done,required" about:"what was done about it"`
	NextTime source.Text             `yaml:"next time" about:"what to do when it comes again"`
	Measured source.Map[source.Text] `yaml:"measured" about:"quantities by name"`
	Rules    []source.Text           `yaml:"rules" about:"ids of the rules it bears on"`
	Date     source.Text             `yaml:"date,required" about:"like 2025-03-14"`
}

// Words gives the parts and the processes.
func (noteSource) Words() map[string][]string {
	return map[string][]string{"part": Parts(), "process": Processes()}
}

// Schema describes a note's front matter for editors.
func Schema() source.Schema {
	return source.SchemaFor[noteSource]("The front matter of a note of gudgeon")
}

// Parse reads one note. The file's name gives the note its name. All mistakes
// come back together as source.Errors.
func Parse(f *source.File) (Note, error) {
	var report source.Report
	name := strings.TrimSuffix(filepath.Base(f.Name), ".md")
	if !isName(name) {
		report.Append(&source.Error{File: f.Name, What: fmt.Sprintf("%q is no name for a note", name),
			Hint: `rename the file with small letters, digits and single hyphens, such as "cracked-ear.md"`})
	}
	n, err := parse(f, &report)
	report.Merge(err)
	n.Name = name
	return n, report.Err()
}

func parse(f *source.File, report *source.Report) (Note, error) {
	if err := f.Check(); err != nil {
		return Note{}, err
	}
	front, body, err := split(f)
	if err != nil {
		return Note{}, err
	}
	var src noteSource
	if err := source.Decode(front, &src); err != nil {
		return Note{}, err
	}
	n := src.read(report)
	n.Body = body
	return n, nil
}

const fence = "---"

// split gives the front matter and the text below it. In the front matter's file
// the lines keep their numbers.
func split(f *source.File) (front *source.File, body string, err error) {
	text := strings.TrimPrefix(strings.ReplaceAll(f.Text, "\r\n", "\n"), "\ufeff")
	lines := strings.Split(text, "\n")
	mistake := func(what, hint string) error {
		return &source.Error{File: f.Name, Pos: source.Pos{Line: 1, Column: 1}, Line: lines[0], Width: utf8.RuneCountInString(lines[0]), What: what, Hint: hint}
	}
	if !isFence(lines[0]) {
		return nil, "", mistake("the note does not begin with front matter",
			"begin the file with a line of three hyphens, the keys below it, and three hyphens again")
	}
	end := slices.IndexFunc(lines[1:], isFence) + 1
	if end == 0 {
		return nil, "", mistake("the front matter is not closed", "put a line of three hyphens between the keys and the text")
	}
	front = &source.File{Name: f.Name, Text: "\n" + strings.Join(lines[1:end], "\n")}
	if strings.TrimSpace(front.Text) == "" {
		return nil, "", mistake("the front matter holds no keys", `write each key on its own line as "key: value"`)
	}
	return front, strings.TrimSpace(strings.Join(lines[end+1:], "\n")), nil
}

func isFence(line string) bool { return strings.TrimRight(line, " \t") == fence }

// read checks what the texts say.
func (src *noteSource) read(report *source.Report) Note {
	n := Note{
		Title: oneLine(src.Title), Part: src.Part.Value, Machine: oneLine(src.Machine), Material: oneLine(src.Material),
		Found: oneLine(src.Found), Cause: oneLine(src.Cause), Done: oneLine(src.Done), NextTime: oneLine(src.NextTime),
	}
	known(report, "part", src.Part, Parts())
	for _, p := range src.Process {
		known(report, "process", p, Processes())
	}
	for _, r := range src.Rules {
		if !isName(r.Value) {
			report.At(r, fmt.Sprintf("%q is not a rule's id", r.Value), `write small letters, digits and single hyphens, such as "sling-angle"`)
		}
	}
	n.Process = distinct(report, "process", src.Process)
	n.Rules = distinct(report, "rule", src.Rules)
	n.Measured = measured(report, src.Measured)
	n.Date = day(report, src.Date)
	return n
}

func oneLine(t source.Text) string { return strings.Join(strings.Fields(t.Value), " ") }

func known(report *source.Report, what string, t source.Text, list []string) {
	if !slices.Contains(list, t.Value) {
		report.At(t, fmt.Sprintf("%s %q is not known", what, t.Value), source.Suggest(t.Value, list))
	}
}

func distinct(report *source.Report, what string, texts []source.Text) []string {
	var list []string
	for _, t := range texts {
		if slices.Contains(list, t.Value) {
			report.At(t, fmt.Sprintf("%s %q stands here twice", what, t.Value), "delete one")
		}
		list = append(list, t.Value)
	}
	return list
}

// quantity is loose on purpose: "3.000 +.002/-.000 in" and "4 to 6 h" are fine too.
var quantity = regexp.MustCompile(`^[-+±]?\.?\d`)

func measured(report *source.Report, written source.Map[source.Text]) []Measurement {
	var list []Measurement
	for _, e := range written {
		if !quantity.MatchString(e.Value.Value) {
			report.At(e.Value, fmt.Sprintf("%q is not a quantity", e.Value.Value), `write a number and its unit, such as "3-1/8 in" or "225 F"`)
		}
		list = append(list, Measurement{Name: e.Key.Value, Text: e.Value.Value})
	}
	return list
}

func day(report *source.Report, t source.Text) time.Time {
	day, err := time.Parse(DateLayout, t.Value)
	if err != nil {
		report.At(t, fmt.Sprintf("%q is not a date", t.Value), "write year, month and day, such as 2025-03-14")
	}
	return day
}

var kebab = regexp.MustCompile(`^[a-z0-9]+(-[a-z0-9]+)*$`)

// isName holds for file names and rule ids alike: small letters, digits, hyphens.
func isName(s string) bool { return utf8.RuneCountInString(s) <= 80 && kebab.MatchString(s) }
