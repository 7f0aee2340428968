package index

import (
	"cmp"
	"math"
	"slices"

	"gudgeon/kb"
)

// How much a shared rule and the same part raise a likeness, which is 1 for the
// likest note by its words.
const (
	ruleBonus = 0.15
	partBonus = 0.1
)

// mostTerms of a note are enough to find others like it.
const mostTerms = 16

// Related finds the notes most like one note, which need not be in the index.
func (ix *Index) Related(n kb.Note, limit int) ([]Hit, error) {
	wanted := ix.telling(n)
	ranked, err := ix.rank(wanted, Options{})
	if err != nil {
		return nil, err
	}
	ranked = slices.DeleteFunc(ranked, func(s scored) bool { return s.name == n.Name })
	if len(ranked) == 0 {
		return nil, nil
	}
	best := ranked[0].score
	for i, s := range ranked {
		other := ix.notes[s.name]
		ranked[i].score = settled(s.score/best + ruleBonus*float64(shared(n.Rules, other.Rules)))
		if other.Part == n.Part {
			ranked[i].score += partBonus
		}
	}
	order(ranked)
	return ix.hits(ranked, wanted, limit), nil
}

// telling picks the terms that tell a note from others.
func (ix *Index) telling(n kb.Note) []clause {
	read := ix.reader.read(n.Title+"\n"+n.Found+"\n"+n.Cause, nil)
	count := map[string]float64{}
	for _, t := range read.terms() {
		if ix.notesWith[t.text] > 0 {
			count[t.text]++
		}
	}
	list := make([]clause, 0, len(count))
	for text, times := range count {
		list = append(list, clause{text, math.Sqrt(times) * rarity(ix.notesWith[text], len(ix.notes))})
	}
	slices.SortFunc(list, func(a, b clause) int {
		return cmp.Or(cmp.Compare(b.weight, a.weight), cmp.Compare(a.text, b.text))
	})
	list = list[:min(mostTerms, len(list))]
	for i := range list { // rarity has chosen; the search weighs by it again
		list[i].weight = 1
		if isIdea(list[i].text) {
			list[i].weight = ideaWeight
		}
	}
	return list
}

func shared(a, b []string) int {
	n := 0
	for _, s := range a {
		if slices.Contains(b, s) {
			n++
		}
	}
	return n
}

// ForRule finds what the notes say about a rule: those that name it, the same
// part before others, then by the words and numbers given. When no note names
// the rule, it searches by the words alone.
func (ix *Index) ForRule(rule, part, words string, limit int) ([]Hit, error) {
	wanted := ix.wanted(words)
	ranked, err := ix.rank(wanted, Options{})
	if err != nil {
		return nil, err
	}
	if naming := ix.naming(rule, ranked); len(naming) > 0 {
		ranked = naming
	}
	samePart := func(s scored) int {
		if part != "" && ix.notes[s.name].Part == part {
			return 0
		}
		return 1
	}
	slices.SortStableFunc(ranked, func(a, b scored) int { return cmp.Compare(samePart(a), samePart(b)) })
	return ix.hits(ranked, wanted, limit), nil
}

// naming gives the notes that name a rule, by their score among the ranked.
func (ix *Index) naming(rule string, ranked []scored) []scored {
	score := map[string]float64{}
	for _, s := range ranked {
		score[s.name] = s.score
	}
	var list []scored
	for name, n := range ix.notes {
		if slices.Contains(n.Rules, rule) {
			list = append(list, scored{name, score[name]})
		}
	}
	order(list)
	return list
}
