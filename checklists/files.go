package checklists

import (
	"embed"

	"gudgeon/rules"
)

//go:embed *.yaml
var files embed.FS

// Shipped is the layer of sheets and checklists that come with the program.
func Shipped() Layer { return Layer{Sheets: rules.Files, Checklists: files} }
