package source

import (
	"fmt"
	"reflect"
	"strings"
)

// Decode reads the YAML of f into the struct that into points to. Field tags
// are `yaml:"key"` or `yaml:"key,required"`. Keys that no field has, keys given
// twice, anchors and aliases are mistakes. All mistakes come back together as
// Errors.
//
// Fields may be Text, bool, a struct, a slice, a *struct, a Map, or any type
// that is a Decoder.
func Decode(f *File, into any) error {
	node, err := Parse(f)
	if err != nil {
		return err
	}
	var report Report
	node.Decode(into, &report)
	return report.Err()
}

// Decoder is a type that reads itself, such as one that may be written short
// or long.
type Decoder interface {
	DecodeNode(n Node, report *Report)
}

// Map is a mapping whose keys are names, kept in the order written.
type Map[T any] []Entry[T]

// Entry is one named value of a Map.
type Entry[T any] struct {
	Key   Text
	Value T
}

// DecodeNode reads the mapping.
func (m *Map[T]) DecodeNode(n Node, report *Report) {
	for _, pair := range n.Pairs(report) {
		e := Entry[T]{Key: pair.Key}
		pair.Value.Decode(&e.Value, report)
		*m = append(*m, e)
	}
}

// Get finds a value by its name.
func (m Map[T]) Get(name string) (T, bool) {
	for i := range m {
		if m[i].Key.Value == name {
			return m[i].Value, true
		}
	}
	var none T
	return none, false
}

// Decode reads n into what into points to.
func (n Node) Decode(into any, report *Report) {
	if d, ok := into.(Decoder); ok {
		d.DecodeNode(n, report)
		return
	}
	v := reflect.ValueOf(into).Elem()
	switch target := v.Addr().Interface().(type) {
	case *Text:
		*target = n.Text(report)
		return
	case *bool:
		n.decodeBool(target, report)
		return
	}
	switch v.Kind() {
	case reflect.Struct:
		n.decodeStruct(v, report)
	case reflect.Pointer:
		v.Set(reflect.New(v.Type().Elem()))
		n.Decode(v.Interface(), report)
	case reflect.Slice:
		n.decodeSlice(v, report)
	default:
		panic("source: cannot decode into " + v.Type().String()) // a mistake in this program, found by its first test
	}
}

func (n Node) decodeBool(target *bool, report *Report) {
	switch t := n.Text(report); strings.ToLower(t.Value) {
	case "true", "yes":
		*target = true
	case "false", "no":
	default:
		report.At(t, "yes or no is expected here", "")
	}
}

// decodeSlice takes a list, or a single value where a list of texts is meant.
func (n Node) decodeSlice(v reflect.Value, report *Report) {
	if v.Type().Elem() == reflect.TypeFor[Text]() && !n.IsList() && !n.IsMapping() && !n.IsEmpty() {
		v.Set(reflect.ValueOf([]Text{n.Text(report)}))
		return
	}
	for _, item := range n.Items(report) {
		e := reflect.New(v.Type().Elem())
		item.Decode(e.Interface(), report)
		v.Set(reflect.Append(v, e.Elem()))
	}
}

func (n Node) decodeStruct(v reflect.Value, report *Report) {
	given := map[string]bool{}
	for _, pair := range n.Pairs(report) {
		i, ok := fieldOf(v.Type(), pair.Key.Value)
		if !ok {
			report.At(pair.Key, fmt.Sprintf("%q is not a key here", pair.Key.Value), suggest(pair.Key.Value, keysOf(v.Type())))
			continue
		}
		given[pair.Key.Value] = true
		if _, required := tagOf(v.Type().Field(i)); required && pair.Value.holdsNothing() {
			report.At(pair.Key, fmt.Sprintf("%q has nothing behind it", pair.Key.Value), "")
			continue
		}
		pair.Value.Decode(v.Field(i).Addr().Interface(), report)
	}
	for i := range v.NumField() {
		key, required := tagOf(v.Type().Field(i))
		if required && !given[key] && (n.IsMapping() || n.IsEmpty()) {
			n.Fail(report, fmt.Sprintf("%q is missing", key), "add the line "+key+": …")
		}
	}
}

func tagOf(f reflect.StructField) (key string, required bool) {
	key, rest, _ := strings.Cut(f.Tag.Get("yaml"), ",")
	return key, rest == "required"
}

func fieldOf(t reflect.Type, name string) (int, bool) {
	for i := range t.NumField() {
		if key, _ := tagOf(t.Field(i)); key == name && key != "" {
			return i, true
		}
	}
	return 0, false
}

func keysOf(t reflect.Type) []string {
	var keys []string
	for i := range t.NumField() {
		if key, _ := tagOf(t.Field(i)); key != "" {
			keys = append(keys, key)
		}
	}
	return keys
}
