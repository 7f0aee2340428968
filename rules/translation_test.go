package rules

import (
	"errors"
	"io/fs"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"gudgeon/rules/source"
	"gudgeon/units"
)

// SheetTranslation finds the shipped translations.
func (shippedShelf) SheetTranslation(language, name string) (*source.File, error) {
	path := language + "/" + name + ".yaml"
	data, err := Files.ReadFile(path)
	if errors.Is(err, fs.ErrNotExist) {
		return nil, nil
	}
	return &source.File{Name: path, Text: string(data)}, err
}

// TestShippedSheetsAreTranslated: a hand who reads Spanish meets no English in a
// shipped sheet.
func TestShippedSheetsAreTranslated(t *testing.T) {
	files, err := fs.Glob(Files, "*.yaml")
	require.NoError(t, err)
	for _, file := range files {
		name := strings.TrimSuffix(file, ".yaml")
		t.Run(name, func(t *testing.T) {
			sheet, err := shippedShelf{}.Sheet(name)
			require.NoError(t, err)
			set, err := CompileSheet(Trade(), shippedShelf{}, sheet)
			require.NoError(t, err)
			_, err = set.Translate(shippedShelf{}, "es")
			require.NoError(t, err)
			f, err := shippedShelf{}.SheetTranslation("es", name)
			require.NoError(t, err)
			require.NotNil(t, f)
			words, err := ReadSheetTranslation(f)
			require.NoError(t, err)
			assert.Empty(t, sheet.Untranslated(words))
			assert.Equal(t, braces(sheet), bracesIn(sheet, words), "the same numbers are told")
		})
	}
}

// braces lists the names that the texts of every rule put numbers in for.
func braces(s *Sheet) map[string][]string {
	out := map[string][]string{}
	for _, r := range s.Rules {
		out[r.ID.Value] = namesIn(r.Says.Value + r.Do.Value)
	}
	return out
}

func bracesIn(s *Sheet, words *SheetTranslation) map[string][]string {
	out := map[string][]string{}
	for _, r := range s.Rules {
		w, _ := words.Rules.Get(r.ID.Value)
		out[r.ID.Value] = namesIn(w.Says.Value + w.Do.Value)
	}
	return out
}

func namesIn(text string) []string {
	var names []string
	_ = pieces(text, func(string) {}, func(name string) { names = append(names, name) })
	return names
}

func TestInstrumentsHaveSpanishNames(t *testing.T) {
	for name := range UsualInstruments() {
		assert.Contains(t, spanishPhrases, name)
	}
}

// oneTranslation is a shelf with one translation.
type oneTranslation string

func (text oneTranslation) SheetTranslation(_, name string) (*source.File, error) {
	return &source.File{Name: "es/" + name + ".yaml", Text: string(text)}, nil
}

const spoken = `
sheet: spoken
readings:
  way:    {ask: Which way, kind: choice, options: [lift table, by hand]}
  weight: {ask: Weight, kind: mass, unit: lb, from: 1 lb, to: 9000 lb}
  sound:  {ask: Is it sound, kind: yes/no}
rules:
  - {id: heavy, when: way == "lift table", check: weight <= lb(100), level: stop, says: "It weighs {weight}.", do: Leave it., source: test}
  - {id: whole, check: sound, level: stop, says: It is not sound., do: Mend it., source: test}
`

func translated(t *testing.T, text string) (*Set, *Translation, error) {
	t.Helper()
	set, err := compileText(t, spoken)
	require.NoError(t, err)
	words, err := set.Translate(oneTranslation("sheet: spoken\nlanguage: es\n"+text), "es")
	return set, words, err
}

func TestTranslationMistakes(t *testing.T) {
	for text, want := range map[string]string{
		"readings: {wieght: {ask: Peso}}":                               "sheet spoken has no reading wieght",
		"rules: {hevy: {says: Pesa}}":                                   "sheet spoken has no rule hevy",
		"values: {sum: Suma}":                                           "sheet spoken has no value sum",
		"rules: {heavy: {says: 'Pesa {wait}.'}}":                        "{wait} is not a reading or a value here",
		"readings: {way: {options: {table: mesa}}}":                     "way has no option table",
		"readings: {way: {options: {lift table: mesa, by hand: Mesa}}}": "this already means the option lift table",
		"readings: {way: {options: {lift table: by hand}}}":             "this already means the option by hand",
		"reading: {way: {}}":                                            `"reading" is not a key here`,
	} {
		_, _, err := translated(t, text)
		require.Error(t, err, text)
		assert.Contains(t, err.Error(), want)
		assert.Contains(t, err.Error(), "es/spoken.yaml:3:")
	}
}

func TestSpanishReport(t *testing.T) {
	set, es, err := translated(t, "readings: {way: {ask: Cómo, options: {lift table: mesa elevadora}}}\nrules: {heavy: {says: 'Pesa {weight}.'}}")
	require.NoError(t, err)
	d, _ := set.Reading("way")
	assert.Equal(t, []string{"mesa elevadora", "by hand"}, es.Options(d))
	for _, typed := range []string{"Mesa Elevadora", "mesa", "lift table", "table", "1"} {
		r, err := es.Read(d, typed)
		require.NoError(t, err, typed)
		assert.Equal(t, "lift table", r.Text, "what is stored is English")
	}
	sound, _ := set.Reading("sound")
	for typed, want := range map[string]string{"sí": "yes", "Si": "yes", "s": "yes", "y": "yes", "no": "no", "N": "no"} {
		r, err := es.Read(sound, typed)
		require.NoError(t, err, typed)
		assert.Equal(t, want, r.Text)
	}
	_, err = es.Read(sound, "quizás")
	assert.EqualError(t, err, `sound: "quizás": conteste sí o no`)

	report := set.Evaluate(Readings{"way": {Value: 0}, "weight": {Value: 200 * 0.45359237}, "sound": {Value: 0}})
	spanish := report.In(es)
	assert.Equal(t, "Pesa 200 lb.", spanish.Says(0, units.InchShop))
	assert.Equal(t, "Leave it.", spanish.Do(0, units.InchShop), "what is not translated is read in English")
	assert.Equal(t, "100 lb de más", spanish.Worked(0, units.InchShop).Result)
	assert.Equal(t, "no se cumple", spanish.Worked(1, units.InchShop).Result)
	assert.Equal(t, "It weighs 200 lb.", report.Says(0, units.InchShop), "the report itself stays as it was")
	assert.Equal(t, "It is not sound.", report.In(nil).Says(1, units.InchShop))
}

// TestMistakesInAnswersAreToldInSpanish: what was typed stays as it was typed.
func TestMistakesInAnswersAreToldInSpanish(t *testing.T) {
	set, es, err := translated(t, "readings: {way: {options: {lift table: mesa elevadora, by hand: a mano}}}")
	require.NoError(t, err)
	for _, c := range []struct{ name, typed, want string }{
		{"weight", "mucho", `weight: "mucho": no hay número; escríbalo como 1,250 lb o 570 kg`},
		{"weight", "3 in", `weight: "3 in": no se entiende; escríbalo como 1,250 lb o 570 kg`},
		{"weight", "10000 lb", "weight: 10,000 lb está fuera de lo que aquí tiene sentido, de 1 lb a 9,000 lb; véalo otra vez"},
		{"way", "volando", `way: "volando" no es una de estas: mesa elevadora, a mano`},
	} {
		d, _ := set.Reading(c.name)
		_, err := es.Read(d, c.typed)
		assert.EqualError(t, err, c.want)
	}
}
