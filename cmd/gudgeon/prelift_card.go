package main

import (
	"slices"
	"strings"
	"unicode/utf8"

	"gudgeon/checklists"
	"gudgeon/rules"
	"gudgeon/units"
)

// card prints a lift on one sheet: the verdict large, then what carries it, what
// stops it, what is missing, and where to sign.
type card struct {
	*screen
	report  *checklists.Report
	system  units.System
	picture string // a line about the picture; may be empty
	saved   string // where the readings were kept; may be empty
}

func (c *card) print() {
	c.width = min(c.width, 80)
	uses := usesOf(c.report, c.system)
	c.head()
	c.facts()
	c.table(uses)
	c.against()
	printWaiting(c.screen, c.report, c.system)
	c.looked()
	c.before()
	c.sign()
}

func (c *card) rule() { c.line("%s", strings.Repeat("-", c.width)) }

func (c *card) head() {
	words := verdictWords[c.report.Verdict]
	large := c.say(words.tall)
	c.rule()
	c.gap()
	for _, row := range tall(large) {
		c.line("   %s", c.in(c.report.Verdict, row))
	}
	c.gap()
	c.line("%s  %s", c.verdict(c.report.Verdict), c.say(words.plain))
	c.labelled(0, c.say("Against it: "), strings.Join(c.subjectsAgainst(), "; "))
	c.rule()
}

// subjectsAgainst names in few words what stops the lift, or cautions.
func (c *card) subjectsAgainst() []string {
	var list []string
	for _, v := range []rules.Verdict{rules.Stop, rules.Caution} {
		for _, result := range c.report.Rules.Results {
			if result.Verdict == v {
				list = append(list, c.say(subject(result.Rule.ID)))
			}
		}
	}
	return list
}

// facts say what is lifted and how, as far as it is known.
func (c *card) facts() {
	part := c.report.Progress.Part
	if part == "" {
		part = strings.Repeat("_", 30)
	}
	c.row(0, c.say("Part"), factWidth, part)
	for _, f := range facts {
		c.row(0, c.say(f.label), factWidth, strings.Join(c.known(f.parts), ", "))
	}
}

// known gives the parts of a fact that are known, then who read them.
func (c *card) known(parts []factPart) []string {
	var list, readers []string
	for _, p := range parts {
		text := c.report.Rules.Text(p.name, c.system)
		if text == "" {
			continue
		}
		list = append(list, c.sayf(p.format, text))
		if by := c.report.Progress.Readings[p.name].By; by != "" && !slices.Contains(readers, by) {
			readers = append(readers, by)
		}
	}
	if len(readers) > 0 {
		list = append(list, c.sayf("read by %s", strings.Join(readers, c.say(" and "))))
	}
	return list
}

type factPart struct{ name, format string }

var facts = []struct {
	label string
	parts []factPart
}{
	{"Weighs", []factPart{{"part_weight", "%s"}, {"weight_known_by", "%s"}}},
	{"Lifted by", []factPart{{"lifted_by", "%s"}, {"hitch", "%s"}, {"lug_kind", "%s"}}},
	{"Slings", []factPart{{"leg_reach", "farthest lifting point %s out from the plumb line"}, {"sling_length", "leg %s"}}},
	{"Lug", []factPart{{"lug_offset", "%s off the balance point"}, {"lug_height", "%s above it"}}},
	{"Forks", []factPart{{"load_centre", "balance point %s out from their face"}, {"fork_length", "forks %s"}, {"load_length", "part %s long"}, {"load_gap", "beginning %s out"}}},
	{"Table", []factPart{{"table_offset", "balance point %s off its middle"}, {"table_base_half", "base ends %s out"}}},
	{"Carried by", []factPart{{"carriers", "%s people"}}},
}

// The columns of the facts and of the table, in characters.
const (
	factWidth     = 12
	loadWidth     = 11
	capacityWidth = 13
	useWidth      = 7
)

// elementWidth is what is left for an element's name, beside the mark, the
// figures and the longest verdict that a line can have.
func (c *card) elementWidth() int {
	longest := 0
	for _, v := range []rules.Verdict{rules.Go, rules.Caution, rules.Stop} {
		longest = max(longest, utf8.RuneCountInString(c.verdictWord(v)))
	}
	return 80 - len("> ") - loadWidth - capacityWidth - useWidth - len("  ") - longest
}

func (c *card) table(uses []use) {
	if len(uses) == 0 {
		return
	}
	c.gap()
	c.line("%s", c.bold("  "+left(c.say("WHAT CARRIES IT"), c.elementWidth())+right(c.say("LOAD"), loadWidth)+right(c.say("CAPACITY"), capacityWidth)+right(c.say("USED"), useWidth)))
	for _, u := range uses {
		c.use(u)
	}
	for _, u := range uses {
		if u.Governs && u.Mode == "" {
			c.line("  %s", c.governing(u))
		}
	}
}

