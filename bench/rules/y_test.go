package rules
import ("testing";"fmt";"time";"gudgeon/units")
func TestWays(t *testing.T) {
	for _, n := range []string{"link-stop.yaml","link-offset.yaml"} {
	p, all := linkJob(t, n)
	r := p.Rules.Evaluate(all)
	tot := time.Duration(0)
	for i := range r.Results {
		a := time.Now(); w := r.WaysOut(i, units.InchShop); d := time.Since(a); tot += d
		if r.Results[i].Verdict.String()=="stop"||r.Results[i].Verdict.String()=="caution" { fmt.Println(r.Results[i].Rule.ID, r.Results[i].Verdict, len(w), d) }
	}
	fmt.Println(n, tot)
	for _, r := range all { if r.Survey!=nil {fmt.Println(len(r.Survey))}}
	}
}
