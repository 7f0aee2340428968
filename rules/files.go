package rules

import "embed"

// Files holds the shipped rule sheets, NAME.yaml each.
//
//go:embed *.yaml
var Files embed.FS
