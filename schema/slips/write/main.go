// The program write writes the slips of a document that have some words in their
// class or shape, each as a document of its own:
//
//	go run ./schema/slips/write installation.json "ten times" folder
package main

import (
	"encoding/json"
	"fmt"
	"os"
	"path/filepath"
	"strings"

	"sunclause/schema/slips"
)

func main() {
	if len(os.Args) != 4 {
		fmt.Fprintln(os.Stderr, "name the document, some words of the class or shape, and the folder to write into")
		os.Exit(2)
	}
	if err := write(os.Args[1], os.Args[2], os.Args[3]); err != nil {
		fmt.Fprintln(os.Stderr, err)
		os.Exit(2)
	}
}

func write(name, words, folder string) error {
	raw, err := os.ReadFile(name)
	if err != nil {
		return err
	}
	var document map[string]any
	if err := json.Unmarshal(raw, &document); err != nil {
		return fmt.Errorf("%s: %w", name, err)
	}
	all, err := slips.Of(document)
	if err != nil {
		return err
	}
	if err := os.MkdirAll(folder, 0o755); err != nil {
		return err
	}
	for i, s := range all {
		if !strings.Contains(s.Class+" "+s.Shape, words) {
			continue
		}
		text, err := json.MarshalIndent(s.In(document), "", "  ")
		if err != nil {
			return err
		}
		fmt.Printf("%05d.json  %s: %s: %s\n", i, s.Pointer, s.Class, s.What)
		if err := os.WriteFile(filepath.Join(folder, fmt.Sprintf("%05d.json", i)), append(text, '\n'), 0o644); err != nil {
			return err
		}
	}
	return nil
}
