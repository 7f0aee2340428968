// Command gudgeon keeps a repair shop's checklists, rules and notes for bringing
// worn pin bores back to size.
package main

import (
	"errors"
	"fmt"
	"os"

	"gudgeon/rules"
	"gudgeon/rules/source"
)

// Exit statuses. Scripts gate on them.
const (
	exitGo      = 0
	exitCaution = 1
	exitStop    = 2
	exitWaiting = 3
	exitUsage   = 64
	exitData    = 65
)

func main() { os.Exit(run()) }

func run() int {
	root := newRoot()
	err := root.Execute()
	var verdict verdictError
	switch {
	case err == nil:
		return exitGo
	case errors.As(err, &verdict):
		return exitOf(rules.Verdict(verdict))
	}
	fmt.Fprintln(os.Stderr, "gudgeon: "+err.Error())
	if isDataError(err) {
		return exitData
	}
	if !errors.As(err, new(plainError)) {
		fmt.Fprintln(os.Stderr, "  see gudgeon --help")
	}
	return exitUsage
}

// verdictError ends a command with the exit status of a verdict. It is no
// mistake, so nothing is printed for it.
type verdictError rules.Verdict

func (v verdictError) Error() string { return rules.Verdict(v).String() }

func exitOf(v rules.Verdict) int {
	switch v {
	case rules.Stop:
		return exitStop
	case rules.Caution:
		return exitCaution
	case rules.Waiting:
		return exitWaiting
	}
	return exitGo
}

// plainError is a wrong call that needs no pointer to the help.
type plainError struct{ error }

// dataError is a mistake in what a file or an expression holds.
type dataError struct{ error }

func (e dataError) Unwrap() error { return e.error }

func isDataError(err error) bool {
	var list source.Errors
	var one *source.Error
	var data dataError
	return errors.As(err, &list) || errors.As(err, &one) || errors.As(err, &data)
}
