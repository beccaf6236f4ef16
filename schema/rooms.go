package schema

import (
	"encoding/json"
	"strings"
	"sync"
	"sync/atomic"
)

// To compile the schema of the whole installation takes longer than all the
// rest of a check. A document that is in order, as nearly all are, is therefore
// held against it room by room, on all processors; only one that is not is held
// against the whole, for the words of what is wrong.

// room is the schema of one top member of the document.
type room struct {
	schema string // file and fragment
	list   bool   // the member is a list of such
	most   int    // of a list
}

// rooms are the top members of the document with the schema of each.
var rooms = sync.OnceValue(func() map[string]room {
	all := map[string]room{}
	properties, _ := plainSchema(InstallationSchema)["properties"].(map[string]any)
	for name, p := range properties {
		member, _ := p.(map[string]any)
		r := room{most: whole(member["maxItems"])}
		if items, ok := member["items"].(map[string]any); ok {
			r.list, member = true, items
		}
		if ref, ok := member["$ref"].(string); ok && !strings.HasPrefix(ref, "#") {
			r.schema = ref
			all[name] = r
		}
	}
	return all
})

func whole(v any) int {
	n, _ := v.(json.Number)
	i, _ := n.Int64()
	return int(i)
}

// Prepare makes the schemas of the document ready, which takes a while, so that
// it can be done beside something else. Without it the first Decode does.
func Prepare() {
	for _, r := range rooms() {
		go func() { _, _ = compile(r.schema) }() // an error comes back from Decode
	}
}

// prepareOnce keeps a batch from asking for every document.
var prepareOnce = sync.OnceFunc(Prepare)

// acceptable reports whether a document is in order for sure. It says no also
// where it cannot tell.
func acceptable(root any) bool {
	members, ok := root.(map[string]any)
	if !ok || members["project"] == nil {
		return false
	}
	var refused atomic.Bool
	var checks sync.WaitGroup
	for name, v := range members {
		if text, isText := v.(string); isText && name == "$schema" && len(text) <= 2000 {
			continue
		}
		r, known := rooms()[name]
		if !known {
			return false
		}
		checks.Go(func() {
			if !r.accepts(v) {
				refused.Store(true)
			}
		})
	}
	checks.Wait()
	return !refused.Load()
}

func (r room) accepts(v any) (ok bool) {
	defer func() {
		if recover() != nil {
			ok = false // the whole schema will say what is wrong
		}
	}()
	values := []any{v}
	if r.list {
		if values, ok = v.([]any); !ok || len(values) > r.most {
			return false
		}
	}
	s, err := compile(r.schema)
	if err != nil {
		return false
	}
	for _, v := range values {
		if s.Validate(v) != nil {
			return false
		}
	}
	return true
}
