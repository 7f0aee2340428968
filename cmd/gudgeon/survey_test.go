package main

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"gudgeon/checklists/boresurvey"
	"gudgeon/rules"
	"gudgeon/rules/source"
)

// The file that the help shows must be one that the program reads.
func TestSurveyHelpShowsARealFile(t *testing.T) {
	help := newSurvey(&settings{}).Long
	_, file, found := strings.Cut(help, "with its unit):\n\n")
	require.True(t, found)
	file, _, found = strings.Cut(file, "\n\nWrite - where")
	require.True(t, found)
	text := strings.ReplaceAll("\n"+file, "\n  ", "\n")
	job, err := boresurvey.Read(&source.File{Name: "help.yaml", Text: text})
	require.NoError(t, err)
	finding, err := boresurvey.Find(job)
	require.NoError(t, err)
	assert.Equal(t, rules.Stop, finding.Verdict)
	assert.True(t, finding.HandLaid.CleansUp)
	assert.True(t, finding.Centres.EarlierRepair)
	assert.Empty(t, finding.Missing)
}
