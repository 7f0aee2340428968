package rules

import "math"

// job holds the sixty rules' readings in SI, as a program written for them
// alone would.
type job struct {
	PartWeight, CraneRating, SlingRating, LegReach, LegNear, SlingLength                        float64
	TruckRating, RatingCentre, LoadCentre, ForkLength, LoadLength                               float64
	BarDiameter, BarOverhang, DeepCut, HeavyCut, RoughRunout, LastCut, HeavyFeed, CutForce      float64
	ClampSpring, ClampCount, ClampPull, StrapToPart, StrapToHeel, CutArm, ClampReach            float64
	DatumGap, CentreAllowance, SetOff, WornOffset, WearDepth, FinishLow, FinishHigh, BoreLength float64
	TruingBore, WallLeft, WallAllowed, LayerBuild, LayersPlanned                                float64
	PreheatWanted, PreheatRead, InterpassMost, InterpassRead, StockLeft, VoidArea, MetalLength  float64
	FinalLeast, FinalGreatest, TaperAllowed, RoundAllowed, PinDiameter, LooseLeast, LooseMost   float64
	BushingOd, BushingBore, BushingLength, BushingAfter, TightLeast, TightMost, BossWall        float64
	PressForce, PressRating, PressOil, PressRam, PressOpening, PressStroke                      float64
	SupportHeight, PartHeight, ToolingHeight, SupportOd, SupportId, BossFace                    float64
}

const (
	inch = 0.0254
	thou = 0.0254e-3
	psi  = 4.4482216152605 / (inch * inch)
)

// judge works the sixty rules, in their order.
func (j *job) judge() (ok [60]bool) {
	copy(ok[0:12], j.lift())
	copy(ok[12:26], j.setUp())
	copy(ok[26:35], j.centre())
	copy(ok[35:44], j.weld())
	copy(ok[44:50], j.inspection())
	copy(ok[50:60], j.press())
	return ok
}

func (j *job) lift() []bool {
	const least = 0.8660254037844386
	return []bool{
		j.PartWeight <= j.CraneRating,
		j.PartWeight*1.25 <= j.CraneRating,
		j.PartWeight <= j.SlingRating*2,
		j.LegReach <= j.SlingLength*least,
		j.LegNear <= j.SlingLength*least,
		j.PartWeight*max(j.LegReach, j.LegNear)/(j.LegReach+j.LegNear)*j.SlingLength <= j.SlingRating*(j.SlingLength-j.LegReach*j.LegReach/j.SlingLength),
		j.PartWeight <= j.TruckRating,
		j.PartWeight <= j.TruckRating*min(1, j.RatingCentre/j.LoadCentre),
		j.PartWeight*j.LoadCentre <= j.TruckRating*j.RatingCentre,
		j.LoadCentre <= j.ForkLength,
		j.LoadLength*2/3 <= min(j.ForkLength, j.LoadLength),
		math.Abs(j.LegReach-j.LegNear) <= 12*inch,
	}
}

func (j *job) setUp() []bool {
	d2 := j.BarDiameter * j.BarDiameter
	hold := 0.15 * j.ClampCount * j.ClampPull * j.StrapToHeel / (j.StrapToPart + j.StrapToHeel)
	return []bool{
		j.BarOverhang <= j.BarDiameter*4,
		j.BarOverhang*j.BarOverhang*j.BarOverhang*j.CutForce*64/3 <= 29e6*psi*math.Pi*d2*d2*5*thou,
		j.HeavyCut/2-j.RoughRunout/2 >= 10*thou,
		(j.HeavyCut+j.RoughRunout)/2 <= j.DeepCut,
		j.LastCut >= 3*thou,
		j.LastCut <= 8*thou,
		j.HeavyFeed <= 20*thou,
		j.DeepCut <= j.BarDiameter/20,
		j.ClampSpring <= 2*thou,
		j.ClampCount >= 2,
		j.CutForce*2 <= hold,
		j.CutForce*j.CutArm*2 <= hold*j.ClampReach,
		j.StrapToPart <= j.StrapToHeel,
		j.ClampPull <= 85000*psi*1*inch*0.334*inch,
	}
}

func (j *job) centre() []bool {
	explained := j.CentreAllowance + 0.64*j.WearDepth
	return []bool{
		j.DatumGap <= j.CentreAllowance/2,
		j.SetOff <= j.CentreAllowance/2,
		j.WornOffset <= explained,
		j.WornOffset/j.BoreLength <= explained/j.BoreLength,
		j.FinishHigh-j.FinishLow >= 0.3*thou,
		j.WearDepth <= j.WallLeft/2,
		j.TruingBore >= j.FinishHigh+50*thou,
		j.TruingBore/2 >= j.FinishLow/2+j.WearDepth,
		j.WallLeft >= j.WallAllowed,
	}
}

func (j *job) weld() []bool {
	return []bool{
		j.LayerBuild*j.LayersPlanned >= (j.TruingBore-j.FinishLow)/2+30*thou,
		j.LayerBuild <= 0.125*inch,
		j.LayersPlanned <= 6,
		j.PreheatRead >= j.PreheatWanted,
		j.InterpassRead <= j.InterpassMost,
		j.InterpassRead >= j.PreheatWanted,
		j.StockLeft >= 30*thou,
		j.VoidArea <= 0.01*math.Pi*j.FinishLow*j.MetalLength,
		math.Pi*j.TruingBore*j.BoreLength*j.LayerBuild*j.LayersPlanned <= 4*inch*4*inch*4*inch,
	}
}

func (j *job) inspection() []bool {
	return []bool{
		j.FinalLeast >= j.FinishLow && j.FinalGreatest <= j.FinishHigh,
		j.FinalGreatest-j.FinalLeast <= j.TaperAllowed,
		(j.FinalGreatest-j.FinalLeast)/2 <= j.RoundAllowed,
		j.BushingOd-j.FinalGreatest >= j.TightLeast,
		j.BushingOd-j.FinalLeast <= j.TightMost,
		math.Abs((j.FinalLeast+j.FinalGreatest)/2-(j.FinishLow+j.FinishHigh)/2) <= (j.FinishHigh-j.FinishLow)/2,
	}
}

func (j *job) press() []bool {
	ring := min(j.SupportOd, j.BossFace)
	return []bool{
		j.BushingAfter-j.PinDiameter >= j.LooseLeast,
		j.BushingAfter-j.PinDiameter <= j.LooseMost,
		j.BushingBore-(j.BushingOd-j.FinalLeast)-j.PinDiameter >= j.LooseLeast,
		j.BushingLength <= j.BoreLength+0.0625*inch,
		j.BossWall >= j.FinishLow*0.25,
		j.PressForce <= min(j.PressRating, j.PressOil*math.Pi/4*j.PressRam*j.PressRam),
		j.SupportHeight+j.PartHeight+j.BushingLength+j.ToolingHeight <= j.PressOpening-0.25*inch,
		j.BushingLength+1*inch <= j.PressStroke,
		j.PressForce <= 0.6*36000*psi*math.Pi/4*(ring*ring-j.SupportId*j.SupportId),
		j.SupportId >= j.BushingOd && j.SupportOd <= j.BossFace+1*inch,
	}
}
