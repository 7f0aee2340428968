package checklists
import ("testing";"os";"encoding/json";"fmt")
func TestZZDump(t *testing.T){
 out:=map[string]any{}
 shop:=OpenShop(Shipped())
 for _,n:=range shop.ChecklistNames(){ p,err:=shop.Procedure(n); if err!=nil{t.Fatal(err)}
  var l []string
  for _,s:=range p.Steps{ var take,needs []string; for _,d:=range s.Take{take=append(take,d.Name)}; for _,r:=range s.Needs{needs=append(needs,r.ID)}
   when:=""; if s.when!=nil { when=s.source.When.Value }
   l=append(l,fmt.Sprintf("%s|%s|%s|%s|%s|%s|%s|%v|%v|%v|%s|%v|%s",s.ID,s.Kind,s.Title,s.Do,s.Why,s.How,s.Wrong,s.Cautions,take,needs,s.ReleasedBy,s.TwoPersons,when))}
  out[n]=l }
 b,_:=json.MarshalIndent(out,""," "); os.WriteFile(os.Getenv("ZZ"),b,0o644)
}
