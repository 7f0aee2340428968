package truck

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"gudgeon/trade/internal/catalogue"
	"gudgeon/units"
)

func TestCatalogue(t *testing.T) { catalogue.Test(t, "truck", Functions()) }

func TestThePlateGoverns(t *testing.T) {
	for _, f := range Functions() {
		assert.Contains(t, f.About, "govern", f.Name)
	}
}

func TestCapacitiesRoundDownAndUsesUp(t *testing.T) {
	for _, f := range Functions() {
		for _, r := range f.Results {
			switch {
			case r.Name == "capacity":
				assert.Equal(t, units.Down, r.Round, "%s of %s", r.Name, f.Name)
			case r.Kind == units.Ratio && f.Name != "truck.engagement":
				assert.Equal(t, units.Up, r.Round, "%s of %s", r.Name, f.Name)
			}
		}
	}
}
