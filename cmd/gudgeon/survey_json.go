package main

import (
	"math"

	"gudgeon/checklists/boresurvey"
	"gudgeon/rules"
	"gudgeon/trade/bore"
	"gudgeon/trade/weld"
	"gudgeon/units"
)

// surveyOut is a finding for other programs to read. Each key that ends in a
// unit's name is in that unit; clock positions are hours; uncertainties have k = 2.
type surveyOut struct {
	Part       string        `json:"part"`
	Verdict    rules.Verdict `json:"verdict"`
	LengthUnit string        `json:"length_unit"`
	Notices    []noticeOut   `json:"notices"`
	Missing    []string      `json:"missing"`
	Stations   []stationOut  `json:"stations"`
	Outliers   []placeOut    `json:"outliers"`
	Axis       *axisOut      `json:"axis,omitempty"`
	Centres    *centresOut   `json:"centres,omitempty"`
	Plan       *planOut      `json:"plan,omitempty"`
	HandLaid   *planOut      `json:"with_hand_weld,omitempty"`
	Heat       *heatOut      `json:"heat,omitempty"`
	Passes     *passesOut    `json:"passes,omitempty"`
	Finished   *finishedOut  `json:"finished,omitempty"`
}

type noticeOut struct {
	Verdict rules.Verdict `json:"verdict"`
	Text    string        `json:"text"`
}

type placeOut struct {
	Value float64 `json:"value"`
	Clock float64 `json:"clock"`
	Depth float64 `json:"depth"`
}

type offsetOut struct {
	Offset      float64 `json:"offset"`
	Clock       float64 `json:"clock"`
	Uncertainty float64 `json:"uncertainty"`
	Significant bool    `json:"significant"`
}

type stationOut struct {
	Depth       float64   `json:"depth"`
	Centre      offsetOut `json:"centre"`
	Diameter    float64   `json:"diameter"`
	Uncertainty float64   `json:"diameter_uncertainty"`
	LSCI        float64   `json:"roundness_lsci"`
	MZCI        float64   `json:"roundness_mzci"`
	Places      int       `json:"places"`
}

type axisOut struct {
	Datum         string    `json:"datum"`
	Near          offsetOut `json:"near_face"`
	Far           offsetOut `json:"far_face"`
	TiltDegrees   float64   `json:"tilt_degrees"`
	TiltThouFoot  float64   `json:"tilt_thou_per_foot"`
	TiltClock     float64   `json:"tilt_clock"`
	Significant   bool      `json:"tilt_significant"`
	CylinderSize  float64   `json:"cylinder_diameter"`
	Cylindricity  float64   `json:"cylindricity"`
	LengthBetween float64   `json:"bore_length"`
}

type centresOut struct {
	Verdict       string   `json:"verdict"`
	Agree         []string `json:"agree"`
	OddOneOut     []string `json:"odd_one_out"`
	EarlierRepair bool     `json:"earlier_repair"`
	MeasureNext   []string `json:"measure_next"`
	Text          string   `json:"text"`
}

type planOut struct {
	CleansUp     bool        `json:"cleans_up"`
	TooClose     bool        `json:"too_close"`
	LeastStock   placeOut    `json:"least_stock"`
	LayersEnough int         `json:"layers_enough"`
	Share        float64     `json:"share_cleaned_up"`
	ThinnestWall *placeOut   `json:"thinnest_wall,omitempty"`
	Deposit      float64     `json:"deposit_cm3"`
	Short        []windowOut `json:"short"`
	HandWeld     []windowOut `json:"hand_weld"`
	Filler       []fillerOut `json:"filler"`
}

type windowOut struct {
	From      float64 `json:"from_clock"`
	To        float64 `json:"to_clock"`
	DepthFrom float64 `json:"from_depth"`
	DepthTo   float64 `json:"to_depth"`
	ShortBy   float64 `json:"short_by,omitempty"`
	Layer     int     `json:"layer,omitempty"`
	Thickness float64 `json:"thickness,omitempty"`
}

type fillerOut struct {
	Process string  `json:"process"`
	UsedKg  float64 `json:"used_kg"`
	ArcMin  float64 `json:"arc_minutes,omitempty"`
}

// surveyWriter turns metres into the shop's unit of length.
type surveyWriter struct{ unit units.Unit }

func surveyJSON(f *boresurvey.Finding, system units.System) surveyOut {
	w := surveyWriter{units.Usual(units.Length, system)}
	out := surveyOut{Part: f.Job.Part, Verdict: f.Verdict, LengthUnit: w.unit.Symbol,
		Notices: []noticeOut{}, Missing: append([]string{}, f.Missing...), Stations: []stationOut{}, Outliers: []placeOut{}}
	for _, n := range f.Notices {
		out.Notices = append(out.Notices, noticeOut{n.Verdict, n.Text(system)})
	}
	for i := range f.Survey.Stations {
		if st := &f.Survey.Stations[i]; st.Swept {
			out.Stations = append(out.Stations, w.station(st))
		}
	}
	for _, o := range f.Survey.Outliers {
		out.Outliers = append(out.Outliers, w.place(o.Off, o.Clock, o.Station))
	}
	out.Axis = w.axis(f)
	out.Centres = centresJSON(f.Centres, system)
	if f.Plan != nil {
		out.Plan = w.plan(f.Plan, f.Filler, false)
	}
	if f.HandLaid != nil {
		out.HandLaid = w.plan(f.HandLaid, f.Filler, true)
	}
	out.Heat, out.Passes, out.Finished = heatJSON(f, system), w.passes(f, system), w.finished(f)
	return out
}

