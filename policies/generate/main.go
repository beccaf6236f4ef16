// Command generate writes the embedded rule sets as Go data, policies/shipped.go,
// so that none of their YAML need be read when sunclause starts. Run it by go
// generate ./policies after any change of a set; a test holds the file to be
// fresh.
package main

import (
	"context"
	"fmt"
	"os"
)

func main() {
	text, err := Shipped(context.Background(), os.DirFS("."))
	if err == nil {
		err = os.WriteFile("shipped.go", text, 0o644)
	}
	if err != nil {
		fmt.Fprintln(os.Stderr, "policies/generate:", err)
		os.Exit(1)
	}
}
