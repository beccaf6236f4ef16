// Code generated from accircuit.schema.json by go generate; DO NOT EDIT.

package schema

// AC mirrors ac: the supply, meters, boards and circuits of the premises, and what else generates there.
type AC struct {
	Pointer
	Note                Text                `json:"note"`
	Supply              Supply              `json:"supply"`               // public supply at the origin
	Meters              []Meter             `json:"meters"`               // meters
	Boards              []Board             `json:"boards"`               // distribution boards
	Circuits            []ACCircuit         `json:"circuits"`             // stated and measured values of the circuits, one for each way that has them
	Changeovers         []Changeover        `json:"changeovers"`          // switches between sources
	ExistingGeneration  []ExistingGenerator `json:"existing_generation"`  // generators at the premises other than those of this document
	ExportLimitation    ExportLimitation    `json:"export_limitation"`    // limitation of export or control of power
	InterfaceProtection InterfaceProtection `json:"interface_protection"` // protection of the interface outside the inverters
	ArrayShutdown       ArrayShutdown       `json:"array_shutdown"`       // means of taking the voltage off the cables of the array
	OvervoltageRisk     OvervoltageRisk     `json:"overvoltage_risk"`     // what decides whether surge protection is due
}

// Supply mirrors supply: the public supply at the origin. Runs start at its id.
type Supply struct {
	Pointer
	ID                   Text                    `json:"id"`
	Note                 Text                    `json:"note"`
	Form                 Text                    `json:"form"`                                                        // form of the supply
	Phases               Number                  `json:"phases"`                                                      // phases that reach the premises
	VoltageV             Number                  `json:"voltage_v"`                                                   // nominal voltage between line and neutral, U0
	VoltageBetweenLinesV Number                  `json:"voltage_between_lines_v"`                                     // nominal voltage between lines
	FrequencyHz          Number                  `json:"frequency_hz"`                                                // nominal frequency
	VoltageMeasuredV     Number                  `json:"voltage_measured_v"`                                          // voltage between line and neutral measured without generation
	VoltageMeasuredMaxV  Number                  `json:"voltage_measured_max_v"`                                      // highest voltage between line and neutral recorded
	ProspectiveFaultKa   Number                  `json:"prospective_fault_ka"`                                        // prospective fault current at the origin
	ZeOhm                Number                  `json:"ze_ohm"`                                                      // external earth fault loop impedance, Ze
	ZeKnownBy            Text                    `json:"ze_known_by"`                                                 // how fault current and loop impedance at the origin are known
	Device               Ref[ProtectiveDevice]   `json:"device" ref:"datasheets/protective_devices"`                  // key of the fuse or circuit-breaker of the distributor
	AgreedCapacityKva    Number                  `json:"agreed_capacity_kva"`                                         // agreed capacity or notified maximum demand
	NeutralMm2           Number                  `json:"neutral_mm2"`                                                 // cross-section of the neutral conductor of the supply, copper or its equivalent
	LineMm2              Number                  `json:"line_mm2"`                                                    // cross-section of the line conductors of the supply, copper or its equivalent
	ServiceCableDropPct  Number                  `json:"service_cable_drop_pct"`                                      // voltage rise in the service cable at full generation, as the distributor states it
	NetworkOperator      Text                    `json:"network_operator"`                                            // network operator
	SupplyNumber         Text                    `json:"supply_number"`                                               // number of the supply point
	SharedFeeder         Flag                    `json:"shared_feeder"`                                               // whether other customers share the low-voltage feeder
	MainIsolatingSwitch  Ref[SwitchDisconnector] `json:"main_isolating_switch" ref:"datasheets/switch_disconnectors"` // key of the switch with which the whole premises are isolated
	Place                Text                    `json:"place"`                                                       // where the origin is
}

