// Package roof derives the facts of the roof that carries the modules: wind and
// snow on it, how they load modules, clamps, rails, fixings and screws, where
// everything lies, and what was done to the covering.
//
// The figures are an indication from the members of the document. They are not a
// structural design, and do not replace the check of a competent person.
package roof

import (
	"sunclause/facts/book"
	"sunclause/facts/working"
	"sunclause/schema"
)

// Facts are what this room knows of an installation.
type Facts struct {
	Weather      Weather
	Survey       Survey
	Parts        Parts
	Sheets       []Sheet
	Planes       []Plane
	Modules      []Module
	Rails        []Rail
	Fixings      []Fixing
	Clamps       []Clamp
	Openings     []Opening
	Penetrations []Penetration
}

// Derive derives the facts of the roof, plane by plane. A list is nil when no
// plane of the document states such parts.
func Derive(in *schema.Installation, b book.Book) Facts {
	all := Facts{Weather: weatherOf(in, b), Survey: surveyOf(in), Parts: partsOf(in), Sheets: working.OfSheets(in.Datasheets.Fixings, fixingSheet)}
	if in.Roof.Planes == nil {
		return all
	}
	all.Planes = []Plane{}
	for i := range in.Roof.Planes {
		s := slopeOf(in, &in.Roof.Planes[i], b)
		s.placeModules()
		s.loads()
		all.Planes = append(all.Planes, s.planeFacts())
		all.Modules = joined(all.Modules, s.doc.Modules != nil, s.moduleFacts())
		all.Rails = joined(all.Rails, s.doc.Rails != nil, s.railFacts())
		all.Fixings = joined(all.Fixings, s.doc.Fixings != nil, s.fixingFacts())
		all.Clamps = joined(all.Clamps, s.doc.Clamps != nil, s.clampFacts())
		all.Openings = joined(all.Openings, s.doc.Openings != nil, s.openingFacts())
		all.Penetrations = joined(all.Penetrations, s.doc.Penetrations != nil, s.penetrationFacts())
	}
	return all
}

// joined adds the parts of one plane to a list, and makes it a stated list when
// the plane states them.
func joined[T any](all []T, stated bool, parts []T) []T {
	if all == nil && stated {
		return parts
	}
	return append(all, parts...)
}

// slope is one plane at work: what the document states of it, and what has been
// derived from it so far.
type slope struct {
	in   *schema.Installation
	doc  *schema.Plane
	book book.Book

	pitch           working.Number // of the plane
	fireWall        working.Flag   // whether a side or line of it is a party or compartment wall
	wind            Pressure       // on the plane
	snow            Snow
	dead            DeadLoad
	areal           ArealLoads     // on a square metre of slope
	slide           working.Number // on a square metre of slope, down it, while the wind lifts
	layout          []placedModule // modules where they lie, in the order of the document
	bounds          []bounds       // the same, without working
	unplacedReasons []working.Gap  // what keeps it from being known where they lie
	rails           []rail         // rails with what they carry and what carries them

	moduleByID    map[string]*placedModule // modules by id
	railByID      map[string]int           // places of the rails in the list, by id
	clamps        map[string][]clampHold   // on each module, by its id
	order         map[int]int              // of each fixing along its rail
	directFixings map[string]int           // fixings that hold each module without a rail
	tooManyRails  string                   // a module with too many rails below it
}

func slopeOf(in *schema.Installation, doc *schema.Plane, b book.Book) *slope {
	s := &slope{
		in: in, doc: doc, book: b, pitch: working.Stated("α", "°", doc.PitchDeg),
		moduleByID: map[string]*placedModule{}, railByID: map[string]int{}, order: map[int]int{}, directFixings: map[string]int{},
	}
	s.wind = s.windOn()
	s.snow = s.snowOn()
	s.fireWall = s.hasFireWall()
	return s
}

// param takes a parameter of the rule set under a symbol.
func (s *slope) param(name, symbol string) working.Number { return s.book.Number(name, symbol) }
