package kb

import (
	"embed"
	"fmt"
	"io"
	"io/fs"
	"path"
	"path/filepath"

	"gudgeon/rules/source"
)

//go:embed notes/*.md
var shipped embed.FS

// Shipped gives the notes that come with the program, sorted by name.
func Shipped() ([]Note, error) {
	notes, err := fs.Sub(shipped, "notes")
	if err != nil {
		return nil, err
	}
	return Load(notes, "notes")
}

// Load reads every .md file under fsys, sorted by name; folder is what messages
// call it. When some notes have mistakes it gives the others, and source.Errors
// that tell all of them.
func Load(fsys fs.FS, folder string) ([]Note, error) {
	l := &loader{fsys: fsys, folder: folder, from: map[string]string{}}
	if err := fs.WalkDir(fsys, ".", l.visit); err != nil {
		return nil, fmt.Errorf("reading the notes in %s: %w", folder, err)
	}
	sortByName(l.notes)
	return l.notes, l.report.Err()
}

type loader struct {
	fsys   fs.FS
	folder string
	notes  []Note
	from   map[string]string // the file of each name
	report source.Report
}

func (l *loader) visit(file string, d fs.DirEntry, err error) error {
	if err != nil || d.IsDir() || path.Ext(file) != ".md" {
		return err
	}
	f, err := l.read(file)
	if err != nil {
		return err
	}
	n, err := Parse(f)
	l.report.Merge(err)
	first, twice := l.from[n.Name]
	switch {
	case twice:
		l.report.Append(&source.Error{File: f.Name, What: "there is a note of this name already, " + first, Hint: "rename one of them"})
	case err == nil:
		l.notes = append(l.notes, n)
	}
	l.from[n.Name] = f.Name
	return nil
}

// read takes at most one byte over the limit, so that a huge file costs nothing.
func (l *loader) read(file string) (*source.File, error) {
	f, err := l.fsys.Open(file)
	if err != nil {
		return nil, err
	}
	defer f.Close()
	data, err := io.ReadAll(io.LimitReader(f, source.Largest+1))
	return &source.File{Name: filepath.Join(l.folder, filepath.FromSlash(file)), Text: string(data)}, err
}
