# The two commands a person needs are in README.md; the rest is for developers.
STATICCHECK = honnef.co/go/tools/cmd/staticcheck@v0.8.2

.PHONY: check format vet lint test wasm build checks

# Everything that must hold before a change lands.
check: format vet lint wasm test

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

# Writes testdata/checks and testdata/CHECKS.md anew; read what changed.
checks:
	go test ./trade/... ./units ./rules -run "Checks|Sizes" -update
	go test ./internal/outside -update
