package main

import (
	"os"
	"path/filepath"
	"testing"

	"github.com/rogpeppe/go-internal/testscript"
	"github.com/stretchr/testify/require"
)

func TestMain(m *testing.M) {
	testscript.Main(m, map[string]func(){"gudgeon": func() { os.Exit(run()) }})
}

// TestScripts runs the program the way a person does, in a terminal.
func TestScripts(t *testing.T) {
	examples, err := filepath.Abs("../../testdata")
	require.NoError(t, err)
	testscript.Run(t, testscript.Params{
		Dir: "testdata/script",
		Setup: func(e *testscript.Env) error {
			e.Setenv("EXAMPLES", examples)
			e.Setenv("XDG_CONFIG_HOME", e.WorkDir+"/config")
			e.Setenv("HOME", e.WorkDir)
			for _, name := range []string{"GUDGEON_LANG", "LC_ALL", "LC_MESSAGES"} {
				e.Setenv(name, "")
			}
			e.Setenv("LANG", "C")
			return nil
		},
		Cmds: map[string]func(*testscript.TestScript, bool, []string){"status": status, "big": big, "bytes": bytes},
	})
}

// status runs a command and checks its exit status: status 2 gudgeon check …
func status(ts *testscript.TestScript, neg bool, args []string) {
	if neg || len(args) < 2 {
		ts.Fatalf("usage: status N command [args…]")
	}
	got := "0"
	if err := ts.Exec(args[1], args[2:]...); err != nil {
		got = exitText(err)
	}
	if got != args[0] {
		ts.Fatalf("exit status %s, want %s", got, args[0])
	}
}

func exitText(err error) string {
	text := err.Error()
	const prefix = "exit status "
	if len(text) > len(prefix) && text[:len(prefix)] == prefix {
		return text[len(prefix):]
	}
	return text
}

// big writes a file of so many megabytes: big FILE
func big(ts *testscript.TestScript, _ bool, args []string) {
	line := []byte("# nothing but a long comment, over and over again, to fill the file\n")
	var data []byte
	for len(data) < 10<<20 {
		data = append(data, line...)
	}
	ts.Check(os.WriteFile(ts.MkAbs(args[0]), data, 0o644))
}

// bytes writes a file that is no text: bytes FILE
func bytes(ts *testscript.TestScript, _ bool, args []string) {
	ts.Check(os.WriteFile(ts.MkAbs(args[0]), []byte("part: \xff\xfe link\n"), 0o644))
}
