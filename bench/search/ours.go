package main

import (
	"runtime"

	"gudgeon/index"
	"gudgeon/kb"
)

// ours is the program's index. It lives in memory and is built at every start.
type ours struct {
	index *index.Index
	heap  int64
}

func buildOurs(notes []kb.Note) (engine, error) {
	before := heap()
	ix, err := index.Build(notes)
	if err != nil {
		return nil, err
	}
	return &ours{index: ix, heap: heap() - before}, nil
}

// heap is the memory in use after what is not needed is given back.
func heap() int64 {
	runtime.GC()
	var m runtime.MemStats
	runtime.ReadMemStats(&m)
	return int64(m.HeapAlloc)
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

func (o *ours) size() (int64, string) { return o.heap, "memory" }

func (o *ours) close() error { return o.index.Close() }
