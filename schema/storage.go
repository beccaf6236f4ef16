// Code generated from storage.schema.json by go generate; DO NOT EDIT.

package schema

// Storage mirrors storage: batteries, and provision for them.
type Storage struct {
	Pointer
	Note                 Text             `json:"note"`
	Batteries            []Battery        `json:"batteries"`              // batteries
	Provision            BatteryProvision `json:"provision"`              // provision for a battery to come
	VehiclesKeptKwh      Number           `json:"vehicles_kept_kwh"`      // stored energy of electric vehicles kept in the same space
	RiskAssessmentRecord Text             `json:"risk_assessment_record"` // reference of the risk assessment made before the work
	ConformityStatement  Text             `json:"conformity_statement"`   // reference of the installer's statement of conformity
}

// Battery mirrors battery: a battery as installed. Runs end at its id, or at ID.ac where an inverter is built in.
type Battery struct {
	Pointer
	ID                     Text                  `json:"id"`
	Note                   Text                  `json:"note"`
	Datasheet              Ref[BatteryDatasheet] `json:"datasheet" ref:"datasheets/batteries"`                   // key of the battery among the datasheets
	Serial                 Text                  `json:"serial"`                                                 // serial number
	Units                  Number                `json:"units"`                                                  // units of the datasheet in this battery
	UnitsJoined            Text                  `json:"units_joined"`                                           // how they are joined
	SecondLife             Flag                  `json:"second_life"`                                            // whether its cells served before elsewhere
	Place                  Text                  `json:"place"`                                                  // where it stands
	Room                   Text                  `json:"room"`                                                   // room or space, in words
	DetachedBuilding       Flag                  `json:"detached_building"`                                      // whether it stands in a building apart from the dwelling, as a detached garage; not whether the house is a detached one
	OpensIntoBedroom       Flag                  `json:"opens_into_bedroom"`                                     // whether the space opens into a room for sleeping
	InEscapeRoute          Flag                  `json:"in_escape_route"`                                        // whether it stands in an escape route
	InProtectedRoute       Flag                  `json:"in_protected_route"`                                     // whether it stands in a protected corridor, stair, lobby or shaft
	UnderStairs            Flag                  `json:"under_stairs"`                                           // whether it stands under stairs or an access way
	OutsideAccess          Flag                  `json:"outside_access"`                                         // whether the space can be entered from outside
	OutdoorsPracticable    Flag                  `json:"outdoors_practicable"`                                   // whether it could stand outdoors
	DistanceToEscapeRouteM Number                `json:"distance_to_escape_route_m"`                             // distance from escape routes and exits
	DistanceToOpeningM     Number                `json:"distance_to_opening_m"`                                  // distance from doors, windows and ventilation openings
	DistanceToFlammablesM  Number                `json:"distance_to_flammables_m"`                               // distance from stored flammable materials
	DistanceToBoundaryM    Number                `json:"distance_to_boundary_m"`                                 // distance from the boundary
	DistanceToBatteryM     Number                `json:"distance_to_battery_m"`                                  // distance from the next battery
	DistanceToApplianceMm  Number                `json:"distance_to_appliance_mm"`                               // distance from appliances that are not part of the system
	ClearAboveMm           Number                `json:"clear_above_mm"`                                         // clear space above
	ClearSideMm            Number                `json:"clear_side_mm"`                                          // clear space at each side
	ClearFrontMm           Number                `json:"clear_front_mm"`                                         // clear space in front
	ClearancesKept         Flag                  `json:"clearances_kept"`                                        // whether the maker's clearances are kept
	ExitWidthMm            Number                `json:"exit_width_mm"`                                          // width of the exit beside it
	HeightAboveFloorMm     Number                `json:"height_above_floor_mm"`                                  // height of its underside above the floor
	WallToHabitableRoom    Flag                  `json:"wall_to_habitable_room"`                                 // whether the wall behind it is shared with a habitable room
	BackingNonCombustible  Flag                  `json:"backing_non_combustible"`                                // whether the surface behind it does not burn
	FireSeparationMin      Number                `json:"fire_separation_min"`                                    // fire resistance between it and habitable rooms
	FireDetection          Text                  `json:"fire_detection"`                                         // fire detection at the battery
	Ventilated             Flag                  `json:"ventilated"`                                             // whether the space is ventilated
	VehicleProtection      Flag                  `json:"vehicle_protection"`                                     // whether it is guarded against vehicles
	FloodSafe              Flag                  `json:"flood_safe"`                                             // whether it stands above expected water
	InDirectSun            Flag                  `json:"in_direct_sun"`                                          // whether the sun shines on it
	AmbientMinC            Number                `json:"ambient_min_c"`                                          // lowest ambient temperature where it stands
	AmbientMaxC            Number                `json:"ambient_max_c"`                                          // highest ambient temperature where it stands
	EarthedPole            Text                  `json:"earthed_pole"`                                           // pole that is earthed
	OvercurrentDevice      Ref[ProtectiveDevice] `json:"overcurrent_device" ref:"datasheets/protective_devices"` // key of its overcurrent device
	OvercurrentPoles       Text                  `json:"overcurrent_poles"`                                      // in which conductors the overcurrent device is
	OvercurrentDistanceM   Number                `json:"overcurrent_distance_m"`                                 // length of cable from the battery terminals to the overcurrent device
	Isolator               Ref[Isolator]         `json:"isolator" ref:"isolator"`                                // isolator of the battery
	IsolatorInSight        Flag                  `json:"isolator_in_sight"`                                      // whether the battery can be seen from that isolator
	ShutdownFrom           Text                  `json:"shutdown_from" ref:"any_part"`                           // part with which it is shut down from elsewhere
	ShutdownOutdoors       Flag                  `json:"shutdown_outdoors"`                                      // whether the shutdown from elsewhere is outdoors and readily accessible
	BackupUsed             Flag                  `json:"backup_used"`                                            // whether it supplies loads while the public supply is away
	TerminalsShrouded      Flag                  `json:"terminals_shrouded"`                                     // whether live parts cannot be touched in use and in upkeep
	ExportPowerMaxW        Number                `json:"export_power_max_w"`                                     // greatest power it can export
	CanExportWithPV        Flag                  `json:"can_export_with_pv"`                                     // whether it can export while the PV does
}

