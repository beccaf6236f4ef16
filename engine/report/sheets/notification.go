package sheets

import (
	"strings"

	"sunclause/engine/judge"
	"sunclause/facts/working"
	"sunclause/schema"
)

// notificationSheet holds what the form for the network operator asks for.
func notificationSheet(r *judge.Result) Sheet {
	in, whole := &r.Document.Installation, &r.Facts.Installation
	s := Sheet{Name: "notification", Title: "Data for the network operator", Columns: []string{"what", "value"}}
	add := func(what, value string) { s.Rows = append(s.Rows, []string{what, value}) }
	supply := in.AC.Supply
	add("job", in.Project.Reference.Value)
	add("network operator", stated(supply.NetworkOperator))
	add("number of the supply point", stated(supply.SupplyNumber))
	add("form of the supply", stated(supply.Form))
	add("fuse or circuit-breaker of the distributor", number(working.Stated("", "A", supply.Device.To().RatedA)))
	add("rated power of all modules", number(whole.DcPowerW))
	add("rated AC power of all generators and batteries", number(whole.GenerationW))
	add("rated current in the phase that has most", number(whole.PhaseA))
	add("export limited", flag(whole.ExportLimited))
	for i := range r.Facts.Inverters {
		inverter(add, in, i)
	}
	for _, e := range in.AC.ExistingGeneration {
		add("existing generator "+e.ID.Value, stated(e.Kind)+", "+number(working.Stated("", "W", e.ACPowerRatedW)))
	}
	return s
}

func inverter(add func(what, value string), in *schema.Installation, i int) {
	inv := in.Inverters[i]
	sheet := inv.Datasheet.To()
	name := "inverter " + inv.ID.Value
	add(name+": type", inv.Datasheet.Value)
	add(name+": serial number", stated(inv.Serial))
	add(name+": rated AC power", number(working.Stated("", "W", sheet.ACPowerRatedW)))
	add(name+": greatest AC current", number(working.Stated("", "A", sheet.ACCurrentMaxA)))
	add(name+": phases", number(working.Stated("", "", sheet.Phases)))
	add(name+": type test", stated(sheet.GridTypeTest)+", "+stated(sheet.GridTypeTestReference))
}

// stated is a text of the document.
func stated(t schema.Text) string {
	if !t.Stated() {
		return "not stated"
	}
	return strings.ReplaceAll(t.Value, "_", " ")
}
