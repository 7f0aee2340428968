// Search holds the program's index beside SQLite's full-text search: how good
// the answers are, how long building and asking takes, and how large it gets.
// Run it in the bench folder: go run ./search
package main

import (
	"flag"
	"fmt"
	"os"
	"text/tabwriter"
)

func main() {
	most := flag.Int("most", 100_000, "largest number of made-up notes")
	flag.Parse()
	table := tabwriter.NewWriter(os.Stdout, 0, 0, 2, ' ', 0)
	err := quality(table)
	if err == nil {
		err = speed(table, *most)
	}
	table.Flush()
	if err != nil {
		fmt.Fprintln(os.Stderr, "search:", err)
		os.Exit(1)
	}
}
