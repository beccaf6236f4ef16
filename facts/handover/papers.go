package handover

import (
	"sunclause/facts/pvstring"
	"sunclause/facts/working"
	"sunclause/schema"
)

// Papers holds the facts of what is handed over, and of what was counted on
// site.
type Papers struct {
	PaperKinds     working.Names  `json:"papers" words:"documents that exist, by kind"`
	PapersGiven    working.Names  `json:"papers_given" words:"documents that were given on a date to others than an authority, by kind"`
	Instructed     working.Flag   `json:"customer_instructed" words:"whether the customer was shown how to use the installation and shut it down"`
	Scheme         working.Flag   `json:"scheme_job" words:"whether the job is certified under an installer scheme"`
	BatteryCount   working.Number `json:"batteries_fitted" words:"batteries of the document"`
	PapersTwice    working.Number `json:"papers_twice" words:"documents of which there is another of the same kind, part and revision"`
	WarrantyTwice  working.Number `json:"warranties_twice" words:"warranties of which there is another that covers the same"`
	Warranties     working.Names  `json:"warranties" words:"what the warranties cover that have a start and a period"`
	Insured        working.Flag   `json:"workmanship_insured" words:"whether the workmanship warranty is insured against the installer's end of business"`
	Unwritten      working.Number `json:"decisions_not_in_writing" words:"decisions of the customer that are not in writing"`
	StructureDays  working.Number `json:"days_from_structure_check_to_work" words:"days from the check of the roof structure to the start of the work"`
	EstimateDays   working.Number `json:"days_from_estimate_to_contract" words:"days from the performance estimate to the contract"`
	EstimateAnswer working.Text   `json:"estimate_before_contract_answer" words:"the answer whether the customer had the estimate before the contract, yes or no, where the dates do not say otherwise"`
	EstimateSite   working.Flag   `json:"estimate_site_specific" words:"whether the estimate was made for this site"`
	EstimateSpread working.Flag   `json:"estimate_uncertainty_stated" words:"whether the estimate says how far it can be off"`
	Unexplained    working.Number `json:"decisions_not_explained" words:"decisions of the customer whose risk was not explained"`
	EstimateMethod working.Text   `json:"estimate_method" words:"how the performance estimate was made"`
	EstimateOffPct working.Number `json:"estimate_off_pct" words:"energy of the estimate off its yield times the rated power of the modules, whichever way"`

	ModulesCounted   working.Number `json:"as_built_modules" words:"modules counted on site"`
	ModulesStated    working.Number `json:"modules_in_strings" words:"modules in the strings of the document"`
	StringsCounted   working.Number `json:"as_built_strings" words:"strings counted on site"`
	InvertersCounted working.Number `json:"as_built_inverters" words:"inverters counted on site"`
	InvertersStated  working.Number `json:"inverters_in_document" words:"inverters of the document"`
	SameAsDesign     working.Flag   `json:"same_as_design" words:"whether what was built is what was designed"`
	ChangesDescribed working.Flag   `json:"changes_described" words:"whether it is described what was changed"`
	SerialsUnlike    working.Number `json:"inverter_serials_unlike" words:"inverters and batteries whose serial number was recorded as another, or not at all"`
	SerialsTwice     working.Number `json:"serials_twice" words:"serial numbers that stand at more than one part"`
	ModuleSerials    working.Number `json:"module_serials" words:"serial numbers recorded of parts that are modules"`
	OnList           working.Flag   `json:"products_on_approved_list" words:"whether all products stood on the list of the scheme on the day of the work"`
}

func papers(in *schema.Installation, pv pvstring.Facts) Papers {
	h := in.Handover
	e := h.PerformanceEstimate
	p := Papers{
		Instructed:       working.StatedFlag(h.CustomerInstructed),
		Scheme:           working.StatedFlag(in.Project.CertificationScheme),
		BatteryCount:     working.Length("n", in.Storage.Batteries, in.Storage.Member("batteries")),
		StructureDays:    days("t", earliest(dated(h, "structural_assessment", "structural_calculation")), h.StartOfWork, h.Member("documents")),
		EstimateDays:     days("t", e.Date, h.ContractDate, ""),
		EstimateAnswer:   estimateBefore(h),
		EstimateSite:     working.StatedFlag(e.SiteSpecific),
		EstimateSpread:   working.StatedFlag(e.UncertaintyStated),
		EstimateMethod:   working.StatedText(e.Method),
		EstimateOffPct:   estimateOff(e, pv),
		ModulesCounted:   working.Stated("n_site", "", h.AsBuilt.Modules),
		ModulesStated:    modulesOf(pv),
		StringsCounted:   working.Stated("n_site", "", h.AsBuilt.Strings),
		InvertersCounted: working.Stated("n_site", "", h.AsBuilt.Inverters),
		InvertersStated:  working.Length("n", in.Inverters, "/inverters"),
		SameAsDesign:     working.StatedFlag(h.AsBuilt.SameAsDesign),
		ChangesDescribed: working.IsStated(h.AsBuilt.Changes),
		OnList:           working.StatedFlag(h.AsBuilt.ProductsOnApprovedList),
	}
	p.kinds(h)
	p.warranted(h)
	p.serials(in)
	return p
}

