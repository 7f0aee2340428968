package main

import (
	"gudgeon/checklists/boresurvey"
	"gudgeon/trade/bore"
	"gudgeon/units"
)

// The sections on welding, boring and inspecting, for other programs to read.
// Uncertainties have k = 2.

type heatOut struct {
	Steel           string   `json:"steel"`
	CE              float64  `json:"carbon_equivalent_percent"`
	Formula         string   `json:"carbon_equivalent_formula"`
	CESi            float64  `json:"carbon_equivalent_d11_annex_percent"`
	Pcm             float64  `json:"pcm_percent"`
	Weldability     string   `json:"weldability"`
	TemperatureUnit string   `json:"temperature_unit"`
	TablePreheat    float64  `json:"table_preheat"`
	Wanted          float64  `json:"preheat_wanted"`
	Preheat         *readOut `json:"preheat,omitempty"`
	PreheatStands   string   `json:"preheat_stands"`
	Coldest         *readOut `json:"interpass_coldest,omitempty"`
	Hottest         *readOut `json:"interpass_hottest,omitempty"`
	InterpassStands string   `json:"interpass_stands"`
	HeatInput       float64  `json:"heat_input_kj_per_mm,omitempty"`
	Care            []string `json:"care"`
}

type readOut struct {
	Read        float64 `json:"read"`
	Uncertainty float64 `json:"uncertainty"`
}

type passesOut struct {
	LeastStock  float64   `json:"least_stock"`
	MostStock   float64   `json:"most_stock"`
	StockFrom   string    `json:"stock_from"`
	Finish      float64   `json:"finish"`
	Stiffness   float64   `json:"bar_stiffness_n_per_mm"`
	StableDepth float64   `json:"stable_depth"`
	DepthLimit  float64   `json:"depth_limit"`
	Gives       float64   `json:"bar_gives"`
	TooClose    bool      `json:"too_close"`
	Passes      []passOut `json:"passes"`
	OutOfRound  float64   `json:"out_of_round,omitempty"`
	Minutes     float64   `json:"minutes,omitempty"`
	PowerKW     float64   `json:"power_kw,omitempty"`
	WhyNone     string    `json:"why_none,omitempty"`
	WouldDo     []string  `json:"would_do"`
}

type passOut struct {
	Kind       string  `json:"kind"`
	Tool       float64 `json:"tool"`
	Bore       float64 `json:"bore"`
	Least      float64 `json:"least_on_radius"`
	Most       float64 `json:"most_on_radius"`
	OutOfRound float64 `json:"out_of_round"`
	RPM        float64 `json:"rpm"`
	FeedMM     float64 `json:"feed_mm_per_rev"`
	Minutes    float64 `json:"minutes"`
	PowerKW    float64 `json:"power_kw"`
}

type finishedOut struct {
	Least       float64     `json:"least_diameter"`
	Greatest    float64     `json:"greatest_diameter"`
	Taper       float64     `json:"taper"`
	OutOfRound  float64     `json:"out_of_round"`
	Margins     []marginOut `json:"margins"`
	Share       *float64    `json:"share_cleaned_up,omitempty"`
	LoadedShare *float64    `json:"share_of_loaded_zone,omitempty"`
	Loaded      []int       `json:"voids_in_loaded_zone"`
	AtEdge      []int       `json:"voids_at_edge"`
}

type marginOut struct {
	Limit       string  `json:"limit"`
	Room        float64 `json:"room"`
	Uncertainty float64 `json:"uncertainty"`
	TooClose    bool    `json:"too_close"`
}

// in is a quantity in a named unit.
func in(x float64, unit string) float64 {
	u, _ := units.Named(unit)
	return rounded(u.FromSI(x), 5)
}

func heatJSON(f *boresurvey.Finding, system units.System) *heatOut {
	h, d := f.Heat, f.Job.Heat
	if h == nil {
		return nil
	}
	unit := units.Usual(units.Temperature, system)
	width := units.Usual(units.TemperatureDifference, system)
	read := func(t boresurvey.Temperature) *readOut {
		if t.K == 0 {
			return nil
		}
		return &readOut{rounded(unit.FromSI(t.K), 2), rounded(width.FromSI(bore.Coverage*t.U), 2)}
	}
	return &heatOut{Steel: steelWords(d), CE: in(h.CE, "percent"), Formula: formulaIIW, CESi: in(h.CESi, "percent"), Pcm: in(h.Pcm, "percent"),
		Weldability: h.Weldability.String(), TemperatureUnit: unit.Symbol, TablePreheat: rounded(unit.FromSI(h.Preheat), 2), Wanted: rounded(unit.FromSI(h.Wanted), 2),
		Preheat: read(d.Preheat), PreheatStands: h.Reached.String(), Coldest: read(h.Coldest), Hottest: read(h.Hottest), InterpassStands: h.Held.Held(),
		HeatInput: in(h.HeatInput, "kJ_per_mm"), Care: h.Care}
}

func (w surveyWriter) passes(f *boresurvey.Finding, system units.System) *passesOut {
	p := f.Passes
	if p == nil {
		return nil
	}
	out := &passesOut{LeastStock: w.length(p.Stock.Least), MostStock: w.length(p.Stock.Most), StockFrom: p.Stock.From, Finish: w.length(p.Aim),
		Stiffness: in(p.Set.Stiffness, "N_per_mm"), StableDepth: w.length(p.Set.Stable), DepthLimit: w.length(p.Set.DepthLimit), Gives: w.length(p.Gives),
		TooClose: p.TooClose, Passes: []passOut{}, WhyNone: p.Why, WouldDo: []string{}}
	for _, way := range p.Ways {
		out.WouldDo = append(out.WouldDo, way.Text(system))
	}
	if p.Plan == nil {
		return out
	}
	for _, pass := range p.Plan.Passes[:p.Plan.Count] {
		out.Passes = append(out.Passes, passOut{pass.Kind.String(), w.length(pass.Tool), w.length(pass.Diameter), w.length(pass.Least), w.length(pass.Most),
			w.length(pass.OutOfRound), in(pass.Rotation, "rpm"), in(pass.Feed, "mm_per_rev"), in(pass.Time, "min"), in(pass.Power, "kW")})
	}
	out.OutOfRound, out.Minutes, out.PowerKW = w.length(p.Plan.OutOfRound), in(p.Plan.Time, "min"), in(p.Plan.MostPower, "kW")
	return out
}

func (w surveyWriter) finished(f *boresurvey.Finding) *finishedOut {
	b := f.Finished
	if b == nil {
		return nil
	}
	out := &finishedOut{Least: w.length(b.Least), Greatest: w.length(b.Greatest), Taper: w.length(b.Taper), OutOfRound: w.length(b.OutOfRound),
		Loaded: []int{}, AtEdge: []int{}}
	for _, m := range b.Margins {
		out.Margins = append(out.Margins, marginOut{m.Limit, w.length(m.Room), w.length(bore.Coverage * m.U), m.Close})
	}
	if c := b.Surface; c != nil {
		share := rounded(c.Share, 6)
		out.Share = &share
		if f.Job.Finished.Loaded != nil {
			loaded := rounded(c.LoadedShare, 6)
			out.LoadedShare = &loaded
		}
		out.Loaded, out.AtEdge = counted(c.Loaded), counted(c.AtEdge)
	}
	return out
}

// counted turns indices into the numbers that the voids have on the screen.
func counted(list []int) []int {
	out := make([]int, len(list))
	for i, n := range list {
		out[i] = n + 1
	}
	return out
}
