package kb

import (
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/require"
)

// ruleIDs are the rules that shipped notes may name.
func ruleIDs() []string {
	return strings.Fields(`
		truck-overload truck-plate truck-engagement table-overload table-edge
		sling-angle sling-overload lug-overload lug-weld shackle-overload weight-known hang-level
		offset-unexplained datum-agree tilt-unexplained stock-least truing-bore wall-least
		cleaned-up-share void-loaded-zone void-edge preheat-reached interpass-held
		bar-overhang bar-deflection pass-heavy pass-last-light
		bore-size bore-taper bore-round interference-low interference-high
		press-tonnage press-daylight boss-stress close-in pin-clearance support-under-boss
		clamp-hold freeze-clearance
		bead-sound boss-cracks bushing-pin choke-angle clamp-spring drive-power ears-gap ears-pull electronics-off
		eyebolt-angle eyebolt-overload fire-watch forks-sound ground-clamp lead-made load-held
		lug-sound pass-deep preheat-planned seats-bare sling-sound steel-weldable trued-clean table-braced`)
}

func TestShippedNotes(t *testing.T) {
	notes, err := Shipped()
	require.NoError(t, err)
	require.Len(t, notes, 125)
	titles := map[string]string{}
	named := map[string]bool{}
	for _, n := range notes {
		require.Empty(t, titles[n.Title], "%s has the title of another note", n.Name)
		titles[n.Title] = n.Name
		require.NotEmpty(t, n.Machine, n.Name)
		require.NotEmpty(t, n.Material, n.Name)
		require.NotEmpty(t, n.Cause, n.Name)
		require.NotEmpty(t, n.NextTime, n.Name)
		require.NotEmpty(t, n.Measured, n.Name)
		require.Subset(t, ruleIDs(), n.Rules, n.Name)
		require.GreaterOrEqual(t, n.Date.Year(), 2023, n.Name)
		require.True(t, n.Date.Before(time.Date(2027, 1, 1, 0, 0, 0, 0, time.UTC)), n.Name)
		require.GreaterOrEqual(t, len(strings.Fields(n.Body)), 30, "%s says nothing below its front matter", n.Name)
		for _, r := range n.Rules {
			named[r] = true
		}
	}
	for _, id := range ruleIDs() {
		require.True(t, named[id], "no note bears on %s", id)
	}
}

func TestEveryPartAndProcessHasANote(t *testing.T) {
	notes, err := Shipped()
	require.NoError(t, err)
	seen := map[string]bool{}
	for _, n := range notes {
		seen[n.Part] = true
		for _, p := range n.Process {
			seen[p] = true
		}
	}
	for _, word := range append(Parts(), Processes()...) {
		require.True(t, seen[word], "no note on %q", word)
	}
}
