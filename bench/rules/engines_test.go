package rules

import (
	"fmt"
	"reflect"
	"regexp"
	"strconv"
	"strings"
	"testing"

	"cel.dev/cel-go/cel"
	"cel.dev/cel-go/ext"
	"github.com/expr-lang/expr"
	"github.com/expr-lang/expr/vm"
	"github.com/stretchr/testify/require"

	"gudgeon/rules"
	"gudgeon/rules/source"
	"gudgeon/units"
)

var literal = regexp.MustCompile(`\{(\w+) ([\d.]+)\}`)

// forSheet writes a rule as a rule sheet has it.
func forSheet(text string) string { return literal.ReplaceAllString(text, "$1($2)") }

// forPeers writes a rule with bare SI numbers.
func forPeers(text string) string {
	return literal.ReplaceAllStringFunc(text, func(found string) string {
		part := literal.FindStringSubmatch(found)
		unit, _ := units.Named(part[1])
		x, _ := strconv.ParseFloat(part[2], 64)
		return strconv.FormatFloat(unit.ToSI(x), 'e', -1, 64)
	})
}

// sixtySet compiles the sixty rules. The instruments may be taken away.
func sixtySet(t testing.TB, instruments bool) *rules.Set {
	t.Helper()
	var text strings.Builder
	text.WriteString("sheet: sixty\nreadings:\n")
	for _, r := range sixtyReadings {
		fmt.Fprintf(&text, "  %s: {ask: %s, kind: %s, from: '%s', to: '%s', can change: true", r.name, r.name, r.kind, r.shown(0), r.shown(100*r.value))
		if r.with != "" && instruments {
			fmt.Fprintf(&text, ", with: %s", r.with)
		}
		text.WriteString("}\n")
	}
	text.WriteString("rules:\n")
	for i, check := range sixtyRules {
		fmt.Fprintf(&text, "  - {id: rule-%d, check: '%s', level: stop, says: x, do: y, source: bench}\n", i+1, forSheet(check))
	}
	sheet, err := rules.ReadSheet(&source.File{Name: "sixty.yaml", Text: text.String()})
	require.NoError(t, err)
	set, err := rules.CompileSheet(rules.Trade(), rules.NoShelf{}, sheet)
	require.NoError(t, err)
	return set
}

func (r sixtyReading) shown(x float64) string { return fmt.Sprintf("%g %s", x, r.unit) }

// sixtyValues are the readings, understood as a person's typing is.
func sixtyValues(t testing.TB, set *rules.Set) rules.Readings {
	t.Helper()
	readings := rules.Readings{}
	for _, r := range sixtyReadings {
		d, ok := set.Reading(r.name)
		require.True(t, ok, r.name)
		read, err := d.Read(r.shown(r.value))
		require.NoError(t, err)
		readings[r.name] = read
	}
	return readings
}

// byHand puts readings into the fields of a job.
func byHand(readings rules.Readings) *job {
	var j job
	fields := reflect.ValueOf(&j).Elem()
	for name, r := range readings {
		var field strings.Builder
		for word := range strings.SplitSeq(name, "_") {
			field.WriteString(strings.ToUpper(word[:1]) + word[1:])
		}
		fields.FieldByName(field.String()).SetFloat(r.Value)
	}
	return &j
}

// boxed gives readings as the general engines take them.
func boxed(readings rules.Readings) map[string]any {
	env := map[string]any{}
	for name, r := range readings {
		env[name] = r.Value
	}
	return env
}

// exprEngine runs the rules in one virtual machine of expr.
type exprEngine struct {
	programs []*vm.Program
	machine  vm.VM
}

func newExpr(t testing.TB, env map[string]any, texts []string) *exprEngine {
	t.Helper()
	e := &exprEngine{}
	for _, text := range texts {
		p, err := expr.Compile(forPeers(text), expr.Env(env), expr.AsBool())
		require.NoError(t, err, text)
		e.programs = append(e.programs, p)
	}
	return e
}

func (e *exprEngine) judge(env map[string]any, ok []bool) error {
	for i, p := range e.programs {
		out, err := e.machine.Run(p, env)
		if err != nil {
			return err
		}
		ok[i] = out.(bool)
	}
	return nil
}

// celEngine runs the rules as cel-go's programs.
type celEngine []cel.Program

var celNames = strings.NewReplacer("max(", "math.greatest(", "min(", "math.least(", "abs(", "math.abs(")

func newCEL(t testing.TB, env map[string]any, texts []string) celEngine {
	t.Helper()
	options := []cel.EnvOption{ext.Math()}
	for name := range env {
		options = append(options, cel.Variable(name, cel.DoubleType))
	}
	e, err := cel.NewEnv(options...)
	require.NoError(t, err)
	var engine celEngine
	for _, text := range texts {
		tree, issues := e.Compile(celNames.Replace(forPeers(text)))
		require.NoError(t, issues.Err(), text)
		p, err := e.Program(tree, cel.EvalOptions(cel.OptOptimize))
		require.NoError(t, err, text)
		engine = append(engine, p)
	}
	return engine
}

func (e celEngine) judge(env any, ok []bool) error {
	for i, p := range e {
		out, _, err := p.Eval(env)
		if err != nil {
			return err
		}
		ok[i] = out.Value().(bool)
	}
	return nil
}
