// Code generated from handover.schema.json by go generate; DO NOT EDIT.

package schema

// Handover mirrors handover: what was given to the customer and told to the authorities, and what was decided in writing.
type Handover struct {
	Pointer
	Note                Text                   `json:"note"`
	Date                Text                   `json:"date"`                 // date of the handover
	CustomerInstructed  Flag                   `json:"customer_instructed"`  // whether the customer was shown how to use the installation and shut it down
	ContractDate        Text                   `json:"contract_date"`        // date of the contract
	StartOfWork         Text                   `json:"start_of_work"`        // date on which the work on site began
	EndOfWork           Text                   `json:"end_of_work"`          // date on which the work was complete
	Documents           []HandoverDocument     `json:"documents"`            // documents given
	Warranties          []Warranty             `json:"warranties"`           // warranties given
	Notifications       []Notification         `json:"notifications"`        // notifications and applications
	Connection          ConnectionCircumstance `json:"connection"`           // circumstances that choose the route to the network operator
	Planning            PlanningStatus         `json:"planning"`             // circumstances that bear on planning permission
	AsBuilt             AsBuiltRecord          `json:"as_built"`             // record of what was built
	Attendances         []SiteAttendance       `json:"attendances"`          // attendances on site
	PerformanceEstimate PerformanceEstimate    `json:"performance_estimate"` // estimate of the yearly energy
	Decisions           []CustomerDecision     `json:"decisions"`            // decisions of the customer
	Departures          []Departure            `json:"departures"`           // requirements not met and accepted in writing
}

// HandoverDocument mirrors handover_document: a document given to the customer or kept for the authorities.
type HandoverDocument struct {
	Pointer
	ID        Text `json:"id"`
	Note      Text `json:"note"`
	Kind      Text `json:"kind"`                // what it is
	Date      Text `json:"date"`                // date of the document
	Given     Text `json:"given"`               // date on which it was given
	GivenTo   Text `json:"given_to"`            // who has it
	Reference Text `json:"reference"`           // reference of the document
	Revision  Text `json:"revision"`            // revision of the document
	Part      Text `json:"part" ref:"any_part"` // part it is about
}

// Warranty mirrors warranty: a warranty and how long it runs.
type Warranty struct {
	Pointer
	ID              Text   `json:"id"`
	Note            Text   `json:"note"`
	Kind            Text   `json:"kind"`             // what it covers
	Start           Text   `json:"start"`            // date on which it starts
	PeriodYr        Number `json:"period_yr"`        // how long it runs
	InsuranceBacked Flag   `json:"insurance_backed"` // whether it is insured against the installer's end of business
	Reference       Text   `json:"reference"`        // reference of the warranty
}

// Notification mirrors notification: a notification or application to somebody outside the job, given by role.
type Notification struct {
	Pointer
	ID              Text   `json:"id"`
	Note            Text   `json:"note"`
	To              Text   `json:"to"`                      // who is told
	Route           Text   `json:"route"`                   // which way it went
	Standard        Text   `json:"standard"`                // rule or form under which it was made, as in G98 Form B
	Reference       Text   `json:"reference"`               // reference of the receiver
	Applied         Text   `json:"applied"`                 // date of the application
	Approved        Text   `json:"approved"`                // date of the approval or acceptance
	ApprovalUntil   Text   `json:"approval_until"`          // date until which the approval counts
	Commissioned    Text   `json:"commissioned"`            // date of going into service as told to them
	Notified        Text   `json:"notified"`                // date of the notification
	Inspected       Text   `json:"inspected"`               // date of their inspection
	Answer          Text   `json:"answer"`                  // what they answered
	Conditions      Text   `json:"conditions"`              // conditions of the approval
	ApprovedPowerW  Number `json:"approved_power_w"`        // generating power approved
	ApprovedExportW Number `json:"approved_export_w"`       // export approved
	Document        Text   `json:"document" ref:"any_part"` // document that shows it
}

// ConnectionCircumstance mirrors connection_circumstance: what the route to the network operator depends on besides the equipment.
type ConnectionCircumstance struct {
	Pointer
	Note                   Text   `json:"note"`
	OtherPremisesNearby    Flag   `json:"other_premises_nearby"`     // whether the same installer connects, within the period of the rule, further premises near by
	OtherPremisesDistanceM Number `json:"other_premises_distance_m"` // distance to the nearest of these premises
	OtherPremisesDate      Text   `json:"other_premises_date"`       // date on which the nearest in time of these premises is or was connected
}