// governing says in words what the mark in the table means.
func (c *card) governing(u use) string {
	text := c.sayf("> governs: %s", c.say(u.Element))
	if c.report.Verdict == rules.Waiting {
		text = c.sayf("> governs, of what is known: %s", c.say(u.Element))
	}
	if u.Share == nil {
		return text
	}
	return text + c.sayf(", %s used", percent(u.share))
}

func (c *card) use(u use) {
	name := capital(c.say(u.Element))
	if u.Mode != "" {
		name = "   " + c.say(u.Mode)
		if long := name + ", " + c.say(u.About); utf8.RuneCountInString(long) < c.elementWidth() {
			name = long
		}
	}
	mark := "  "
	if u.Governs {
		mark = "> "
	}
	line := mark + left(name, c.elementWidth()) + right(u.Load, loadWidth) + right(u.Capacity, capacityWidth) + right(percent(u.share), useWidth)
	if u.Verdict != rules.NotNeeded {
		line += "  " + c.verdict(u.Verdict)
	}
	c.line("%s", line)
}

// against lists what stops the lift, then what cautions.
func (c *card) against() {
	r := c.report.Rules
	for _, v := range []rules.Verdict{rules.Stop, rules.Caution} {
		for i := range r.Results {
			if r.Results[i].Verdict == v {
				c.gap()
				c.stands(i)
			}
		}
	}
	printNotes(c.screen, r, c.system)
}

func (c *card) stands(i int) {
	r := c.report.Rules
	result := &r.Results[i]
	c.line("%s  %s", c.verdict(result.Verdict), c.bold(capital(c.say(subject(result.Rule.ID)))))
	c.labelled(2, "", says(r, i, c.system))
	if result.Err == nil && result.HasMargin {
		c.labelled(2, "", c.joinWorked(r.Worked(i, c.system), result))
	}
	if doubt, ok := r.Doubt(i, c.system); ok {
		c.labelled(2, "", doubt.String())
	}
	c.row(2, c.say("do"), 10, r.Do(i, c.system))
	printWays(c.screen, r, i, c.system)
	c.row(2, c.say("source"), 10, result.Rule.Source)
}

// looked lists what somebody has looked at, with the answer.
func (c *card) looked() {
	began := false
	for _, s := range c.report.Procedure.Steps {
		for _, d := range s.Take {
			if d.Kind != units.YesNo || !c.answers(d.Name) {
				continue
			}
			if !began {
				c.heading(c.say("Looked at"))
				began = true
			}
			c.row(2, c.report.Rules.Text(d.Name, c.system), 5, c.report.Words().Step(s).Title+": "+c.report.Words().Sheets().Ask(d))
		}
	}
}

// answers reports whether a question decided a rule of its own.
func (c *card) answers(name string) bool {
	if c.report.Rules.Text(name, c.system) == "" {
		return false
	}
	for i := range c.report.Rules.Results {
		result := &c.report.Rules.Results[i]
		if result.HasMargin || result.Verdict == rules.NotNeeded || result.Verdict == rules.Waiting {
			continue
		}
		for _, need := range result.Rule.Needs {
			if need == name {
				return true
			}
		}
	}
	return false
}

// before lists what holds for every lift like this, then what is done with the
// hands: that only when nothing forbids the lift.
func (c *card) before() {
	c.heading(c.say("Take care"))
	for _, text := range c.report.Words().Cautions(c.report.Procedure) {
		c.labelled(2, "- ", text)
	}
	may := c.report.Verdict == rules.Go || c.report.Verdict == rules.Caution
	for _, s := range c.report.Steps {
		if s.State == checklists.Skipped || s.State == checklists.Undecided {
			continue
		}
		words := c.report.Words().Step(s.Step)
		if s.Step.Kind == checklists.Do && may {
			box := map[bool]string{false: "[ ] ", true: "[x] "}[s.State == checklists.Finished]
			c.labelled(2, box, words.Title+". "+words.Do)
		}
		for _, text := range words.Cautions {
			c.labelled(2, "- ", text)
		}
	}
}

func (c *card) sign() {
	if c.saved != "" || c.picture != "" {
		c.gap()
	}
	if c.saved != "" {
		c.line(c.say("Readings: %s"), c.saved)
	}
	if c.picture != "" {
		c.line("%s", c.picture)
	}
	c.gap()
	c.line("%s", c.say("Lifted by    ________________________________  Date ___________  Time ________"))
	c.gap()
	c.line("%s", c.say("Rigger       ________________________________  where the rules here ask for one"))
}

// in colours a text like a verdict.
func (c *card) in(v rules.Verdict, text string) string {
	if !c.colour {
		return text
	}
	return strings.Replace(c.verdict(v), c.verdictWord(v), text, 1)
}

func capital(text string) string {
	return strings.TrimSuffix(sentence(text), ".")
}

func left(text string, width int) string {
	return text + strings.Repeat(" ", max(1, width-utf8.RuneCountInString(text)))
}

func right(text string, width int) string {
	return strings.Repeat(" ", max(1, width-utf8.RuneCountInString(text))) + text
}
