package source

import (
	"encoding/json"
	"reflect"
)

// Schema is a JSON Schema, draft 2020-12, or a part of one.
type Schema map[string]any

// Describer is a Decoder that says what it reads.
type Describer interface {
	Decoder
	DescribeSchema() Schema
}

// Worded is a struct some of whose texts must be one of a few words, by key.
type Worded interface {
	Words() map[string][]string
}

// SchemaFor describes what Decode reads into a value of this type: keys, which of
// them must be there, and what stands behind them. What a key means is taken from
// the field's tag `about:"..."`.
func SchemaFor[T any](title string) Schema {
	s := SchemaOf[T]()
	s["$schema"] = "https://json-schema.org/draft/2020-12/schema"
	s["title"] = title
	return s
}

// SchemaOf describes a type that is part of another.
func SchemaOf[T any]() Schema { return schemaOf(reflect.TypeFor[T]()) }

// AnyOf describes what may be written in several ways.
func AnyOf(ways ...Schema) Schema { return Schema{"anyOf": ways} }

// JSON writes s with its keys in order.
func (s Schema) JSON() string {
	text, err := json.MarshalIndent(s, "", "  ")
	if err != nil {
		panic(err) // a mistake in this program, found by its first test
	}
	return string(text) + "\n"
}

func schemaOf(t reflect.Type) Schema {
	if d, ok := reflect.New(t).Interface().(Describer); ok {
		return d.DescribeSchema()
	}
	switch t {
	case reflect.TypeFor[Text]():
		return Schema{"type": []string{"string", "number", "boolean"}} // a number is a text as it was written
	case reflect.TypeFor[bool]():
		return Schema{"enum": []any{true, false, "yes", "no"}}
	}
	switch t.Kind() {
	case reflect.Pointer:
		return schemaOf(t.Elem())
	case reflect.Struct:
		return structSchema(t)
	case reflect.Slice:
		return listSchema(t)
	}
	panic("source: cannot describe " + t.String()) // a mistake in this program, found by its first test
}

// listSchema lets a single text stand where a list of texts is meant.
func listSchema(t reflect.Type) Schema {
	item := schemaOf(t.Elem())
	list := Schema{"type": "array", "items": item}
	if t.Elem() == reflect.TypeFor[Text]() {
		return AnyOf(item, list)
	}
	return list
}

func structSchema(t reflect.Type) Schema {
	words := map[string][]string{}
	if w, ok := reflect.Zero(t).Interface().(Worded); ok {
		words = w.Words()
	}
	properties, required := Schema{}, []string{}
	for i := range t.NumField() {
		field := t.Field(i)
		key, must := tagOf(field)
		if key == "" {
			continue
		}
		p := keySchema(field, words[key], must)
		if must {
			required = append(required, key)
		}
		properties[key] = p
	}
	s := Schema{"type": "object", "properties": properties, "additionalProperties": false}
	if len(required) > 0 {
		s["required"] = required
	}
	return s
}

// keySchema describes what stands behind one key; a key that need not be there
// may also have nothing behind it.
func keySchema(field reflect.StructField, words []string, must bool) Schema {
	p := schemaOf(field.Type)
	switch {
	case words != nil && field.Type.Kind() == reflect.Slice:
		p = AnyOf(Schema{"enum": words}, Schema{"type": "array", "items": Schema{"enum": words}})
	case words != nil:
		p = Schema{"enum": words}
	}
	if !must && field.Type.Kind() != reflect.Bool {
		p = AnyOf(p, Schema{"type": "null"})
	}
	if about := field.Tag.Get("about"); about != "" {
		p["description"] = about
	}
	return p
}

// DescribeSchema describes a mapping with names for keys.
func (m *Map[T]) DescribeSchema() Schema {
	return Schema{"type": "object", "additionalProperties": AnyOf(SchemaOf[T](), Schema{"type": "null"})}
}
