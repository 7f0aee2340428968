package main

import (
	"embed"
	"errors"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"
	"regexp"
	"slices"
	"strings"
	"time"

	"github.com/spf13/cobra"

	"gudgeon/checklists"
	"gudgeon/kb"
)

//go:embed scaffold
var scaffolds embed.FS

// scaffold is a sort of file that new can begin.
type scaffold struct {
	name   string
	file   string // in the folder scaffold
	folder string // in the shop's folder
	taken  func() ([]string, error)
	then   string // what to do when it is changed
}

func scaffoldList() []scaffold {
	shipped := checklists.OpenShop(checklists.Shipped())
	return []scaffold{
		{"checklist", "checklist.yaml", "checklists", func() ([]string, error) { return shipped.ChecklistNames(), nil }, "prove"},
		{"sheet", "sheet.yaml", "rules", func() ([]string, error) { return shipped.SheetNames(), nil }, "prove"},
		{"note", "note.md", "kb", shippedNotes, ""},
	}
}

func shippedNotes() ([]string, error) {
	notes, err := kb.Shipped()
	var names []string
	for _, n := range notes {
		names = append(names, n.Name)
	}
	return names, err
}

func newNew(s *settings) *cobra.Command {
	return &cobra.Command{
		Use:   "new checklist|sheet|note NAME",
		Short: "Begin a checklist, sheet or note of your own",
		Long: `new writes a file that explains itself into the shop's folder (--shop, or gudgeon
in the user's config folder; it is made if it is not there). The file passes lint
and prove as it is; change it piece by piece and run them again. A file that is
there already is left alone.`,
		Example: `  gudgeon new sheet floor --shop my-shop
  gudgeon new checklist swing-arm
  gudgeon new note cracked-ear`,
		ValidArgs: []string{"checklist", "sheet", "note"},
		Args:      exactly(2, "checklist, sheet or note, and a name, like: gudgeon new sheet floor"),
		RunE: func(cmd *cobra.Command, args []string) error {
			list := scaffoldList()
			i := slices.IndexFunc(list, func(k scaffold) bool { return k.name == args[0] })
			if i < 0 {
				return fmt.Errorf("new %s: write checklist, sheet or note", args[0])
			}
			path, err := list[i].write(s, args[1])
			if err != nil {
				return err
			}
			list[i].tell(newScreen(cmd.OutOrStdout()), path)
			return nil
		},
	}
}

var fileName = regexp.MustCompile(`^[a-z][a-z0-9]*(-[a-z0-9]+)*$`)

// write begins the file and says where it is.
func (k scaffold) write(s *settings, name string) (string, error) {
	if !fileName.MatchString(name) || len(name) > 60 {
		return "", plainError{fmt.Errorf("%q is no name for a %s: write small letters, digits and single hyphens, such as swing-arm", name, k.name)}
	}
	taken, err := k.taken()
	if err != nil {
		return "", err
	}
	if slices.Contains(taken, name) {
		return "", plainError{fmt.Errorf("there is a shipped %s %s, and a file of that name would stand in its place; choose another name", k.name, name)}
	}
	text, err := k.text(name)
	if err != nil {
		return "", err
	}
	home, err := s.home()
	if err != nil {
		return "", err
	}
	dir := filepath.Join(home, k.folder)
	if err := os.MkdirAll(dir, 0o755); err != nil {
		return "", plainFileError(dir, err)
	}
	path := filepath.Join(dir, name+filepath.Ext(k.file))
	return path, createFile(path, text)
}

// home is the shop's folder, there or not yet.
func (s *settings) home() (string, error) {
	if s.shop != "" {
		return s.shop, nil
	}
	own, err := usualFolder()
	if err != nil {
		return "", plainError{fmt.Errorf("there is no config folder for this user (%w); name one with --shop", err)}
	}
	return own, nil
}

func (k scaffold) text(name string) (string, error) {
	text, err := fs.ReadFile(scaffolds, "scaffold/"+k.file)
	return strings.NewReplacer(
		"NAME", name,
		"WORD", strings.ReplaceAll(name, "-", "_"),
		"DATE", time.Now().Format(kb.DateLayout),
		"PARTS", strings.Join(kb.Parts(), ", "),
		"PROCESSES", strings.Join(kb.Processes(), ", "),
	).Replace(string(text)), err
}

// createFile writes a file that must not be there yet.
func createFile(path, text string) error {
	f, err := os.OpenFile(path, os.O_WRONLY|os.O_CREATE|os.O_EXCL, 0o644)
	if errors.Is(err, fs.ErrExist) {
		return plainError{fmt.Errorf("%s is there already; change it, or choose another name", path)}
	}
	if err != nil {
		return plainFileError(path, err)
	}
	_, err = f.WriteString(text)
	if err := errors.Join(err, f.Close()); err != nil {
		return plainFileError(path, err)
	}
	return nil
}

// tell says what to do with the file.
func (k scaffold) tell(s *screen, path string) {
	s.line("Wrote %s. Open it, change it, then:", path)
	s.line("  gudgeon lint %s", path)
	if k.then != "" {
		s.line("  gudgeon %s %s", k.then, path)
	}
}
