package rules

import (
	"fmt"
	"sort"
	"strings"

	"gudgeon/rules/source"
	"gudgeon/trade"
	"gudgeon/units"
)

// Set is one or more sheets compiled together. It is immutable.
type Set struct {
	Readings []*ReadingDef // in the order of the sheets
	Values   []*Value      // each after what it is made of
	Rules    []*Rule       // in the order of the sheets

	library  *Library
	sheets   map[string]*Sheet
	readings map[string]*ReadingDef
	owners   []owner // of every slot
	surveys  map[int]int
	compiler compiler
	leaves   []*leaf
	columns  []column

	leafCount               int
	savedWidth, leavesWidth int // of the working memory of propagate
}

// owner says what a slot of the frame holds.
type owner struct {
	reading *ReadingDef
	value   *Value
}

// Value is a named intermediate result of a sheet.
type Value struct {
	Name  string
	About string
	Sheet string
	Type  Type
	Unit  units.Unit     // to show it in; zero for the kind's usual
	Round trade.Rounding // the way it may be rounded safely

	expr *expression
	slot int
	eval numeric // of a plain value; nil when run fills the results of a call
	run  func(f *frame) bool
	out  int
}

// Rule is one compiled rule.
type Rule struct {
	ID         string
	Sheet      string
	Level      Level
	LifeSafety bool
	Says, Do   string // may name readings and values in {braces}
	Source     string
	Needs      []string // every reading it depends on, in the set's order

	when, check         *expression
	whenTree, checkTree *verdictTree
	values              []*Value // every value it depends on, in order of evaluation
	leaves              []*leaf
}

// Compile puts the named sheets together: readings and values of the sheets
// they use come along, rules only from the named ones. All mistakes come back as
// one source.Errors.
func Compile(l *Library, shelf Shelf, names []source.Text) (*Set, error) {
	s := &Set{library: l, sheets: map[string]*Sheet{}, readings: map[string]*ReadingDef{}, surveys: map[int]int{}}
	b := &builder{set: s, shelf: shelf, values: map[string]*valueState{}, named: map[string]bool{}}
	for _, name := range names {
		b.named[name.Value] = true
	}
	for _, name := range names {
		b.add(name)
	}
	b.build()
	if err := b.report.Err(); err != nil {
		return nil, err
	}
	s.leafCount = len(s.leaves)
	s.buildColumns()
	return s, nil
}

// CompileSheet compiles one sheet with those it uses.
func CompileSheet(l *Library, shelf Shelf, sheet *Sheet) (*Set, error) {
	return Compile(l, withSheet{shelf, sheet}, []source.Text{sheet.Name})
}

// Shelf is where sheets are found by name.
type Shelf interface {
	Sheet(name string) (*Sheet, error) // nil and no error when there is none
	SheetNames() []string              // sorted
}

// withSheet puts one sheet in front of a shelf.
type withSheet struct {
	Shelf
	sheet *Sheet
}

func (w withSheet) Sheet(name string) (*Sheet, error) {
	if name == w.sheet.Name.Value {
		return w.sheet, nil
	}
	return w.Shelf.Sheet(name)
}

// NoShelf is the shelf without sheets.
type NoShelf struct{}

// Sheet finds nothing.
func (NoShelf) Sheet(string) (*Sheet, error) { return nil, nil }

// SheetNames is empty.
func (NoShelf) SheetNames() []string { return nil }

// Reading finds a reading by its name.
func (s *Set) Reading(name string) (*ReadingDef, bool) {
	d, ok := s.readings[name]
	return d, ok
}

// Rule finds a rule by its id.
func (s *Set) Rule(id string) (*Rule, bool) {
	for _, r := range s.Rules {
		if r.ID == id {
			return r, true
		}
	}
	return nil, false
}

// Condition compiles a yes/no expression over everything in the set, such as
// the when of a checklist's step.
func (s *Set) Condition(text source.Text) (*Condition, error) {
	var report source.Report
	e := check(s.library, setScope{s}, text, &report)
	if e != nil && !e.root.typ.isYesNo() {
		report.At(text, "a yes/no is needed here, and this is "+e.root.typ.String(), "compare it with something")
	}
	if err := report.Err(); err != nil {
		return nil, err
	}
	// A compiler of its own: the set's scratch memory is laid out already.
	c := compiler{surveys: s.surveys, scratch: s.compiler.scratch, tables: s.compiler.tables}
	out := &Condition{expr: e}
	out.tree = c.tree(condition(e.root), &out.leaves)
	out.scratch, out.tables = c.scratch, c.tables
	return out, nil
}

