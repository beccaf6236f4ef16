package cable

import (
	"sunclause/facts/circuit"
	"sunclause/facts/working"
	"sunclause/schema"
)

// cableKinds are the kinds of cable whose name says whether they have one core;
// armoured, mineral-insulated and flexible ones come both ways.
var cableKinds = map[string]bool{
	"solar_single_core": true, "single_core_unsheathed": true, "single_core_sheathed": true,
	"multicore": false, "flat_twin_and_earth": false,
}

// singleCores reports whether a cable has one core: by their count, or by its kind
// where the sheet does not count them.
func singleCores(s *schema.CableDatasheet) working.Flag {
	if s.Cores.Stated() {
		return working.KnownFlag(s.Cores.Value == 1, s.Cores.At())
	}
	if single, decides := cableKinds[s.Kind.Value]; decides {
		return working.KnownFlag(single, s.Kind.At())
	}
	return working.UnknownFlag(s.Cores.At())
}

// cores counts the cores of the cable, and those that its circuit needs of a cable
// of more than one.
func (f *Run) cores(r *schema.Run) {
	f.Cores = working.Stated("n_cores", "", r.Cable.To().Cores)
	f.CoresNeeded = f.Loaded.As("n_needed")
	switch {
	case !f.Service.Known():
		f.CoresNeeded = working.Unknown("n_needed", "", f.Service.Missing()...)
	case !carriesLoad(f.Service):
		f.CoresNeeded = working.Counted("n_needed", 1, f.At)
	case f.Loaded.Known() && f.Loaded.Value() == 3:
		if neutral := r.NeutralConductor; !neutral.Stated() {
			f.CoresNeeded = working.Unknown("n_needed", "", neutral.At())
		} else if neutral.Value {
			f.CoresNeeded = working.Counted("n_needed", 4, neutral.At())
		}
	}
}

// carriesLoad reports whether a run carries current in service.
func carriesLoad(service working.Text) bool {
	return service.OneOf(circuit.PowerServices...).Value()
}
