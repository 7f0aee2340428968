// Package source reads the YAML that people write and says exactly where a
// mistake is.
//
// [Decode] fills a struct from a [File] and reports every mistake it finds in
// one go, each with file, line, column, the line itself and a mark under the
// place. Values that are checked later keep their place: a [Text] knows where
// it stood, so that the compiler of expressions can point into the same file.
package source
