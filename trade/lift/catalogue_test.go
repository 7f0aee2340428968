package lift

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"gudgeon/trade/internal/catalogue"
	"gudgeon/units"
)

func TestCatalogue(t *testing.T) { catalogue.Test(t, "lift", Functions()) }

func TestCapacitiesRoundDownAndUsesUp(t *testing.T) {
	for _, f := range Functions() {
		for _, r := range f.Results {
			switch {
			case r.Name == "capacity" || r.Name == "working_load" || r.Name == "strength":
				assert.Equal(t, units.Down, r.Round, "%s of %s", r.Name, f.Name)
			case r.Kind == units.Ratio:
				assert.Equal(t, units.Up, r.Round, "%s of %s", r.Name, f.Name)
			}
		}
	}
}
