package implied

import (
	"sunclause/facts/circuit"
	"sunclause/facts/working"
	"sunclause/schema"
)

// plug is one end of a part that comes with plugs: a string, or a tracking input.
type plug struct {
	words string // what has it
	says  string // JSON pointer of what says so: of their type, or how many there are
}

// plugsOf are the ends with plugs by their terminals: modules come with them, of the
// type that the string or their sheet names, and inverters whose sheet counts them.
func plugsOf(in *schema.Installation) map[string]plug {
	plugs := map[string]plug{}
	for i := range in.Strings {
		s := &in.Strings[i]
		says := s.ConnectorMate
		if !says.Stated() {
			says = s.Module.To().Connector
		}
		if says.Stated() {
			plugs[s.ID.Value] = plug{"string " + s.ID.Value, says.At()}
		}
	}
	for _, inverter := range in.Inverters {
		for i := range inverter.Datasheet.To().MPPTs {
			if inputs := inverter.Datasheet.To().MPPTs[i].StringInputs; inputs.Stated() {
				name := circuit.Input(inverter.ID.Value, i)
				plugs[name] = plug{"input " + name, inputs.At()}
			}
		}
	}
	return plugs
}

// connectors wants a pair of connectors where a run meets plugs.
func connectors(plugs map[string]plug, r *schema.Run) []want {
	var all []want
	for _, end := range []schema.Text{r.From, r.To} {
		if p, is := plugs[end.Value]; is {
			all = append(all, want{"pair of connectors where it meets " + p.words, p.says, atEnd(r, end == r.From)})
		}
	}
	return all
}

// atEnd reports whether a run has connectors nearer to one of its ends than to the
// other. One that does not say where it is could be there.
func atEnd(r *schema.Run, start bool) working.Flag {
	at := r.Member("connectors")
	if r.Connectors == nil {
		return working.UnknownFlag(at)
	}
	length := 0.0
	for i := range r.Segments {
		length += r.Segments[i].LengthM.Value
	}
	var some []working.Flag
	for i := range r.Connectors {
		position := r.Connectors[i].PositionM
		if !position.Stated() {
			some = append(some, working.UnknownFlag(position.At()))
			continue
		}
		some = append(some, working.KnownFlag((position.Value <= length/2) == start, at))
	}
	return working.Any(some...)
}
