package rules

import (
	"fmt"
	"math"
	"strings"

	"gudgeon/rules/source"
	"gudgeon/trade"
	"gudgeon/units"
)

// ReadingDef is what a sheet says of one reading.
type ReadingDef struct {
	Name      string
	Ask       string // the question put to the machinist
	How       string // how to take it; may be empty
	Kind      units.Kind
	Unit      units.Unit // of a bare number
	From, To  float64    // allowed range, SI
	Options   []string   // of a choice
	Usual     string     // what it is most often, as typed; may be empty
	With      string     // the instrument it is usually read with; may be empty
	CanChange bool       // the shop can make it another value
	Limits    bool       // a toleranced size, 3.000 +.002/-.000
	Whole     bool       // counted, so no fractions
	Sheet     string     // where it is declared

	slot     int
	withWhen []withWhen
}

// withWhen says which instrument a reading is taken with, by the answer to a
// question.
type withWhen struct {
	question    *ReadingDef
	instruments map[float64]string // by the index of the answer
}

// Reading is one measured value.
type Reading struct {
	Value        float64 // SI; the index of the option of a choice; 1 or 0 of a yes/no
	U            float64 // standard uncertainty, SI; 0 when not known
	Upper, Lower float64 // limits of a toleranced size, deviations in SI
	Survey       trade.Survey
	With         string // instrument
	Text         string // as it was typed, with its unit
	By           string // who read it
}

// Readings holds what has been measured so far, by name.
type Readings map[string]Reading

// Read understands what was typed for this reading. Errors say how to write it
// or which range is allowed.
func (d *ReadingDef) Read(text string) (Reading, error) {
	switch d.Kind {
	case units.YesNo:
		return d.readYesNo(text)
	case units.Choice:
		return d.readChoice(text)
	case units.Survey:
		return Reading{}, fmt.Errorf("%s is a survey: give it as a table of stations and clock positions", d.Name)
	}
	m, err := units.Parse(d.Kind, text, d.Unit)
	if err != nil {
		return Reading{}, fmt.Errorf("%s: %w", d.Name, err)
	}
	if m.HasLimits && !d.Limits {
		return Reading{}, answerError("%s: %q: one measured value is asked for, not limits", d.Name, text)
	}
	r := Reading{Value: m.Value, Text: strings.TrimSpace(text), U: m.U / 2, Upper: m.Upper, Lower: m.Lower}
	if m.Bare && m.Unit.Symbol != "" {
		r.Text += " " + m.Unit.Symbol // so that it means the same under any sheet
	}
	return r, d.InRange(r.Value)
}

// InRange refuses a value outside the range that the sheet allows.
func (d *ReadingDef) InRange(x float64) error {
	if d.Whole && x != math.Trunc(x) {
		return answerError("%s: %s is counted in whole numbers", d.Name, units.ShowIn(x, d.Unit, units.Nearest))
	}
	if x >= d.From && x <= d.To && !math.IsNaN(x) {
		return nil
	}
	show := func(x float64) string { return units.ShowIn(x, d.Unit, units.Nearest) }
	switch {
	case math.IsNaN(x) || math.IsInf(x, 0):
		return answerError("%s: not a finite number", d.Name)
	case math.IsInf(d.To, 1):
		return answerError("%s: %s is under the least that makes sense here, %s; look at it again", d.Name, show(x), show(d.From))
	case math.IsInf(d.From, -1):
		return answerError("%s: %s is over the most that makes sense here, %s; look at it again", d.Name, show(x), show(d.To))
	}
	return answerError("%s: %s is outside what makes sense here, %s to %s; look at it again", d.Name, show(x), show(d.From), show(d.To))
}

func (d *ReadingDef) readYesNo(text string) (Reading, error) {
	switch t := strings.ToLower(strings.TrimSpace(text)); t {
	case "yes", "y", "true":
		return Reading{Value: 1, Text: "yes"}, nil
	case "no", "n", "false":
		return Reading{Value: 0, Text: "no"}, nil
	}
	return Reading{}, fmt.Errorf("%s: %q: answer yes or no", d.Name, text)
}

// readChoice takes an option's words, or its number counted from 1.
func (d *ReadingDef) readChoice(text string) (Reading, error) {
	t := strings.ToLower(strings.TrimSpace(text))
	for i, o := range d.Options {
		if strings.ToLower(o) == t || fmt.Sprint(i+1) == t {
			return Reading{Value: float64(i), Text: o}, nil
		}
	}
	return Reading{}, fmt.Errorf("%s: %q is not one of: %s", d.Name, text, strings.Join(d.Options, ", "))
}

// Show prints a reading's value the way this shop writes it.
func (d *ReadingDef) Show(r Reading, s units.System) string {
	switch d.Kind {
	case units.YesNo:
		if r.Value != 0 {
			return "yes"
		}
		return "no"
	case units.Choice:
		return d.Options[int(r.Value)]
	case units.Survey:
		return fmt.Sprintf("%d points", len(r.Survey))
	}
	u := displayUnit(d.Unit, s)
	text := units.ShowIn(r.Value, u, units.Nearest)
	if r.Upper != 0 || r.Lower != 0 {
		text += fmt.Sprintf(" %+.4g/%+.4g", r.Upper/u.Factor, r.Lower/u.Factor)
	}
	return text
}