// kinds lists the documents there are, and those that were given.
func (p *Papers) kinds(h schema.Handover) {
	if h.Documents == nil {
		at := h.Member("documents")
		p.PaperKinds, p.PapersGiven, p.PapersTwice = working.UnknownList(at), working.UnknownList(at), working.Unknown("n", "", at)
		return
	}
	var all, given []string
	twice := again{}
	for _, d := range h.Documents {
		all = append(all, d.Kind.Value)
		if d.Given.Stated() && !d.GivenTo.Is("authority") {
			given = append(given, d.Kind.Value)
		}
		if !d.Kind.Is("other") {
			twice.see(d.Kind.Value+" "+d.Part.Value+" "+d.Revision.Value, d.At())
		}
	}
	p.PaperKinds, p.PapersGiven, p.PapersTwice = working.List(all...), working.List(given...), twice.count(h.Member("documents"))
}

// again counts what comes up again.
type again struct {
	seen map[string]bool
	at   []string // places of those that do
}

func (a *again) see(what, at string) {
	if a.seen[what] {
		a.at = append(a.at, at)
	}
	if a.seen == nil {
		a.seen = map[string]bool{}
	}
	a.seen[what] = true
}

// count is how many do, at the place of the first; at that of the list where none does.
func (a *again) count(list string) working.Number {
	return working.Counted("n", len(a.at), append(a.at, list)[0])
}

// dated are the dates of the documents of some kinds.
func dated(h schema.Handover, kinds ...string) []schema.Text {
	var dates []schema.Text
	for _, d := range h.Documents {
		for _, k := range kinds {
			if d.Kind.Is(k) {
				dates = append(dates, d.Date)
			}
		}
	}
	return dates
}

// warranted lists what warranties cover that say when they start and how long
// they run; the others promise nothing that can be held to.
func (p *Papers) warranted(h schema.Handover) {
	at := h.Member("warranties")
	if h.Warranties == nil {
		p.Warranties, p.WarrantyTwice, p.Insured = working.UnknownList(at), working.Unknown("n", "", at), working.UnknownFlag(at)
		return
	}
	var covered []string
	twice := again{}
	p.Insured = working.UnknownFlag(at)
	for _, w := range h.Warranties {
		if w.Start.Stated() && w.PeriodYr.Stated() {
			covered = append(covered, w.Kind.Value)
		}
		twice.see(w.Kind.Value, w.At())
		if w.Kind.Is("workmanship") && !p.Insured.Value() {
			p.Insured = working.StatedFlag(w.InsuranceBacked)
		}
	}
	p.Warranties, p.WarrantyTwice = working.List(covered...), twice.count(at)
}

var energyOff = working.NewFormula("ΔE", "%", "100 · |E / (Y · P_dc / 1000) − 1|", working.ByDefinition)

// estimateOff holds the energy of the estimate against its own yield.
func estimateOff(e schema.PerformanceEstimate, pv pvstring.Facts) working.Number {
	power := working.Unknown("P_dc", "W", "/strings")
	if pv.Strings != nil {
		var all []working.Number
		for i := range pv.Strings {
			all = append(all, pv.Strings[i].PowerW)
		}
		power = working.Sum("P_dc", "W", all...)
	}
	return energyOff.Of(working.Stated("E", "kWh", e.EnergyPerYearKwh), working.Stated("Y", "kWh/kW", e.YieldKwhPerKw), power)
}

func modulesOf(pv pvstring.Facts) working.Number {
	if pv.Strings == nil {
		return working.Unknown("n", "", "/strings")
	}
	var all []working.Number
	for i := range pv.Strings {
		all = append(all, pv.Strings[i].ModulesInSeries)
	}
	return working.Sum("n", "", all...)
}

// estimateBefore holds the answer whether the customer had the estimate before the contract
// against the dates of both.
func estimateBefore(h schema.Handover) working.Text {
	days := working.Days("t", h.PerformanceEstimate.Date, h.ContractDate)
	derived := working.UnknownFlag(days.Missing()...)
	if days.Known() {
		derived = working.KnownFlag(days.Value() >= 0, h.PerformanceEstimate.Date.At())
	}
	return yesOrNo(working.AgreedFlag(working.StatedFlag(h.PerformanceEstimate.GivenBeforeContract), derived))
}
