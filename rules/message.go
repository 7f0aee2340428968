package rules

import (
	"fmt"
	"strings"

	"gudgeon/rules/source"
	"gudgeon/units"
)

// pieces cuts a message into plain text and the names in {braces}.
func pieces(message string, plain, name func(string)) error {
	for message != "" {
		before, rest, found := strings.Cut(message, "{")
		plain(before)
		if !found {
			return nil
		}
		inside, after, closed := strings.Cut(rest, "}")
		if !closed {
			return fmt.Errorf("a { is never closed")
		}
		name(inside)
		message = after
	}
	return nil
}

// checkMessage reports names in a rule's text that mean nothing.
func (b *builder) checkMessage(scope scope, text source.Text) {
	err := pieces(text.Value, func(string) {}, func(name string) {
		record, field, isField := strings.Cut(name, ".")
		_, t, ok := scope.lookup(record)
		switch {
		case !ok && scope.broken(record):
		case !ok:
			b.report.At(text, fmt.Sprintf("{%s} is not a reading or a value here", name), source.Suggest(record, scope.names()))
		case isField && indexOf(fieldNames(t.Fields), field) < 0:
			b.report.At(text, fmt.Sprintf("{%s}: there is no field %s", name, field), source.Suggest(field, fieldNames(t.Fields)))
		case !isField && t.isRecord():
			b.report.At(text, fmt.Sprintf("{%s} is a whole record", name), "name one of its fields: "+strings.Join(fieldNames(t.Fields), ", "))
		}
	})
	if err != nil {
		b.report.At(text, err.Error(), "")
	}
}

// fill puts numbers into a message.
func (r *Report) fill(message string, s units.System) string {
	var out strings.Builder
	_ = pieces(message, func(plain string) { out.WriteString(plain) }, func(name string) {
		out.WriteString(r.showName(name, s))
	})
	return out.String()
}

// showName prints a reading, a value or a field by its name.
func (r *Report) showName(name string, s units.System) string {
	record, field, isField := strings.Cut(name, ".")
	slot, t, ok := setScope{r.set}.lookup(record)
	if !ok {
		return name
	}
	if isField {
		i := indexOf(fieldNames(t.Fields), field)
		return r.showField(slot, i, t.Fields[i], s)
	}
	return r.showSlot(slot, s)
}

// Says is a rule's message with the numbers in it.
func (r *Report) Says(i int, s units.System) string {
	rule := r.Results[i].Rule
	if r.words == nil {
		return r.fill(rule.Says, s)
	}
	return r.fill(orElse(r.words.rules[rule.ID].says, rule.Says), s)
}

// Do is what a rule tells to do, with the numbers in it.
func (r *Report) Do(i int, s units.System) string {
	rule := r.Results[i].Rule
	if r.words == nil {
		return r.fill(rule.Do, s)
	}
	return r.fill(orElse(r.words.rules[rule.ID].do, rule.Do), s)
}
