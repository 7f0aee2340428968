package kb

import (
	"embed"
	"fmt"
	"io"
	"io/fs"
	"path"
	"strings"
)

// SizeLimit is the most bytes a note may have, FrontLimit the most its front
// matter may have: the YAML parser's time grows with the square of a line.
const (
	SizeLimit  = 64 << 10
	FrontLimit = 8 << 10
)

//go:embed notes/*.md
var shipped embed.FS

// Shipped gives the notes that come with the program, sorted by name.
func Shipped() ([]Note, error) {
	notes, err := fs.Sub(shipped, "notes")
	if err != nil {
		return nil, err
	}
	return Load(notes)
}

// Load reads every .md file under fsys, sorted by name. When some notes have
// mistakes it gives the others, and a *[Mistakes] that tells all of them.
func Load(fsys fs.FS) ([]Note, error) {
	var notes []Note
	mistakes := &Mistakes{}
	from := map[string]string{}
	err := fs.WalkDir(fsys, ".", func(file string, d fs.DirEntry, err error) error {
		if err != nil {
			return fmt.Errorf("reading notes: %w", err)
		}
		if d.IsDir() || path.Ext(file) != ".md" {
			return nil
		}
		data, err := readFile(fsys, file)
		if err != nil {
			return fmt.Errorf("reading notes: %w", err)
		}
		n, ok := parse(file, data, mistakes)
		if first, twice := from[n.Name]; twice {
			mistakes.add(Mistake{File: file, What: fmt.Sprintf("there is a note of this name already, %s", first), Do: "Rename one of them."})
			return nil
		}
		from[n.Name] = file
		if ok {
			notes = append(notes, n)
		}
		return nil
	})
	if err != nil {
		return nil, err
	}
	sortByName(notes)
	return notes, mistakes.err()
}

// readFile reads at most one byte over the limit, so that a huge file costs nothing.
func readFile(fsys fs.FS, file string) ([]byte, error) {
	f, err := fsys.Open(file)
	if err != nil {
		return nil, err
	}
	defer f.Close()
	return io.ReadAll(io.LimitReader(f, SizeLimit+1))
}

// Parse reads one note. The file's name gives the note its name and stands in
// the mistakes; the error is a *[Mistakes].
func Parse(file string, data []byte) (Note, error) {
	mistakes := &Mistakes{}
	n, _ := parse(file, data, mistakes)
	if err := mistakes.err(); err != nil {
		return Note{}, err
	}
	return n, nil
}

func parse(file string, data []byte, mistakes *Mistakes) (n Note, ok bool) {
	n.Name = strings.TrimSuffix(path.Base(file), ".md")
	p := &page{file: file, mistakes: mistakes}
	before := len(mistakes.List) + mistakes.Left
	p.read(&n, data)
	return n, len(mistakes.List)+mistakes.Left == before
}

func (p *page) read(n *Note, data []byte) {
	if !isName(n.Name) {
		p.mistake(0, 0, fmt.Sprintf("%q is no name for a note", n.Name),
			`Rename the file with small letters, digits and single dashes, such as "cracked-ear.md".`)
	}
	if len(data) > SizeLimit {
		p.mistake(0, 0, fmt.Sprintf("the note is larger than %d KiB", SizeLimit>>10), "Shorten it, or split it in two.")
		return
	}
	p.lines = strings.Split(clean(data), "\n")
	if !p.readable() {
		return
	}
	end, ok := p.split()
	if !ok {
		return
	}
	p.frontMatter(n, end)
	n.Body = strings.TrimSpace(strings.Join(p.lines[end:], "\n"))
}
