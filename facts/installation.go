package facts

import (
	"sunclause/facts/accircuit"
	"sunclause/facts/commissioning"
	"sunclause/facts/earthing"
	"sunclause/facts/handover"
	"sunclause/facts/roof"
	"sunclause/facts/storage"
	"sunclause/facts/surge"
	"sunclause/facts/working"
	"sunclause/schema"
)

// Installation holds the facts of the installation as a whole.
type Installation struct {
	working.Subject
	surge.Site
	earthing.System
	accircuit.Supply
	storage.Provision
	roof.Weather
	roof.Survey
	roof.Parts
	commissioning.Record
	handover.Papers
	handover.Connection

	Stage      working.Text   `json:"stage" words:"design or as_built"`
	Premises   working.Text   `json:"premises" words:"kind of premises"`
	Country    working.Text   `json:"country" words:"country, two letters"`
	DesignDate working.Text   `json:"design_date" words:"date of the design"`
	TempMinC   working.Number `json:"temp_min_c" words:"lowest expected ambient temperature of the site"`
	TempMaxC   working.Number `json:"temp_max_c" words:"highest expected ambient temperature of the site"`
	Strings    working.Number `json:"strings" words:"PV strings"`
	DcPowerW   working.Number `json:"dc_power_w" words:"rated power of all modules"`
	VocMaxV    working.Number `json:"voc_max_v" words:"greatest maximum voltage of any string"`
	OnePlace   working.Flag   `json:"joined_parts_in_one_place" words:"whether parts that are joined without a run of cable say that they stand in one place"`
	Legends    working.Names  `json:"label_legends" words:"legends of the labels put up"`
}

func (r *rooms) installation(in *schema.Installation, f *Facts) Installation {
	v := Installation{
		Subject: working.Subject{ID: "installation", At: "", Name: "the installation"},
		Site:    r.surges.Site, System: r.earth.System, Supply: r.ac.Supply, Provision: r.store.Provision,
		Weather: r.top.Weather, Survey: r.top.Survey, Parts: r.top.Parts,
		Record: r.tests.Record, Papers: r.papers.Papers, Connection: r.papers.Connection,
		Stage:      working.StatedText(in.Project.Stage),
		Premises:   working.StatedText(in.Project.Premises),
		Country:    working.StatedText(in.Project.Country),
		DesignDate: working.StatedText(in.Project.DesignDate),
		TempMinC:   working.Stated("T_min", "°C", in.Site.TempMinC),
		TempMaxC:   working.Stated("T_max", "°C", in.Site.TempMaxC),
		OnePlace:   r.cables.OnePlace,
		Legends:    r.labels.Legends,
	}
	v.sums(f)
	return v
}

// sums adds up what the strings have.
func (v *Installation) sums(f *Facts) {
	if f.Strings == nil {
		v.Strings = working.Unknown("n", "", "/strings")
		v.DcPowerW = working.Unknown("P_dc", "W", "/strings")
		v.VocMaxV = working.Unknown("U_oc,max", "V", "/strings")
		return
	}
	var power, voltage []working.Number
	for i := range f.Strings {
		power = append(power, f.Strings[i].PowerW)
		voltage = append(voltage, f.Strings[i].VocMaxV)
	}
	v.Strings = working.Counted("n", len(f.Strings), "/strings")
	v.DcPowerW = working.Sum("P_dc", "W", power...)
	v.VocMaxV = working.Greatest("U_oc,max", "V", voltage...)
}
