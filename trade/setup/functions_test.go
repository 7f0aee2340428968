package setup

import (
	"testing"

	"gudgeon/trade/internal/catalogue"
)

func TestCatalogue(t *testing.T) { catalogue.Test(t, "setup", Functions()) }
