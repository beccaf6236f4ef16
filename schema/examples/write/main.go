// The program write writes the document of every example into a folder:
//
//	go run ./schema/examples/write examples
package main

import (
	"fmt"
	"os"

	"sunclause/schema/examples"
)

func main() {
	if len(os.Args) != 2 {
		fmt.Fprintln(os.Stderr, "name the folder to write the examples into")
		os.Exit(2)
	}
	if err := examples.Write(os.Args[1]); err != nil {
		fmt.Fprintln(os.Stderr, err)
		os.Exit(2)
	}
}
