package catalogue

import (
	"math"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"gudgeon/trade"
	"gudgeon/units"
)

const plainName = `^[a-z][a-z0-9_]*$`

func isWhole(t *testing.T, pkg string, f trade.Function) {
	assert.Regexp(t, `^`+pkg+`\.[a-z0-9_]+$`, f.Name)
	assert.True(t, strings.HasSuffix(f.About, "."), "About is a sentence")
	assert.NotEmpty(t, f.Formula)
	assert.NotEmpty(t, f.Source)
	assert.True(t, strings.HasPrefix(f.Example, f.Name+"("), "the example calls the function")
	assert.NotNil(t, f.Call)
	require.NotEmpty(t, f.Results)
	names := map[string]bool{}
	for i, p := range f.Params {
		assert.False(t, names[p.Name], "%s twice", p.Name)
		names[p.Name] = true
		assert.False(t, i > 0 && f.Params[i-1].Optional && !p.Optional, "%s stands after an optional parameter", p.Name)
		paramIsWhole(t, p)
	}
	clear(names)
	for _, r := range f.Results {
		assert.False(t, names[r.Name], "%s twice", r.Name)
		names[r.Name] = true
		assert.Regexp(t, plainName, r.Name)
		assert.NotEmpty(t, r.About, r.Name)
		assert.NotEqual(t, units.Invalid, r.Kind, r.Name)
		unitFits(t, r.Unit, r.Kind, r.Name)
	}
}

func paramIsWhole(t *testing.T, p trade.Param) {
	assert.Regexp(t, plainName, p.Name)
	assert.NotEmpty(t, p.About, p.Name)
	switch p.Kind {
	case units.Survey:
		return
	case units.Choice:
		assert.NotEmpty(t, p.Options, p.Name)
		assert.Equal(t, p.High, float64(len(p.Options)-1), p.Name)
	case units.YesNo:
		assert.Equal(t, 1.0, p.High, p.Name)
	default:
		assert.True(t, p.Kind.Numeric(), p.Name)
	}
	assert.Less(t, p.Low, p.High, p.Name)
	assert.False(t, math.IsInf(p.High, 0), p.Name)
	if p.Optional {
		assert.True(t, p.Default >= p.Low && p.Default <= p.High, "default of %s", p.Name)
	}
}

func unitFits(t *testing.T, unit string, k units.Kind, of string) {
	if unit == "" {
		return
	}
	u, ok := units.Named(unit)
	assert.True(t, ok && u.Kind == k, "unit %s of %s", unit, of)
}
