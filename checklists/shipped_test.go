package checklists

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"gudgeon/rules"
	"gudgeon/rules/source"
)

// Everything that is shipped compiles, alone and together.
func TestShippedCompiles(t *testing.T) {
	shop := OpenShop(Shipped())
	for _, name := range shop.SheetNames() {
		t.Run("sheet "+name, func(t *testing.T) {
			_, err := rules.Compile(rules.Trade(), shop, []source.Text{source.Plain("test", name)})
			require.NoError(t, err)
		})
	}
	for _, name := range shop.ChecklistNames() {
		t.Run("checklist "+name, func(t *testing.T) {
			p, err := shop.Procedure(name)
			require.NoError(t, err)
			assert.NotEmpty(t, p.Steps)
			assert.Len(t, p.Hash, 64)
		})
	}
}

// Every rule says where it comes from.
func TestShippedRulesHaveSources(t *testing.T) {
	shop := OpenShop(Shipped())
	for _, name := range shop.SheetNames() {
		set, err := rules.Compile(rules.Trade(), shop, []source.Text{source.Plain("test", name)})
		require.NoError(t, err)
		for _, r := range set.Rules {
			assert.NotEmpty(t, r.Source, r.ID)
			assert.NotEmpty(t, r.Do, r.ID)
		}
	}
}
