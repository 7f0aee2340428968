package main

import (
	"fmt"
	"io/fs"
	"os"
	"path/filepath"

	"gudgeon/checklists"
	"gudgeon/index"
	"gudgeon/kb"
	"gudgeon/rules/source"
)

// folder is the shop's own folder, and false when there is none.
func (s *settings) folder() (string, bool, error) {
	if s.shop != "" {
		info, err := os.Stat(s.shop)
		if err != nil || !info.IsDir() {
			return "", false, fmt.Errorf("--shop %s: not a folder", s.shop)
		}
		return s.shop, true, nil
	}
	own, err := usualFolder()
	if err != nil {
		return "", false, nil
	}
	if info, err := os.Stat(own); err != nil || !info.IsDir() {
		return "", false, nil
	}
	return own, true, nil
}

// usualFolder is where a shop's own files are kept without --shop.
func usualFolder() (string, error) {
	config, err := os.UserConfigDir()
	return filepath.Join(config, "gudgeon"), err
}

// openShop finds the shop's own files in front of the shipped ones. Further
// layers go in front of both.
func (s *settings) openShop(front ...checklists.Layer) (*checklists.Shop, error) {
	layers := front
	own, ok, err := s.folder()
	if err != nil {
		return nil, err
	}
	if ok {
		layers = append(layers, layerAt(own))
	}
	return checklists.OpenShop(append(layers, checklists.Shipped())...), nil
}

// layerAt is a shop's folder.
func layerAt(home string) checklists.Layer {
	return checklists.Layer{
		Sheets: folderAt(home, "rules"), Checklists: folderAt(home, "checklists"), Home: folderAt(home),
	}
}

func folderAt(elements ...string) checklists.Folder {
	path := filepath.Join(elements...)
	return checklists.Folder{Name: path, FS: os.DirFS(path)}
}

// shopAround is the shop as a file in some folder sees it: the shop that the
// folder belongs to comes first, or else what lies beside the file.
func (s *settings) shopAround(path string) (*checklists.Shop, error) {
	dir := filepath.Dir(path)
	if folderName(dir) == spanishName { // translations lie one folder deeper
		return s.shopAround(filepath.Join(dir, "..", spanishName)) // also where dir is a dot
	}
	home := layerAt(filepath.Join(dir, ".."))
	switch folderName(dir) {
	case "rules", "checklists":
		return s.openShop(home)
	case "parts": // shared steps lie one folder deeper
		return s.openShop(layerAt(filepath.Join(dir, "..", "..")))
	}
	here := folderAt(dir)
	return s.openShop(checklists.Layer{Sheets: here, Checklists: here, Home: here}, home)
}

// folderName is what a folder is called, also when it is written as a dot.
func folderName(dir string) string {
	if whole, err := filepath.Abs(dir); err == nil {
		dir = whole
	}
	return filepath.Base(dir)
}

// notes gives the shipped notes with the shop's own in front.
func (s *settings) notes() ([]kb.Note, error) {
	notes, err := kb.Shipped()
	if err != nil {
		return nil, err
	}
	own, ok, err := s.folder()
	if err != nil || !ok {
		return notes, err
	}
	if _, err := fs.Stat(os.DirFS(own), "kb"); err != nil {
		return notes, nil // a shop need not have notes of its own
	}
	dir := filepath.Join(own, "kb")
	mine, err := kb.Load(os.DirFS(dir), dir)
	if err != nil {
		return nil, err
	}
	return kb.Overlay(notes, mine), nil
}

// synonyms gives the shop's own file of synonyms, if it has one.
func (s *settings) synonyms() ([]*source.File, error) {
	own, ok, err := s.folder()
	if err != nil || !ok {
		return nil, err
	}
	path := filepath.Join(own, "synonyms.yaml")
	if _, err := os.Stat(path); err != nil {
		return nil, nil
	}
	f, err := readFile(path)
	if err != nil {
		return nil, err
	}
	return []*source.File{f}, nil
}

// buildIndex makes the search over the shop's notes.
func (s *settings) buildIndex(notes []kb.Note) (*index.Index, error) {
	synonyms, err := s.synonyms()
	if err != nil {
		return nil, err
	}
	return index.Build(notes, synonyms...)
}
