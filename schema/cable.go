// Code generated from cable.schema.json by go generate; DO NOT EDIT.

package schema

// Run mirrors run: all conductors of one circuit laid together from one terminal to another. Its length is the sum of its segments, one way.
type Run struct {
	Pointer
	ID                  Text                `json:"id"`
	Note                Text                `json:"note"`
	From                Text                `json:"from" ref:"terminal"`                      // terminal where it starts, on the side of the generator for PV and battery circuits
	To                  Text                `json:"to" ref:"terminal"`                        // terminal where it ends
	Service             Text                `json:"service"`                                  // what it serves
	Cable               Ref[CableDatasheet] `json:"cable" ref:"datasheets/cables"`            // key of the cable among the datasheets
	ConductorsPerPole   Number              `json:"conductors_per_pole"`                      // conductors in parallel for each pole, phase or protective conductor
	NeutralConductor    Flag                `json:"neutral_conductor"`                        // whether an AC run carries a neutral
	ProtectiveCable     Ref[CableDatasheet] `json:"protective_cable" ref:"datasheets/cables"` // key of the separate protective conductor laid with it, where the cable has none
	ProtectiveByArmour  Flag                `json:"protective_by_armour"`                     // whether armour, sheath or metal conduit serves as the protective conductor
	ProtectiveInService Flag                `json:"protective_in_service"`                    // whether a protective conductor within the cable is connected at both ends
	LaidWith            Ref[Run]            `json:"laid_with" ref:"run"`                      // run beside which it is laid all the way
	PolesLaidTogether   Flag                `json:"poles_laid_together"`                      // whether positive and negative (or line and neutral) run side by side, without an open loop
	DoubleInsulated     Flag                `json:"double_insulated"`                         // whether double or reinforced insulation is kept all the way
	BendRadiusMinMm     Number              `json:"bend_radius_min_mm"`                       // tightest bend
	Jointed             Flag                `json:"jointed"`                                  // whether it has joints under way other than the connectors listed
	ColourPositive      Text                `json:"colour_positive"`                          // colour of the positive (or line) conductors
	ColourNegative      Text                `json:"colour_negative"`                          // colour of the negative (or neutral) conductors
	IdentifiedBySystem  Flag                `json:"identified_by_system"`                     // whether it is told apart from the circuits of other systems in the same box or conduit
	DropBudgetPct       Number              `json:"drop_budget_pct"`                          // share of the voltage drop that the designer gave to this run
	Start               CableEnd            `json:"start"`                                    // how it is made off where it starts
	End                 CableEnd            `json:"end"`                                      // how it is made off where it ends
	Segments            []Segment           `json:"segments"`                                 // stretches of the route in order from the start; each has the same conditions all along
	Connectors          []ConnectorPair     `json:"connectors"`                               // pairs of plug connectors under way or at the ends
}

