package rules

import (
	"fmt"
	"slices"
	"strings"

	"gudgeon/units"
)

// Shorthand turns a word or two of a choice's option into the whole option:
// "table" into "lift table". What is no choice, or is an option as it stands,
// comes back as it is; words that fit several options are refused.
func (d *ReadingDef) Shorthand(text string) (string, error) {
	if d.Kind != units.Choice {
		return text, nil
	}
	if _, err := d.readChoice(text); err == nil {
		return text, nil
	}
	words := strings.Fields(strings.ToLower(text))
	var fitting []string
	for _, o := range d.Options {
		if len(words) > 0 && containsAll(strings.Fields(strings.ToLower(o)), words) {
			fitting = append(fitting, o)
		}
	}
	switch len(fitting) {
	case 0:
		return text, nil
	case 1:
		return fitting[0], nil
	}
	return "", fmt.Errorf("%s: %q could be: %s", d.Name, text, strings.Join(fitting, ", "))
}

func containsAll(list, words []string) bool {
	for _, w := range words {
		if !slices.Contains(list, w) {
			return false
		}
	}
	return true
}
