package checklists

import (
	"embed"

	"gudgeon/rules"
)

//go:embed *.yaml parts/*.yaml es/*.yaml parts/es/*.yaml
var files embed.FS

// Shipped is the layer of sheets and checklists that come with the program.
func Shipped() Layer {
	return Layer{Sheets: Folder{"rules", rules.Files}, Checklists: Folder{"checklists", files}}
}
