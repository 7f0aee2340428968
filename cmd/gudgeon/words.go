package main

import (
	"fmt"
	"io"
	"os"
	"strings"

	"gudgeon/rules"
)

// spanishName is what --lang calls Spanish.
const spanishName = "es"

// language is the one asked for with --lang, else that of the environment.
func (s *settings) language() string {
	if s.lang != "" {
		return s.lang
	}
	for _, name := range []string{"GUDGEON_LANG", "LC_ALL", "LC_MESSAGES", "LANG"} {
		if value := os.Getenv(name); value != "" {
			return languageOf(value)
		}
	}
	return rules.English
}

// languageOf reads a locale such as es_MX.UTF-8.
func languageOf(locale string) string {
	if strings.HasPrefix(strings.ToLower(locale), spanishName) {
		return spanishName
	}
	return rules.English
}

func checkLanguage(name string) error {
	switch name {
	case "", rules.English, spanishName:
		return nil
	}
	return fmt.Errorf("--lang %s: write en or es", name)
}

// screen is a screen in the language asked for.
func (s *settings) screen(out io.Writer) *screen {
	screen := newScreen(out)
	screen.language = s.language()
	return screen
}

// say gives a text of the screens in the language of this one. The English text
// is its name; what has no translation stays English.
func (s *screen) say(english string) string {
	if s.language != spanishName {
		return english
	}
	for _, words := range []map[string]string{spanish, spanishCard} {
		if text, ok := words[english]; ok {
			return text
		}
	}
	return english
}

// sayf is say with something filled in.
func (s *screen) sayf(english string, args ...any) string {
	return fmt.Sprintf(s.say(english), args...)
}

// means reports whether an answer is a word of the screens, in this language or
// in English.
func (s *screen) means(answer, english string) bool {
	return strings.EqualFold(answer, english) || rules.SameWord(answer, s.say(english))
}

// count says how many there are of something.
func (s *screen) count(n int, what string) string {
	number, noun, _ := strings.Cut(count(n, what), " ")
	return number + " " + s.say(noun)
}