// displayUnit keeps the sheet's unit in an inch shop and takes the usual metric
// one in a metric shop.
func displayUnit(u units.Unit, s units.System) units.Unit {
	if s == units.MetricShop {
		return units.Usual(u.Kind, s)
	}
	return u
}

// compileReading checks what a sheet says of a reading.
func compileReading(l *Library, sheet *Sheet, name source.Text, src readingSource, report *source.Report) *ReadingDef {
	d := &ReadingDef{
		Name: name.Value, Ask: src.Ask.Value, How: src.How.Value, Usual: src.Usual.Value, With: src.With.Value,
		CanChange: src.CanChange, Limits: src.Limits, Whole: src.Whole, Sheet: sheet.Name.Value,
		From: math.Inf(-1), To: math.Inf(1),
	}
	kind, ok := units.ParseKind(src.Kind.Value)
	if !ok {
		report.At(src.Kind, fmt.Sprintf("the kind %q is not known", src.Kind.Value), source.Suggest(src.Kind.Value, units.KindNames()))
		return d
	}
	d.Kind = kind
	if kind == units.Choice {
		compileOptions(d, src, report)
		return d
	}
	if len(src.Options) > 0 {
		report.At(src.Options[0], "options belong to a reading of kind choice", "")
	}
	if kind == units.YesNo {
		d.From, d.To = 0, 1
		return d
	}
	measured := kind
	if kind == units.Survey {
		measured = units.Length
	}
	d.Unit = units.Usual(measured, units.InchShop)
	if !src.Unit.IsZero() {
		if d.Unit, ok = units.Lookup(measured, src.Unit.Value); !ok {
			report.At(src.Unit, fmt.Sprintf("%q is not a unit of %s", src.Unit.Value, measured), "")
			return d
		}
	}
	if _, ok := l.Instruments.Find(src.With.Value, measured); !src.With.IsZero() && !ok {
		report.At(src.With, fmt.Sprintf("no instrument %q reads %s", src.With.Value, measured), source.Suggest(src.With.Value, l.Instruments.Names(measured)))
	}
	if d.Whole && kind != units.Number {
		report.At(src.Kind, "only a number can be whole", "take whole: out, or make it of kind number")
	}
	d.From = bound(measured, src.From, d.Unit, d.From, report)
	d.To = bound(measured, src.To, d.Unit, d.To, report)
	if d.From > d.To {
		report.At(src.To, "the range ends before it begins", "")
	}
	if src.From.IsZero() && src.To.IsZero() {
		report.At(name, fmt.Sprintf("%s has no range", name.Value), "add from: and to: so that a slip of the finger is refused")
	}
	if !src.Usual.IsZero() && kind != units.Survey {
		if _, err := units.Parse(measured, src.Usual.Value, d.Unit); err != nil {
			report.At(src.Usual, err.Error(), "")
		}
	}
	return d
}

func bound(k units.Kind, text source.Text, bare units.Unit, none float64, report *source.Report) float64 {
	if text.IsZero() {
		return none
	}
	m, err := units.Parse(k, text.Value, bare)
	if err != nil {
		report.At(text, err.Error(), "")
		return none
	}
	return m.Value
}

func compileOptions(d *ReadingDef, src readingSource, report *source.Report) {
	if len(src.Options) < 2 {
		report.At(src.Kind, "a choice needs at least two options", "add options: [one, other]")
	}
	for _, o := range src.Options {
		d.Options = append(d.Options, o.Value)
	}
	d.From, d.To = 0, float64(len(d.Options)-1)
}

// compileWith finds the questions and instruments that a reading's error
// depends on. All readings of the sheet are known by now.
func (b *builder) compileWith(d *ReadingDef, src readingSource) {
	for _, e := range src.WithWhen {
		question, ok := b.set.readings[e.Key.Value]
		if !ok || question.Kind != units.Choice {
			b.report.At(e.Key, fmt.Sprintf("there is no choice %s here", e.Key.Value), "name a reading of kind choice")
			continue
		}
		w := withWhen{question: question, instruments: map[float64]string{}}
		for _, answer := range e.Value {
			i := indexOf(question.Options, answer.Key.Value)
			if i < 0 {
				b.report.At(answer.Key, fmt.Sprintf("%q is not an option of %s", answer.Key.Value, question.Name), "its options: "+strings.Join(question.Options, ", "))
			}
			if _, ok := b.set.library.Instruments.Find(answer.Value.Value, d.Kind); !ok {
				b.report.At(answer.Value, fmt.Sprintf("no instrument %q reads %s", answer.Value.Value, d.Kind), source.Suggest(answer.Value.Value, b.set.library.Instruments.Names(d.Kind)))
			}
			w.instruments[float64(i)] = answer.Value.Value
		}
		d.withWhen = append(d.withWhen, w)
	}
}
