package checklists

import (
	"math"

	"gudgeon/rules"
	"gudgeon/units"
)

// ReportJSON is a Report for other programs to read.
type ReportJSON struct {
	Checklist  string               `json:"checklist"`
	Part       string               `json:"part,omitempty"`
	Verdict    rules.Verdict        `json:"verdict"`
	WaitingFor []string             `json:"waiting_for"`
	Rules      []RuleJSON           `json:"rules"`
	Values     map[string]ValueJSON `json:"values"`
	Steps      []StepJSON           `json:"steps"`
}

// RuleJSON is the outcome of one rule.
type RuleJSON struct {
	ID         string        `json:"id"`
	Sheet      string        `json:"sheet"`
	Verdict    rules.Verdict `json:"verdict"`
	Noted      bool          `json:"noted,omitempty"`
	Level      rules.Level   `json:"level"`
	LifeSafety bool          `json:"life_safety"`
	Says       string        `json:"says"` // what is wrong; empty unless the check does not hold
	Do         string        `json:"do"`   // what to do about it; empty unless the rule stops, cautions or notes
	Source     string        `json:"source"`
	Margin     *ValueJSON    `json:"margin,omitempty"`
	Use        *float64      `json:"use,omitempty"`
	Worked     WorkedJSON    `json:"worked"`
	Needs      []string      `json:"needs"`
	Missing    []string      `json:"missing,omitempty"`
	Error      string        `json:"error,omitempty"`

	Uncertainty *ValueJSON   `json:"uncertainty,omitempty"` // of the margin, k = 2
	TooClose    bool         `json:"too_close,omitempty"`
	Doubt       string       `json:"doubt,omitempty"`
	NonLinear   bool         `json:"non_linear,omitempty"`
	WouldBeGo   string       `json:"would_be_go,omitempty"` // what the missing reading would have to be
	WaysOut     [][]MoveJSON `json:"ways_out,omitempty"`    // each a list of changes made together
	Notes       []NoteJSON   `json:"notes,omitempty"`       // repair notes that bear on it, of a rule that stops or cautions
}

// NoteJSON points to a repair note.
type NoteJSON struct {
	Name     string `json:"name"`
	Title    string `json:"title"`
	NextTime string `json:"next_time,omitempty"`
}

// MoveJSON is one reading changed.
type MoveJSON struct {
	Reading string `json:"reading"`
	To      string `json:"to"`
}

// ValueJSON is a number with its unit.
type ValueJSON struct {
	Value float64 `json:"value"`
	Unit  string  `json:"unit"`
}

// WorkedJSON is a rule's worked line with the lines that lead to it.
type WorkedJSON struct {
	Symbols string     `json:"symbols"`
	Numbers string     `json:"numbers"`
	Result  string     `json:"result"`
	Steps   []LineJSON `json:"steps,omitempty"`
}

// LineJSON is one line of a worked calculation.
type LineJSON struct {
	Name    string `json:"name,omitempty"`
	Symbols string `json:"symbols"`
	Numbers string `json:"numbers,omitempty"`
	Result  string `json:"result"`
}

// StepJSON is where one step stands.
type StepJSON struct {
	ID      string   `json:"id"`
	Kind    Kind     `json:"kind"`
	Title   string   `json:"title"`
	State   State    `json:"state"`
	Missing []string `json:"missing,omitempty"`
}

// JSON gives the report for other programs, numbers in the units of shop s.
func (r *Report) JSON(s units.System) ReportJSON {
	out := ReportJSON{
		Checklist: r.Procedure.ID, Part: r.Progress.Part, Verdict: r.Verdict,
		WaitingFor: nonNil(r.Waiting), Rules: []RuleJSON{}, Values: map[string]ValueJSON{}, Steps: []StepJSON{},
	}
	for i := range r.Rules.Results {
		out.Rules = append(out.Rules, r.ruleJSON(i, s))
	}
	for _, v := range r.Procedure.Rules.Values {
		if x, u, ok := r.Rules.Numeric(v, s); ok {
			out.Values[v.Name] = ValueJSON{u.FromSI(x), u.Symbol}
		}
	}
	for _, step := range r.Steps {
		out.Steps = append(out.Steps, StepJSON{step.Step.ID, step.Step.Kind, step.Step.Title, step.State, step.Missing})
	}
	return out
}

func nonNil(list []string) []string {
	if list == nil {
		return []string{}
	}
	return list
}

func (r *Report) ruleJSON(i int, s units.System) RuleJSON {
	result := &r.Rules.Results[i]
	rule := result.Rule
	line := r.Rules.Worked(i, s)
	out := RuleJSON{
		ID: rule.ID, Sheet: rule.Sheet, Verdict: result.Verdict, Noted: result.Noted, Level: rule.Level,
		LifeSafety: rule.LifeSafety, Source: rule.Source,
		Worked: WorkedJSON{Symbols: line.Symbols, Numbers: line.Numbers, Result: line.Result},
		Needs:  nonNil(rule.Needs), Missing: result.Missing,
	}
	if result.Failed() {
		out.Says = r.Rules.Says(i, s)
	}
	if result.Failed() || result.TooClose || result.Err != nil {
		out.Do = r.Rules.Do(i, s)
	}
	if result.Err != nil {
		out.Error = result.Err.Error()
	}
	if result.HasMargin {
		u := r.Rules.MarginUnit(result, s)
		out.Margin = &ValueJSON{u.FromSI(result.Margin), u.Symbol}
		if result.U > 0 {
			out.Uncertainty = &ValueJSON{result.U / u.Factor, u.Symbol}
		}
	}
	out.TooClose, out.NonLinear = result.TooClose, result.NonLinear
	if doubt, ok := r.Rules.Doubt(i, s); ok {
		out.Doubt = doubt.String()
	}
	out.WouldBeGo = r.Rules.Needed(i, s)
	for _, way := range r.Rules.WaysOut(i, s) {
		var moves []MoveJSON
		for _, c := range way.Changes {
			moves = append(moves, MoveJSON{c.Reading.Name, c.Text})
		}
		out.WaysOut = append(out.WaysOut, moves)
	}
	if !math.IsNaN(result.Use) {
		out.Use = &result.Use
	}
	if result.Verdict != rules.NotNeeded {
		for _, l := range r.Rules.Steps(i, s) {
			out.Worked.Steps = append(out.Worked.Steps, LineJSON{l.Name, l.Symbols, l.Numbers, l.Result})
		}
	}
	return out
}
