// Package index finds repair notes by what people type at the machine.
//
// [Build] makes an index in memory from the notes; it takes a few milliseconds,
// so nothing is kept on disk and nothing can go stale. [Index.Search] answers a
// query, [Index.Related] finds notes like one note, and [Index.ForRule] finds
// what the notes say about a rule that did not pass.
//
// Every note becomes one bag of terms, and so does every query:
//
//   - words, in English stems, without stop words, and pairs of neighbours;
//   - ideas, one term for all the trade's words for it (synonyms.yaml), which
//     count less than the word itself;
//   - quantities, in SI, so that 3-1/8 in, 3.125" and 79.4 mm find each other;
//   - codes, such as drawing numbers, cut so that any part of one finds it.
//
// A word that no note has is taken for a typing slip and replaced by the nearest
// words that some note has. Nothing else is matched by likeness: always-on
// likeness made results worse when measured (see quality).
package index
