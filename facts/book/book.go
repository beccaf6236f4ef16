// Package book is what the facts take from a rule set: its parameters and its
// tables. Swap the book, and the same installation is worked out by another
// country's figures.
package book

import (
	"fmt"

	"sunclause/facts/working"
)

// Parameter is a figure or word that a region or firm may change.
type Parameter struct {
	Name   string
	Title  string
	Unit   string
	Number float64
	Text   string // when the parameter is a word; then Number means nothing
	IsText bool
	Source working.Source
	Set    string // name of the rule set that decided the value
	Listed string // name of the rule set that lists it
}

// Book is the figures of one rule set with its layers merged.
type Book struct {
	Parameters map[string]Parameter
	Tables     map[string]*Table
}

// Number takes a parameter as a quantity under a symbol. A set that does not
// define it leaves the quantity unknown, and is named as what is missing.
func (b Book) Number(name, symbol string) working.Number {
	p, ok := b.Parameters[name]
	if !ok || p.IsText {
		return working.Unknown(symbol, "", lacks("parameter", name))
	}
	return working.Figure(symbol, p.Unit, p.Number, "parameter "+name+" of "+p.Set, p.Source)
}

// Word takes a parameter that is a word.
func (b Book) Word(name string) working.Text {
	p, ok := b.Parameters[name]
	if !ok || !p.IsText {
		return working.UnknownText(lacks("parameter", name))
	}
	return working.KnownText(p.Text, "")
}

func lacks(kind, name string) string {
	return fmt.Sprintf("the rule set has no %s %s", kind, name)
}
