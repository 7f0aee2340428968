package boresurvey

import (
	"math"

	"gudgeon/rules"
	"gudgeon/rules/source"
	"gudgeon/trade"
	"gudgeon/trade/bore"
)

// FinishedData is the bore as it was measured and looked at after the last pass.
type FinishedData struct {
	Diameters  trade.Survey
	Size       Size    // its own limits; zero: the plan's finish diameter
	Taper      float64 // greatest allowed, m; 0: not asked
	OutOfRound float64 // greatest allowed on the radius, m; 0: not asked
	Edge       float64 // a void nearer than this to a face is at the edge, m
	Loaded     *Arc    // where the pin bears; nil when not given
	Voids      []bore.Void
	Looked     bool // the file says whether there are voids
	Missing    []string

	at       source.Text
	stations []stationText
	voids    []source.Text
}

// Arc is a part of the turn, clockwise, rad.
type Arc struct{ From, To float64 }

// Width is how far the arc reaches, rad; all round where it ends where it
// begins, as with a patch of weld.
func (a Arc) Width() float64 {
	if a.From == a.To {
		return 2 * math.Pi
	}
	return bore.Turn(a.To - a.From)
}

// Middle is its middle, rad.
func (a Arc) Middle() float64 { return bore.Turn(a.From + a.Width()/2) }

// edgeUsual is the edge strip where the file gives none: 1/8 in. Common
// practice, no source.
const edgeUsual = 0.125 * 0.0254

type finishedSource struct {
	Size       source.Text `yaml:"size"`
	Taper      source.Text `yaml:"taper"`
	OutOfRound source.Text `yaml:"out of round"`
	Unit       source.Text `yaml:"unit"`
	With       source.Text `yaml:"with"`
	Within     source.Text `yaml:"within"`
	Readings   node        `yaml:"readings,required"`
	Loaded     *arcSource  `yaml:"loaded zone"`
	Edge       source.Text `yaml:"edge"`
	Voids      voidsSource `yaml:"voids"`

	known rules.Instruments
}

type arcSource struct {
	From source.Text `yaml:"from,required"`
	To   source.Text `yaml:"to,required"`
}

// voidsSource is a list of voids, or the word none.
type voidsSource struct {
	list   []voidSource
	looked bool
}

// DecodeNode reads the list. Nothing behind the key says nothing.
func (v *voidsSource) DecodeNode(n source.Node, report *source.Report) {
	if n.IsEmpty() {
		return
	}
	v.looked = true
	if n.IsList() {
		n.Decode(&v.list, report)
		return
	}
	if n.IsMapping() || n.Text(report).Value != "none" {
		n.Fail(report, "a list of voids is expected here, or none", "write lines like - {at: 4:30, depth: 2 in, across: .05 in, along: .1 in}")
	}
}

type voidSource struct {
	At     source.Text `yaml:"at,required"`
	Depth  source.Text `yaml:"depth,required"`
	Across source.Text `yaml:"across,required"`
	Along  source.Text `yaml:"along,required"`
}

func (src *finishedSource) read(report *source.Report) *FinishedData {
	d := &FinishedData{Size: readSize(src.Size, diameters, report), Taper: readLength(src.Taper, thin, report),
		OutOfRound: readLength(src.OutOfRound, thin, report), Edge: edgeUsual, Looked: src.Voids.looked}
	if src.Size.Value != "" && d.Size.Nominal > 0 && !d.Size.HasLimits {
		report.At(src.Size, "the size has no limits", "write it like 3.000 +.002/-.000 in")
	}
	table := tableSource{Unit: src.Unit, With: src.With, Within: src.Within, Readings: src.Readings, known: src.known}
	d.Diameters, d.stations = table.diameters(report)
	d.at = firstOf(src.Size, src.With, src.Unit)
	if len(d.stations) > 0 {
		d.at = firstOf(src.Size, d.stations[0].text)
	}
	d.needGauge()
	if src.Edge.Value != "" {
		d.Edge = readLength(src.Edge, limits{0, 0.1}, report)
	}
	if src.Loaded != nil {
		d.Loaded = &Arc{clockOf(src.Loaded.From, report), clockOf(src.Loaded.To, report)}
	}
	for i := range src.Voids.list {
		d.Voids = append(d.Voids, src.Voids.list[i].read(report))
		d.voids = append(d.voids, src.Voids.list[i].At)
	}
	d.need(d.Looked, "voids (what did not clean up, with dye on: a list, or none)")
	d.need(d.Loaded != nil || len(d.Voids) == 0, "loaded zone (from and to, clockwise, where the pin bears)")
	return d
}

func (d *FinishedData) need(there bool, what string) {
	if !there {
		d.Missing = append(d.Missing, "finished: "+what)
	}
}

// needGauge asks how good the gauge is where no reading says.
func (d *FinishedData) needGauge() {
	for _, p := range d.Diameters {
		if p.U == 0 {
			d.need(false, "with (the gauge it was measured with), or within")
			return
		}
	}
}

func (src *voidSource) read(report *source.Report) bore.Void {
	size := limits{1e-5, 10}
	return bore.Void{Clock: clockOf(src.At, report), Z: readLength(src.Depth, limits{-1, 10}, report),
		Along: readLength(src.Along, size, report), Round: readLength(src.Across, size, report)}
}
