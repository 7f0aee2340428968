package rules

import (
	"encoding/binary"
	"math"
	"sync"

	"gudgeon/trade"
)

// memory keeps what a call over a survey came to. Such a call costs a thousand
// times what another does, and most of its inputs stay as they are from one
// evaluation to the next. Trade functions depend on nothing but their
// arguments, so the same arguments, bit by bit, give the same answer.
//
// It is the one thing in a Set that changes; it may be used by many goroutines.
type memory struct {
	mutex    sync.Mutex
	now, old map[string]answer
	size     int // of the keys in now
}

type answer struct {
	results []float64
	err     error
}

// mostMemory bounds the keys of each of the two halves of a memory, in bytes.
const mostMemory = 1 << 19

// call works the function, or remembers what it gave.
func (m *memory) call(f *frame, fn *trade.Function, in trade.Args, out []float64) error {
	if in.Surveys == nil {
		return fn.Call(in, out)
	}
	f.key = appendKey(f.key[:0], in)
	if a, ok := m.find(f.key); ok {
		copy(out, a.results)
		return a.err
	}
	a := answer{err: fn.Call(in, out)}
	a.results = append(a.results, out...)
	m.keep(string(f.key), a)
	return a.err
}

func (m *memory) find(key []byte) (answer, bool) {
	m.mutex.Lock()
	defer m.mutex.Unlock()
	if a, ok := m.now[string(key)]; ok {
		return a, true
	}
	a, ok := m.old[string(key)]
	if ok {
		m.put(string(key), a)
	}
	return a, ok
}

func (m *memory) keep(key string, a answer) {
	m.mutex.Lock()
	defer m.mutex.Unlock()
	m.put(key, a)
}

// put drops what was not asked for since the memory was last full.
func (m *memory) put(key string, a answer) {
	if m.now == nil || m.size+len(key) > mostMemory {
		m.now, m.old, m.size = map[string]answer{}, m.now, 0
	}
	m.now[key] = a
	m.size += len(key)
}

// appendKey writes all that a call depends on.
func appendKey(key []byte, in trade.Args) []byte {
	for _, x := range in.X {
		key = appendFloat(key, x)
	}
	for _, s := range in.Surveys {
		key = binary.LittleEndian.AppendUint64(key, uint64(len(s)))
		for _, p := range s {
			key = appendFloat(appendFloat(appendFloat(appendFloat(key, p.Station), p.Clock), p.Read), p.U)
		}
	}
	return key
}

func appendFloat(key []byte, x float64) []byte {
	return binary.LittleEndian.AppendUint64(key, math.Float64bits(x))
}