// Segment mirrors segment: a stretch of a run with the same conditions all along.
type Segment struct {
	Pointer
	Note                           Text         `json:"note"`
	LengthM                        Number       `json:"length_m"`                           // length along the route
	Place                          Text         `json:"place"`                              // where it lies
	Method                         Text         `json:"method"`                             // reference method of installation as the tables call it: A, A1, B2, C, D1, E, 100, 103, raceway, free_air
	Formation                      Text         `json:"formation"`                          // how the conductors lie to each other
	AmbientC                       Number       `json:"ambient_c"`                          // highest ambient temperature around the cable, before any addition for sun or roof
	AmbientSource                  Text         `json:"ambient_source"`                     // where the ambient temperature comes from
	InDirectSun                    Flag         `json:"in_direct_sun"`                      // whether the sun shines on the cable or its enclosure
	GapToRoofMm                    Number       `json:"gap_to_roof_mm"`                     // gap between the roof covering and the underside of the cable or its enclosure
	GroupedCircuits                Number       `json:"grouped_circuits"`                   // circuits side by side without spacing, this one included
	GroupedLightlyLoaded           Number       `json:"grouped_lightly_loaded"`             // grouped circuits that carry at most 30 % of their grouped rating
	GroupArrangement               Text         `json:"group_arrangement"`                  // how the group lies
	GroupSpacingDiameters          Number       `json:"group_spacing_diameters"`            // clear gap to the next circuit, in cable diameters
	GroupLengthM                   Number       `json:"group_length_m"`                     // length over which the group lies together, where shorter than the stretch
	CurrentCarryingConductors      Number       `json:"current_carrying_conductors"`        // current-carrying conductors in the same enclosure or bundle, its own included
	ThermalInsulation              Text         `json:"thermal_insulation"`                 // thermal insulation around the cable
	ThermalInsulationLengthMm      Number       `json:"thermal_insulation_length_mm"`       // length of cable within or against thermal insulation
	ThermalInsulationThicknessMm   Number       `json:"thermal_insulation_thickness_mm"`    // thickness of the thermal insulation
	Enclosure                      Text         `json:"enclosure"`                          // what the cable is drawn into or laid on
	EnclosureMaterial              Text         `json:"enclosure_material"`                 // what the enclosure is made of
	EnclosureDuty                  Text         `json:"enclosure_duty"`                     // mechanical class of the conduit or trunking
	EnclosureUVResistant           Flag         `json:"enclosure_uv_resistant"`             // whether it resists sunlight
	EnclosureEarthed               Flag         `json:"enclosure_earthed"`                  // whether metal of it is earthed
	EnclosureInsideMm2             Number       `json:"enclosure_inside_mm2"`               // internal cross-section of the enclosure
	EnclosureOtherCablesMm2        Number       `json:"enclosure_other_cables_mm2"`         // overall cross-section of the other cables in it
	EnclosureDrained               Flag         `json:"enclosure_drained"`                  // whether water can leave the enclosure
	PolesInSeparateEnclosures      Flag         `json:"poles_in_separate_enclosures"`       // whether each pole lies in an enclosure of its own
	SharesEnclosureWith            Text         `json:"shares_enclosure_with"`              // what else lies in the same enclosure
	Barrier                        Flag         `json:"barrier"`                            // whether a barrier keeps it apart from circuits of another kind
	DistanceToACMm                 Number       `json:"distance_to_ac_mm"`                  // least distance from AC circuits
	DistanceToServicesMm           Number       `json:"distance_to_services_mm"`            // least distance from gas, water, data and other services
	DistanceToLightningProtectionM Number       `json:"distance_to_lightning_protection_m"` // least distance from conductors of a lightning protection system
	Support                        Text         `json:"support"`                            // what holds the cable up
	SupportMaterial                Text         `json:"support_material"`                   // what the supports are made of
	SupportSpacingMm               Number       `json:"support_spacing_mm"`                 // distance between supports
	SupportFireResistant           Flag         `json:"support_fire_resistant"`             // whether the supports keep the cable up in a fire
	TouchesRoofCovering            Flag         `json:"touches_roof_covering"`              // whether the cable can sag on or rub against the roof covering
	EdgesProtected                 Flag         `json:"edges_protected"`                    // whether it is kept from sharp edges, chafing and trapping
	Straight                       Flag         `json:"straight"`                           // whether it runs straight between its ends
	EndsAt                         Text         `json:"ends_at"`                            // what the route does where this stretch ends
	Visible                        Flag         `json:"visible"`                            // whether people see the cable or its enclosure
	FunctionEvident                Flag         `json:"function_evident"`                   // whether its purpose is plain without a label
	ReadilyAccessible              Flag         `json:"readily_accessible"`                 // whether ordinary people can reach it
	ConcealedDepthMm               Number       `json:"concealed_depth_mm"`                 // depth below the finished surface where it is concealed
	InSafeZone                     Flag         `json:"in_safe_zone"`                       // whether a concealed cable keeps to the zones in which people expect one
	MechanicallyProtected          Flag         `json:"mechanically_protected"`             // whether it is guarded against nails, screws and blows
	InEscapeRoute                  Flag         `json:"in_escape_route"`                    // whether it passes through an escape route
	InOtherOccupancy               Flag         `json:"in_other_occupancy"`                 // whether it passes through another occupier's premises
	RoofSpaceRoute                 Text         `json:"roof_space_route"`                   // way through a roof space
	HeightAboveCeilingMm           Number       `json:"height_above_ceiling_mm"`            // height above the ceiling
	GroundC                        Number       `json:"ground_c"`                           // highest temperature of the ground
	SoilResistivityKMPerW          Number       `json:"soil_resistivity_k_m_per_w"`         // thermal resistivity of the soil
	BurialDepthMm                  Number       `json:"burial_depth_mm"`                    // depth of cover
	MarkedAbove                    Flag         `json:"marked_above"`                       // whether warning tape or covers lie above it
	Passage                        CablePassage `json:"passage"`                            // passage through roof, wall or floor at the end of this stretch
}

