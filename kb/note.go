package kb

import (
	"slices"
	"strings"
	"time"
)

// DateLayout is how a note's date is written, year first.
const DateLayout = "2006-01-02"

// A Note is one repair, told for whoever gets the next one like it.
type Note struct {
	Name     string        `json:"name"` // the file's name without .md
	Title    string        `json:"title"`
	Part     string        `json:"part"` // one of [Parts]
	Machine  string        `json:"machine,omitempty"`
	Material string        `json:"material,omitempty"`
	Process  []string      `json:"process"` // each one of [Processes]
	Found    string        `json:"found"`
	Cause    string        `json:"cause,omitempty"`
	Done     string        `json:"done"`
	NextTime string        `json:"next_time,omitempty"`
	Measured []Measurement `json:"measured,omitempty"` // in the order written
	Rules    []string      `json:"rules,omitempty"`    // ids of the rules it bears on
	Date     time.Time     `json:"date"`
	Body     string        `json:"body,omitempty"` // Markdown
}

// A Measurement is a quantity as it was written down in the shop.
type Measurement struct {
	Name string `json:"name"`
	Text string `json:"text"` // with its unit, such as "3-1/8 in"
}

// Parts lists the kinds of part a note can be about.
func Parts() []string {
	return []string{
		"link", "pin boss", "bucket ear", "boom foot", "lever", "hinge", "cylinder eye",
		"housing", "bushing", "pin", "lifting gear", "truck", "press", "other",
	}
}

// Processes lists the kinds of work a note can be about, in a job's order.
func Processes() []string {
	return []string{
		"lift", "move", "set up", "find centre", "survey", "bore", "weld", "preheat",
		"measure", "press", "fit", "inspect", "record",
	}
}

// Overlay lays a shop's own notes over the shipped ones: an own note replaces
// the shipped note of the same name. The result is sorted by name.
func Overlay(shipped, own []Note) []Note {
	byName := make(map[string]Note, len(shipped)+len(own))
	for _, n := range shipped {
		byName[n.Name] = n
	}
	for _, n := range own {
		byName[n.Name] = n
	}
	all := make([]Note, 0, len(byName))
	for _, n := range byName {
		all = append(all, n)
	}
	sortByName(all)
	return all
}

func sortByName(notes []Note) {
	slices.SortFunc(notes, func(a, b Note) int { return strings.Compare(a.Name, b.Name) })
}
