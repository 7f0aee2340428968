package bore

import (
	"errors"
	"math"

	"gudgeon/trade"
	"gudgeon/units"
)

// Station is one cross-section of the bore.
type Station struct {
	Z        float64   // from the near face, m
	Readings []Reading // swept, in clock order
	Swept    bool      // enough of them for a circle
	Circle   Circle    // least squares circle; zero unless Swept
	UForm    float64   // added standard uncertainty of the centre because an arc hides ovality, m
	Round    Roundness
	Arc      Arc
	Size     Size // by inside micrometer; N is 0 without

	raw []rawPoint
}

// Surveyed is a worn bore as the readings show it.
type Surveyed struct {
	Stations []Station
	Axis     *Axis     // nil unless two stations were swept
	Cylinder *Cylinder // nil unless two stations were swept
	Length   float64   // face to face, or to the last station, m
	Outliers []Outlier
	Repeats  Repeats
	Warnings []Warning

	// LeastRadius and GreatestRadius are the nearest and the farthest place of
	// the wall from the bar, readings and the circle between them, m.
	LeastRadius, GreatestRadius Place

	wall   *Surface
	uDatum float64
}

// Place is a spot on the wall.
type Place struct {
	Radius float64 // from the bar, m
	Clock  float64 // rad
	Z      float64 // m
}

// Survey returns circles, axis and cylinder of a worn bore, with uncertainties.
//
//	at each station: least squares circle (FitCircle), roundness (RoundnessOf), arc
//	through the centres: x = x₀ + mₓ·z, y = y₀ + m_y·z, least squares (FitAxis)
//	through all readings: least squares cylinder (FitCylinder)
//
// Stations from −1 to 10 m, clock positions within two turns, set radius 0 to
// 1.5 m, indicator readings within ±100 mm, diameters 5 mm to 3 m, standard
// uncertainties 0 to 50 mm. A centre's covariance is that of its circle, widened
// by (Oval·LSCI)² for an arc that cannot tell oval from off centre, and by UDatum².
//
// Errors: a reading out of range (named), no readings, fewer than four places or
// less than 60° of arc at a swept station, readings that make no circle round
// the bar. Diameters alone
// are no error: Axis is then nil and a warning says so. Source: as the functions
// named; combining as JCGM 100, 5.1.2.
func Survey(in Readings) (*Surveyed, error) {
	if err := in.check(); err != nil {
		return nil, err
	}
	s := &Surveyed{Length: in.Length, uDatum: in.UDatum}
	s.Stations, s.Repeats = in.stations()
	for i := range s.Stations {
		if err := s.section(&s.Stations[i]); err != nil {
			return nil, err
		}
	}
	if s.Length == 0 {
		s.Length = s.Stations[len(s.Stations)-1].Z
	}
	if err := s.through(); err != nil {
		return nil, err
	}
	s.wall = s.draw()
	s.extremes()
	s.warn()
	return s, nil
}

// section works out one station.
func (s *Surveyed) section(st *Station) error {
	if len(st.Readings) == 0 {
		return nil
	}
	n := len(st.Readings)
	points, u := make([]XY, 0, n), make([]float64, 0, n)
	clock, index := make([]float64, 0, n), make([]int, 0, n)
	rms := 0.0
	for i, r := range st.Readings {
		if r.LeftOut {
			continue
		}
		if s.Repeats.DoF > 0 {
			r.U = max(r.U, s.Repeats.Sigma/math.Sqrt(float64(r.N)))
			st.Readings[i].U = r.U
		}
		points, u = append(points, Polar(r.Clock, r.Radius)), append(u, r.U)
		clock, index = append(clock, r.Clock), append(index, i)
		rms += r.U * r.U
	}
	if len(points) < 4 {
		return &StationError{Z: st.Z, Err: errFewPoints}
	}
	if st.Arc = ArcOf(clock); st.Arc.Covered < leastArc || math.IsInf(st.Arc.Oval, 1) {
		return &StationError{Z: st.Z, Err: errShortArc}
	}
	var err error
	if st.Circle, err = FitCircle(points, u); err != nil {
		return &StationError{Z: st.Z, Err: err}
	}
	if st.Circle.Centre.Len() >= st.Circle.R {
		return &StationError{Z: st.Z, Err: errBarOutside}
	}
	st.Swept = true
	if rms = math.Sqrt(rms / float64(len(points))); rms == 0 {
		rms = st.Circle.Sigma
	}
	if st.Round, err = RoundnessOf(points, &st.Circle, rms); err != nil {
		return &StationError{Z: st.Z, Err: err}
	}
	st.UForm = st.Arc.Oval * st.Round.LSCI
	for _, o := range outliers(points, u, &st.Circle) {
		r := st.Readings[index[o.place]]
		s.Outliers = append(s.Outliers, Outlier{r.Index, st.Z, r.Clock, o.off, o.chance})
	}
	return nil
}

// leastArc is the shortest arc that is still fitted, 60°: there an error of a
// reading already moves the centre many times as far.
const leastArc = math.Pi/3 - sameClock

