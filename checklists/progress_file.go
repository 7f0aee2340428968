package checklists

import (
	"fmt"
	"sort"
	"strings"

	"gudgeon/rules"
	"gudgeon/rules/source"
)

// progressSource is a readings file as it was written.
type progressSource struct {
	Part      source.Text                   `yaml:"part" about:"which part it is"`
	Checklist source.Text                   `yaml:"checklist" about:"which checklist the readings are for"`
	Readings  source.Map[rules.ReadingNode] `yaml:"readings" about:"what was read, by name"`
	Done      []source.Text                 `yaml:"done" about:"do steps that are done"`
	Released  source.Map[signatureSource]   `yaml:"released" about:"holds, with who released them"`
	Signed    source.Map[signatureSource]   `yaml:"signed" about:"rules that were passed, with who signed"`
}

type signatureSource struct {
	By     source.Text `yaml:"by,required" about:"the name"`
	Reason source.Text `yaml:"reason,required" about:"why, or what was looked at"`
}

// ReadingsSchema describes a readings file for editors.
func ReadingsSchema() source.Schema {
	return source.SchemaFor[progressSource]("Readings for gudgeon")
}

// ReadProgress reads a readings file for this procedure. Every mistake in it
// comes back in one source.Errors.
//
//	part: Link 7
//	readings:
//	  part_weight: 4,600 lb
//	  bore: {read: 3.002 in, with: inside micrometer, by: R. Doe}
//	done: [deburr]
//	released: {before-first-lift: {by: F. Orman, reason: seen}}
func (p *Procedure) ReadProgress(f *source.File) (*Progress, error) {
	var src progressSource
	if err := source.Decode(f, &src); err != nil {
		return nil, err
	}
	var report source.Report
	out := p.progress(&src, &report)
	return out, report.Err()
}

func (p *Procedure) progress(src *progressSource, report *source.Report) *Progress {
	if name := src.Checklist; !name.IsZero() && name.Value != p.ID {
		report.At(name, fmt.Sprintf("these readings are for the checklist %s, not %s", name.Value, p.ID), "")
	}
	out := NewProgress(src.Part.Value)
	out.Readings = p.Rules.ReadAll(src.Readings, report)
	p.readSteps(src, out, report)
	for _, e := range src.Signed {
		if _, ok := p.Rules.Rule(e.Key.Value); !ok {
			report.At(e.Key, fmt.Sprintf("there is no rule %s in this checklist", e.Key.Value), "")
		}
		out.Signed[e.Key.Value] = Signature{e.Value.By.Value, e.Value.Reason.Value}
	}
	return out
}

// NewProgress is the progress of a job that has just begun.
func NewProgress(part string) *Progress {
	return &Progress{Part: part, Readings: rules.Readings{}, Done: map[string]bool{}, Released: map[string]Signature{}, Signed: map[string]Signature{}}
}

func (p *Procedure) readSteps(src *progressSource, out *Progress, report *source.Report) {
	for _, id := range src.Done {
		step, ok := p.Step(id.Value)
		if !ok || step.Kind != Do {
			report.At(id, fmt.Sprintf("there is no do step %s in this checklist", id.Value), source.Suggest(id.Value, p.stepIDs(Do)))
			continue
		}
		out.Done[id.Value] = true
	}
	for _, e := range src.Released {
		step, ok := p.Step(e.Key.Value)
		if !ok || step.Kind != Hold {
			report.At(e.Key, fmt.Sprintf("there is no hold %s in this checklist", e.Key.Value), source.Suggest(e.Key.Value, p.stepIDs(Hold)))
			continue
		}
		out.Released[e.Key.Value] = Signature{e.Value.By.Value, e.Value.Reason.Value}
	}
}

func (p *Procedure) stepIDs(kind Kind) []string {
	var ids []string
	for _, s := range p.Steps {
		if s.Kind == kind {
			ids = append(ids, s.ID)
		}
	}
	return ids
}

// WriteProgress writes a progress as a readings file that ReadProgress reads
// back the same.
func (p *Procedure) WriteProgress(progress *Progress) string {
	var b strings.Builder
	if progress.Part != "" {
		fmt.Fprintf(&b, "part: %s\n", quote(progress.Part))
	}
	fmt.Fprintf(&b, "checklist: %s\n", p.ID)
	if len(progress.Readings) > 0 {
		b.WriteString("readings:\n")
	}
	for _, d := range p.Rules.Readings {
		if r, ok := progress.Readings[d.Name]; ok {
			writeReading(&b, d, r)
		}
	}
	if done := sortedKeys(progress.Done); len(done) > 0 {
		fmt.Fprintf(&b, "done: [%s]\n", strings.Join(done, ", "))
	}
	writeSignatures(&b, "released", progress.Released)
	writeSignatures(&b, "signed", progress.Signed)
	return b.String()
}

func writeReading(b *strings.Builder, d *rules.ReadingDef, r rules.Reading) {
	switch {
	case r.Survey != nil:
		fmt.Fprintf(b, "  %s:\n%s", d.Name, d.WriteSurvey(r, "    "))
	case r.With == "" && r.By == "":
		fmt.Fprintf(b, "  %s: %s\n", d.Name, quote(r.Text))
	default:
		fmt.Fprintf(b, "  %s: {read: %s", d.Name, quote(r.Text))
		if r.With != "" {
			fmt.Fprintf(b, ", with: %s", quote(r.With))
		}
		if r.By != "" {
			fmt.Fprintf(b, ", by: %s", quote(r.By))
		}
		b.WriteString("}\n")
	}
}

func writeSignatures(b *strings.Builder, key string, list map[string]Signature) {
	if len(list) == 0 {
		return
	}
	fmt.Fprintf(b, "%s:\n", key)
	for _, id := range sortedKeys(list) {
		fmt.Fprintf(b, "  %s: {by: %s, reason: %s}\n", id, quote(list[id].By), quote(list[id].Reason))
	}
}

func sortedKeys[T any](m map[string]T) []string {
	keys := make([]string, 0, len(m))
	for k := range m {
		keys = append(keys, k)
	}
	sort.Strings(keys)
	return keys
}

// quote writes a text so that YAML reads it back as the same text.
func quote(text string) string {
	return `'` + strings.ReplaceAll(strings.Join(strings.Fields(text), " "), `'`, `''`) + `'`
}
