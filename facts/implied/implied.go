// Package implied holds each list of the document against what the rest of the
// document says must be in it: a frame for every string whose modules have one, a
// connector where a run meets a string. A list counts as "none" only where nothing
// else speaks of one.
//
// Only what no other room finds is here: a part that is referred to and is not
// there is refused when the document is read, and lists that are not stated leave
// what is judged of their parts not shown.
package implied

import (
	"sunclause/facts/working"
	"sunclause/schema"
)

// List holds the facts of one list of the document of which something else speaks.
type List struct {
	working.Subject

	Room     working.Text `json:"room" words:"trade subject that it belongs to"`
	Complete working.Flag `json:"complete" words:"whether it has every part of which something else in the document speaks; unknown where it lacks one"`
}

// want is one part that a list has to have.
type want struct {
	part string       // in words, as in "frame that carries string S1"
	by   string       // JSON pointer of what speaks of it
	has  working.Flag // whether it is in the list
}

// Derive derives the facts of every list of which something else speaks.
func Derive(in *schema.Installation) []List {
	all := []List{}
	add := func(room, id, name, at string, wants []want) {
		if len(wants) > 0 {
			all = append(all, List{
				Subject:  working.Subject{ID: id, At: at, Name: name},
				Room:     working.KnownText(room, at),
				Complete: complete(at, wants),
			})
		}
	}
	e := in.Earthing
	add("earthing", "frames", "the list of frames", e.Member("frames"), frames(in))
	add("earthing", "main_bonds", "the list of main bonds", e.Member("main_bonds"), mainBonds(in))
	plugs := plugsOf(in)
	for i := range in.Cables {
		r := &in.Cables[i]
		add("cable", r.ID.Value+".connectors", "the connectors of run "+r.ID.Value, r.Member("connectors"), connectors(plugs, r))
	}
	for i := range in.Roof.Planes {
		p := &in.Roof.Planes[i]
		add("roof", p.ID.Value+".edges", "the edges of plane "+p.ID.Value, p.Member("edges"), edges(in, p))
	}
	add("roof", "penetrations", "the penetrations of the roof", in.Roof.Member("planes"), penetrations(in))
	c := &in.Commissioning
	for _, r := range readingsOfTests {
		add("commissioning", r.member, "the readings under "+r.member, c.Member(r.member), r.tested(c))
	}
	add("commissioning", "rcds", "the tests of residual current devices", c.Member("rcds"), residualTests(in))
	add("handover", "attendances", "the list of attendances", in.Handover.Member("attendances"), attendances(in))
	return all
}

// complete reports that a list has every part that is wanted of it. Where it lacks
// one it is not known what is right, the list or what speaks of more: both places
// are named.
func complete(at string, wants []want) working.Flag {
	var lacks []working.Gap
	for _, w := range wants {
		switch {
		case !w.has.Known():
			lacks = append(lacks, w.has.Missing()...)
		case !w.has.Value():
			g := working.OffList(at, w.part)
			g.With = w.by
			lacks = append(lacks, g)
		}
	}
	if len(lacks) > 0 {
		return working.UnknownFlag(working.Gaps(lacks)...)
	}
	return working.KnownFlag(true, at)
}