// Condition is a compiled yes/no over a set's readings and values.
type Condition struct {
	expr            *expression
	tree            *verdictTree
	leaves          []*leaf
	scratch, tables int
}

// setScope lets an expression name everything in a set.
type setScope struct{ set *Set }

func (s setScope) lookup(name string) (int, Type, bool) {
	if slot, t, ok := s.set.readingSlot(name); ok {
		return slot, t, true
	}
	for _, v := range s.set.Values {
		if v.Name == name {
			return v.slot, v.Type, true
		}
	}
	return 0, Type{}, false
}

func (s setScope) broken(string) bool { return false }

func (s setScope) names() []string {
	var names []string
	for _, d := range s.set.Readings {
		names = append(names, d.Name)
	}
	for _, v := range s.set.Values {
		names = append(names, v.Name)
	}
	return names
}

// readingSlot finds a reading, or the low or high limit of a toleranced one.
func (s *Set) readingSlot(name string) (int, Type, bool) {
	if d, ok := s.readings[name]; ok {
		t := kindType(d.Kind)
		t.Options = d.Options
		return d.slot, t, true
	}
	for offset, suffix := range []string{"_low", "_high"} {
		d, ok := s.readings[strings.TrimSuffix(name, suffix)]
		if ok && d.Limits && strings.HasSuffix(name, suffix) {
			return d.slot + 1 + offset, kindType(d.Kind), true
		}
	}
	return 0, Type{}, false
}

// builder puts a Set together.
type builder struct {
	set    *Set
	shelf  Shelf
	named  map[string]bool // sheets whose rules are wanted
	order  []*Sheet
	values map[string]*valueState
	report source.Report
}

type valueState struct {
	sheet    *Sheet
	name     source.Text
	source   valueSource
	value    *Value
	checking bool
	done     bool
}

// add takes in a sheet after those it uses.
func (b *builder) add(name source.Text) {
	if b.set.sheets[name.Value] != nil {
		return
	}
	sheet, err := b.shelf.Sheet(name.Value)
	if err != nil {
		b.report.Merge(err)
		return
	}
	if sheet == nil {
		b.report.At(name, fmt.Sprintf("there is no sheet %s", name.Value), source.Suggest(name.Value, b.shelf.SheetNames()))
		return
	}
	b.set.sheets[name.Value] = sheet
	for _, used := range sheet.Uses {
		b.add(used)
	}
	b.order = append(b.order, sheet)
}

func (b *builder) build() {
	for _, sheet := range b.order {
		b.addReadings(sheet)
	}
	for _, sheet := range b.order {
		for _, r := range sheet.Readings {
			if d := b.set.readings[r.Key.Value]; d != nil {
				b.compileWith(d, r.Value)
			}
		}
		b.addValues(sheet)
	}
	for _, sheet := range b.order {
		for _, v := range sheet.Values {
			b.value(v.Key.Value)
		}
	}
	for _, sheet := range b.order {
		if b.named[sheet.Name.Value] {
			b.addRules(sheet)
		}
	}
}

func (b *builder) addReadings(sheet *Sheet) {
	for _, r := range sheet.Readings {
		if !b.goodName(r.Key) {
			continue
		}
		if other, ok := b.set.readings[r.Key.Value]; ok {
			b.report.At(r.Key, fmt.Sprintf("the reading %s is declared in sheet %s already", r.Key.Value, other.Sheet), "name that sheet under uses: instead of declaring it again")
			continue
		}
		d := compileReading(b.set.library, sheet, r.Key, r.Value, &b.report)
		d.slot = len(b.set.owners)
		b.set.readings[d.Name] = d
		b.set.Readings = append(b.set.Readings, d)
		if d.Kind == units.Survey {
			b.set.surveys[d.slot] = len(b.set.surveys)
		}
		for range d.slots() {
			b.set.owners = append(b.set.owners, owner{reading: d})
		}
	}
}

// slots is how many places of the frame a reading takes: its value, and the
// low and high limit of a toleranced size.
func (d *ReadingDef) slots() int {
	if d.Limits {
		return 3
	}
	return 1
}