// Meter mirrors meter: a meter. Runs end at ID.in and ID.out.
type Meter struct {
	Pointer
	ID        Text `json:"id"`
	Note      Text `json:"note"`
	Purpose   Text `json:"purpose"`                   // what it measures
	PerPhase  Flag `json:"per_phase"`                 // whether it registers each phase by itself
	Place     Text `json:"place"`                     // where it stands
	JoinedIn  Text `json:"joined_in" ref:"terminal"`  // terminal to which its in side is joined without a run of cable
	JoinedOut Text `json:"joined_out" ref:"terminal"` // terminal to which its out side is joined without a run of cable
}

// Board mirrors board: a distribution board. Its incomer is ID.in; way W leaves at ID.W.
type Board struct {
	Pointer
	ID                   Text                    `json:"id"`
	Note                 Text                    `json:"note"`
	Role                 Text                    `json:"role"`                                                // which board it is
	Place                Text                    `json:"place"`                                               // where it stands
	RatedA               Number                  `json:"rated_a"`                                             // rated current of the board (of its busbars), InA
	ShortCircuitRatingKa Number                  `json:"short_circuit_rating_ka"`                             // short-circuit rating of the board
	Standard             Text                    `json:"standard"`                                            // product standard printed on it
	JoinedIn             Text                    `json:"joined_in" ref:"terminal"`                            // terminal to which its incomer is joined without a run of cable
	IncomingDevice       Ref[ProtectiveDevice]   `json:"incoming_device" ref:"datasheets/protective_devices"` // key of the overcurrent device that protects its busbars
	MainSwitch           Ref[SwitchDisconnector] `json:"main_switch" ref:"datasheets/switch_disconnectors"`   // key of its main switch
	MainSwitchLockable   Flag                    `json:"main_switch_lockable"`                                // whether the main switch can be locked open
	Feed                 Text                    `json:"feed"`                                                // where the incomer meets the busbars
	FeedThroughLugs      Flag                    `json:"feed_through_lugs"`                                   // whether the busbars feed through to another board
	BusbarCarriesLoads   Flag                    `json:"busbar_carries_loads"`                                // whether loads are fed from the same busbars
	AdjacentToInverter   Flag                    `json:"adjacent_to_inverter"`                                // whether it stands beside the inverter without obstruction
	IP                   Text                    `json:"ip"`                                                  // degree of protection
	Combustible          Flag                    `json:"combustible"`                                         // whether its enclosure burns
	FireSealed           Flag                    `json:"fire_sealed"`                                         // whether its cable entries are sealed against the spread of fire
	Ways                 []BoardWay              `json:"ways"`                                                // ways in the order they stand
}

// BoardWay mirrors board_way: one outgoing way of a board. It leaves at BOARD.ID.
type BoardWay struct {
	Pointer
	ID          Text                  `json:"id" unique:"part"` // name of the way: 1, 2, …
	Note        Text                  `json:"note"`
	Serves      Text                  `json:"serves"`                                     // what it serves
	Device      Ref[ProtectiveDevice] `json:"device" ref:"datasheets/protective_devices"` // key of its overcurrent device
	RCDFitted   Flag                  `json:"rcd_fitted"`                                 // whether a residual current device protects it, its own device or another
	RCD         Ref[ProtectiveDevice] `json:"rcd" ref:"datasheets/protective_devices"`    // key of the residual current device that protects it, where that is another device
	RCDShared   Flag                  `json:"rcd_shared"`                                 // whether that residual current device protects other ways too
	BusPosition Text                  `json:"bus_position"`                               // where it stands on the busbars, seen from the incomer
	Phase       Text                  `json:"phase"`                                      // phase it is connected to
	SourceOn    Text                  `json:"source_on"`                                  // terminals of the device to which the generator is connected
	LockableOff Flag                  `json:"lockable_off"`                               // whether its device can be locked open
	JoinedTo    Text                  `json:"joined_to" ref:"terminal"`                   // terminal to which it is joined without a run of cable
	Identified  Flag                  `json:"identified"`                                 // whether it is marked with what it serves
}

