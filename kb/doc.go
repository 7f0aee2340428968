// Package kb holds the shop's repair notes: what was found on a part, why, what
// was done and what to do next time.
//
// A note is one Markdown file. Its front matter, between two lines of three
// dashes, is YAML with a fixed set of keys; below it stands free text:
//
//	---
//	title: Loader link bored to the wear instead of the true centre
//	part: link
//	process: [find centre, bore]
//	found: The bore was round and on size, but .090 in toward the pull side.
//	done: Found the true centre from the far eye and bored again.
//	measured: {offset: .090 in, bore: 3-1/8 in}
//	rules: [datum-agree]
//	date: 2025-03-14
//	---
//	What the next person should know.
//
// [Shipped] gives the notes inside the program, [Load] reads a shop's own, and
// [Overlay] lays the second over the first. Reading is strict: a key that is
// not known, or a date that is none, is a source.Error with file, line, column
// and what to do about it, and all mistakes are reported at once.
package kb
