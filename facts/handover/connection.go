package handover

import (
	"strings"

	"sunclause/facts/book"
	"sunclause/facts/circuit"
	"sunclause/facts/working"
	"sunclause/schema"
)

// Connection holds what decides how the network operator and the other authorities
// have to be notified, and the dates on which they were.
type Connection struct {
	PhaseA             working.Number `json:"generation_phase_a" words:"rated current of all generators and batteries together in the phase that has most"`
	Unbalance          working.Number `json:"generation_unbalance_a" words:"rated current of all of them in the phase that has most, less that in the phase that has least"`
	UnitPhaseA         working.Number `json:"generation_unit_phase_a" words:"rated current in one phase of the greatest of them"`
	GenerationW        working.Number `json:"generation_power_w" words:"rated AC power of all of them together"`
	Untyped            working.Number `json:"generators_not_type_tested" words:"generators without a type test for connection"`
	ExistingUnnotified working.Number `json:"existing_generators_not_notified" words:"generators found at the premises of which the network operator does not know"`
	OtherPremises      working.Flag   `json:"other_premises_nearby" words:"whether the same installer connects further premises near by within the period of the rule"`
	OtherAnswer        working.Text   `json:"other_premises_answer" words:"the answer to that, yes or no, where distance and date of the nearest of these premises do not say otherwise"`
	OtherDistanceM     working.Number `json:"other_premises_distance_m" words:"distance to the nearest of these premises"`
	ExportLimited      working.Flag   `json:"export_limitation_fitted" words:"whether the export is limited"`
	ExportPhaseA       working.Number `json:"export_limit_phase_a" words:"current to which export is limited in each phase"`
	ExportFailSafe     working.Flag   `json:"export_limit_fails_safe" words:"whether loss of a sensor or of communication cuts the export"`
	ExportStandard     working.Text   `json:"export_limit_standard" words:"standard that the limitation of export meets"`
	Routes             working.Names  `json:"network_routes" words:"ways in which the network operator was told"`
	Route              working.Text   `json:"network_route" words:"the way gone to the network operator that asks most of it: apply_before, fast_track, multiple_premises or connect_and_notify"`
	ApplicationDays    working.Number `json:"days_from_application_to_work" words:"days from the first application to the network operator to the start of the work"`
	ApprovalDays       working.Number `json:"days_from_approval_to_work" words:"days from the network operator's approval to the start of the work"`
	ApprovalLeft       working.Number `json:"days_of_approval_left" words:"days from going into service to the end of the approval"`
	ApprovedW          working.Number `json:"approved_power_w" words:"generating power that the network operator approved"`
	NoticeDays         working.Number `json:"days_from_service_to_notice" words:"days from going into service to the last notice of it to the network operator"`
	ApprovedExportW    working.Number `json:"approved_export_w" words:"export that the network operator approved"`
	BuildingNotices    working.Number `json:"building_notices" words:"notices to building control"`
	BuildingRoutes     working.Names  `json:"building_routes" words:"ways in which building control was told"`
	BuildingDays       working.Number `json:"days_from_completion_to_building_notice" words:"days from the end of the work to the notice of the competent person scheme to building control"`
	BuildingBefore     working.Number `json:"days_from_building_notice_to_work" words:"days from the building notice to the start of the work"`
	RegisterDays       working.Number `json:"working_days_from_service_to_register" words:"working days from going into service to the entry in the register of the scheme"`
	PermissionNeeded   working.Flag   `json:"planning_permission_needed" words:"whether the planning authority asked for an application"`
	ProtectedArea      working.Flag   `json:"in_protected_area" words:"whether the site lies in a protected area or a World Heritage Site"`
	Protected          working.Flag   `json:"listed_or_monument" words:"whether the building is listed or the site a protected monument"`
}

func connection(in *schema.Installation, c *circuit.Circuit, b book.Book) Connection {
	limit, near := in.AC.ExportLimitation, in.Handover.Connection
	f := Connection{
		OtherPremises:      otherPremises(in, b),
		OtherDistanceM:     working.Stated("d", "m", near.OtherPremisesDistanceM),
		ExportLimited:      working.StatedFlag(limit.Fitted),
		ExportPhaseA:       working.Stated("I_exp", "A", limit.ExportLimitPerPhaseA),
		ExportFailSafe:     working.StatedFlag(limit.FailSafe),
		ExportStandard:     firstWord(limit.Standard),
		ExistingUnnotified: unnotifiedGenerators(in),
		PermissionNeeded:   working.StatedFlag(in.Handover.Planning.PermissionNeeded),
		ProtectedArea:      working.Any(working.StatedFlag(in.Handover.Planning.ConservationArea), working.StatedFlag(in.Handover.Planning.WorldHeritageSite)),
		Protected:          working.Any(working.StatedFlag(in.Handover.Planning.ListedBuilding), working.StatedFlag(in.Handover.Planning.ScheduledMonument)),
	}
	f.OtherAnswer = yesOrNo(f.OtherPremises)
	f.addGenerators(in, c, b)
	f.deriveNotifications(in, b)
	return f
}

// firstWord is the name of a standard without its edition: G100 of "G100 issue 2".
func firstWord(t schema.Text) working.Text {
	if words := strings.Fields(t.Value); t.Stated() && len(words) > 0 {
		return working.KnownText(words[0], t.At())
	}
	return working.UnknownText(t.At())
}

// unnotifiedGenerators counts the generators found at the premises of which the
// network operator does not know.
func unnotifiedGenerators(in *schema.Installation) working.Number {
	at := in.AC.Member("existing_generation")
	if in.AC.ExistingGeneration == nil {
		return working.Unknown("n", "", at)
	}
	var unnotified []working.Flag
	for _, g := range in.AC.ExistingGeneration {
		unnotified = append(unnotified, working.Not(working.StatedFlag(g.Notified)))
	}
	return working.Count("n", at, unnotified...)
}

// otherPremises holds the answer whether the installer connects further premises near by
// against distance and date of the nearest. A no stands by itself where neither is stated.
func otherPremises(in *schema.Installation, b book.Book) working.Flag {
	near := in.Handover.Connection
	stated := working.StatedFlag(near.OtherPremisesNearby)
	if !near.OtherPremisesDistanceM.Stated() && !near.OtherPremisesDate.Stated() && !stated.Value() {
		return stated
	}
	return working.ConfirmedFlag(stated, working.All(
		working.AtMost(working.Stated("d", "m", near.OtherPremisesDistanceM), b.Number("other_premises_near_m", "d_max")),
		inPeriod(in, b),
	))
}

// inPeriod reports whether the nearest in time of the further premises is connected
// within the period of the rule.
func inPeriod(in *schema.Installation, b book.Book) working.Flag {
	date := in.Handover.Connection.OtherPremisesDate
	within := working.AtMost(daysOff.Of(working.Days("t", in.Commissioning.Date, date)), b.Number("other_premises_within_days", "t_max"))
	if !within.Known() {
		return within
	}
	return working.KnownFlag(within.Value(), date.At())
}

// yesOrNo is a flag as a word.
func yesOrNo(f working.Flag) working.Text {
	switch {
	case !f.Known():
		return working.UnknownText(f.Missing()...)
	case f.Value():
		return working.KnownText("yes", f.At())
	}
	return working.KnownText("no", f.At())
}
