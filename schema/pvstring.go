// Code generated from pvstring.schema.json by go generate; DO NOT EDIT.

package schema

// Module mirrors module: a PV module as its maker's sheet prints it; electrical values at standard test conditions (STC).
type Module struct {
	Pointer
	Note                Text        `json:"note"`
	Technology          Text        `json:"technology"`           // cell technology
	PmaxW               Number      `json:"pmax_w"`               // maximum power
	VocV                Number      `json:"voc_v"`                // open-circuit voltage
	IscA                Number      `json:"isc_a"`                // short-circuit current
	VmpV                Number      `json:"vmp_v"`                // voltage at maximum power
	ImpA                Number      `json:"imp_a"`                // current at maximum power
	VocCoeffPctPerK     Number      `json:"voc_coeff_pct_per_k"`  // temperature coefficient of the open-circuit voltage, in % per kelvin
	VocCoeffVPerK       Number      `json:"voc_coeff_v_per_k"`    // temperature coefficient of the open-circuit voltage, in V per kelvin, where the sheet prints it so
	IscCoeffPctPerK     Number      `json:"isc_coeff_pct_per_k"`  // temperature coefficient of the short-circuit current, in % per kelvin
	IscCoeffAPerK       Number      `json:"isc_coeff_a_per_k"`    // temperature coefficient of the short-circuit current, in A per kelvin, where the sheet prints it so
	PmaxCoeffPctPerK    Number      `json:"pmax_coeff_pct_per_k"` // temperature coefficient of the maximum power, in % per kelvin
	VmpCoeffPctPerK     Number      `json:"vmp_coeff_pct_per_k"`  // temperature coefficient of the voltage at maximum power, in % per kelvin, where the sheet prints one
	OCPRMaxA            Number      `json:"ocpr_max_a"`           // maximum overcurrent protection rating (maximum series fuse)
	SystemVoltageMaxV   Number      `json:"system_voltage_max_v"` // maximum system voltage
	Bifacial            Flag        `json:"bifacial"`             // whether the rear side generates
	BifacialityFraction Number      `json:"bifaciality_fraction"` // rear-side response over front-side response
	NMOTC               Number      `json:"nmot_c"`               // nominal module operating temperature (or NOCT)
	Cells               Number      `json:"cells"`                // cells, as printed
	BypassDiodes        Number      `json:"bypass_diodes"`        // bypass diodes
	ProtectionClass     Text        `json:"protection_class"`     // class of protection against electric shock (IEC 61140)
	ConductiveFrame     Flag        `json:"conductive_frame"`     // whether the module has a frame of metal
	Connector           Text        `json:"connector"`            // type of connector fitted
	LengthMm            Number      `json:"length_mm"`            // longer side
	WidthMm             Number      `json:"width_mm"`             // shorter side
	ThicknessMm         Number      `json:"thickness_mm"`         // thickness of the frame
	MassKg              Number      `json:"mass_kg"`              // mass
	DesignLoadPushPa    Number      `json:"design_load_push_pa"`  // design load on the front (snow, wind)
	DesignLoadPullPa    Number      `json:"design_load_pull_pa"`  // design load on the rear (wind uplift)
	ClampZones          []ClampZone `json:"clamp_zones"`          // where the maker allows clamps
}

// ClampZone mirrors clamp_zone: a stretch of the module's side on which the maker allows a clamp, measured from the nearest corner.
type ClampZone struct {
	Pointer
	Side       Text   `json:"side"`         // which side carries the clamp
	FromMm     Number `json:"from_mm"`      // nearest to the corner
	ToMm       Number `json:"to_mm"`        // farthest from the corner
	LoadPushPa Number `json:"load_push_pa"` // load on the front allowed with clamps here
	LoadPullPa Number `json:"load_pull_pa"` // load on the rear allowed with clamps here
}

// InverterDatasheet mirrors inverter_datasheet: an inverter (power conversion equipment) as its maker's sheet prints it.
type InverterDatasheet struct {
	Pointer
	Note                  Text            `json:"note"`
	Kind                  Text            `json:"kind"`                     // what it converts
	DCVoltageMaxV         Number          `json:"dc_voltage_max_v"`         // maximum DC input voltage
	DCStartVoltageV       Number          `json:"dc_start_voltage_v"`       // DC voltage at which it starts
	DCPowerMaxW           Number          `json:"dc_power_max_w"`           // greatest PV power the maker allows to be connected
	MPPTs                 []MPPTDatasheet `json:"mppts"`                    // maximum power point tracking inputs, in the order printed
	Separation            Text            `json:"separation"`               // separation of the DC side from the AC side
	DCIsolatorBuiltIn     Flag            `json:"dc_isolator_built_in"`     // whether a DC switch-disconnector is built in
	DCImpulseWithstandKv  Number          `json:"dc_impulse_withstand_kv"`  // impulse withstand voltage of the DC input, Uw
	ACPowerRatedW         Number          `json:"ac_power_rated_w"`         // rated AC power
	ACApparentMaxVA       Number          `json:"ac_apparent_max_va"`       // greatest apparent power
	ACVoltageV            Number          `json:"ac_voltage_v"`             // rated AC voltage
	ACCurrentMaxA         Number          `json:"ac_current_max_a"`         // maximum continuous AC output current
	ACOCPDMaxA            Number          `json:"ac_ocpd_max_a"`            // greatest overcurrent device the maker allows on the AC side
	Phases                Number          `json:"phases"`                   // phases
	RCDTypeRequired       Text            `json:"rcd_type_required"`        // residual current device the maker asks for
	RCDTypeBNotRequired   Flag            `json:"rcd_type_b_not_required"`  // whether the maker declares that a type B device is not needed
	LeakageCurrentMa      Number          `json:"leakage_current_ma"`       // protective conductor current in normal operation
	InsulationMinKohm     Number          `json:"insulation_min_kohm"`      // insulation resistance below which it does not start
	IP                    Text            `json:"ip"`                       // degree of protection of the enclosure
	AmbientMinC           Number          `json:"ambient_min_c"`            // lowest ambient temperature
	AmbientMaxC           Number          `json:"ambient_max_c"`            // highest ambient temperature
	DischargeWaitMin      Number          `json:"discharge_wait_min"`       // minutes to wait for the capacitors to discharge
	BatteryVoltageMaxV    Number          `json:"battery_voltage_max_v"`    // maximum voltage of the battery port
	BatteryCurrentMaxA    Number          `json:"battery_current_max_a"`    // maximum current of the battery port
	BackupOutput          Flag            `json:"backup_output"`            // whether it can supply loads without the grid
	GridTypeTest          Text            `json:"grid_type_test"`           // standard to which it is type tested for connection, as in G98
	GridTypeTestReference Text            `json:"grid_type_test_reference"` // reference of the type test in the register
}

