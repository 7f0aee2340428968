// Package lift works out what a heavy part weighs, where it balances, how it
// hangs, and whether the slings, lugs, welds and hardware that hold it are
// strong enough.
//
//	weight.go, centre.go    weight and centre of gravity from shapes and scales
//	trial.go, hang.go       centre from plumb lines; how a part hangs from its lug
//	legs.go, twolegs.go     load in sling legs
//	fourlegs.go, sling.go   stiff four-point lifts; hitches and sling capacity
//	dynamic.go              hoisting and snatch
//	chain.go, hardware.go   chain, tie-downs, proof loads, shackles, eyebolts
//	platelug.go, aisclug.go plate lug by two codes
//	lugbase.go              the lug's foot under an angled pull
//	curved.go, ring.go      hooks and rings
//	bentbar.go, arch.go     lug bent from round bar, and the frame it is
//	fillet.go, weldgroup.go fillet welds, straight and eccentric
//	lugweld.go, barweld.go  the welds that hold a plate lug or a bar
//	limit.go                ranges and checks that all of them share
//	catalogue*.go           all of it for rule sheets
//
// Everything is SI. Weights, leg loads and rated capacities are masses in kg,
// because that is how scales and tags are marked; force is mass times
// trade.StandardGravity. Angles of slings are from the horizontal unless a
// name says otherwise. A use is demand over capacity: above 1 is overloaded.
//
// The stress checks are elastic and take the load as given: multiply it by a
// dynamic factor first. None of them replaces the mark on the equipment, the
// code that applies, or a qualified person.
package lift
