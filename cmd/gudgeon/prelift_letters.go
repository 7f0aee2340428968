package main

import (
	"strings"

	"gudgeon/rules"
)

// letters are tall enough to be read with the card at arm's length.
var letters = map[rune][5]string{
	'A': {" ### ", "#   #", "#####", "#   #", "#   #"},
	'C': {" ####", "#    ", "#    ", "#    ", " ####"},
	'D': {"#### ", "#   #", "#   #", "#   #", "#### "},
	'E': {"#####", "#    ", "###  ", "#    ", "#####"},
	'G': {" ####", "#    ", "#  ##", "#   #", " ####"},
	'I': {"###", " # ", " # ", " # ", "###"},
	'L': {"#    ", "#    ", "#    ", "#    ", "#####"},
	'N': {"#   #", "##  #", "# # #", "#  ##", "#   #"},
	'O': {" ### ", "#   #", "#   #", "#   #", " ### "},
	'Ó': {"  ## ", " ### ", "#   #", "#   #", " ### "},
	'P': {"#### ", "#   #", "#### ", "#    ", "#    "},
	'R': {"#### ", "#   #", "#### ", "#  # ", "#   #"},
	'S': {" ####", "#    ", " ### ", "    #", "#### "},
	'T': {"#####", "  #  ", "  #  ", "  #  ", "  #  "},
	'U': {"#   #", "#   #", "#   #", "#   #", " ### "},
	'W': {"#   #", "#   #", "# # #", "## ##", "#   #"},
}

// tall writes a word in tall letters, row by row.
func tall(word string) []string {
	rows := make([]string, 5)
	for _, r := range word {
		for i, part := range letters[r] {
			rows[i] += part + "  "
		}
	}
	for i := range rows {
		rows[i] = strings.TrimRight(rows[i], " ")
	}
	return rows
}

// verdictWords are a card's verdict in large and in plain words.
var verdictWords = map[rules.Verdict]struct{ tall, plain string }{
	rules.Go:        {"GO", "once, as it is written here; again for every change of part, rigging, place."},
	rules.NotNeeded: {"", "No rule of the checklist has anything to say on this lift."},
	rules.Waiting:   {"WAIT", "Not go yet: something is missing. A missing reading is never a pass."},
	rules.Caution:   {"CAUTION", "Only when who answers for it has read each caution and signs below."},
	rules.Stop:      {"STOP", "Do not lift it like this."},
}