// ACCircuit mirrors ac_circuit: stated and measured values of the circuit that leaves a way of a board.
type ACCircuit struct {
	Pointer
	ID                          Text   `json:"id"`
	Note                        Text   `json:"note"`
	Way                         Text   `json:"way" ref:"terminal"`             // way of the board from which it leaves, as in B1.7
	Kind                        Text   `json:"kind"`                           // kind of circuit
	Dedicated                   Flag   `json:"dedicated"`                      // whether nothing but the generator is connected to it
	OtherLoadsA                 Number `json:"other_loads_a"`                  // design current of loads on the same circuit
	ConnectedBy                 Text   `json:"connected_by"`                   // how the generator is connected
	Sockets                     Flag   `json:"sockets"`                        // whether socket-outlets are on it
	Lighting                    Flag   `json:"lighting"`                       // whether it feeds lighting
	DisconnectionTimeS          Number `json:"disconnection_time_s"`           // disconnection time for which it is designed
	ZsOhm                       Number `json:"zs_ohm"`                         // earth fault loop impedance at its far end, Zs
	ZsKnownBy                   Text   `json:"zs_known_by"`                    // how Zs is known
	R1R2Ohm                     Number `json:"r1_r2_ohm"`                      // resistance of line and protective conductor, R1 + R2
	ProspectiveFaultKa          Number `json:"prospective_fault_ka"`           // prospective fault current at its far end
	ProspectiveFaultMinKa       Number `json:"prospective_fault_min_ka"`       // least prospective fault current at its far end
	VoltageMeasuredV            Number `json:"voltage_measured_v"`             // voltage measured at its far end without generation
	AdditionalProtectionNeeded  Flag   `json:"additional_protection_needed"`   // whether the designer finds that it needs additional protection by a residual current device
	NeutralCarriesUnbalanceOnly Flag   `json:"neutral_carries_unbalance_only"` // whether the neutral carries only the unbalance of the lines
}

// Changeover mirrors changeover: a switch between the public supply and another source. Runs end at ID.grid, ID.source and ID.load.
type Changeover struct {
	Pointer
	ID               Text   `json:"id"`
	Note             Text   `json:"note"`
	Kind             Text   `json:"kind"`                     // how it changes over
	RatedA           Number `json:"rated_a"`                  // rated current
	SwitchesNeutral  Flag   `json:"switches_neutral"`         // whether it switches the neutral too
	Interlocked      Flag   `json:"interlocked"`              // whether the two sources can never meet by its own movement
	NeutralEarthLink Text   `json:"neutral_earth_link"`       // how neutral and earth are joined when the public supply is away
	Electrode        Text   `json:"electrode" ref:"any_part"` // earth electrode used while the public supply is away
	VoltageV         Number `json:"voltage_v"`                // nominal voltage between line and neutral while the public supply is away
	FaultCurrentA    Number `json:"fault_current_a"`          // fault current that the source gives while the public supply is away
	Place            Text   `json:"place"`                    // where it stands
}

// ExistingGenerator mirrors existing_generator: a generator at the premises that is not otherwise in this document.
type ExistingGenerator struct {
	Pointer
	ID                Text   `json:"id"`
	Note              Text   `json:"note"`
	Kind              Text   `json:"kind"`                 // what it is
	ACPowerRatedW     Number `json:"ac_power_rated_w"`     // rated AC power
	ACApparentMaxVA   Number `json:"ac_apparent_max_va"`   // greatest apparent power
	ACCurrentMaxA     Number `json:"ac_current_max_a"`     // maximum continuous AC output current
	Phases            Number `json:"phases"`               // phases
	Phase             Text   `json:"phase"`                // phase it is connected to
	Way               Text   `json:"way" ref:"terminal"`   // terminal to which it is connected
	TypeTested        Flag   `json:"type_tested"`          // whether it is type tested for connection
	GridTypeTest      Text   `json:"grid_type_test"`       // standard to which it is type tested, as in G98
	Notified          Flag   `json:"notified"`             // whether the network operator knows of it
	CanRunWithoutGrid Flag   `json:"can_run_without_grid"` // whether it can supply loads without the public supply
}

