package boresurvey

import (
	"errors"
	"math"
	"strings"

	"gudgeon/rules"
	"gudgeon/rules/source"
	"gudgeon/trade/bore"
)

// Job is what a survey file holds, understood.
type Job struct {
	File  string
	Part  string
	Note  string
	By    string
	Datum string // bar, agreed, worn bore, or the name of a centre

	Readings bore.Readings
	Dashes   []Dash
	Centres  []Centre
	Plan     *PlanData // nil when the file has none

	// The sections on the work itself; nil when the file has none.
	Heat        *HeatData
	WeldSurface *bore.Readings // swept from the bar, set on the true centre
	WeldDashes  []Dash
	Passes      *PassData
	Finished    *FinishedData

	places places
}

// Dash is a reading that could not be taken.
type Dash struct {
	Z     float64 // m
	Clock float64 // rad
}

// places remembers where in the file a later mistake belongs.
type places struct {
	sweep, plan, weldSurface source.Text
	stations                 []stationText
}

type stationText struct {
	z    float64
	text source.Text
}

// fileSource is the file as written.
type fileSource struct {
	Part      source.Text    `yaml:"part,required"`
	Note      source.Text    `yaml:"note"`
	By        source.Text    `yaml:"surveyed by"`
	Length    source.Text    `yaml:"bore length"`
	Datum     source.Text    `yaml:"datum"`
	BarWithin source.Text    `yaml:"bar within"`
	Sweep     *tableSource   `yaml:"sweep"`
	Diameters *tableSource   `yaml:"diameters"`
	Centres   []centreSource `yaml:"centres"`
	Plan      *planSource    `yaml:"plan"`

	Heat        *heatSource     `yaml:"heat"`
	WeldSurface *tableSource    `yaml:"weld surface"`
	Passes      *passSource     `yaml:"passes"`
	Finished    *finishedSource `yaml:"finished"`
}

// Read understands a survey file, with the shipped instruments. All mistakes come
// back together.
func Read(f *source.File) (*Job, error) { return ReadWith(rules.UsualInstruments(), f) }

// ReadWith understands a survey file whose readings were taken with the
// instruments of a shop.
func ReadWith(known rules.Instruments, f *source.File) (*Job, error) {
	root, err := source.Parse(f)
	if err != nil {
		return nil, err
	}
	var src fileSource
	var report source.Report
	root.Decode(&src, &report)
	src.readWith(known)
	job := &Job{File: f.Name, Part: src.Part.Value, Note: src.Note.Value, By: src.By.Value}
	job.places.sweep = src.Part
	job.Readings.Length = readLength(src.Length, limits{0.001, 10}, &report)
	job.Readings.UDatum = readLength(src.BarWithin, limits{0, 0.05}, &report) / bore.Coverage
	job.readSweep(src.Sweep, &report)
	job.readDiameters(src.Diameters, &report)
	if src.Sweep == nil && src.Diameters == nil && !report.Failed() {
		root.Fail(&report, "the file has no readings", "add sweep: with a table of indicator readings, or diameters:")
	}
	for i := range src.Centres {
		job.Centres = append(job.Centres, src.Centres[i].read(&report))
	}
	job.readDatum(src.Datum, &report)
	if src.Plan != nil {
		job.Plan = src.Plan.read(&report)
		job.places.plan = src.Plan.first
	}
	job.readWork(&src, &report)
	return job, report.Err()
}

// readWith tells every table which instruments there are.
func (src *fileSource) readWith(known rules.Instruments) {
	for _, t := range []*tableSource{src.Sweep, src.Diameters, src.WeldSurface} {
		if t != nil {
			t.known = known
		}
	}
	for i := range src.Centres {
		src.Centres[i].known = known
	}
	if src.Heat != nil {
		src.Heat.known = known
	}
	if src.Finished != nil {
		src.Finished.known = known
	}
}

// readWork reads the sections on welding, boring and inspecting.
func (job *Job) readWork(src *fileSource, report *source.Report) {
	if src.Heat != nil {
		job.Heat = src.Heat.read(report)
	}
	job.readWeldSurface(src.WeldSurface, report)
	if src.Passes != nil {
		job.Passes = src.Passes.read(report)
	}
	if src.Finished != nil {
		job.Finished = src.Finished.read(report)
	}
}

// readDatum checks that the datum named is one that the file tells about.
func (job *Job) readDatum(text source.Text, report *source.Report) {
	known := []string{DatumBar, DatumAgreed, DatumWornBore}
	for _, c := range job.Centres {
		known = append(known, c.Name)
	}
	job.Datum = strings.ToLower(text.Value)
	if job.Datum == "" {
		job.Datum = DatumBar
	}
	for _, k := range known {
		if strings.EqualFold(k, job.Datum) {
			job.Datum = k
			return
		}
	}
	report.At(text, "the datum is none of the centres in this file", source.Suggest(job.Datum, known))
}

// What the true axis may be taken from, besides a named centre.
const (
	DatumBar      = "bar"
	DatumAgreed   = "agreed"
	DatumWornBore = "worn bore"
)

// blame puts an error of the survey at the place in the file that it is about.
func (job *Job) blame(err error) error {
	at := job.places.sweep
	var station *bore.StationError
	if errors.As(err, &station) {
		for _, s := range job.places.stations {
			if math.Abs(s.z-station.Z) < 1e-5 {
				at = s.text
			}
		}
		err = station.Err
	}
	return mistake(at, err)
}

// mistake is an error at one place of the file.
func mistake(at source.Text, err error) error {
	var report source.Report
	report.At(at, err.Error(), "")
	return report.Err()
}
