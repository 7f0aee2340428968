package index

import (
	"fmt"
	"runtime"
	"slices"
	"strings"
	"sync"
	"sync/atomic"

	"github.com/blevesearch/bleve/v2"
	"github.com/blevesearch/bleve/v2/analysis/analyzer/custom"
	"github.com/blevesearch/bleve/v2/analysis/tokenizer/whitespace"
	"github.com/blevesearch/bleve/v2/index/scorch"
	"github.com/blevesearch/bleve/v2/mapping"

	"gudgeon/kb"
	"gudgeon/rules/source"
)

// An Index answers searches over a fixed set of notes. It may be used by many
// goroutines at once.
type Index struct {
	reader     *reader
	bleve      bleve.Index
	notes      map[string]kb.Note
	notesWith  map[string]int      // how many notes have a term
	quantities map[string]quantity // every quantity in the notes, by its term
	runs       map[string]run      // every note's words in order
}

// textField is the only field: one flat bag of terms.
const textField = "text"

// Build makes an index of the notes, in memory. A shop's own files of synonyms
// add to the shipped ones.
func Build(notes []kb.Note, synonyms ...*source.File) (*Index, error) {
	r, err := newReader(synonyms...)
	if err != nil {
		return nil, err
	}
	mapping, err := flatMapping()
	if err != nil {
		return nil, err
	}
	store, err := bleve.NewUsing("", mapping, scorch.Name, scorch.Name, nil)
	if err != nil {
		return nil, fmt.Errorf("making the index: %w", err)
	}
	ix := &Index{reader: r, bleve: store, notes: map[string]kb.Note{}, notesWith: map[string]int{}, quantities: map[string]quantity{}, runs: map[string]run{}}
	if err := ix.fill(notes); err != nil {
		return nil, fmt.Errorf("making the index: %w", err)
	}
	return ix, nil
}

// Close gives the memory back.
func (ix *Index) Close() error { return ix.bleve.Close() }

func (ix *Index) fill(notes []kb.Note) error {
	batch := ix.bleve.NewBatch()
	for i, e := range ix.readAll(notes) {
		n := notes[i]
		ix.notes[n.Name] = n
		ix.runs[n.Name] = e.run
		for _, t := range e.distinct {
			ix.notesWith[t]++
		}
		for _, q := range e.quantities {
			if t := q.term(); q.slack > ix.quantities[t].slack {
				ix.quantities[t] = q
			}
		}
		if err := batch.Index(n.Name, map[string]any{textField: e.text}); err != nil {
			return err
		}
	}
	return ix.bleve.Batch(batch)
}

// entry is what one note is indexed by.
type entry struct {
	text       string   // all terms, with blanks between
	distinct   []string // each term once
	run        run
	quantities []quantity
}

// readAll reads the notes on all processors: reading is most of the work.
func (ix *Index) readAll(notes []kb.Note) []entry {
	entries := make([]entry, len(notes))
	var next atomic.Int64
	var wait sync.WaitGroup
	for range runtime.GOMAXPROCS(0) {
		wait.Go(func() {
			known := stems{}
			for i := next.Add(1) - 1; i < int64(len(notes)); i = next.Add(1) - 1 {
				entries[i] = ix.reader.entry(notes[i], known)
			}
		})
	}
	wait.Wait()
	return entries
}

func (r *reader) entry(n kb.Note, known stems) entry {
	read := r.read(noteText(n), known)
	var terms []string
	for _, t := range read.terms() {
		terms = append(terms, t.text)
	}
	for _, c := range read.codes {
		terms = append(terms, c.pieces...)
	}
	for _, q := range read.quantities {
		terms = append(terms, q.term(), q.digits)
	}
	text := strings.Join(terms, " ")
	run := newRun(read.words, len(terms))
	slices.Sort(terms)
	return entry{text, slices.Compact(terms), run, read.quantities}
}

// noteText is all that is searched of a note. The title stands there twice: that
// much helped when measured, more did not.
func noteText(n kb.Note) string {
	lines := []string{n.Title, n.Title, n.Part, n.Machine, n.Material, n.Found, n.Cause, n.Done, n.NextTime}
	for _, m := range n.Measured {
		lines = append(lines, m.Name+": "+m.Text)
	}
	lines = append(lines, n.Rules...)
	return strings.Join(append(lines, n.Body), "\n")
}

// flatMapping takes the terms as they are: all reading is done before.
func flatMapping() (mapping.IndexMapping, error) {
	m := bleve.NewIndexMapping()
	err := m.AddCustomAnalyzer("terms", map[string]any{"type": custom.Name, "tokenizer": whitespace.Name})
	if err != nil {
		return nil, fmt.Errorf("making the index: %w", err)
	}
	field := bleve.NewTextFieldMapping()
	field.Analyzer = "terms"
	field.Store, field.IncludeTermVectors, field.IncludeInAll, field.DocValues = false, false, false, false
	doc := bleve.NewDocumentStaticMapping()
	doc.AddFieldMappingsAt(textField, field)
	doc.AddSubDocumentMapping("_all", bleve.NewDocumentDisabledMapping()) // it would hold every term again
	m.DefaultMapping = doc
	m.DefaultAnalyzer = "terms"
	return m, nil
}
