package roof

import (
	"sunclause/facts/working"
	"sunclause/schema"
)

// Survey holds what was found out about the roof before the work, and how the
// work on it is made safe.
type Survey struct {
	UnderScheme     working.Flag   `json:"roof_under_scheme" words:"whether the work is certified under an installer scheme"`
	PersonNamed     working.Flag   `json:"roof_survey_person_named" words:"whether the evidence names who answers for the check of the roof"`
	EvidenceGiven   working.Flag   `json:"roof_survey_evidence_given" words:"whether a file shows the check of the roof"`
	Role            working.Text   `json:"roof_survey_role" words:"role of the person who answers for the check of the roof"`
	RoofMethod      working.Text   `json:"roof_survey_method" words:"how the roof was looked at"`
	RaftersSeen     working.Flag   `json:"rafters_seen" words:"whether the rafters themselves were seen"`
	Strength        working.Text   `json:"roof_strength_found" words:"what the check says of the roof"`
	Strengthened    working.Flag   `json:"roof_strengthened" words:"whether the strengthening asked for was done"`
	EngineerGiven   working.Flag   `json:"engineer_report_given" words:"whether a structural engineer answers for the roof, by report or by the check"`
	ByEngineer      working.Flag   `json:"roof_by_engineer" words:"whether a structural engineer is shown to answer for the roof; one who is not shown does not count"`
	Sag             working.Flag   `json:"roof_sags" words:"whether the roof sags"`
	Rot             working.Flag   `json:"roof_rot_seen" words:"whether timber is rotten or eaten"`
	Split           working.Flag   `json:"roof_split_timber_seen" words:"whether rafters are split"`
	Damp            working.Flag   `json:"roof_damp_seen" words:"whether water gets in"`
	Asbestos        working.Text   `json:"roof_asbestos" words:"asbestos in the covering or below it"`
	AsbestosRules   working.Flag   `json:"asbestos_rules_kept" words:"whether the work is done by the rules for asbestos"`
	WorkPlan        working.Flag   `json:"height_plan_given" words:"whether there is a plan for the work at height"`
	Scaffold        working.Flag   `json:"scaffold" words:"whether there is a scaffold or equal"`
	EdgeProtection  working.Flag   `json:"edge_protection" words:"whether every edge from which one can fall is guarded"`
	WindLimit       working.Number `json:"work_wind_limit_m_per_s" words:"mean wind speed at which work stops"`
	GustLimit       working.Number `json:"work_gust_limit_m_per_s" words:"gust speed at which work stops"`
	FragileControl  working.Flag   `json:"fragile_surfaces_controlled" words:"whether fragile surfaces are covered or fenced off"`
	OverheadChecked working.Flag   `json:"overhead_lines_checked" words:"whether overhead lines were looked for"`
	Lifting         working.Text   `json:"lifting" words:"how modules are raised"`
	Alone           working.Flag   `json:"lone_working" words:"whether somebody works alone on the roof"`
	Rescue          working.Flag   `json:"rescue_planned" words:"whether rescue of a fallen person is planned"`
}

func surveyOf(in *schema.Installation) Survey {
	v, w := in.Roof.Survey, in.Roof.WorkAtHeight
	s := Survey{
		UnderScheme:     working.StatedFlag(in.Project.CertificationScheme),
		PersonNamed:     working.StatedFlag(v.PersonNamedInEvidence),
		EvidenceGiven:   working.IsStated(v.Evidence),
		Role:            working.StatedText(v.Role),
		RoofMethod:      working.StatedText(v.Method),
		RaftersSeen:     working.StatedFlag(v.RaftersSeen),
		Strength:        working.StatedText(v.StrengthFound),
		Strengthened:    working.StatedFlag(v.Strengthened),
		EngineerGiven:   working.Any(working.StatedText(v.Role).OneOf("structural_engineer"), working.IsStated(v.EngineerReport)),
		Sag:             working.StatedFlag(v.SagSeen),
		Rot:             working.StatedFlag(v.RotOrInsectsSeen),
		Split:           working.StatedFlag(v.SplitTimberSeen),
		Damp:            working.StatedFlag(v.DampSeen),
		Asbestos:        working.StatedText(v.Asbestos),
		AsbestosRules:   working.StatedFlag(v.AsbestosRulesKept),
		WorkPlan:        working.IsStated(w.Plan),
		Scaffold:        working.StatedFlag(w.Scaffold),
		EdgeProtection:  working.StatedFlag(w.EdgeProtection),
		WindLimit:       working.Stated("v_stop", "m/s", w.WindLimitMPerS),
		GustLimit:       working.Stated("v_gust", "m/s", w.GustLimitMPerS),
		FragileControl:  working.StatedFlag(w.FragileSurfacesControlled),
		OverheadChecked: working.StatedFlag(w.OverheadLinesChecked),
		Lifting:         working.StatedText(w.Lifting),
		Alone:           working.StatedFlag(w.LoneWorking),
		Rescue:          working.StatedFlag(w.RescuePlanned),
	}
	switch {
	case s.EngineerGiven.Known():
		s.ByEngineer = s.EngineerGiven
	case !v.Role.Stated():
		s.ByEngineer = working.UnknownFlag(v.Role.At())
	default:
		s.ByEngineer = working.KnownFlag(false, v.Role.At())
	}
	return s
}
