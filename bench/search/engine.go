package main

import (
	"gudgeon/kb"
)

// engine is a search over a fixed set of notes.
type engine interface {
	names(query string, n int) ([]string, error)
	file() string  // where it is kept; empty for memory
	reopen() error // as a program that starts does; nothing for memory
	close() error
}

// maker builds an engine's index.
type maker struct {
	name  string
	build func(notes []kb.Note) (engine, error)
}

var makers = []maker{
	{"gudgeon", buildOurs},
	{"FTS5 bm25", func(notes []kb.Note) (engine, error) { return buildSQLite(notes, 1) }},
	{"FTS5 bm25, title x2", func(notes []kb.Note) (engine, error) { return buildSQLite(notes, 2) }},
}