func (b *builder) goodName(name source.Text) bool {
	switch {
	case !nameForm.MatchString(name.Value):
		b.report.At(name, fmt.Sprintf("%q cannot be used in an expression", name.Value), "write names with small letters, digits and _")
		return false
	case reserved(name.Value):
		b.report.At(name, fmt.Sprintf("%s already means something in the rule language", name.Value), "choose another name")
		return false
	}
	return true
}

func (b *builder) addValues(sheet *Sheet) {
	for _, v := range sheet.Values {
		if !b.goodName(v.Key) {
			continue
		}
		if d, ok := b.set.readings[v.Key.Value]; ok {
			b.report.At(v.Key, fmt.Sprintf("%s is a reading of sheet %s already", v.Key.Value, d.Sheet), "choose another name")
			continue
		}
		if other, ok := b.values[v.Key.Value]; ok {
			b.report.At(v.Key, fmt.Sprintf("%s is a value of sheet %s already", v.Key.Value, other.sheet.Name.Value), "choose another name")
			continue
		}
		b.values[v.Key.Value] = &valueState{sheet: sheet, name: v.Key, source: v.Value}
	}
}

// value checks and compiles a value after those it is made of.
func (b *builder) value(name string) *Value {
	v, ok := b.values[name]
	if !ok {
		return nil
	}
	if v.done {
		return v.value
	}
	if v.checking {
		b.report.At(v.name, "the value goes round in a circle: "+b.circle(name), "work one of them out from readings only")
		v.done = true
		return nil
	}
	v.checking = true
	e := check(b.set.library, sheetScope{b, v.sheet}, v.source.Is, &b.report)
	if v.done || e == nil {
		v.done = true
		return nil
	}
	v.done = true
	value := &Value{Name: name, About: v.source.About.Value, Sheet: v.sheet.Name.Value, Type: e.root.typ, expr: e, slot: len(b.set.owners)}
	v.value = value
	b.showAs(value, v.source.Unit)
	b.compileValue(value)
	b.set.Values = append(b.set.Values, value)
	return value
}

// circle names the values that are being worked out, beginning with name.
func (b *builder) circle(name string) string {
	var round []string
	at := name
	for range len(b.values) {
		round = append(round, at)
		at = b.next(at)
		if at == name || at == "" {
			break
		}
	}
	return strings.Join(append(round, name), " → ")
}

// next is the value under work that the source of name mentions.
func (b *builder) next(name string) string {
	words := strings.FieldsFunc(b.values[name].source.Is.Value, func(r rune) bool {
		return !strings.ContainsRune("abcdefghijklmnopqrstuvwxyz0123456789_", r)
	})
	for _, w := range words {
		if v, ok := b.values[w]; ok && v.checking && v.value == nil {
			return w
		}
	}
	return ""
}

// showAs finds the unit and the rounding in which a value is shown.
func (b *builder) showAs(v *Value, unit source.Text) {
	root := v.expr.root
	if root.op == opCall && len(root.fn.Results) == 1 {
		v.Round = root.fn.Results[0].Round
		v.Unit, _ = units.Lookup(root.fn.Results[0].Kind, root.fn.Results[0].Unit)
	}
	if unit.IsZero() {
		return
	}
	u, ok := units.Lookup(v.Type.printKind(), unit.Value)
	if !ok {
		b.report.At(unit, fmt.Sprintf("%q is not a unit of %s", unit.Value, v.Type), "")
		return
	}
	v.Unit = u
}

// width is how many places of the frame a value takes: one for each field of a
// record.
func (v *Value) width() int { return max(1, len(v.Type.Fields)) }

func (b *builder) compileValue(v *Value) {
	c := &b.set.compiler
	c.surveys = b.set.surveys
	root := v.expr.root
	for range v.width() {
		b.set.owners = append(b.set.owners, owner{value: v})
	}
	if root.op == opCall {
		v.run, v.out = c.call(root)
		return
	}
	if v.Type.isRecord() {
		b.report.At(v.expr.text, "a record is named as a whole only where it is worked out", "name one of its fields")
		return
	}
	v.eval = c.compile(root)
}

// sheetScope lets an expression name what its sheet declares and uses.
type sheetScope struct {
	b     *builder
	sheet *Sheet
}

func (s sheetScope) sees(sheet string) bool {
	if sheet == s.sheet.Name.Value {
		return true
	}
	for _, used := range s.sheet.Uses {
		if used.Value == sheet {
			return true
		}
	}
	return false
}

