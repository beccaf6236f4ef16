// Package facts derives everything that rules judge from an installation and
// the figures of a rule set. Each trade subject has a room of its own below
// this package; here they are put in reading order.
//
// Facts are raw quantities, never verdicts: the same array is right in one
// country and wrong in another.
package facts

import (
	"sunclause/facts/book"
	"sunclause/facts/cable"
	"sunclause/facts/circuit"
	"sunclause/facts/isolator"
	"sunclause/facts/label"
	"sunclause/facts/pvstring"
	"sunclause/facts/working"
	"sunclause/schema"
)

// Facts are all facts of one installation. A list is nil when the document does
// not state the parts it is about, which is not the same as having none.
type Facts struct {
	Installation Installation        `json:"installation" words:"the installation as a whole"`
	Strings      []pvstring.String   `json:"strings" words:"PV strings"`
	Mppts        []pvstring.Mppt     `json:"mppts" words:"tracking inputs of the inverters"`
	Inverters    []pvstring.Inverter `json:"inverters" words:"inverters"`
	Isolators    []isolator.Isolator `json:"isolators" words:"isolators"`
	Runs         []cable.Run         `json:"runs" words:"runs of cable"`
}

// Lists tells for each list of facts the member of the document that its parts
// come from: what is missing when the list is.
var Lists = map[string]string{
	"strings": "/strings", "mppts": "/inverters", "inverters": "/inverters", "isolators": "/isolators", "runs": "/cables",
}

// Derive derives all facts, room by room.
func Derive(in *schema.Installation, b book.Book) *Facts {
	c := circuit.Of(in)
	pv := pvstring.Derive(in, c, b)
	f := &Facts{
		Strings:   pv.Strings,
		Mppts:     pv.Mppts,
		Inverters: pv.Inverters,
		Isolators: isolator.Derive(in, c, pv),
		Runs:      cable.Derive(in, c, pv),
	}
	f.Installation = installationOf(in, f)
	return f
}

// Installation holds the facts of the installation as a whole.
type Installation struct {
	working.Subject

	Stage      working.Text   `json:"stage" words:"design or as_built"`
	Premises   working.Text   `json:"premises" words:"kind of premises"`
	Country    working.Text   `json:"country" words:"country, two letters"`
	DesignDate working.Text   `json:"design_date" words:"date of the design"`
	Strings    working.Number `json:"strings" words:"PV strings"`
	DcPowerW   working.Number `json:"dc_power_w" words:"rated power of all modules"`
	VocMaxV    working.Number `json:"voc_max_v" words:"greatest maximum voltage of any string"`
	Legends    working.Names  `json:"label_legends" words:"legends of the labels put up"`
}

func installationOf(in *schema.Installation, f *Facts) Installation {
	v := Installation{
		Subject:    working.Subject{ID: "installation", At: "", Name: "the installation"},
		Stage:      working.StatedText(in.Project.Stage),
		Premises:   working.StatedText(in.Project.Premises),
		Country:    working.StatedText(in.Project.Country),
		DesignDate: working.StatedText(in.Project.DesignDate),
		Strings:    working.Counted("n", len(f.Strings), "/strings"),
		Legends:    label.Legends(in),
	}
	var power, voltage []working.Number
	for i := range f.Strings {
		power = append(power, f.Strings[i].PowerW)
		voltage = append(voltage, f.Strings[i].VocMaxV)
	}
	v.DcPowerW = working.Sum("P_dc", "W", power...)
	v.VocMaxV = working.Greatest("U_oc,max", "V", voltage...)
	if f.Strings == nil {
		v.Strings = working.Unknown("n", "", "/strings")
		v.DcPowerW = working.Unknown("P_dc", "W", "/strings")
		v.VocMaxV = working.Unknown("U_oc,max", "V", "/strings")
	}
	return v
}
