package outside

// Check is one value from outside this program. It is an alias of an unnamed
// type so that tables may leave out the names of the fields.
type Check = struct {
	ID, What, Source string
	Confidence       Confidence
	Unit             string  // of the three numbers; "1" where there is none
	Want, Tol        float64 // Tol is absolute: the rounding of the printed figure, wider only where the source says why
	Got              func() (float64, error)
}

// Confidence says how well a value is known.
type Confidence string

// From the surest to the least sure.
const (
	Published Confidence = "published"                      // printed by the source
	Computed  Confidence = "computed from published inputs" // by another program or by hand
	Synthetic Confidence = "computed from synthetic inputs" // by another program or by hand, from inputs of our own
	Memory    Confidence = "from memory"                    // no source at hand: not counted as an outside check
)

var confidences = []Confidence{Published, Computed, Synthetic, Memory}
