package checklists

import (
	"errors"
	"fmt"
	"io/fs"
	"path/filepath"
	"strings"

	"gudgeon/rules/source"
)

// read gives NAME.yaml; nil when it is not there.
func (f Folder) read(name string) (*source.File, error) {
	if f.FS == nil || !idForm.MatchString(name) {
		return nil, nil
	}
	shown := filepath.Join(f.Name, name+".yaml")
	data, err := fs.ReadFile(f.FS, name+".yaml")
	if errors.Is(err, fs.ErrNotExist) {
		return nil, nil
	}
	if err != nil {
		return nil, fmt.Errorf("%s: %w", shown, err)
	}
	return &source.File{Name: shown, Text: string(data)}, nil
}

// names lists what read can give.
func (f Folder) names() []string {
	if f.FS == nil {
		return nil
	}
	files, _ := fs.Glob(f.FS, "*.yaml") // the pattern is good, so there is no error
	names := make([]string, len(files))
	for i, file := range files {
		names[i] = strings.TrimSuffix(file, ".yaml")
	}
	return names
}

// partsFolder is where the steps that several checklists share are kept.
const partsFolder = "parts"

// parts is the folder of shared steps in a folder of checklists.
func (f Folder) parts() Folder {
	if f.FS == nil {
		return Folder{}
	}
	sub, err := fs.Sub(f.FS, partsFolder)
	if err != nil {
		return Folder{}
	}
	return Folder{Name: filepath.Join(f.Name, partsFolder), FS: sub}
}
