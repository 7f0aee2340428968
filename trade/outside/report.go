package outside

import (
	"fmt"
	"path/filepath"
	"strings"
)

// section is one file of testdata/checks.
type section struct {
	Name string
	Rows []row
}

func sections(root string) ([]section, error) {
	files, err := filepath.Glob(sectionFile(root, "*"))
	if err != nil {
		return nil, err
	}
	var all []section
	for _, file := range files {
		rows, err := readSection(file)
		if err != nil {
			return nil, err
		}
		all = append(all, section{strings.TrimSuffix(filepath.Base(file), ".csv"), rows})
	}
	return all, nil
}

func (s section) of(c Confidence) []row {
	var some []row
	for _, r := range s.Rows {
		if r.Confidence == c {
			some = append(some, r)
		}
	}
	return some
}

const preface = `# What the figures are checked against

Made by the tests: run ` + "`make checks`" + ` to write it anew. Each line is a value from outside this program, the value that the program computes, and the difference allowed, in the unit given.

- published: the source prints the value.
- computed from published inputs: the source gives the inputs or the formula; another program or a calculation by hand gives the value.
- computed from synthetic inputs: another program or arithmetic by hand gives the value, from inputs of our own.
- from memory: nobody had the source at hand. These lines guard against change. They are listed last in each part and are **not counted** as outside checks.

Where the program holds a table, the check is that the table was copied right.

`

// report is the text of CHECKS.md.
func report(all []section) string {
	var b strings.Builder
	b.WriteString(preface)
	counts(&b, all)
	for _, s := range all {
		fmt.Fprintf(&b, "\n## %s\n", s.Name)
		for _, c := range confidences {
			table(&b, c, s.of(c))
		}
	}
	return b.String()
}

func counts(b *strings.Builder, all []section) {
	b.WriteString("| part | published | from published inputs | from synthetic inputs | outside checks | from memory, not counted |\n| --- | ---: | ---: | ---: | ---: | ---: |\n")
	var total section
	line := func(name string, s section) {
		n := func(c Confidence) int { return len(s.of(c)) }
		fmt.Fprintf(b, "| %s | %d | %d | %d | %d | %d |\n", name, n(Published), n(Computed), n(Synthetic), len(s.Rows)-n(Memory), n(Memory))
	}
	for _, s := range all {
		total.Rows = append(total.Rows, s.Rows...)
		line(s.Name, s)
	}
	line("**total**", total)
}

func table(b *strings.Builder, c Confidence, rows []row) {
	if len(rows) == 0 {
		return
	}
	title := fmt.Sprintf("%s%s (%d)", strings.ToUpper(string(c[:1])), c[1:], len(rows))
	if c == Memory {
		title += ", not counted"
	}
	fmt.Fprintf(b, "\n### %s\n\n| ID | what | expected | computed | within | unit | source |\n| --- | --- | ---: | ---: | ---: | --- | --- |\n", title)
	for _, r := range rows {
		cells := []string{r.ID, r.What, r.Expected, r.Computed, r.Within, r.Unit, r.Source}
		for i, cell := range cells {
			cells[i] = strings.NewReplacer("|", `\|`, "*", `\*`, "_", `\_`, "\n", " ").Replace(cell)
		}
		fmt.Fprintf(b, "| %s |\n", strings.Join(cells, " | "))
	}
}
