package checklists

import (
	"io/fs"
	"path/filepath"

	"gudgeon/rules"
	"gudgeon/rules/source"
)

// in is the folder of translations in a folder.
func (f Folder) in(language string) Folder {
	if f.FS == nil {
		return Folder{}
	}
	sub, err := fs.Sub(f.FS, language)
	if err != nil {
		return Folder{}
	}
	return Folder{Name: filepath.Join(f.Name, language), FS: sub}
}

// words finds the translation of a file. It lies beside the file, or in a layer
// in front of it: what lies behind is of another text. english is the text that
// is translated, or empty for the one that the layers give.
func (s *Shop) words(folder func(Layer) Folder, name, language, english string) (*source.File, error) {
	for _, layer := range s.layers {
		own, err := folder(layer).read(name)
		if err != nil {
			return nil, err
		}
		words, err := folder(layer).in(language).read(name)
		switch {
		case err != nil:
			return nil, err
		case own == nil && words == nil:
		case own != nil && english != "" && own.Text != english:
			return nil, nil
		default:
			return words, nil
		}
	}
	return nil, nil
}

// SheetTranslation reads what there is of a sheet in another language; nil when
// there is nothing.
func (s *Shop) SheetTranslation(language, sheet string) (*source.File, error) {
	return s.words(func(l Layer) Folder { return l.Sheets }, sheet, language, "")
}

func (s *Shop) checklistWords(p *Procedure, language string) (*source.File, error) {
	return s.words(func(l Layer) Folder { return l.Checklists }, p.ID, language, p.name.File().Text)
}

func (s *Shop) partWords(name, language string) (*source.File, error) {
	return s.words(func(l Layer) Folder { return l.Checklists.parts() }, name, language, "")
}

// LintTranslation reports the mistakes in a translation file, and lists what the
// file leaves to be read in English.
func (s *Shop) LintTranslation(f *source.File) ([]string, error) {
	node, err := source.Parse(f)
	if err != nil {
		return nil, err
	}
	if node.Has("sheet") {
		return s.lintSheetWords(f)
	}
	words, err := readWords(f)
	if err != nil {
		return nil, err
	}
	var english englishTexts
	if words.StepsOf.IsZero() {
		p, err := s.Procedure(words.Checklist.Value)
		if err != nil {
			return nil, err
		}
		english = p.texts()
	} else if english, err = s.partTexts(words.StepsOf.Value); err != nil {
		return nil, err
	}
	if len(english.steps) == 0 {
		var report source.Report
		report.At(words.StepsOf, "there are no steps of "+words.StepsOf.Value, source.Suggest(words.StepsOf.Value, s.SharedStepsNames()))
		return nil, report.Err()
	}
	return english.untranslated(words), words.check(english, folderLanguage(f, words.Language))
}

// folderLanguage is the language whose folder a file lies in, or the one written
// in it when its name does not tell.
func folderLanguage(f *source.File, written source.Text) string {
	if dir := filepath.Dir(f.Name); dir != "." {
		return filepath.Base(dir)
	}
	return written.Value
}

func (s *Shop) lintSheetWords(f *source.File) ([]string, error) {
	words, err := rules.ReadSheetTranslation(f)
	if err != nil {
		return nil, err
	}
	name := words.Sheet.Value
	sheet, err := s.Sheet(name)
	if err != nil {
		return nil, err
	}
	if sheet == nil {
		var report source.Report
		report.At(words.Sheet, "there is no sheet "+name, source.Suggest(name, s.SheetNames()))
		return nil, report.Err()
	}
	library, err := s.Library()
	if err != nil {
		return nil, err
	}
	set, err := rules.CompileSheet(library, s, sheet)
	if err != nil {
		return nil, err
	}
	return sheet.Untranslated(words), words.Check(set, name, folderLanguage(f, words.Language))
}

// Gap is one file with what of it is not translated.
type Gap struct {
	Name    string // sheet truck, checklist link, steps of lifting
	Missing []string
}

// Untranslated lists what the shop has not in a language, file by file.
func (s *Shop) Untranslated(language string) ([]Gap, error) {
	var gaps []Gap
	add := func(name string, missing []string, err error) error {
		if len(missing) > 0 {
			gaps = append(gaps, Gap{name, missing})
		}
		return err
	}
	for _, name := range s.SheetNames() {
		missing, err := s.sheetGap(name, language)
		if err := add("sheet "+name, missing, err); err != nil {
			return nil, err
		}
	}
	for _, name := range s.ChecklistNames() {
		missing, err := s.checklistGap(name, language)
		if err := add("checklist "+name, missing, err); err != nil {
			return nil, err
		}
	}
	for _, name := range s.SharedStepsNames() {
		missing, err := s.partGap(name, language)
		if err := add("steps of "+name, missing, err); err != nil {
			return nil, err
		}
	}
	return gaps, nil
}

func (s *Shop) sheetGap(name, language string) ([]string, error) {
	sheet, err := s.Sheet(name)
	if err != nil {
		return nil, err
	}
	f, err := s.SheetTranslation(language, name)
	if f == nil || err != nil {
		return sheet.Untranslated(nil), err
	}
	return s.LintTranslation(f)
}

func (s *Shop) checklistGap(name, language string) ([]string, error) {
	p, err := s.Procedure(name)
	if err != nil {
		return nil, err
	}
	f, err := s.checklistWords(p, language)
	if f == nil || err != nil {
		return p.texts().untranslated(nil), err
	}
	return s.LintTranslation(f)
}

func (s *Shop) partGap(name, language string) ([]string, error) {
	english, err := s.partTexts(name)
	if err != nil {
		return nil, err
	}
	f, err := s.partWords(name, language)
	if f == nil || err != nil {
		return english.untranslated(nil), err
	}
	return s.LintTranslation(f)
}