// ExportLimitation mirrors export_limitation: limitation of export, or control of the power of several sources.
type ExportLimitation struct {
	Pointer
	Note                 Text   `json:"note"`
	Fitted               Flag   `json:"fitted"`                   // whether there is one
	ExportLimitW         Number `json:"export_limit_w"`           // power to which export is limited, all phases together
	ExportLimitPerPhaseA Number `json:"export_limit_per_phase_a"` // current to which export is limited in each phase
	SourceLimitA         Number `json:"source_limit_a"`           // current to which the sources together are controlled at the busbars
	LimitKind            Text   `json:"limit_kind"`               // whether it only steers, or also disconnects
	FailSafe             Flag   `json:"fail_safe"`                // whether loss of a sensor or of communication cuts the export
	ResponseS            Number `json:"response_s"`               // time within which it acts
	Standard             Text   `json:"standard"`                 // standard it meets, as in G100
	Listed               Flag   `json:"listed"`                   // whether it is certified as a power control system
	SettingsLocked       Flag   `json:"settings_locked"`          // whether only skilled people can change it
	BatteriesDoNotExport Flag   `json:"batteries_do_not_export"`  // whether it keeps batteries from exporting
}

// InterfaceProtection mirrors interface_protection: protection of the interface with the public supply, outside the inverters.
type InterfaceProtection struct {
	Pointer
	Note      Text                    `json:"note"`
	Fitted    Flag                    `json:"fitted"`                                       // whether it is fitted
	Standard  Text                    `json:"standard"`                                     // standard it meets
	Settings  GridSettings            `json:"settings"`                                     // its settings
	Switch    Ref[SwitchDisconnector] `json:"switch" ref:"datasheets/switch_disconnectors"` // key of the coupling switch it opens
	Redundant Flag                    `json:"redundant"`                                    // whether two switches in series open
	Tested    Flag                    `json:"tested"`                                       // whether its operation was tested
}

// ArrayShutdown mirrors array_shutdown: means of taking the voltage off the cables of the array, in an emergency or when the supply is switched off.
type ArrayShutdown struct {
	Pointer
	Note                       Text   `json:"note"`
	Fitted                     Flag   `json:"fitted"`                       // whether it is fitted
	By                         Text   `json:"by"`                           // what does it
	Initiator                  Text   `json:"initiator" ref:"any_part"`     // part that starts it
	InitiatorOutdoors          Flag   `json:"initiator_outdoors"`           // whether the initiator is outdoors
	InitiatorReadilyAccessible Flag   `json:"initiator_readily_accessible"` // whether the initiator can be reached without a ladder, tool or key
	StartsOnLossOfGrid         Flag   `json:"starts_on_loss_of_grid"`       // whether it starts by itself when the supply goes
	VoltageWithinArrayV        Number `json:"voltage_within_array_v"`       // voltage left within the boundary of the array
	VoltageOutsideArrayV       Number `json:"voltage_outside_array_v"`      // voltage left outside that boundary
	ModulesPerUnit             Number `json:"modules_per_unit"`             // modules in series behind each shutdown unit
	TimeS                      Number `json:"time_s"`                       // time from the start of shutdown until the voltage is down
	BoundaryMm                 Number `json:"boundary_mm"`                  // distance from the array that counts as its boundary
	Standard                   Text   `json:"standard"`                     // standard it is listed to
	ArcFaultProtection         Flag   `json:"arc_fault_protection"`         // whether DC arc-fault protection is fitted
	ArcFaultStandard           Text   `json:"arc_fault_standard"`           // standard of the arc-fault protection
	AskedByFireService         Flag   `json:"asked_by_fire_service"`        // whether the fire service asks for it
}

