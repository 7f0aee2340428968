package main

import "github.com/spf13/cobra"

func newDemo(s *settings) *cobra.Command {
	return &cobra.Command{Use: "demo", RunE: func(*cobra.Command, []string) error { return nil }}
}
