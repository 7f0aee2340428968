package lift

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"gudgeon/trade"
)

// check is one value from outside this program. Tol is absolute, in Unit, and
// is the rounding of the printed figure, wider only where the source says why.
type check struct {
	ID, What, Source, Confidence string
	Want, Tol                    float64
	Unit                         string
	Got                          func() (float64, error)
}

const (
	published = "published"
	computed  = "computed from published inputs"
	memory    = "from memory"
)

const (
	foot  = 12 * inch
	kip   = 1000 * pound * trade.StandardGravity
	tonne = 1000.0
)

// checks lists every outside value of this package.
func checks() []check {
	var all []check
	for _, some := range [][]check{
		slingChecks(), slingTableChecks(), chainChecks(), lugChecks(), aiscChecks(), weldChecks(), weldGroupChecks(),
		curvedChecks(), weightChecks(), hardwareChecks(),
	} {
		all = append(all, some...)
	}
	return all
}

func TestChecks(t *testing.T) {
	for _, c := range checks() {
		t.Run(c.ID+" "+c.What, func(t *testing.T) {
			got, err := c.Got()
			require.NoError(t, err)
			assert.InDelta(t, c.Want, got, c.Tol, "%s; %s", c.Unit, c.Source)
		})
	}
}

// in gives a value in the unit of a check.
func in(unit float64, x float64, err error) (float64, error) { return x / unit, err }

func TestChecksAreComplete(t *testing.T) {
	for _, c := range checks() {
		assert.NotEmpty(t, c.ID)
		assert.NotEmpty(t, c.What, c.ID)
		assert.NotEmpty(t, c.Source, c.ID)
		assert.NotEmpty(t, c.Unit, c.ID)
		assert.Contains(t, []string{published, computed, memory}, c.Confidence, c.ID)
		assert.Positive(t, c.Tol, c.ID)
	}
}