// CableEnd mirrors cable_end: how a run is made off at one of its ends.
type CableEnd struct {
	Pointer
	Note                Text   `json:"note"`
	TerminalTempMaxC    Number `json:"terminal_temp_max_c"`   // temperature for which the terminal is rated
	Entry               Text   `json:"entry"`                 // face of the enclosure through which it enters
	Gland               Text   `json:"gland"`                 // what it enters through
	GlandFits           Flag   `json:"gland_fits"`            // whether the gland or fitting fits the cable
	GlandIP             Text   `json:"gland_ip"`              // degree of protection of the entry as made
	DripLoop            Flag   `json:"drip_loop"`             // whether water drips off before the entry
	StrainRelieved      Flag   `json:"strain_relieved"`       // whether pull on the cable is kept from the terminal
	PolarityMarked      Flag   `json:"polarity_marked"`       // whether its polarity or phase is marked
	LugMetalsCompatible Flag   `json:"lug_metals_compatible"` // whether lug and part are of metals that do not corrode each other
	TorqueRecorded      Flag   `json:"torque_recorded"`       // whether the tightening torque was recorded
}

// ConnectorPair mirrors connector_pair: two plug connectors mated in the run.
type ConnectorPair struct {
	Pointer
	ID                 Text   `json:"id"`
	Note               Text   `json:"note"`
	PositionM          Number `json:"position_m"`          // distance from the start of the run
	Connector          Text   `json:"connector"`           // maker and type of one half
	Mate               Text   `json:"mate"`                // maker and type of the other half
	Standard           Text   `json:"standard"`            // product standard
	VoltageMaxV        Number `json:"voltage_max_v"`       // rated voltage
	CurrentMaxA        Number `json:"current_max_a"`       // rated current
	ListedForMating    Flag   `json:"listed_for_mating"`   // whether the maker or a listing allows these two to be mated
	ReadilyAccessible  Flag   `json:"readily_accessible"`  // whether ordinary people can reach it
	ToolToOpen         Flag   `json:"tool_to_open"`        // whether it opens only with a tool
	LoadBreak          Flag   `json:"load_break"`          // whether it is rated to be opened under load
	DisconnectionPoint Flag   `json:"disconnection_point"` // whether it is the means of disconnecting the string
	DistanceToArrayM   Number `json:"distance_to_array_m"` // distance from the edge of the array
	RestsInWater       Flag   `json:"rests_in_water"`      // whether it can lie in water or wet dirt
}

// CablePassage mirrors cable_passage: how a run passes through roof, wall or floor.
type CablePassage struct {
	Pointer
	Note          Text `json:"note"`
	Through       Text `json:"through"`        // what it passes through
	By            Text `json:"by"`             // what carries it through
	WeatherSealed Flag `json:"weather_sealed"` // whether it keeps the weather out
	FireSealed    Flag `json:"fire_sealed"`    // whether it is sealed against fire
	Sleeved       Flag `json:"sleeved"`        // whether the cable is kept from the edges
	FallsOutward  Flag `json:"falls_outward"`  // whether it falls to the outside
}

