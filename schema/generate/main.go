// Command generate writes what of package schema follows from its JSON Schemas:
// the Go mirrors of the document and of the files of a rule set, and the shapes
// against which a document is held first. It is run by go generate in the folder of the schemas,
// and must be run after each change of one.
package main

import (
	"fmt"
	"os"
)

func main() {
	if err := run("."); err != nil {
		fmt.Fprintln(os.Stderr, "generate:", err)
		os.Exit(1)
	}
}

// run reads the schemas of a folder and writes the files that follow from them.
func run(folder string) error {
	files, err := generate(os.DirFS(folder), mirrors)
	if err != nil {
		return err
	}
	for name, text := range files {
		if err := os.WriteFile(folder+"/"+name, text, 0o644); err != nil {
			return err
		}
	}
	return nil
}
