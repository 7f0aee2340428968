package checklists

import (
	"regexp"
	"slices"
	"strings"
	"testing"
	"testing/fstest"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// TestEverythingShippedIsTranslated: a hand who reads Spanish meets no English.
func TestEverythingShippedIsTranslated(t *testing.T) {
	gaps, err := OpenShop(Shipped()).Untranslated("es")
	require.NoError(t, err)
	assert.Empty(t, gaps)
}

var number = regexp.MustCompile(`\d[\d./,-]*`)

// TestTranslationsKeepTheNumbers holds every number of a step in English against
// those in Spanish.
func TestTranslationsKeepTheNumbers(t *testing.T) {
	shop := OpenShop(Shipped())
	for _, name := range shop.ChecklistNames() {
		p, err := shop.Procedure(name)
		require.NoError(t, err)
		words, err := shop.Translate(p, "es")
		require.NoError(t, err)
		for _, s := range p.Steps {
			assert.Equal(t, numbers((*Translation)(nil).Step(s)), numbers(words.Step(s)), name+" "+s.ID)
		}
		for _, d := range p.Rules.Readings {
			assert.Equal(t, numbersIn(d.How), numbersIn(words.Sheets().How(d)), d.Name)
		}
	}
}

func numbers(w StepWords) []string {
	return numbersIn(strings.Join(append([]string{w.Title, w.Do, w.Why, w.How, w.Wrong}, w.Cautions...), " "))
}

func numbersIn(text string) []string {
	var list []string
	for _, n := range number.FindAllString(text, -1) {
		list = append(list, strings.TrimRight(n, ".,"))
	}
	slices.Sort(list)
	return list
}

// shopWith is the shipped shop with one more file in front.
func shopWith(path, text string) *Shop {
	files := fstest.MapFS{path: {Data: []byte(text)}}
	return OpenShop(Layer{Sheets: Folder{"mine", files}, Checklists: Folder{"mine", files}}, Shipped())
}

func TestTranslationOfTheShopStandsInFront(t *testing.T) {
	shop := shopWith("es/pre-lift.yaml", "checklist: pre-lift\nlanguage: es\ntitle: Antes de subir\n")
	p, err := shop.Procedure("pre-lift")
	require.NoError(t, err)
	words, err := shop.Translate(p, "es")
	require.NoError(t, err)
	assert.Equal(t, "Antes de subir", words.Title(p))
	assert.Equal(t, p.About, words.About(p), "what it lacks is read in English")

	assert.Equal(t, words, p.Evaluate(NewProgress("")).In(words).Words())
}

func TestOwnChecklistIsNotReadInTheShippedWords(t *testing.T) {
	own := "checklist: pre-lift\ntitle: Ours\nsheets: [part]\nsteps:\n  - {id: weigh, kind: measure, title: Weigh, why: To know., take: [part_weight, weight_known_by]}\n"
	shop := shopWith("pre-lift.yaml", own)
	p, err := shop.Procedure("pre-lift")
	require.NoError(t, err)
	words, err := shop.Translate(p, "es")
	require.NoError(t, err)
	assert.Equal(t, "Ours", words.Title(p))
	assert.Equal(t, "Weigh", words.Step(p.Steps[0]).Title)
	d, _ := p.Rules.Reading("part_weight")
	assert.Equal(t, "Peso de la pieza", words.Sheets().Ask(d), "the sheet is the shipped one")
}

func TestTranslationMistakes(t *testing.T) {
	for text, want := range map[string]string{
		"checklist: pre-lift\nlanguage: es\nsteps: {wiegh: {title: Peso}}":          "checklist pre-lift has no step wiegh of its own",
		"checklist: link\nlanguage: es\n":                                           "these words are kept as those of checklist pre-lift",
		"checklist: pre-lift\nlanguage: es\ncautions: [Una]":                        "1 cautions for 3 in English",
		"checklist: pre-lift\nlanguage: es\nsteps: {weigh: {tittle: Peso}}":         `"tittle" is not a key here`,
		"checklist: pre-lift\nlanguage: fr":                                         "the folder is that of the language es",
		"language: es\ntitle: Peso":                                                 "what these words belong to is not said",
		"checklist: pre-lift\nlanguage: es\nsteps: {weigh: {cautions: [Una, Dos]}}": "2 cautions for 0 in English",
	} {
		shop := shopWith("es/pre-lift.yaml", text)
		p, err := shop.Procedure("pre-lift")
		require.NoError(t, err)
		_, err = shop.Translate(p, "es")
		require.Error(t, err, text)
		assert.Contains(t, err.Error(), want)
		assert.Contains(t, err.Error(), "mine/es/pre-lift.yaml:")
	}
}