// BatteryDatasheet mirrors battery_datasheet: a battery as its maker's sheet prints it.
type BatteryDatasheet struct {
	Pointer
	Note                  Text   `json:"note"`
	Chemistry             Text   `json:"chemistry"`                // chemistry
	EnergyKwh             Number `json:"energy_kwh"`               // rated energy
	EnergyUsableKwh       Number `json:"energy_usable_kwh"`        // usable energy
	VoltageNominalV       Number `json:"voltage_nominal_v"`        // nominal voltage
	VoltageMinV           Number `json:"voltage_min_v"`            // lowest voltage
	VoltageMaxV           Number `json:"voltage_max_v"`            // highest voltage
	ChargeCurrentMaxA     Number `json:"charge_current_max_a"`     // maximum charging current
	DischargeCurrentMaxA  Number `json:"discharge_current_max_a"`  // maximum discharging current
	ShortCircuitKa        Number `json:"short_circuit_ka"`         // prospective short-circuit current
	Coupling              Text   `json:"coupling"`                 // side on which it is connected
	ACPowerRatedW         Number `json:"ac_power_rated_w"`         // rated AC power of a built-in inverter
	ACApparentMaxVA       Number `json:"ac_apparent_max_va"`       // greatest apparent power of a built-in inverter
	ACCurrentMaxA         Number `json:"ac_current_max_a"`         // maximum continuous AC current of a built-in inverter
	Phases                Number `json:"phases"`                   // phases of a built-in inverter
	ACOCPDMaxA            Number `json:"ac_ocpd_max_a"`            // greatest overcurrent device the maker allows on the AC side of a built-in inverter
	RCDTypeRequired       Text   `json:"rcd_type_required"`        // residual current device the maker asks for
	RCDTypeBNotRequired   Flag   `json:"rcd_type_b_not_required"`  // whether the maker declares that a type B device is not needed
	LeakageCurrentMa      Number `json:"leakage_current_ma"`       // protective conductor current in normal operation
	GridTypeTest          Text   `json:"grid_type_test"`           // standard to which a built-in inverter is type tested, as in G98
	GridTypeTestReference Text   `json:"grid_type_test_reference"` // reference of the type test in the register
	Standard              Text   `json:"standard"`                 // product standards printed on it
	SystemListed          Flag   `json:"system_listed"`            // whether battery and inverter are certified together as a system
	FireSpreadTested      Flag   `json:"fire_spread_tested"`       // whether a test shows that fire does not spread from cell to cell or unit to unit
	IsolatorBuiltIn       Flag   `json:"isolator_built_in"`        // whether an isolator is built in
	OvercurrentBuiltIn    Flag   `json:"overcurrent_built_in"`     // whether an overcurrent device is built in
	BackupOutput          Flag   `json:"backup_output"`            // whether it can supply loads without the grid
	UnNumber              Text   `json:"un_number"`                // UN number
	ProtectionClass       Text   `json:"protection_class"`         // class of protection against electric shock (IEC 61140)
	IP                    Text   `json:"ip"`                       // degree of protection
	AmbientMinC           Number `json:"ambient_min_c"`            // lowest ambient temperature
	AmbientMaxC           Number `json:"ambient_max_c"`            // highest ambient temperature
	OutdoorUse            Flag   `json:"outdoor_use"`              // whether the maker allows it outdoors
	IndoorUse             Flag   `json:"indoor_use"`               // whether the maker allows it indoors
	MassKg                Number `json:"mass_kg"`                  // mass
	HeightMm              Number `json:"height_mm"`                // height
	WidthMm               Number `json:"width_mm"`                 // width
	DepthMm               Number `json:"depth_mm"`                 // depth
	ClearanceTopMm        Number `json:"clearance_top_mm"`         // clearance the maker asks for above
	ClearanceSideMm       Number `json:"clearance_side_mm"`        // clearance the maker asks for at each side
	ClearanceFrontMm      Number `json:"clearance_front_mm"`       // clearance the maker asks for in front
}

// BatteryProvision mirrors battery_provision: what is made ready for a battery to come.
type BatteryProvision struct {
	Pointer
	Note           Text          `json:"note"`
	Planned        Flag          `json:"planned"`                 // whether the installation is to be ready for a battery
	EnergyKwh      Number        `json:"energy_kwh"`              // stored energy foreseen
	PowerW         Number        `json:"power_w"`                 // power foreseen
	Coupling       Text          `json:"coupling"`                // side on which it is to be connected
	Inverter       Ref[Inverter] `json:"inverter" ref:"inverter"` // inverter to which it is to be connected
	Place          Text          `json:"place"`                   // where it is to stand
	SpaceKept      Flag          `json:"space_kept"`              // whether the space with its clearances is kept free
	Way            Text          `json:"way" ref:"terminal"`      // way of a board kept for it
	CableRouteKept Flag          `json:"cable_route_kept"`        // whether a way for its cables is kept free
	Notified       Flag          `json:"notified"`                // whether the network operator was told of it
}
