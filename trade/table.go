package trade

import "fmt"

// Row is the row of a table that the argument of a Choice picks; what is one of
// its rows, for the error of any other index.
func Row[T any](table []T, index float64, what string) (T, error) {
	i, ok := Chosen(index, len(table))
	if !ok {
		var none T
		return none, fmt.Errorf("%s %v is not in the table", what, index)
	}
	return table[i], nil
}

// Names lists what the rows of a table are called, in their order.
func Names[T any](table []T, name func(T) string) []string {
	names := make([]string, len(table))
	for i, row := range table {
		names[i] = name(row)
	}
	return names
}
