package rego_not_utf8.pvstring

x := "ÿþ"
