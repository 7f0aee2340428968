package main

import (
	"errors"
	"fmt"
	"io"
	"io/fs"
	"os"
	"path/filepath"
	"strings"

	"gudgeon/checklists"
	"gudgeon/rules/source"
)

// readFile reads a file that a person wrote; "-" is standard input.
func readFile(path string) (*source.File, error) {
	if path == "-" {
		return readAll("standard input", os.Stdin)
	}
	file, err := os.Open(path)
	if err != nil {
		return nil, plainFileError(path, err)
	}
	defer file.Close()
	if info, err := file.Stat(); err == nil && info.IsDir() {
		return nil, dataError{fmt.Errorf("%s: this is a folder; name a file in it", path)}
	}
	return readAll(path, file)
}

// readAll reads one byte more than is allowed, so that a file that is too large
// is refused without being read whole.
func readAll(name string, r io.Reader) (*source.File, error) {
	data, err := io.ReadAll(io.LimitReader(r, source.Largest+1))
	if err != nil {
		return nil, plainFileError(name, err)
	}
	return &source.File{Name: name, Text: string(data)}, nil
}

func plainFileError(path string, err error) error {
	var at *fs.PathError
	switch {
	case errors.Is(err, fs.ErrNotExist):
		err = fmt.Errorf("%s: there is no such file", path)
	case errors.Is(err, fs.ErrPermission):
		err = fmt.Errorf("%s: this file may not be read or written", path)
	case errors.As(err, &at):
		err = fmt.Errorf("%s: %w", path, at.Err)
	}
	return dataError{err}
}

// saveFile replaces a file so that at any moment either the old or the new one
// is whole on the disk.
func saveFile(path, text string) error {
	temporary, err := os.CreateTemp(filepath.Dir(path), "."+filepath.Base(path)+".*")
	if err != nil {
		return plainFileError(path, err)
	}
	defer os.Remove(temporary.Name())
	_, err = temporary.WriteString(text)
	err = errors.Join(err, temporary.Chmod(0o644))
	err = errors.Join(err, temporary.Sync(), temporary.Close())
	if err != nil {
		return plainFileError(path, err)
	}
	if err := os.Rename(temporary.Name(), path); err != nil {
		return plainFileError(path, err)
	}
	if dir, err := os.Open(filepath.Dir(path)); err == nil {
		_ = dir.Sync() // makes the rename last through a power cut, where the system can
		dir.Close()
	}
	return nil
}

// procedure finds a checklist by its name, or reads it from a path, with what is
// read of it in the language asked for.
func (s *settings) procedure(name string) (*checklists.Procedure, *checklists.Translation, error) {
	shop, p, err := s.procedureIn(name)
	if err != nil {
		return nil, nil, err
	}
	words, err := shop.Translate(p, s.language())
	return p, words, err
}

func (s *settings) procedureIn(name string) (*checklists.Shop, *checklists.Procedure, error) {
	if !strings.ContainsAny(name, `/\.`) {
		shop, err := s.openShop()
		if err != nil {
			return nil, nil, err
		}
		p, err := shop.Procedure(name)
		return shop, p, err
	}
	f, err := readFile(name)
	if err != nil {
		return nil, nil, err
	}
	shop, err := s.shopAround(name)
	if err != nil {
		return nil, nil, err
	}
	p, err := shop.Compile(f)
	return shop, p, err
}
