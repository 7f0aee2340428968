package main

import (
	"database/sql"
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"unicode"

	_ "modernc.org/sqlite" // the driver

	"gudgeon/kb"
)

// fts is SQLite's FTS5 with its Porter stemmer and bm25, in a file.
type fts struct {
	db          *sql.DB
	folder      string
	titleWeight int
}

func buildSQLite(notes []kb.Note, titleWeight int) (engine, error) {
	folder, err := os.MkdirTemp("", "fts")
	if err != nil {
		return nil, err
	}
	e := &fts{folder: folder, titleWeight: titleWeight}
	if err := e.open(); err != nil {
		return nil, err
	}
	return e, e.fill(notes)
}

func (e *fts) file() string { return filepath.Join(e.folder, "notes.db") }

func (e *fts) open() (err error) {
	e.db, err = sql.Open("sqlite", e.file())
	return err
}

func (e *fts) fill(notes []kb.Note) error {
	if _, err := e.db.Exec(`CREATE VIRTUAL TABLE notes USING fts5(name UNINDEXED, title, body, tokenize = 'porter unicode61')`); err != nil {
		return err
	}
	tx, err := e.db.Begin()
	if err != nil {
		return err
	}
	insert, err := tx.Prepare(`INSERT INTO notes VALUES (?, ?, ?)`)
	if err != nil {
		return err
	}
	for _, n := range notes {
		if _, err := insert.Exec(n.Name, n.Title, body(n)); err != nil {
			return err
		}
	}
	if _, err := tx.Exec(`INSERT INTO notes(notes) VALUES ('optimize')`); err != nil {
		return err
	}
	return tx.Commit()
}

// body is all that our index searches of a note, but its title.
func body(n kb.Note) string {
	lines := []string{n.Part, n.Machine, n.Material, n.Found, n.Cause, n.Done, n.NextTime}
	for _, m := range n.Measured {
		lines = append(lines, m.Name+": "+m.Text)
	}
	lines = append(lines, n.Rules...)
	return strings.Join(append(lines, n.Body), "\n")
}

func (e *fts) names(query string, n int) ([]string, error) {
	match := anyWord(query)
	if match == "" {
		return nil, nil
	}
	rows, err := e.db.Query(fmt.Sprintf(`SELECT name FROM notes WHERE notes MATCH ? ORDER BY bm25(notes, 0, %d, 1) LIMIT ?`, e.titleWeight), match, n)
	if err != nil {
		return nil, err
	}
	defer rows.Close()
	var names []string
	for rows.Next() {
		var name string
		if err := rows.Scan(&name); err != nil {
			return nil, err
		}
		names = append(names, name)
	}
	return names, rows.Err()
}

// anyWord asks for notes with any of the words.
func anyWord(query string) string {
	words := strings.FieldsFunc(query, func(r rune) bool { return !unicode.IsLetter(r) && !unicode.IsDigit(r) })
	for i, w := range words {
		words[i] = `"` + w + `"`
	}
	return strings.Join(words, " OR ")
}

func (e *fts) reopen() error {
	if err := e.db.Close(); err != nil {
		return err
	}
	return e.open()
}

func (e *fts) close() error {
	if err := e.db.Close(); err != nil {
		return err
	}
	return os.RemoveAll(e.folder)
}