// length rounds to a millionth of an inch or so: more digits mean nothing.
func (w surveyWriter) length(x float64) float64 { return rounded(w.unit.FromSI(x), 6) }

func rounded(x float64, places int) float64 {
	p := math.Pow10(places)
	return math.Round(x*p) / p
}

func hours(clock float64) float64 { return rounded(clock*6/math.Pi, 3) }

func (w surveyWriter) place(value, clock, z float64) placeOut {
	return placeOut{w.length(value), hours(clock), w.length(z)}
}

func (w surveyWriter) offset(o bore.Offset) offsetOut {
	return offsetOut{w.length(o.Size), hours(o.Clock), w.length(bore.Coverage * o.U), o.Significant}
}

func (w surveyWriter) station(st *bore.Station) stationOut {
	c := &st.Circle
	xx, _, yy := st.Cov()
	u := math.Sqrt(max(xx, yy))
	off := bore.Offset{Size: c.Centre.Len(), Clock: c.Centre.Clock(), U: u, Significant: c.Centre.Len() > bore.Coverage*u}
	return stationOut{Depth: w.length(st.Z), Centre: w.offset(off), Diameter: w.length(c.Diameter()),
		Uncertainty: w.length(bore.Coverage * c.UDiameter()), LSCI: w.length(st.Round.LSCI), MZCI: w.length(st.Round.MZCI.Width()), Places: c.DoF + 3}
}

func (w surveyWriter) axis(f *boresurvey.Finding) *axisOut {
	if f.Axis == nil {
		return nil
	}
	tilt := f.Axis.Tilt()
	return &axisOut{Datum: f.Datum.Name, Near: w.offset(f.Axis.Offset(0)), Far: w.offset(f.Axis.Offset(f.Survey.Length)),
		TiltDegrees: rounded(tilt.Degrees(), 5), TiltThouFoot: rounded(tilt.ThouPerFoot(), 3), TiltClock: hours(tilt.Clock), Significant: tilt.Significant,
		CylinderSize: w.length(2 * f.Survey.Cylinder.R), Cylindricity: w.length(f.Survey.Cylinder.Width), LengthBetween: w.length(f.Survey.Length)}
}

func centresJSON(c *bore.Comparison, system units.System) *centresOut {
	if c == nil {
		return nil
	}
	out := &centresOut{Verdict: c.Verdict.String(), Agree: []string{}, OddOneOut: []string{}, MeasureNext: []string{},
		EarlierRepair: c.EarlierRepair, Text: c.Text(system)}
	for _, i := range c.Group {
		out.Agree = append(out.Agree, c.Candidates[i].Name)
	}
	for _, o := range c.Odd {
		out.OddOneOut = append(out.OddOneOut, c.Candidates[o.Candidate].Name)
	}
	for _, next := range c.Next {
		out.MeasureNext = append(out.MeasureNext, next.String())
	}
	return out
}

func (w surveyWriter) plan(p *weld.Plan, filler []boresurvey.Filler, hand bool) *planOut {
	out := &planOut{CleansUp: p.CleansUp, TooClose: p.TooClose, LeastStock: w.place(p.LeastStock.Value, p.LeastStock.Clock, p.LeastStock.Z),
		LayersEnough: p.LayersEnough, Share: rounded(p.Share, 5), Deposit: rounded(p.Deposit.Volume*1e6, 3),
		Short: []windowOut{}, HandWeld: []windowOut{}, Filler: []fillerOut{}}
	if p.Job.Boss > 0 {
		wall := w.place(p.Wall.Value, p.Wall.Clock, p.Wall.Z)
		out.ThinnestWall = &wall
	}
	for _, a := range p.Short {
		v := w.window(a.Window)
		v.ShortBy = w.length(a.Most.Value)
		out.Short = append(out.Short, v)
	}
	for _, h := range p.HandWeld {
		v := w.window(h.Window)
		v.Layer, v.Thickness = h.Layer, w.length(h.Thickness)
		out.HandWeld = append(out.HandWeld, v)
	}
	for _, f := range filler {
		use := f.Filler
		if hand {
			use = f.Hand
		}
		out.Filler = append(out.Filler, fillerOut{f.Process.String(), rounded(use.Used, 4), rounded(use.ArcTime/60, 2)})
	}
	return out
}

func (w surveyWriter) window(v weld.Window) windowOut {
	return windowOut{From: hours(v.From), To: hours(v.To), DepthFrom: w.length(v.DepthFrom), DepthTo: w.length(v.DepthTo)}
}
