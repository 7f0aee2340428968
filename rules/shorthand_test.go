package rules

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"gudgeon/units"
)

func TestShorthand(t *testing.T) {
	d := &ReadingDef{Name: "hitch", Kind: units.Choice, Options: []string{"one leg", "basket", "double basket", "crane and lug", "crane and slings"}}
	for typed, want := range map[string]string{
		"leg":          "one leg",
		"LUG":          "crane and lug",
		"crane slings": "crane and slings",
		"basket":       "basket", // an option as it stands, though another holds the word
		"2":            "2",
		"hook":         "hook", // Read says what is wrong with it
		"":             "",
	} {
		got, err := d.Shorthand(typed)
		require.NoError(t, err, typed)
		assert.Equal(t, want, got, typed)
	}
	_, err := d.Shorthand("crane")
	assert.EqualError(t, err, `hitch: "crane" could be: crane and lug, crane and slings`)

	length := &ReadingDef{Kind: units.Length}
	got, err := length.Shorthand("3 in")
	assert.Equal(t, "3 in", got)
	assert.NoError(t, err)
}
