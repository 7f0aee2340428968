package sketch

import (
	"strings"
	"unicode"
)

const (
	fontFamily = "Arial, Helvetica, 'Liberation Sans', sans-serif"
	titleSize  = 15.0
	labelSize  = 13.0
	smallSize  = 12.0
)

// textWidth estimates how wide a text will be, on the wide side: no drawing
// knows the reader's fonts.
func textWidth(text string, size float64, bold bool) float64 {
	sum := 0.0
	for _, r := range text {
		sum += letterWidth(r)
	}
	if bold {
		sum *= 1.08
	}
	return sum * size * 1.03
}

func letterWidth(r rune) float64 {
	switch {
	case strings.ContainsRune("iljI.,:;'|! ", r):
		return 0.28
	case strings.ContainsRune("ft()[]-/r°", r):
		return 0.36
	case strings.ContainsRune("mwMW%×±", r):
		return 0.86
	case unicode.IsUpper(r):
		return 0.7
	case unicode.IsDigit(r), unicode.IsLower(r):
		return 0.556
	}
	return 0.65
}

// fold breaks a text into lines that fit a width.
func fold(text string, size, room float64) []string {
	var lines []string
	line := ""
	for _, word := range strings.Fields(text) {
		longer := strings.TrimSpace(line + " " + word)
		if line != "" && textWidth(longer, size, false) > room {
			lines = append(lines, line)
			longer = word
		}
		line = longer
	}
	if line == "" {
		return lines
	}
	return append(lines, line)
}

// shorten cuts a text that does not fit.
func shorten(text string, size float64, bold bool, room float64) string {
	if textWidth(text, size, bold) <= room {
		return text
	}
	runes := []rune(text)
	for len(runes) > 0 && textWidth(string(runes)+"…", size, bold) > room {
		runes = runes[:len(runes)-1]
	}
	return strings.TrimSpace(string(runes)) + "…"
}

var escaper = strings.NewReplacer("&", "&amp;", "<", "&lt;", ">", "&gt;", `"`, "&quot;", "'", "&#39;")

// escape makes a text safe inside an element or an attribute. What XML cannot
// hold at all is left out.
func escape(text string) string {
	text = strings.Map(func(r rune) rune {
		switch {
		case r == '\n', r == '\t':
			return ' '
		case r < 0x20, r == 0xFFFE, r == 0xFFFF, r >= 0xD800 && r <= 0xDFFF:
			return -1
		}
		return r
	}, strings.ToValidUTF8(text, "?"))
	return escaper.Replace(text)
}
