package rules
import ("testing";"fmt";"gudgeon/rules")
func BenchmarkLink(b *testing.B) {
	p, all := linkJob(b, "link-go.yaml")
	n:=0; for _, r := range p.Rules.Rules { if overSurvey(p.Rules,r) {n++; fmt.Println(r.ID)} }
	set, few := withoutSurveys(b, p.Rules, all)
	fmt.Println(len(p.Rules.Rules), n, len(set.Rules), len(all), len(few))
	for _, x := range []struct{name string; s *rules.Set; r rules.Readings}{{"whole",p.Rules,all},{"plain",set,few}} {
		rep := x.s.Evaluate(x.r)
		c := map[string]int{}
		for _, r := range rep.Results { c[r.Verdict.String()]++ }
		fmt.Println(c)
		b.Run(x.name, func(b *testing.B){ b.ReportAllocs(); for b.Loop() { x.s.Evaluate(x.r) } })
	}
}
