package main

import (
	"fmt"
	"math/rand/v2"
	"strings"

	"gudgeon/kb"
)

// madeUp gives n notes as long as the shipped ones, of the same words as often.
// They are the same in every run.
func madeUp(n int) ([]kb.Note, error) {
	shipped, err := kb.Shipped()
	if err != nil {
		return nil, err
	}
	var words []string
	for _, note := range shipped {
		words = append(words, strings.Fields(note.Title+" "+body(note))...)
	}
	random := rand.New(rand.NewPCG(20, 25))
	like := func(text string) string {
		made := strings.Fields(text)
		for i := range made {
			made[i] = words[random.IntN(len(words))]
		}
		return strings.Join(made, " ")
	}
	notes := make([]kb.Note, n)
	for i := range notes {
		model := shipped[random.IntN(len(shipped))]
		notes[i] = kb.Note{
			Name: fmt.Sprintf("made-%06d", i), Part: model.Part, Process: model.Process, Date: model.Date, Title: like(model.Title),
			Found: like(model.Found), Cause: like(model.Cause), Done: like(model.Done), NextTime: like(model.NextTime), Body: like(model.Body),
		}
	}
	return notes, nil
}