var (
	errShortArc   = errors.New("the readings cover less than 60° of the turn: that fixes no centre; read all round")
	errBarOutside = errors.New("the readings make a circle that the bar lies outside of: check clock positions and set radius")
)

// StationError says at which station something is wrong.
type StationError struct {
	Z   float64 // m
	Err error
}

func (e *StationError) Error() string {
	return "station at " + units.Show(e.Z, units.Length, units.InchShop, units.Nearest) + ": " + e.Err.Error()
}

// Unwrap gives the fault itself.
func (e *StationError) Unwrap() error { return e.Err }

// Cov is the covariance of a station's centre in the plane: xx, xy, yy, m².
func (st *Station) Cov() (xx, xy, yy float64) {
	c := st.centreCov()
	return c.xx, c.xy, c.yy
}

func (st *Station) centreCov() cov2 { return st.Circle.cov().plusRound(st.UForm) }

// through lays axis and cylinder through the stations.
func (s *Surveyed) through() error {
	var at []Centre
	var points []Point3
	for i := range s.Stations {
		st := &s.Stations[i]
		if !st.Swept {
			continue
		}
		at = append(at, Centre{Z: st.Z, XY: st.Circle.Centre, cov: st.centreCov()})
		for _, r := range st.Readings {
			if !r.LeftOut {
				points = append(points, Point3{Polar(r.Clock, r.Radius), st.Z})
			}
		}
	}
	if len(at) < 2 {
		return nil
	}
	axis, err := FitAxis(at, s.uDatum)
	if err != nil {
		return err
	}
	s.Axis = axis
	s.Cylinder, err = FitCylinder(points)
	return err
}

// extremes finds the nearest and the farthest place of the wall.
func (s *Surveyed) extremes() {
	s.LeastRadius.Radius, s.GreatestRadius.Radius = math.Inf(1), 0
	note := func(p Place) {
		if p.Radius < s.LeastRadius.Radius {
			s.LeastRadius = p
		}
		if p.Radius > s.GreatestRadius.Radius {
			s.GreatestRadius = p
		}
	}
	surface, err := s.Surface()
	if err != nil {
		s.LeastRadius = Place{}
		return
	}
	clocks := append(EvenClocks(72), 0, 0)
	row := make([]float64, len(clocks))
	for _, st := range s.Stations {
		if !st.Swept {
			continue
		}
		for _, r := range st.Readings {
			note(Place{r.Radius, r.Clock, st.Z})
		}
		clocks[72] = st.Circle.Centre.Clock() // the way it is off, exactly
		clocks[73] = clocks[72] + math.Pi
		if surface.Row(Line{}, st.Z, Rays(clocks), row) != nil {
			continue // the bar lies outside the bore: the readings must do
		}
		for i, r := range row {
			note(Place{r, Turn(clocks[i]), st.Z})
		}
	}
}

// LeastStock returns the least metal left on the bar's own axis, m on the
// radius, and where. Below zero is the depth of the dark patch.
//
//	s = D/2 − greatest radius
//
// finish D is a diameter, 5 mm to 3 m. Error: a *trade.RangeError, or no swept
// station. Source: the definition of stock.
func (s *Surveyed) LeastStock(finish float64) (float64, Place, error) {
	if err := limFinish.Check(finish); err != nil {
		return 0, Place{}, err
	}
	if s.GreatestRadius.Radius == 0 {
		return 0, Place{}, errNoCentre
	}
	return finish/2 - s.GreatestRadius.Radius, s.GreatestRadius, nil
}

// Steps gives the worked lines of the survey.
func (s *Surveyed) Steps() []trade.Step {
	var out []trade.Step
	add := func(name, formula string, kind units.Kind, v float64, unit string) {
		out = append(out, trade.Step{Name: name, Formula: formula, Kind: kind, Value: v, Unit: unit})
	}
	for _, st := range s.Stations {
		if !st.Swept {
			continue
		}
		add("station", "z", units.Length, st.Z, "")
		add("diameter", "2R, least squares circle", units.Length, st.Circle.Diameter(), "")
		add("centre off", "√(x² + y²)", units.Length, st.Circle.Centre.Len(), "thou")
		add("centre towards", "atan2(x, y)", units.Angle, st.Circle.Centre.Clock(), "hours")
		add("out of round, LSCI", "max − min distance from the centre", units.Length, st.Round.LSCI, "thou")
	}
	if s.Axis == nil {
		return out
	}
	near, far, tilt := s.Near(), s.Far(), s.Axis.Tilt()
	add("offset at the near face", "|(x₀, y₀)|", units.Length, near.Size, "thou")
	add("offset at the far face", "|(x₀ + mₓ·L, y₀ + m_y·L)|", units.Length, far.Size, "thou")
	add("tilt", "atan √(mₓ² + m_y²)", units.Angle, tilt.Angle, "thou_per_ft")
	return out
}

// Near is the offset of the bore's axis at the near face. Call it only if Axis
// is not nil.
func (s *Surveyed) Near() Offset { return s.Axis.Offset(0) }

// Far is the offset at the far face, Length from the near one.
func (s *Surveyed) Far() Offset { return s.Axis.Offset(s.Length) }
