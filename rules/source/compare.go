package source

import (
	"fmt"
	"reflect"
	"strings"
)

// Compare says in words what differs between two structs of one type that
// Decode has filled: texts, yes/no and lists of texts, by their keys. Nested
// tables are left to the caller. about names what is compared, such as
// "rule truck-overload".
func Compare(about string, old, new any) []string {
	a, b := reflect.ValueOf(old), reflect.ValueOf(new)
	var list []string
	for i := range a.NumField() {
		key, _ := tagOf(a.Type().Field(i))
		if key == "" {
			continue
		}
		before, ok := written(a.Field(i).Interface())
		after, _ := written(b.Field(i).Interface())
		if ok && before != after {
			list = append(list, fmt.Sprintf("%s: %s %s", about, key, change(before, after)))
		}
	}
	return list
}

// written is a field as it was written; false for what has parts of its own.
func written(field any) (string, bool) {
	switch f := field.(type) {
	case Text:
		return strings.Join(strings.Fields(f.Value), " "), true
	case bool:
		if f {
			return "yes", true
		}
		return "no", true
	case []Text:
		var parts []string
		for _, t := range f {
			parts = append(parts, t.Value)
		}
		return strings.Join(parts, ", "), true
	}
	return "", false
}

func change(before, after string) string {
	switch {
	case before == "":
		return fmt.Sprintf("is now %q", after)
	case after == "":
		return fmt.Sprintf("was %q, now taken out", before)
	}
	return fmt.Sprintf("was %q, now %q", before, after)
}

// CompareNames lists what was added and taken out of a list of names, and, when
// neither, whether the order changed.
func CompareNames(what string, old, new []string) []string {
	var list []string
	for _, name := range old {
		if !contains(new, name) {
			list = append(list, fmt.Sprintf("%s %s: taken out", what, name))
		}
	}
	for _, name := range new {
		if !contains(old, name) {
			list = append(list, fmt.Sprintf("%s %s: new", what, name))
		}
	}
	if len(list) == 0 && strings.Join(old, " ") != strings.Join(new, " ") {
		list = append(list, fmt.Sprintf("%ss: the order is now %s", what, strings.Join(new, ", ")))
	}
	return list
}

func contains(list []string, name string) bool {
	for _, n := range list {
		if n == name {
			return true
		}
	}
	return false
}