// MPPTDatasheet mirrors mppt_datasheet: one maximum power point tracking input as printed.
type MPPTDatasheet struct {
	Pointer
	VoltageMinV  Number `json:"voltage_min_v"` // lowest voltage of the tracking range
	VoltageMaxV  Number `json:"voltage_max_v"` // highest voltage of the tracking range
	IscMaxA      Number `json:"isc_max_a"`     // maximum PV short-circuit current
	CurrentMaxA  Number `json:"current_max_a"` // maximum operating current
	StringInputs Number `json:"string_inputs"` // pairs of connectors
}

// String mirrors string: PV modules in series. Its two ends leave as one pair; the runs of cables say where to.
type String struct {
	Pointer
	ID              Text              `json:"id"`
	Note            Text              `json:"note"`
	Module          Ref[Module]       `json:"module" ref:"datasheets/modules"` // key of the module among the datasheets
	ModulesInSeries Number            `json:"modules_in_series"`               // modules in series
	Plane           Ref[Plane]        `json:"plane" ref:"plane"`               // roof plane that carries the modules
	Mounting        Text              `json:"mounting"`                        // how the modules stand to the roof; it decides how hot they get
	Overcurrent     StringOvercurrent `json:"overcurrent"`                     // overcurrent protective device of the string
	ConnectorMate   Text              `json:"connector_mate"`                  // type of the connector mated with the modules' own
}

// StringOvercurrent mirrors string_overcurrent: whether the string has its own overcurrent protective device, and which.
type StringOvercurrent struct {
	Pointer
	Fitted                Flag                  `json:"fitted"`                                     // whether a device is fitted
	Device                Ref[ProtectiveDevice] `json:"device" ref:"datasheets/protective_devices"` // key of the device among the datasheets
	Poles                 Text                  `json:"poles"`                                      // in which conductors
	AccessibleWithoutTool Flag                  `json:"accessible_without_tool"`                    // whether it can be withdrawn without a tool
	AmbientMaxC           Number                `json:"ambient_max_c"`                              // highest ambient temperature around the device, sun and roof space included
}

// Array mirrors array: strings put in parallel before the inverter, in a junction box or with branch connectors. Runs end at ID.1, ID.2, … and one leaves at ID.out.
type Array struct {
	Pointer
	ID              Text   `json:"id"`
	Note            Text   `json:"note"`
	Ways            Number `json:"ways"`             // strings (or arrays) it puts in parallel
	JoinedBy        Text   `json:"joined_by"`        // what joins them
	Place           Text   `json:"place"`            // where it stands
	IP              Text   `json:"ip"`               // degree of protection of the box
	PolesSegregated Flag   `json:"poles_segregated"` // whether positive and negative are kept apart so that no single fault bridges them
	BlockingDiodes  Flag   `json:"blocking_diodes"`  // whether blocking diodes are fitted
	DiodeVoltageV   Number `json:"diode_voltage_v"`  // reverse voltage that a blocking diode is rated for
	DiodeCurrentA   Number `json:"diode_current_a"`  // forward current that a blocking diode is rated for
}

// Inverter mirrors inverter: an inverter as installed. Runs end at ID.1, ID.2, … (its tracking inputs), ID.battery, ID.ac and ID.backup.
type Inverter struct {
	Pointer
	ID                   Text                   `json:"id"`
	Note                 Text                   `json:"note"`
	Datasheet            Ref[InverterDatasheet] `json:"datasheet" ref:"datasheets/inverters"` // key of the inverter among the datasheets
	Serial               Text                   `json:"serial"`                               // serial number
	Place                Text                   `json:"place"`                                // where it stands
	AmbientMaxC          Number                 `json:"ambient_max_c"`                        // highest ambient temperature where it stands
	OnCombustibleSurface Flag                   `json:"on_combustible_surface"`               // whether it is fixed to a surface that burns
	ClearancesKept       Flag                   `json:"clearances_kept"`                      // whether the maker's clearances for ventilation are kept
	BatteryFitted        Flag                   `json:"battery_fitted"`                       // whether a battery is connected
	BackupUsed           Flag                   `json:"backup_used"`                          // whether loads are connected to its backup output, or to what it feeds while the public supply is away
	ExportLimitW         Number                 `json:"export_limit_w"`                       // power to which export is limited
	Settings             GridSettings           `json:"settings"`                             // grid protection settings
}
