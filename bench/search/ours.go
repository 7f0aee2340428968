package main

import (
	"gudgeon/index"
	"gudgeon/kb"
)

// ours is the program's index. It lives in memory and is built at every start.
type ours struct{ index *index.Index }

func buildOurs(notes []kb.Note) (engine, error) {
	ix, err := index.Build(notes)
	return &ours{ix}, err
}

func (o *ours) names(query string, n int) ([]string, error) {
	hits, err := o.index.Search(query, index.Options{Limit: n})
	if err != nil {
		return nil, err
	}
	names := make([]string, len(hits))
	for i, h := range hits {
		names[i] = h.Note.Name
	}
	return names, nil
}

func (o *ours) file() string { return "" }

func (o *ours) reopen() error { return nil }

func (o *ours) close() error { return o.index.Close() }
