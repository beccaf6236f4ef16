package main

import (
	"bytes"
	"context"
	"os"
	"testing"
)

// TestShippedIsFresh makes sure that the Go data are those of the files.
func TestShippedIsFresh(t *testing.T) {
	got, err := Shipped(context.Background(), os.DirFS(".."))
	if err != nil {
		t.Fatal(err)
	}
	want, err := os.ReadFile("../shipped.go")
	if err != nil {
		t.Fatal(err)
	}
	if !bytes.Equal(got, want) {
		t.Error("policies/shipped.go is not what the rule sets say; go generate ./policies writes it")
	}
}
