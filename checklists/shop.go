package checklists

import (
	"errors"
	"fmt"
	"io/fs"
	"slices"
	"sort"
	"strings"

	"gudgeon/rules"
	"gudgeon/rules/source"
)

// Shop finds sheets and checklists by name. Its layers are searched in order,
// so that a shop's own file stands in front of the shipped one of the same name.
type Shop struct {
	layers  []Layer
	sheets  map[string]*rules.Sheet
	library *rules.Library
}

// Layer is one place where files are kept.
type Layer struct {
	Sheets     Folder // NAME.yaml, one sheet each
	Checklists Folder // NAME.yaml, one checklist each; parts/NAME.yaml, shared steps
	Home       Folder // instruments.yaml
}

// Folder is a place for files of one sort. The zero value holds none.
type Folder struct {
	Name string // shown in messages, as the user would write it
	FS   fs.FS
}

// OpenShop makes a shop of layers, the one that goes first in front.
func OpenShop(layers ...Layer) *Shop {
	return &Shop{layers: layers, sheets: map[string]*rules.Sheet{}}
}

// Sheet reads the sheet of that name; nil when there is none.
func (s *Shop) Sheet(name string) (*rules.Sheet, error) {
	if sheet, ok := s.sheets[name]; ok {
		return sheet, nil
	}
	for _, layer := range s.layers {
		f, err := layer.Sheets.read(name)
		if err != nil {
			return nil, err
		}
		if f == nil {
			continue
		}
		sheet, err := rules.ReadSheet(f)
		if err != nil {
			return nil, err
		}
		if sheet.Name.Value != name {
			return nil, misnamed(sheet.Name, name)
		}
		s.sheets[name] = sheet
		return sheet, nil
	}
	return nil, nil
}

func misnamed(name source.Text, file string) error {
	var report source.Report
	report.At(name, fmt.Sprintf("the file is called %s.yaml, but this is %s", file, name.Value), "give both the same name")
	return report.Err()
}

// SheetNames lists every sheet.
func (s *Shop) SheetNames() []string {
	return s.names(func(l Layer) Folder { return l.Sheets })
}

// ChecklistNames lists every checklist.
func (s *Shop) ChecklistNames() []string {
	return s.names(func(l Layer) Folder { return l.Checklists })
}

// SharedSteps reads the file of shared steps of that name; nil when there is none.
func (s *Shop) SharedSteps(name string) (*source.File, error) {
	for _, layer := range s.layers {
		if f, err := layer.Checklists.parts().read(name); f != nil || err != nil {
			return f, err
		}
	}
	return nil, nil
}

// SharedStepsNames lists every file of shared steps.
func (s *Shop) SharedStepsNames() []string {
	return s.names(func(l Layer) Folder { return l.Checklists.parts() })
}

func (s *Shop) names(folder func(Layer) Folder) []string {
	seen := map[string]bool{}
	var names []string
	for _, layer := range s.layers {
		for _, name := range folder(layer).names() {
			if !seen[name] {
				seen[name] = true
				names = append(names, name)
			}
		}
	}
	sort.Strings(names)
	return names
}

// ErrNoChecklist says that no layer has a checklist of that name.
var ErrNoChecklist = errors.New("no such checklist")

// Procedure reads and compiles the checklist of that name.
func (s *Shop) Procedure(name string) (*Procedure, error) {
	for _, layer := range s.layers {
		f, err := layer.Checklists.read(name)
		if err != nil {
			return nil, err
		}
		if f == nil {
			continue
		}
		p, err := s.Compile(f)
		if err == nil && p.ID != name {
			return nil, misnamed(source.Plain(f.Name, p.ID), name)
		}
		return p, err
	}
	return nil, fmt.Errorf("%w: %s; there are: %s", ErrNoChecklist, name, strings.Join(s.ChecklistNames(), ", "))
}

// Compile makes a Procedure of a checklist file, with the shop's sheets.
func (s *Shop) Compile(f *source.File) (*Procedure, error) {
	l, err := s.Library()
	if err != nil {
		return nil, err
	}
	return Compile(l, s, f)
}

// Library is what sheets may call and read with: the trade's functions and the
// instruments, the shop's own in front.
func (s *Shop) Library() (*rules.Library, error) {
	if s.library != nil {
		return s.library, nil
	}
	l := rules.Trade()
	for _, layer := range slices.Backward(s.layers) {
		f, err := layer.Home.read("instruments")
		if err != nil {
			return nil, err
		}
		if f == nil {
			continue
		}
		if l, err = l.With(f); err != nil {
			return nil, err
		}
	}
	s.library = l
	return l, nil
}
