package bore

import "math"

// Nodes and weights of the 15-point Kronrod rule and of the 7-point Gauss rule
// inside it, from QUADPACK (Piessens et al. 1983), routine QK15.
var (
	kronrodX = [8]float64{0.991455371120812639206854697526329, 0.949107912342758524526189684047851,
		0.864864423359769072789712788640926, 0.741531185599394439863864773280788,
		0.586087235467691130294144691693013, 0.405845151377397166906606412076961,
		0.207784955007898467600689403773245, 0}
	kronrodW = [8]float64{0.022935322010529224963732008058970, 0.063092092629978553290700663189204,
		0.104790010322250183839876322541518, 0.140653259715525918745189590510238,
		0.169004726639267902826583426598550, 0.190350578064785409913256402421014,
		0.204432940075298892414161999234649, 0.209482141084727828012999174891714}
	gaussW = [4]float64{0.129484966168869693270611432679082, 0.279705391489276667901467771423780,
		0.381830050505118944950369775488975, 0.417959183673469387755102040816327}
)

// adapt integrates from a to b, halving where the two rules differ by more than
// tol, at most depth times.
func (p *stretch) adapt(a, b, tol float64, depth int) Volume {
	v := p.kronrod(a, b)
	if v.Error <= tol || depth == 0 {
		return v
	}
	mid := (a + b) / 2
	left := p.adapt(a, mid, tol/2, depth-1)
	right := p.adapt(mid, b, tol/2, depth-1)
	return Volume{left.Volume + right.Volume, left.Error + right.Error}
}

// kronrod applies the rule once; the error is the plain difference of the two
// rules, which is far on the safe side.
func (p *stretch) kronrod(a, b float64) Volume {
	centre, half := (a+b)/2, (b-a)/2
	middle := p.at(centre)
	fine, coarse := middle*kronrodW[7], middle*gaussW[3]
	for i := range 7 {
		dx := half * kronrodX[i]
		pair := p.at(centre-dx) + p.at(centre+dx)
		fine += pair * kronrodW[i]
		if i%2 == 1 {
			coarse += pair * gaussW[i/2]
		}
	}
	return Volume{fine * half, math.Abs(fine-coarse) * half}
}
