# The two commands a person needs are in README.md; the rest is for developers.
STATICCHECK = honnef.co/go/tools/cmd/staticcheck@v0.8.2

.PHONY: check format vet lint test wasm build checks finite-element

# Everything that must hold before a change lands.
check: format vet lint wasm test finite-element

format:
	@unformatted=$$(gofmt -l .); if [ -n "$$unformatted" ]; then echo "not gofmt-ed:"; echo "$$unformatted"; exit 1; fi

vet:
	go vet ./...

lint:
	go run $(STATICCHECK) ./...

# The engine must also run in a phone's browser.
wasm:
	GOOS=js GOARCH=wasm go build ./units ./trade/... ./rules/... ./checklists/...

test:
	go test ./...

build:
	go build -o gudgeon ./cmd/gudgeon

# Holds closed formulas against the finite elements of CalculiX, about 20 s.
finite-element:
	@command -v ccx >/dev/null || apt-get install -y --no-install-recommends calculix-ccx >/dev/null || \
		(apt-get update >/dev/null && apt-get install -y --no-install-recommends calculix-ccx >/dev/null) || true
	@command -v ccx >/dev/null || { echo "make finite-element needs CalculiX's ccx, which is not here and could not be installed; on Debian: apt-get install calculix-ccx"; exit 1; }
	go test -count=1 ./trade/internal/finiteelement -ccx "$$(command -v ccx)"

# Writes testdata/checks and testdata/CHECKS.md anew; read what changed. The
# figures of the finite elements need ccx: make finite-element says when they
# are out of date.
CHECKED = $(addprefix ./trade/,bar bore fit lift press setup truck weld) ./units ./rules
checks:
	go test $(CHECKED) -run "Checks|Sizes" -update
	@if command -v ccx >/dev/null; then go test -count=1 ./trade/internal/finiteelement -ccx "$$(command -v ccx)" -update; fi
	go test ./trade/outside -update
