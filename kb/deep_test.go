package kb
import ("testing";"strings";"time")
func TestDeep(t *testing.T){
 for _,s:=range []string{"[","{a: ","- ","? ","- - ","&a ","!!x ","a:\n ", "\"", "|\n", "#", "*a ", "<<: "} {
  t0:=time.Now(); _,err:=Parse("a.md",[]byte("---\ntitle: "+strings.Repeat(s,60000/len(s))+"\n---\n")); d:=time.Since(t0)
  t0=time.Now(); _,err2:=Parse("a.md",[]byte("---\n"+strings.Repeat(s,60000/len(s))+"\n---\n")); t.Logf("%q %v %v %v %v",s,d,err!=nil,time.Since(t0),err2!=nil)
 }
 var b strings.Builder; for i:=0;i<20000;i++ { b.WriteString("k:\n") }
 t0:=time.Now(); Parse("a.md",[]byte("---\n"+b.String()+"\n---\n")); t.Log("keys",time.Since(t0))
 b.Reset(); for i:=0;i<300;i++ { b.WriteString(strings.Repeat(" ",i)+"k:\n") }
 t0=time.Now(); Parse("a.md",[]byte("---\n"+b.String()+"\n---\n")); t.Log("nest",time.Since(t0))
 b.Reset(); for i:=0;i<9000;i++ { b.WriteString("k"+string(rune('a'+i%26))+string(rune('a'+i/26%26))+string(rune('a'+i/676))+": 1\n") }
 t0=time.Now(); Parse("a.md",[]byte("---\n"+b.String()+"\n---\n")); t.Log("distinct keys",time.Since(t0))
}
