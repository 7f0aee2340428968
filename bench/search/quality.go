package main

import (
	"fmt"
	"io"
	"os"

	"github.com/goccy/go-yaml"

	figures "gudgeon/index/quality"
	"gudgeon/kb"
)

// collectionsEnv names a folder with public test collections, one in each
// sub-folder.
const collectionsEnv = "GUDGEON_COLLECTIONS"

// judged is a set of notes with queries whose answers are known.
type judged struct {
	name    string
	notes   []kb.Note
	queries []figures.Query
}

// quality prints how good the answers of every engine are.
func quality(out io.Writer) error {
	sets, err := ownSets()
	if err != nil {
		return err
	}
	if folder := os.Getenv(collectionsEnv); folder != "" {
		public, err := publicSets(folder)
		if err != nil {
			return err
		}
		sets = append(sets, public...)
	} else {
		fmt.Fprintf(os.Stderr, "search: the public collections are left out; set %s to their folder to measure on them\n", collectionsEnv)
	}
	fmt.Fprintln(out, "set\tengine\tnDCG@10\tMAP\tRecall@100\tqueries")
	for _, s := range sets {
		if err := s.measure(out); err != nil {
			return err
		}
	}
	fmt.Fprintln(out)
	return nil
}

func (s *judged) measure(out io.Writer) error {
	for _, m := range makers {
		e, err := m.build(s.notes)
		if err != nil {
			return err
		}
		f, err := figures.Evaluate(s.queries, e.names)
		if err != nil {
			return err
		}
		fmt.Fprintf(out, "%s\t%s\t%.4f\t%.4f\t%.4f\t%d\n", s.name, m.name, f.NDCG10, f.MAP, f.Recall100, f.Queries)
		if err := e.close(); err != nil {
			return err
		}
	}
	return nil
}

// ownSets are the shipped notes with the queries judged on them.
func ownSets() ([]judged, error) {
	notes, err := kb.Shipped()
	if err != nil {
		return nil, err
	}
	var sets []judged
	for _, name := range []string{"judged", "held_out"} {
		queries, err := ownQueries(name)
		if err != nil {
			return nil, err
		}
		sets = append(sets, judged{"own notes, " + name, notes, queries})
	}
	return sets, nil
}

func ownQueries(name string) ([]figures.Query, error) {
	text, err := os.ReadFile("../index/testdata/" + name + ".yaml")
	if err != nil {
		return nil, fmt.Errorf("run this in the bench folder: %w", err)
	}
	var list []struct {
		Query string
		Notes map[string]int
	}
	if err := yaml.Unmarshal(text, &list); err != nil {
		return nil, err
	}
	queries := make([]figures.Query, len(list))
	for i, q := range list {
		queries[i] = figures.Query{ID: fmt.Sprint(i + 1), Text: q.Query, Grades: q.Notes}
	}
	return queries, nil
}

func publicSets(folder string) ([]judged, error) {
	var sets []judged
	for _, name := range []string{"cranfield", "cisi"} {
		c, err := figures.Read(os.DirFS(folder + "/" + name))
		if err != nil {
			return nil, err
		}
		notes := make([]kb.Note, len(c.Documents))
		for i, d := range c.Documents {
			notes[i] = kb.Note{Name: d.ID, Title: d.Title, Body: d.Text}
		}
		sets = append(sets, judged{name, notes, c.Queries})
	}
	return sets, nil
}
