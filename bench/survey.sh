#!/usr/bin/env bash
# Times a survey of three stations of 24 points, from readings to weld plan, and
# then the circles of the same survey in SciPy. On Debian SciPy comes with
# apt-get install python3-scipy.
set -euo pipefail
cd "$(dirname "$0")"
points=$(mktemp)
trap 'rm -f "$points"' EXIT

go test ./survey -count=1 -v -run Circles -points "$points" | grep -o 'station .*'
go test ./survey -run '^$' -bench . -count "${COUNT:-7}"

for python in python3 /usr/bin/python3; do
	if "$python" -c 'import scipy' 2>/dev/null; then
		"$python" scipy_fit.py "$points"
		exit
	fi
done
echo "SciPy is not here; on Debian: apt-get install python3-scipy" >&2
exit 1