// PlanningStatus mirrors planning_status: what planning permission depends on besides the roof.
type PlanningStatus struct {
	Pointer
	Note              Text `json:"note"`
	ListedBuilding    Flag `json:"listed_building"`     // whether the building is protected, or stands in the grounds of one that is
	ScheduledMonument Flag `json:"scheduled_monument"`  // whether the site is a protected monument
	ConservationArea  Flag `json:"conservation_area"`   // whether the site lies in a protected area
	WorldHeritageSite Flag `json:"world_heritage_site"` // whether the site lies in a World Heritage Site
	PermissionNeeded  Flag `json:"permission_needed"`   // whether the authority asked for an application
}

// AsBuiltRecord mirrors as_built_record: what was built, counted on site.
type AsBuiltRecord struct {
	Pointer
	Note                   Text           `json:"note"`
	Date                   Text           `json:"date"`                      // date of the record
	SameAsDesign           Flag           `json:"same_as_design"`            // whether what was built is what was designed
	Changes                Text           `json:"changes"`                   // what was changed
	Modules                Number         `json:"modules"`                   // modules counted
	Strings                Number         `json:"strings"`                   // strings counted
	Inverters              Number         `json:"inverters"`                 // inverters counted
	Fixings                Number         `json:"fixings"`                   // hooks and other fixings counted
	EndClamps              Number         `json:"end_clamps"`                // end clamps counted
	MidClamps              Number         `json:"mid_clamps"`                // mid clamps counted
	ProductsOnApprovedList Flag           `json:"products_on_approved_list"` // whether all products stood on the list of the scheme on the day of the work
	ListDate               Text           `json:"list_date"`                 // date of that list
	Serials                []SerialRecord `json:"serials"`                   // serial numbers
}

// SerialRecord mirrors serial_record: the serial number of one part.
type SerialRecord struct {
	Pointer
	Part   Text `json:"part" ref:"any_part"` // part that bears it
	Serial Text `json:"serial"`              // serial number
}

// SiteAttendance mirrors site_attendance: the responsible person on site, given by role.
type SiteAttendance struct {
	Pointer
	ID           Text `json:"id"`
	Note         Text `json:"note"`
	Phase        Text `json:"phase"`        // phase of the work
	Date         Text `json:"date"`         // date of the attendance
	Role         Text `json:"role"`         // role of the person
	Photographed Flag `json:"photographed"` // whether a photograph with date and place shows it
}

// PerformanceEstimate mirrors performance_estimate: the yearly energy that the customer was told.
type PerformanceEstimate struct {
	Pointer
	Note                Text   `json:"note"`
	Date                Text   `json:"date"`                  // date on which it was given
	Method              Text   `json:"method"`                // how it was made
	MethodReference     Text   `json:"method_reference"`      // standard or data used
	EnergyPerYearKwh    Number `json:"energy_per_year_kwh"`   // energy in a year
	YieldKwhPerKw       Number `json:"yield_kwh_per_kw"`      // energy in a year over the rated power of the modules
	ShadeFactorFraction Number `json:"shade_factor_fraction"` // share left after shade
	SelfUseFraction     Number `json:"self_use_fraction"`     // share used on the premises
	SiteSpecific        Flag   `json:"site_specific"`         // whether it was made for this site
	UncertaintyStated   Flag   `json:"uncertainty_stated"`    // whether it says how far it can be off
	GivenBeforeContract Flag   `json:"given_before_contract"` // whether the customer had it before the contract
}

// CustomerDecision mirrors customer_decision: something the customer decided after having been told.
type CustomerDecision struct {
	Pointer
	ID            Text `json:"id"`
	Note          Text `json:"note"`
	Decision      Text `json:"decision"`            // what was decided
	Part          Text `json:"part" ref:"any_part"` // part it is about
	InWriting     Flag `json:"in_writing"`          // whether it is in writing and signed
	RiskExplained Flag `json:"risk_explained"`      // whether the risk was explained
	Date          Text `json:"date"`                // date of the decision
	Reference     Text `json:"reference"`           // reference of the paper
}

// Departure mirrors departure: a requirement not met, or an unlikely value looked at again, and accepted in writing. It stays visible in every report.
type Departure struct {
	Pointer
	Requirement Text   `json:"requirement"`            // id of the requirement; or else state the member
	Subject     Text   `json:"subject" ref:"terminal"` // part it is accepted for; all parts when left out
	Member      Text   `json:"member"`                 // JSON pointer of the unlikely value that was looked at again, as in /roof/planes/0/pitch_deg; or else state the requirement
	Value       Number `json:"value"`                  // unlikely value that is accepted for the member, as it is stated there; another one is not
	Reason      Text   `json:"reason"`                 // why it is accepted
	Author      Text   `json:"author"`                 // role of the person who accepts it, without a name
	Date        Text   `json:"date"`                   // date of acceptance
	Until       Text   `json:"until"`                  // last day on which it counts
}
