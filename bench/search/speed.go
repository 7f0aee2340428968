package main

import (
	"fmt"
	"io"
	"os"
	"runtime"
	"slices"
	"time"

	"gudgeon/kb"
)

// speed prints how long building, opening and asking take as the notes grow.
func speed(out io.Writer, most int) error {
	queries, err := typed()
	if err != nil {
		return err
	}
	fmt.Fprintln(out, "notes\tengine\tbuild\tsize\tcold open\tp50\tp95")
	for n := 1000; n <= most; n *= 10 {
		notes, err := madeUp(n)
		if err != nil {
			return err
		}
		for _, m := range makers[:2] {
			if err := m.time(out, notes, queries); err != nil {
				return err
			}
		}
	}
	return nil
}

// typed are queries as people type them.
func typed() ([]string, error) {
	var texts []string
	for _, name := range []string{"judged", "held_out"} {
		queries, err := ownQueries(name)
		if err != nil {
			return nil, err
		}
		for _, q := range queries {
			texts = append(texts, q.Text)
		}
	}
	return texts, nil
}

func (m maker) time(out io.Writer, notes []kb.Note, queries []string) error {
	before := heap()
	start := time.Now()
	e, err := m.build(notes)
	if err != nil {
		return err
	}
	build := time.Since(start)
	size, err := sizeOf(e, heap()-before)
	if err != nil {
		return err
	}
	open, err := coldOpen(e, queries[0], build)
	if err != nil {
		return err
	}
	times, err := ask(e, queries)
	if err != nil {
		return err
	}
	fmt.Fprintf(out, "%d\t%s\t%s\t%s\t%s\t%s\t%s\n", len(notes), m.name, short(build), size,
		short(open), short(times[len(times)/2]), short(times[len(times)*95/100]))
	return e.close()
}

// heap is the memory in use after what is not needed is given back.
func heap() int64 {
	runtime.GC()
	var m runtime.MemStats
	runtime.ReadMemStats(&m)
	return int64(m.HeapAlloc)
}

// sizeOf is the size of an engine's file, or how much the heap has grown.
func sizeOf(e engine, grown int64) (string, error) {
	if e.file() == "" {
		return fmt.Sprintf("%.1f MB memory", float64(grown)/1e6), nil
	}
	info, err := os.Stat(e.file())
	if err != nil {
		return "", err
	}
	return fmt.Sprintf("%.1f MB file", float64(info.Size())/1e6), nil
}

// coldOpen is the time from a start of the program to its first answer. An
// index in memory is built at every start.
func coldOpen(e engine, query string, build time.Duration) (time.Duration, error) {
	if e.file() != "" {
		build = 0
	}
	start := time.Now()
	if err := e.reopen(); err != nil {
		return 0, err
	}
	_, err := e.names(query, 10)
	return build + time.Since(start), err
}

// ask gives the times of all queries, the shortest first. Each is asked three
// times and its middle time taken.
func ask(e engine, queries []string) ([]time.Duration, error) {
	var times []time.Duration
	for _, q := range queries {
		var three []time.Duration
		for range 3 {
			start := time.Now()
			if _, err := e.names(q, 10); err != nil {
				return nil, err
			}
			three = append(three, time.Since(start))
		}
		slices.Sort(three)
		times = append(times, three[1])
	}
	slices.Sort(times)
	return times, nil
}

func short(d time.Duration) string {
	if d > 100*time.Millisecond {
		return d.Round(time.Millisecond).String()
	}
	return d.Round(10 * time.Microsecond).String()
}
