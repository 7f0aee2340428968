package rules

import "embed"

// Files holds the shipped rule sheets, NAME.yaml each, and what is read of them
// in Spanish, es/NAME.yaml.
//
//go:embed *.yaml es/*.yaml
var Files embed.FS