// OvervoltageRisk mirrors overvoltage_risk: what decides whether surge protection is due.
type OvervoltageRisk struct {
	Pointer
	Note                  Text   `json:"note"`
	DangerToLife          Flag   `json:"danger_to_life"`           // whether overvoltage could cause serious injury or loss of life
	SafetyService         Flag   `json:"safety_service"`           // whether a safety service could fail
	SignificantLoss       Flag   `json:"significant_loss"`         // whether money or data of weight could be lost
	DeclinedByOwner       Flag   `json:"declined_by_owner"`        // whether the owner declines surge protection and accepts the risk
	DeclinedRecord        Text   `json:"declined_record"`          // reference of the paper in which the owner does so
	Surroundings          Text   `json:"surroundings"`             // surroundings
	LowVoltageOverheadKm  Number `json:"low_voltage_overhead_km"`  // length of the low-voltage overhead line that feeds the premises
	LowVoltageBuriedKm    Number `json:"low_voltage_buried_km"`    // length of the low-voltage buried cable that feeds the premises
	HighVoltageOverheadKm Number `json:"high_voltage_overhead_km"` // length of the high-voltage overhead line
	HighVoltageBuriedKm   Number `json:"high_voltage_buried_km"`   // length of the high-voltage buried cable
	ThunderstormDaysPerYr Number `json:"thunderstorm_days_per_yr"` // days of thunderstorm a year
}

// ProtectiveDevice mirrors protective_device: a fuse, circuit-breaker or residual current device as its maker's sheet prints it.
type ProtectiveDevice struct {
	Pointer
	Note                  Text   `json:"note"`
	Kind                  Text   `json:"kind"`                    // what it is
	Standard              Text   `json:"standard"`                // product standard printed on it
	Characteristic        Text   `json:"characteristic"`          // tripping characteristic or utilization category
	RatedA                Number `json:"rated_a"`                 // rated current, In
	VoltageACV            Number `json:"voltage_ac_v"`            // rated AC voltage
	VoltageDCV            Number `json:"voltage_dc_v"`            // rated DC voltage
	Poles                 Number `json:"poles"`                   // poles
	ProtectedPoles        Number `json:"protected_poles"`         // poles with an overcurrent release
	OpensNeutral          Flag   `json:"opens_neutral"`           // whether it opens the neutral too
	BreakingCapacityKa    Number `json:"breaking_capacity_ka"`    // rated breaking capacity on AC
	BreakingCapacityDCKa  Number `json:"breaking_capacity_dc_ka"` // rated breaking capacity on DC
	ConventionalCurrentA  Number `json:"conventional_current_a"`  // current of effective operation in the conventional time, I2
	Operates02sA          Number `json:"operates_0_2s_a"`         // current at which it operates within 0.2 s
	Operates04sA          Number `json:"operates_0_4s_a"`         // current at which it operates within 0.4 s
	Operates1sA           Number `json:"operates_1s_a"`           // current at which it operates within 1 s
	Operates5sA           Number `json:"operates_5s_a"`           // current at which it operates within 5 s
	LetThroughA2s         Number `json:"let_through_a2s"`         // let-through energy at its greatest fault current
	ResidualCurrentMa     Number `json:"residual_current_ma"`     // rated residual operating current, IΔn
	RCDType               Text   `json:"rcd_type"`                // type of residual current device
	TimeDelayed           Flag   `json:"time_delayed"`            // whether it is selective (type S) or delayed
	Flow                  Text   `json:"flow"`                    // directions in which power may pass
	FlowDeclaredByMaker   Flag   `json:"flow_declared_by_maker"`  // whether the maker declares that power may pass both ways
	LineLoadMarked        Flag   `json:"line_load_marked"`        // whether line and load, in and out, or arrows are marked on it
	PolaritySensitive     Flag   `json:"polarity_sensitive"`      // whether it breaks DC in one direction only
	ListedForPV           Flag   `json:"listed_for_pv"`           // whether it is certified for PV circuits
	ContinuousFullLoad    Flag   `json:"continuous_full_load"`    // whether it is certified to carry its rated current continuously in its enclosure
	Isolating             Flag   `json:"isolating"`               // whether it is suitable for isolation
	LockableOff           Flag   `json:"lockable_off"`            // whether it can be locked open
	WithdrawableUnderLoad Flag   `json:"withdrawable_under_load"` // whether a fuse can be withdrawn under load
	TerminalMaxC          Number `json:"terminal_max_c"`          // temperature for which its terminals are rated
	RatedAmbientC         Number `json:"rated_ambient_c"`         // ambient temperature to which the rated current belongs
	DeratingPctPerK       Number `json:"derating_pct_per_k"`      // loss of rated current above the ambient temperature of the rating
	PowerLossW            Number `json:"power_loss_w"`            // power loss at rated current, per pole
}