func (s sheetScope) lookup(name string) (int, Type, bool) {
	if slot, t, ok := s.b.set.readingSlot(name); ok && s.sees(s.b.set.owners[slot].reading.Sheet) {
		return slot, t, true
	}
	state, ok := s.b.values[name]
	if !ok || !s.sees(state.sheet.Name.Value) {
		return 0, Type{}, false
	}
	v := s.b.value(name)
	if v == nil {
		return 0, Type{}, false
	}
	return v.slot, v.Type, true
}

// broken reports whether a name is a value whose own mistake was reported.
func (s sheetScope) broken(name string) bool {
	state, ok := s.b.values[name]
	return ok && s.sees(state.sheet.Name.Value) && state.value == nil
}

func (s sheetScope) names() []string {
	var names []string
	for _, d := range s.b.set.Readings {
		if s.sees(d.Sheet) {
			names = append(names, d.Name)
		}
	}
	for name, v := range s.b.values {
		if s.sees(v.sheet.Name.Value) && (v.done || !v.checking) {
			names = append(names, name)
		}
	}
	sort.Strings(names)
	return names
}

func (b *builder) addRules(sheet *Sheet) {
	scope := sheetScope{b, sheet}
	for _, src := range sheet.Rules {
		if other, ok := b.set.Rule(src.ID.Value); ok {
			b.report.At(src.ID, fmt.Sprintf("sheet %s has a rule %s already", other.Sheet, src.ID.Value), "every rule has an id of its own")
			continue
		}
		r := &Rule{
			ID: src.ID.Value, Sheet: sheet.Name.Value, LifeSafety: src.LifeSafety,
			Says: src.Says.Value, Do: src.Do.Value, Source: src.Source.Value,
		}
		r.Level, _ = ParseLevel(src.Level.Value)
		r.check = b.condition(scope, src.Check)
		if !src.When.IsZero() {
			r.when = b.condition(scope, src.When)
		}
		b.checkMessage(scope, src.Says)
		b.checkMessage(scope, src.Do)
		if b.report.Failed() {
			continue
		}
		b.compileRule(r)
		b.set.Rules = append(b.set.Rules, r)
	}
}

func (b *builder) condition(scope sheetScope, text source.Text) *expression {
	e := check(b.set.library, scope, text, &b.report)
	if e != nil && !e.root.typ.isYesNo() {
		b.report.At(text, "a yes/no is needed here, and this is "+e.root.typ.String(), "compare it with something")
		return nil
	}
	return e
}

func (b *builder) compileRule(r *Rule) {
	c := &b.set.compiler
	c.surveys = b.set.surveys
	first := len(b.set.leaves)
	r.checkTree = c.tree(condition(r.check.root), &b.set.leaves)
	reads := &dependencies{set: b.set, readings: map[*ReadingDef]bool{}, values: map[*Value]bool{}}
	reads.of(r.check.root)
	if r.when != nil {
		r.whenTree = c.tree(condition(r.when.root), &b.set.leaves)
		reads.of(r.when.root)
	}
	r.leaves = b.set.leaves[first:]
	r.Needs, r.values = reads.lists()
}

// dependencies collects what an expression is made of, through values.
type dependencies struct {
	set      *Set
	readings map[*ReadingDef]bool
	values   map[*Value]bool
}

func (d *dependencies) of(n *node) {
	n.walk(func(n *node) {
		if n.op != opSlot {
			return
		}
		o := d.set.owners[n.slot]
		if o.reading != nil {
			d.readings[o.reading] = true
		} else if !d.values[o.value] {
			d.values[o.value] = true
			d.of(o.value.expr.root)
		}
	})
}

func (d *dependencies) lists() (readings []string, values []*Value) {
	for _, r := range d.set.Readings {
		if d.readings[r] {
			readings = append(readings, r.Name)
		}
	}
	for _, v := range d.set.Values {
		if d.values[v] {
			values = append(values, v)
		}
	}
	return readings, values
}

// SheetFiles gives the files of every sheet in the set, by name.
func (s *Set) SheetFiles() []*source.File {
	var files []*source.File
	for _, name := range s.sheetNames() {
		files = append(files, s.sheets[name].file)
	}
	return files
}

func (s *Set) sheetNames() []string {
	names := make([]string, 0, len(s.sheets))
	for name := range s.sheets {
		names = append(names, name)
	}
	sort.Strings(names)
	return names
}
