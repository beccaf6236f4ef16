package rego

import (
	"slices"
	"sync"

	"github.com/open-policy-agent/opa/v1/ast"
)

// allowedBuiltins are what a rule may call: comparison, and the plain handling
// of words, lists and sets. There is no network, clock, randomness or
// environment among them, and nothing that cannot be stopped half-way.
// Arithmetic belongs in the facts, but simple sums are let through.
var allowedBuiltins = []string{
	"eq", "equal", "neq", "lt", "lte", "gt", "gte", "assign",
	"plus", "minus", "mul", "div", "abs", "round", "ceil", "floor",
	"count", "sum", "max", "min", "sort", "all", "any",
	"and", "or", "intersection", "array.concat", "array.slice", "array.reverse",
	"concat", "contains", "startswith", "endswith", "lower", "upper", "split", "trim", "trim_prefix", "trim_suffix",
	"format_int", "indexof", "substring", "replace",
	"is_number", "is_string", "is_boolean", "is_array", "is_set", "is_object", "is_null",
	"object.get", "object.keys", "object.union", "to_number",
	"internal.member_2", "internal.member_3", "internal.template_string", "internal.print", "internal.test_case",
}

// capabilities is the allow-list in the compiler's form.
var capabilities = sync.OnceValue(func() *ast.Capabilities {
	caps := ast.CapabilitiesForThisVersion()
	caps.Builtins = slices.DeleteFunc(caps.Builtins, func(b *ast.Builtin) bool {
		return !slices.Contains(allowedBuiltins, b.Name)
	})
	caps.AllowNet = []string{} // not nil: nil would allow every host
	return caps
})