// GridSettings mirrors grid_settings: settings of the protection of the interface with the public supply, as read from the device.
type GridSettings struct {
	Pointer
	Note                 Text   `json:"note"`
	Set                  Text   `json:"set"`                     // name of the country or grid setting chosen in the device
	UnderVoltage1V       Number `json:"under_voltage_1_v"`       // under-voltage, first stage
	UnderVoltage1S       Number `json:"under_voltage_1_s"`       // delay of the under-voltage first stage
	UnderVoltage2V       Number `json:"under_voltage_2_v"`       // under-voltage, second stage
	UnderVoltage2S       Number `json:"under_voltage_2_s"`       // delay of the under-voltage second stage
	OverVoltage1V        Number `json:"over_voltage_1_v"`        // over-voltage, first stage
	OverVoltage1S        Number `json:"over_voltage_1_s"`        // delay of the over-voltage first stage
	OverVoltage2V        Number `json:"over_voltage_2_v"`        // over-voltage, second stage
	OverVoltage2S        Number `json:"over_voltage_2_s"`        // delay of the over-voltage second stage
	OverVoltageMeanV     Number `json:"over_voltage_mean_v"`     // over-voltage, mean of ten minutes
	UnderFrequency1Hz    Number `json:"under_frequency_1_hz"`    // under-frequency, first stage
	UnderFrequency1S     Number `json:"under_frequency_1_s"`     // delay of the under-frequency first stage
	UnderFrequency2Hz    Number `json:"under_frequency_2_hz"`    // under-frequency, second stage
	UnderFrequency2S     Number `json:"under_frequency_2_s"`     // delay of the under-frequency second stage
	OverFrequency1Hz     Number `json:"over_frequency_1_hz"`     // over-frequency, first stage
	OverFrequency1S      Number `json:"over_frequency_1_s"`      // delay of the over-frequency first stage
	OverFrequency2Hz     Number `json:"over_frequency_2_hz"`     // over-frequency, second stage
	OverFrequency2S      Number `json:"over_frequency_2_s"`      // delay of the over-frequency second stage
	RocofHzPerS          Number `json:"rocof_hz_per_s"`          // rate of change of frequency
	RocofS               Number `json:"rocof_s"`                 // delay of the rate-of-change-of-frequency protection
	VectorShiftUsed      Flag   `json:"vector_shift_used"`       // whether vector shift trips it
	VectorShiftDeg       Number `json:"vector_shift_deg"`        // vector shift
	ReconnectionS        Number `json:"reconnection_s"`          // time in range before it reconnects
	RampPctPerMin        Number `json:"ramp_pct_per_min"`        // rise of power after it reconnects
	PowerReductionFromHz Number `json:"power_reduction_from_hz"` // frequency above which it reduces power
	DroopPct             Number `json:"droop_pct"`               // droop of that reduction
	DCInjectionMaxPct    Number `json:"dc_injection_max_pct"`    // greatest DC injection, in share of rated current
	PowerFactorFraction  Number `json:"power_factor_fraction"`   // displacement factor, 1 for none
	PowerFactorSide      Text   `json:"power_factor_side"`       // side of the displacement factor
	VoltWatt             Flag   `json:"volt_watt"`               // whether power falls with rising voltage
	VoltVar              Flag   `json:"volt_var"`                // whether reactive power follows the voltage
	Locked               Flag   `json:"locked"`                  // whether only skilled people can change them
}
