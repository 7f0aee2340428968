package finiteelement

import (
	"bufio"
	"errors"
	"fmt"
	"io"
	"os"
	"os/exec"
	"path/filepath"
	"strconv"
	"strings"
)

// result is what ccx gives at the nodes.
type result struct {
	displacement map[int][]float64 // mm
	stress       map[int][]float64 // xx, yy, zz, xy, yz, zx; MPa
}

// run solves a deck in a folder.
func run(ccx, dir, name string, d *deck) (result, error) {
	if err := os.WriteFile(filepath.Join(dir, name+".inp"), []byte(d.String()), 0o644); err != nil {
		return result{}, err
	}
	command := exec.Command(ccx, name)
	command.Dir = dir
	command.Env = append(os.Environ(), "OMP_NUM_THREADS=2")
	if out, err := command.CombinedOutput(); err != nil {
		return result{}, fmt.Errorf("ccx: %w\n%s", err, out)
	}
	f, err := os.Open(filepath.Join(dir, name+".frd"))
	if err != nil {
		return result{}, err
	}
	defer f.Close()
	return readResult(f)
}

// readResult reads the nodal values of a .frd file: a header that names the
// block, then lines of the mark -1, a node of 10 and values of 12 places.
func readResult(r io.Reader) (result, error) {
	res := result{map[int][]float64{}, map[int][]float64{}}
	var block map[int][]float64
	lines := bufio.NewScanner(r)
	for lines.Scan() {
		line := lines.Text()
		switch {
		case strings.HasPrefix(line, " -4  DISP"):
			block = res.displacement
		case strings.HasPrefix(line, " -4  STRESS"):
			block = res.stress
		case strings.HasPrefix(line, " -3"):
			block = nil
		case strings.HasPrefix(line, " -1") && block != nil:
			node, values, err := nodeLine(line)
			if err != nil {
				return res, err
			}
			block[node] = values
		}
	}
	if len(res.displacement) == 0 || len(res.stress) == 0 {
		return res, errors.New("ccx gave no displacements or no stresses")
	}
	return res, lines.Err()
}

func nodeLine(line string) (int, []float64, error) {
	if len(line) < 13 {
		return 0, nil, fmt.Errorf("short line %q", line)
	}
	node, err := strconv.Atoi(strings.TrimSpace(line[3:13]))
	if err != nil {
		return 0, nil, err
	}
	var values []float64
	for at := 13; at+12 <= len(line); at += 12 {
		v, err := strconv.ParseFloat(strings.TrimSpace(line[at:at+12]), 64)
		if err != nil {
			return 0, nil, err
		}
		values = append(values, v)
	}
	return node, values, nil
}