// CableDatasheet mirrors cable_datasheet: a cable or single conductor as its maker's sheet prints it.
type CableDatasheet struct {
	Pointer
	Note                     Text          `json:"note"`
	Marking                  Text          `json:"marking"`                       // type as printed on it, as in H1Z2Z2-K, 6242Y, THWN-2
	Standard                 Text          `json:"standard"`                      // product standard printed on it
	Kind                     Text          `json:"kind"`                          // how it is built
	CsaMm2                   Number        `json:"csa_mm2"`                       // cross-section of each line or pole conductor
	Awg                      Text          `json:"awg"`                           // size by the American wire gauge or in kcmil, as a name
	Conductor                Text          `json:"conductor"`                     // metal of the conductors
	ConductorClass           Number        `json:"conductor_class"`               // class of the conductor in IEC 60228
	Tinned                   Flag          `json:"tinned"`                        // whether the copper is tinned
	Cores                    Number        `json:"cores"`                         // cores, all counted: lines, neutral, and a protective core that is insulated
	CpcCsaMm2                Number        `json:"cpc_csa_mm2"`                   // cross-section of the protective conductor within the cable
	CpcInsulated             Flag          `json:"cpc_insulated"`                 // whether the protective conductor within the cable is insulated
	Armour                   Text          `json:"armour"`                        // metal of the armour
	ArmourCsaMm2             Number        `json:"armour_csa_mm2"`                // cross-section of the armour
	Insulation               Text          `json:"insulation"`                    // insulation of the conductors
	Sheathed                 Flag          `json:"sheathed"`                      // whether a non-metallic sheath covers the insulation
	DoubleInsulated          Flag          `json:"double_insulated"`              // whether it gives double or reinforced insulation by itself
	ConductorMaxC            Number        `json:"conductor_max_c"`               // highest temperature of the conductor in continuous duty
	ConductorShortTermC      Number        `json:"conductor_short_term_c"`        // highest temperature of the conductor for a limited life
	ConductorShortTermH      Number        `json:"conductor_short_term_h"`        // hours for which the short-term temperature is allowed
	ConductorWetMaxC         Number        `json:"conductor_wet_max_c"`           // highest temperature of the conductor in wet places
	ConductorFaultC          Number        `json:"conductor_fault_c"`             // highest temperature of the conductor in a short-circuit
	AmbientMinC              Number        `json:"ambient_min_c"`                 // lowest ambient temperature
	AmbientMaxC              Number        `json:"ambient_max_c"`                 // highest ambient temperature
	VoltageDCMaxV            Number        `json:"voltage_dc_max_v"`              // highest DC voltage between conductors
	VoltageDCToEarthMaxV     Number        `json:"voltage_dc_to_earth_max_v"`     // highest DC voltage to earth
	VoltageACV               Number        `json:"voltage_ac_v"`                  // rated AC voltage between conductors, U
	VoltageACToEarthV        Number        `json:"voltage_ac_to_earth_v"`         // rated AC voltage to earth, U0
	Resistance20cOhmPerKm    Number        `json:"resistance_20c_ohm_per_km"`     // resistance of a conductor at 20 °C (DC)
	CpcResistance20cOhmPerKm Number        `json:"cpc_resistance_20c_ohm_per_km"` // resistance of the protective conductor at 20 °C (DC)
	ReactanceOhmPerKm        Number        `json:"reactance_ohm_per_km"`          // reactance of a conductor
	DropMvPerAM              Number        `json:"drop_mv_per_a_m"`               // voltage drop of the circuit, both conductors together, as printed
	Ratings                  []CableRating `json:"ratings"`                       // current-carrying capacities as printed; they come before the tables of a rule set where a rule set says so
	OutsideDiameterMm        Number        `json:"outside_diameter_mm"`           // overall diameter
	OutsideWidthMm           Number        `json:"outside_width_mm"`              // overall width of a flat cable
	OutsideHeightMm          Number        `json:"outside_height_mm"`             // overall height of a flat cable
	BendRadiusMinMm          Number        `json:"bend_radius_min_mm"`            // smallest bend when fixed
	BendRadiusMinDiameters   Number        `json:"bend_radius_min_diameters"`     // smallest bend when fixed, in diameters
	UVResistant              Flag          `json:"uv_resistant"`                  // whether it resists sunlight
	WaterResistant           Flag          `json:"water_resistant"`               // whether it may lie in water (AD8)
	DirectBurial             Flag          `json:"direct_burial"`                 // whether it may be buried without a duct
	HalogenFree              Flag          `json:"halogen_free"`                  // whether it is free of halogens
	ReactionToFire           Text          `json:"reaction_to_fire"`              // class of reaction to fire of EN 13501-6, as in Dca-s2,d2,a2
	FlameRetardant           Flag          `json:"flame_retardant"`               // whether a single cable does not spread flame (IEC 60332-1-2)
	Listed                   Text          `json:"listed"`                        // listing or certification mark on it
}

// CableRating mirrors cable_rating: one line of the maker's table of current-carrying capacity.
type CableRating struct {
	Pointer
	Method           Text   `json:"method"`            // arrangement to which it belongs, as the sheet calls it
	LoadedConductors Number `json:"loaded_conductors"` // loaded conductors
	CurrentA         Number `json:"current_a"`         // current-carrying capacity
	AmbientC         Number `json:"ambient_c"`         // ambient temperature of the rating
	ConductorC       Number `json:"conductor_c"`       // conductor temperature of the rating
}
