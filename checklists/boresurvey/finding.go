package boresurvey

import (
	"errors"
	"math"

	"gudgeon/rules"
	"gudgeon/trade/bore"
	"gudgeon/trade/weld"
)

// Finding is a survey worked out, as far as its file goes.
type Finding struct {
	Job     *Job
	Survey  *bore.Surveyed
	Centres *bore.Comparison // nil without a centre to compare
	Datum   Datum
	Axis    *bore.Axis // of the worn bore, seen from the datum; nil unless two stations were swept

	Plan     *weld.Plan // nil when something for it is missing
	HandLaid *weld.Plan // the plan with its hand-weld list laid; nil when there is none
	Filler   []Filler

	// What the sections on the work come to; nil without the section, or when
	// something for it is missing.
	Heat        *Heat
	WeldSurface *bore.Surveyed
	Passes      *Passes
	Finished    *Finished

	Missing []string // what the finding waits for
	Notices []Notice // worst first
	Verdict rules.Verdict
}

// Filler is what the plan uses with one process.
type Filler struct {
	Process weld.Process
	weld.Filler
	Hand weld.Filler // the same with the hand-weld list laid
}

// Find works a job out. An error is a mistake in the file.
func Find(job *Job) (*Finding, error) {
	f := &Finding{Job: job}
	candidates, err := job.candidates()
	if err != nil {
		return nil, err
	}
	in := job.Readings
	if err := f.survey(in); err != nil {
		return nil, err
	}
	if err := f.compare(candidates); err != nil {
		return nil, job.blame(err)
	}
	f.takeDatum()
	if u := f.Datum.U; u != in.UDatum { // now that it is known how sure the datum is
		in.UDatum = u
		if err := f.survey(in); err != nil {
			return nil, err
		}
	}
	f.seeFromDatum()
	for _, work := range []func() error{f.plan, f.heat, f.passes, f.finished} {
		if err := work(); err != nil {
			return nil, err
		}
	}
	f.judge()
	return f, nil
}

func (job *Job) candidates() ([]bore.Candidate, error) {
	var out []bore.Candidate
	for i := range job.Centres {
		c, err := job.Centres[i].candidate()
		if err != nil {
			return nil, err
		}
		out = append(out, c)
	}
	return out, nil
}

func (f *Finding) survey(in bore.Readings) error {
	s, err := bore.Survey(in)
	if err != nil {
		return f.Job.blame(err)
	}
	f.Survey = s
	return nil
}

// compare sets the centres against each other, and against the worn bore where
// it is farther off.
func (f *Finding) compare(list []bore.Candidate) error {
	if len(list) == 0 {
		return nil
	}
	worn := true
	for _, c := range list {
		worn = worn && c.Feature != bore.WornBore
	}
	if worn && f.Survey.Axis != nil {
		list = append(list, f.wornBore())
	}
	var err error
	f.Centres, err = bore.Compare(list)
	return err
}

func (f *Finding) wornBore() bore.Candidate {
	at, name := f.Survey.Near(), "worn bore at the near face"
	if far := f.Survey.Far(); far.Size > at.Size {
		at, name = far, "worn bore at the far face"
	}
	return bore.Candidate{Name: name, Feature: bore.WornBore, Centre: at.XY, U: max(at.U, leastU)}
}

// seeFromDatum moves the axis so that the datum is its origin.
func (f *Finding) seeFromDatum() {
	if f.Survey.Axis == nil {
		return
	}
	axis := *f.Survey.Axis
	d := f.Datum.Line
	axis.X0, axis.Y0, axis.MX, axis.MY = axis.X0-d.X0, axis.Y0-d.Y0, axis.MX-d.MX, axis.MY-d.MY
	f.Axis = &axis
}

// plan makes the weld plan, if there is enough for it.
func (f *Finding) plan() error {
	data := f.Job.Plan
	if data == nil {
		f.Missing = append(f.Missing, "plan: finish diameter, clean-up allowance, layer, layers")
		return nil
	}
	f.Missing = append(f.Missing, data.Missing...)
	if f.Axis == nil {
		f.Missing = append(f.Missing, "a sweep at two stations or more: without it there is no axis")
		return nil
	}
	if len(data.Missing) > 0 {
		return nil
	}
	job := data.Job
	var err error
	if job.Surface, err = f.Survey.Surface(); err != nil {
		return f.Job.blame(err)
	}
	job.Axis, job.Length = f.Datum.Line, f.Survey.Length
	job.BossCentre = f.bossCentre()
	job.U = math.Hypot(f.Survey.UWall(), data.BuildUpWithin/bore.Coverage)
	if f.Plan, err = weld.MakePlan(job); err != nil {
		return f.Job.blamePlan(err)
	}
	if len(f.Plan.HandWeld) > 0 {
		if f.HandLaid, err = weld.ApplyHandWeld(f.Plan); err != nil {
			return f.Job.blamePlan(err)
		}
	}
	return f.fill()
}

// bossCentre is where the outside of the boss was swept; else it is taken to
// lie on the datum.
func (f *Finding) bossCentre() bore.XY {
	if f.Centres != nil {
		for _, c := range f.Centres.Candidates {
			if c.Feature == bore.OutsideOfBoss {
				return c.Centre
			}
		}
	}
	return f.Datum.At(f.Survey.Length / 2)
}

// fill works out filler and, where a rate is given, arc time.
func (f *Finding) fill() error {
	list := []weld.Process{weld.Stick, weld.SolidWireArCO2, weld.FluxCoredGas}
	if f.Job.Plan.ProcessNamed {
		list = []weld.Process{f.Job.Plan.Process}
	}
	for _, p := range list {
		out := Filler{Process: p}
		var err error
		if out.Filler, err = f.filler(p, f.Plan.Deposit.Volume); err != nil {
			return f.Job.blamePlan(err)
		}
		if f.HandLaid != nil {
			if out.Hand, err = f.filler(p, f.HandLaid.Deposit.Volume); err != nil {
				return f.Job.blamePlan(err)
			}
		}
		f.Filler = append(f.Filler, out)
	}
	return nil
}

func (f *Finding) filler(p weld.Process, volume float64) (weld.Filler, error) {
	share, err := p.Efficiency()
	if err != nil {
		return weld.Filler{}, err
	}
	deposit, err := weld.DepositMass(volume, weld.SteelDensity)
	if err != nil {
		return weld.Filler{}, err
	}
	used, err := weld.FillerUsed(deposit, share)
	if err != nil || f.Job.Plan.Rate == 0 {
		return weld.Filler{Deposit: deposit, Used: used}, err
	}
	time, err := weld.ArcTime(deposit, f.Job.Plan.Rate)
	return weld.Filler{Deposit: deposit, Used: used, ArcTime: time}, err
}

func (job *Job) blamePlan(err error) error {
	if job.places.plan.IsZero() {
		return job.blame(err)
	}
	var list interface{ Unwrap() []error }
	if errors.As(err, &list) && len(list.Unwrap()) > 0 {
		err = list.Unwrap()[0] // the file holds one place for the plan, so one mistake
	}
	return (&Job{places: places{sweep: job.places.plan}}).blame(err)
}
