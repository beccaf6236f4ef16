// Code generated from the schemas of the document by go generate; DO NOT EDIT.

package schema

var (
	shapeOfAC = shape{kind: isObject, defined: "accircuit.schema.json#/$defs/ac", must: 0, members: []memberShape{
		{"array_shutdown", false, &shapeOfArrayShutdown, nil},
		{"boards", false, &shape{kind: isList, fewest: 0, most: 1000, each: &shapeOfBoard}, nil},
		{"changeovers", false, &shape{kind: isList, fewest: 0, most: 100, each: &shapeOfChangeover}, nil},
		{"circuits", false, &shape{kind: isList, fewest: 0, most: 2000, each: &shapeOfACCircuit}, nil},
		{"existing_generation", false, &shape{kind: isList, fewest: 0, most: 100, each: &shapeOfExistingGenerator}, nil},
		{"export_limitation", false, &shapeOfExportLimitation, nil},
		{"interface_protection", false, &shapeOfInterfaceProtection, nil},
		{"meters", false, &shape{kind: isList, fewest: 0, most: 200, each: &shapeOfMeter}, nil},
		{"note", false, &shapeOfText, nil},
		{"overvoltage_risk", false, &shapeOfOvervoltageRisk, nil},
		{"supply", false, &shapeOfSupply, nil},
	}}

	shapeOfACCircuit = shape{kind: isObject, defined: "accircuit.schema.json#/$defs/ac_circuit", must: 2, members: []memberShape{
		{"additional_protection_needed", false, &shape{kind: isTrue}, nil},
		{"connected_by", false, &shape{kind: isText, words: []string{"fixed", "plug_and_socket"}}, nil},
		{"dedicated", false, &shape{kind: isTrue}, nil},
		{"disconnection_time_s", false, &shapeOfPositive, &plausible{from: 0.02, to: 5, usual: []float64{0.04, 0.07, 0.1, 0.2, 0.3, 0.4, 0.8, 1, 5}, ground: "standard", source: "IEC 60364-4-41 table 41.1: 0.04 to 0.8, 1, 5", slips: "ms for s (400)"}},
		{"id", true, &shapeOfID, nil},
		{"kind", false, &shape{kind: isText, words: []string{"final", "distribution"}}, nil},
		{"lighting", false, &shape{kind: isTrue}, nil},
		{"neutral_carries_unbalance_only", false, &shape{kind: isTrue}, nil},
		{"note", false, &shapeOfText, nil},
		{"other_loads_a", false, &shapeOfNotNegative, &plausible{from: 0.1, to: 2000, ground: "common practice", source: "", zero: true, slips: "W for A"}},
		{"prospective_fault_ka", false, &shapeOfPositive, &plausible{from: 0.02, to: 65, ground: "standard", source: "as for the supply", slips: "A for kA (750)"}},
		{"prospective_fault_min_ka", false, &shapeOfPositive, &plausible{from: 0.01, to: 60, ground: "standard", source: "as for the supply", slips: "A for kA"}},
		{"r1_r2_ohm", false, &shapeOfPositive, &plausible{from: 0.0005, to: 15, ground: "standard", source: "On-Site Guide table I1: 36 mΩ/m (1 mm²) at 100 m 3.6", slips: "mΩ (90)"}},
		{"sockets", false, &shape{kind: isTrue}, nil},
		{"voltage_measured_v", false, &shapeOfPositive, &plausible{from: 100, to: 300, ground: "standard", source: "EN 50160", slips: "line to line"}},
		{"way", true, &shapeOfTerminal, nil},
		{"zs_known_by", false, &shape{kind: isText, words: []string{"measured", "calculated"}}, nil},
		{"zs_ohm", false, &shapeOfPositive, &plausible{from: 0.004, to: 250, ground: "standard", source: "BS 7671 tables 41.2 to 41.5; TT to 200 where stable", slips: "mΩ (310)"}},
	}}

	shapeOfArray = shape{kind: isObject, defined: "pvstring.schema.json#/$defs/array", must: 2, members: []memberShape{
		{"blocking_diodes", false, &shape{kind: isTrue}, nil},
		{"diode_current_a", false, &shapeOfPositive, &plausible{from: 5, to: 300, ground: "standard", source: "IEC 62548: at least 1.4 Isc"}},
		{"diode_voltage_v", false, &shapeOfPositive, &plausible{from: 80, to: 3500, ground: "standard", source: "IEC 62548: at least twice the open-circuit voltage of the array"}},
		{"id", true, &shapeOfID, nil},
		{"ip", false, &shapeOfIP, nil},
		{"joined_by", false, &shape{kind: isText, words: []string{"junction_box", "branch_connectors"}}, nil},
		{"note", false, &shapeOfText, nil},
		{"place", false, &shapeOfPlace, nil},
		{"poles_segregated", false, &shape{kind: isTrue}, nil},
		{"ways", true, &shape{kind: isNumber, whole: true, above: false, least: 1, greatest: 64}, &plausible{from: 1, to: 32, ground: "common practice", source: "1 to 4 on roofs, to 32 in combiner boxes", slips: "modules in its place"}},
	}}

	shapeOfArrayFrame = shape{kind: isObject, defined: "earthing.schema.json#/$defs/array_frame", must: 1, members: []memberShape{
		{"bond_listed", false, &shape{kind: isTrue}, nil},
		{"conductive", false, &shape{kind: isTrue}, nil},
		{"connection", false, &shape{kind: isText, words: []string{"none", "functional_earth", "protective_conductor", "main_bonding", "lightning_bonding"}}, nil},
		{"gap_to_lightning_protection_m", false, &shapeOfNotNegative, &plausible{from: 0.02, to: 200, ground: "standard", source: "IEC 62305-3; 100 stated where there is none", zero: true, slips: "mm for m"}},
		{"id", true, &shapeOfID, nil},
		{"joints_labelled", false, &shape{kind: isTrue}, nil},
		{"material", false, &shape{kind: isText, words: []string{"copper", "tinned_copper", "aluminium", "steel", "stainless_steel"}}, nil},
		{"metals_compatible", false, &shape{kind: isTrue}, nil},
		{"module_can_be_removed", false, &shape{kind: isTrue}, nil},
		{"modules_bonded_by", false, &shape{kind: isText, words: []string{"clamp_with_pins", "bonding_jumper", "each_module_wired", "not_joined"}}, nil},
		{"note", false, &shapeOfText, nil},
		{"outside_equipotential_zone", false, &shape{kind: isTrue}, nil},
		{"reason", false, &shapeOfText, nil},
		{"resistance_to_main_terminal_kohm", false, &shapeOfNotNegative, &plausible{from: 0.0001, to: 200000, ground: "common practice", source: "bonded below 0.001; separate above 22; MΩ readings are tens of thousands", zero: true, slips: "Ω for kΩ (1 Ω is 0.001; 22 kΩ limit of BS 7671 for an extraneous part)"}},
		{"strings", false, &shape{kind: isList, fewest: 0, most: 500, each: &shapeOfID}, nil},
		{"touches_building_metal", false, &shape{kind: isTrue}, nil},
		{"within_reach_from", false, &shape{kind: isText, words: []string{"nowhere", "ground", "window", "balcony", "roof_terrace"}}, nil},
	}}

	shapeOfArrayShutdown = shape{kind: isObject, defined: "accircuit.schema.json#/$defs/array_shutdown", must: 1, members: []memberShape{
		{"arc_fault_protection", false, &shape{kind: isTrue}, nil},
		{"arc_fault_standard", false, &shapeOfText, nil},
		{"asked_by_fire_service", false, &shape{kind: isTrue}, nil},
		{"boundary_mm", false, &shapeOfNotNegative, &plausible{from: 1, to: 3000, ground: "standard", source: "NEC 690.12(B): 305 mm (1 ft)", zero: true, slips: "feet or inches for mm (1, 12)"}},
		{"by", false, &shape{kind: isText, words: []string{"module_level", "string_level", "isolator_at_array", "listed_array"}}, nil},
		{"fitted", true, &shape{kind: isTrue}, nil},
		{"initiator", false, &shapeOfID, nil},
		{"initiator_outdoors", false, &shape{kind: isTrue}, nil},
		{"initiator_readily_accessible", false, &shape{kind: isTrue}, nil},
		{"modules_per_unit", false, &shape{kind: isNumber, whole: true, above: false, least: 1, greatest: 200}, &plausible{from: 1, to: 30, ground: "common practice", source: "1 or 2"}},
		{"note", false, &shapeOfText, nil},
		{"standard", false, &shapeOfText, nil},
		{"starts_on_loss_of_grid", false, &shape{kind: isTrue}, nil},
		{"time_s", false, &shapeOfPositive, &plausible{from: 0.1, to: 120, ground: "standard", source: "NEC 690.12(B): 30 s", slips: "ms for s"}},
		{"voltage_outside_array_v", false, &shapeOfNotNegative, &plausible{from: 1, to: 600, ground: "standard", source: "NEC 690.12(B)(1): 30 V", zero: true}},
		{"voltage_within_array_v", false, &shapeOfNotNegative, &plausible{from: 1, to: 600, ground: "standard", source: "NEC 690.12(B)(2): 80 V; without shutdown of modules the string voltage", zero: true}},
	}}

	shapeOfAsBuiltRecord = shape{kind: isObject, defined: "handover.schema.json#/$defs/as_built_record", must: 0, members: []memberShape{
		{"changes", false, &shapeOfText, nil},
		{"date", false, &shapeOfDate, nil},
		{"end_clamps", false, &shapeOfCount, &plausible{from: 4, to: 20000, ground: "common practice", source: "4 a row", zero: true}},
		{"fixings", false, &shapeOfCount, &plausible{from: 2, to: 50000, ground: "common practice", source: "2 to 5 a module", zero: true}},
		{"inverters", false, &shapeOfCount, &plausible{from: 1, to: 100, ground: "common practice", source: ""}},
		{"list_date", false, &shapeOfDate, nil},
		{"mid_clamps", false, &shapeOfCount, &plausible{from: 0, to: 40000, ground: "common practice", source: "", zero: true}},
		{"modules", false, &shapeOfCount, &plausible{from: 1, to: 10000, ground: "common practice", source: ""}},
		{"note", false, &shapeOfText, nil},
		{"products_on_approved_list", false, &shape{kind: isTrue}, nil},
		{"same_as_design", false, &shape{kind: isTrue}, nil},
		{"serials", false, &shape{kind: isList, fewest: 0, most: 20000, each: &shapeOfSerialRecord}, nil},
		{"strings", false, &shapeOfCount, &plausible{from: 1, to: 500, ground: "common practice", source: ""}},
	}}

	shapeOfBattery = shape{kind: isObject, defined: "storage.schema.json#/$defs/battery", must: 2, members: []memberShape{
		{"ambient_max_c", false, &shapeOfTemperature, &plausible{from: 15, to: 60, ground: "common practice", source: "", slips: "°F"}},
		{"ambient_min_c", false, &shapeOfTemperature, &plausible{from: -30, to: 25, ground: "common practice", source: "", slips: "sign lost"}},
		{"backing_non_combustible", false, &shape{kind: isTrue}, nil},
		{"backup_used", false, &shape{kind: isTrue}, nil},
		{"can_export_with_pv", false, &shape{kind: isTrue}, nil},
		{"clear_above_mm", false, &shapeOfNotNegative, &plausible{from: 5, to: 10000, ground: "common practice", source: "", zero: true, slips: "m (0.8) or cm for mm"}},
		{"clear_front_mm", false, &shapeOfNotNegative, &plausible{from: 5, to: 20000, ground: "common practice", source: "", zero: true, slips: "m (1.6) or cm for mm"}},
		{"clear_side_mm", false, &shapeOfNotNegative, &plausible{from: 5, to: 10000, ground: "common practice", source: "", zero: true, slips: "m or cm for mm"}},
		{"clearances_kept", false, &shape{kind: isTrue}, nil},
		{"datasheet", true, &shapeOfID, nil},
		{"detached_building", false, &shape{kind: isTrue}, nil},
		{"distance_to_appliance_mm", false, &shapeOfNotNegative, &plausible{from: 1, to: 20000, ground: "common practice", source: "", zero: true, slips: "m for mm (0.9)"}},
		{"distance_to_battery_m", false, &shapeOfNotNegative, &plausible{from: 0, to: 200, ground: "common practice", source: "", zero: true, slips: "mm for m"}},
		{"distance_to_boundary_m", false, &shapeOfNotNegative, &plausible{from: 0, to: 2000, ground: "common practice", source: "", zero: true, slips: "mm for m"}},
		{"distance_to_escape_route_m", false, &shapeOfNotNegative, &plausible{from: 0, to: 200, ground: "common practice", source: "PAS 63100 asks for 1", zero: true, slips: "mm for m"}},
		{"distance_to_flammables_m", false, &shapeOfNotNegative, &plausible{from: 0, to: 200, ground: "common practice", source: "", zero: true, slips: "mm for m"}},
		{"distance_to_opening_m", false, &shapeOfNotNegative, &plausible{from: 0, to: 200, ground: "common practice", source: "PAS 63100 asks for 1", zero: true, slips: "mm for m (900)"}},
		{"earthed_pole", false, &shape{kind: isText, words: []string{"none", "positive", "negative", "midpoint"}}, nil},
		{"exit_width_mm", false, &shapeOfPositive, &plausible{from: 400, to: 6000, ground: "common practice", source: "700 to 1200", slips: "m (0.9) or cm (90) for mm"}},
		{"export_power_max_w", false, &shapeOfNotNegative, &plausible{from: 100, to: 1000000, ground: "common practice", source: "", zero: true, slips: "kW for W (5)"}},
		{"fire_detection", false, &shape{kind: isText, words: []string{"none", "alone", "interlinked"}}, nil},
		{"fire_separation_min", false, &shapeOfNotNegative, &plausible{from: 15, to: 240, usual: []float64{15, 20, 30, 45, 60, 90, 120, 180, 240}, ground: "standard", source: "EN 13501-2: 15, 20, 30, 45, 60, 90, 120, 180, 240", zero: true, slips: "h for min (1)"}},
		{"flood_safe", false, &shape{kind: isTrue}, nil},
		{"height_above_floor_mm", false, &shapeOfNotNegative, &plausible{from: 1, to: 2500, ground: "common practice", source: "", zero: true, slips: "m or cm for mm"}},
		{"id", true, &shapeOfID, nil},
		{"in_direct_sun", false, &shape{kind: isTrue}, nil},
		{"in_escape_route", false, &shape{kind: isTrue}, nil},
		{"in_protected_route", false, &shape{kind: isTrue}, nil},
		{"isolator", false, &shapeOfID, nil},
		{"isolator_in_sight", false, &shape{kind: isTrue}, nil},
		{"note", false, &shapeOfText, nil},
		{"opens_into_bedroom", false, &shape{kind: isTrue}, nil},
		{"outdoors_practicable", false, &shape{kind: isTrue}, nil},
		{"outside_access", false, &shape{kind: isTrue}, nil},
		{"overcurrent_device", false, &shapeOfID, nil},
		{"overcurrent_distance_m", false, &shapeOfNotNegative, &plausible{from: 0.02, to: 15, ground: "common practice", source: "0.2 to 3", zero: true, slips: "mm for m (300)"}},
		{"overcurrent_poles", false, &shape{kind: isText, words: []string{"positive", "negative", "both"}}, nil},
		{"place", false, &shapeOfPlace, nil},
		{"room", false, &shapeOfText, nil},
		{"second_life", false, &shape{kind: isTrue}, nil},
		{"serial", false, &shapeOfText, nil},
		{"shutdown_from", false, &shapeOfID, nil},
		{"shutdown_outdoors", false, &shape{kind: isTrue}, nil},
		{"terminals_shrouded", false, &shape{kind: isTrue}, nil},
		{"under_stairs", false, &shape{kind: isTrue}, nil},
		{"units", false, &shape{kind: isNumber, whole: true, above: false, least: 1, greatest: 100}, &plausible{from: 1, to: 40, ground: "common practice", source: ""}},
		{"units_joined", false, &shape{kind: isText, words: []string{"parallel", "series"}}, nil},
		{"vehicle_protection", false, &shape{kind: isTrue}, nil},
		{"ventilated", false, &shape{kind: isTrue}, nil},
		{"wall_to_habitable_room", false, &shape{kind: isTrue}, nil},
	}}

	shapeOfBatteryDatasheet = shape{kind: isObject, defined: "storage.schema.json#/$defs/battery_datasheet", must: 1, members: []memberShape{
		{"ac_apparent_max_va", false, &shapeOfPositive, &plausible{from: 300, to: 300000, ground: "common practice", source: "as for the member before", slips: "kVA for VA"}},
		{"ac_current_max_a", false, &shapeOfPositive, &plausible{from: 1, to: 500, ground: "common practice", source: "follows from power and voltage"}},
		{"ac_ocpd_max_a", false, &shapeOfPositive, &plausible{from: 6, to: 630, ground: "common practice", source: "16 to 63 for homes"}},
		{"ac_power_rated_w", false, &shapeOfPositive, &plausible{from: 300, to: 250000, ground: "common practice", source: "800 to 15000 for homes", slips: "kW for W"}},
		{"ambient_max_c", false, &shapeOfTemperature, &plausible{from: 30, to: 65, ground: "common practice", source: "40 to 55", slips: "°F"}},
		{"ambient_min_c", false, &shapeOfTemperature, &plausible{from: -30, to: 15, ground: "common practice", source: "-20 to 0", slips: "sign lost (10 for -10)"}},
		{"backup_output", false, &shape{kind: isTrue}, nil},
		{"charge_current_max_a", false, &shapeOfPositive, &plausible{from: 2, to: 400, ground: "common practice", source: "15 to 200", slips: "a factor of 10"}},
		{"chemistry", false, &shape{kind: isText, words: []string{"lithium_iron_phosphate", "lithium_nmc", "lithium_nca", "lithium_titanate", "lithium_metal", "lead_acid_vented", "lead_acid_sealed", "nickel_metal_hydride", "nickel_cadmium", "sodium_ion", "flow", "other"}}, nil},
		{"clearance_front_mm", false, &shapeOfNotNegative, &plausible{from: 10, to: 3000, ground: "common practice", source: "500 to 1200", zero: true, slips: "cm (80) or m"}},
		{"clearance_side_mm", false, &shapeOfNotNegative, &plausible{from: 10, to: 2000, ground: "common practice", source: "100 to 600", zero: true, slips: "cm (20)"}},
		{"clearance_top_mm", false, &shapeOfNotNegative, &plausible{from: 10, to: 2000, ground: "common practice", source: "150 to 1000", zero: true, slips: "cm (30)"}},
		{"coupling", false, &shape{kind: isText, words: []string{"dc", "ac"}}, nil},
		{"depth_mm", false, &shapeOfPositive, &plausible{from: 60, to: 1500, ground: "common practice", source: "120 to 900", slips: "cm (25) or m for mm"}},
		{"discharge_current_max_a", false, &shapeOfPositive, &plausible{from: 2, to: 400, ground: "common practice", source: "15 to 200", slips: "a factor of 10"}},
		{"energy_kwh", true, &shapeOfPositive, &plausible{from: 0.5, to: 500, ground: "common practice", source: "home 2 to 30 a unit; cabinets 50 to 400. Four systems measured in an open research table: 5.7 to 10.6 usable", slips: "Wh for kWh; Ah in its place"}},
		{"energy_usable_kwh", false, &shapeOfPositive, &plausible{from: 0.4, to: 500, ground: "common practice", source: "0.8 to 1.0 of the rated energy", slips: "Wh for kWh"}},
		{"fire_spread_tested", false, &shape{kind: isTrue}, nil},
		{"grid_type_test", false, &shapeOfText, nil},
		{"grid_type_test_reference", false, &shapeOfText, nil},
		{"height_mm", false, &shapeOfPositive, &plausible{from: 80, to: 2600, ground: "common practice", source: "150 to 2200; cm of a tall one falls inside", slips: "cm (120) or m for mm"}},
		{"indoor_use", false, &shape{kind: isTrue}, nil},
		{"ip", false, &shapeOfIP, nil},
		{"isolator_built_in", false, &shape{kind: isTrue}, nil},
		{"leakage_current_ma", false, &shapeOfNotNegative, &plausible{from: 0.1, to: 100, ground: "common practice", source: "0.5 to 10", zero: true, slips: "A for mA"}},
		{"mass_kg", false, &shapeOfPositive, &plausible{from: 4, to: 5000, ground: "common practice", source: "6 to 20 kg/kWh lithium, 25 to 45 lead", slips: "g; lb"}},
		{"note", false, &shapeOfText, nil},
		{"outdoor_use", false, &shape{kind: isTrue}, nil},
		{"overcurrent_built_in", false, &shape{kind: isTrue}, nil},
		{"phases", false, &shape{kind: isNumber, words: []string{"1", "3"}}, nil},
		{"protection_class", false, &shape{kind: isText, words: []string{"0", "I", "II", "III"}}, nil},
		{"rcd_type_b_not_required", false, &shape{kind: isTrue}, nil},
		{"rcd_type_required", false, &shape{kind: isText, words: []string{"none", "AC", "A", "F", "B"}}, nil},
		{"short_circuit_ka", false, &shapeOfPositive, &plausible{from: 0.2, to: 40, ground: "common practice", source: "lithium modules 1 to 20", slips: "A for kA (3200)"}},
		{"standard", false, &shapeOfText, nil},
		{"system_listed", false, &shape{kind: isTrue}, nil},
		{"un_number", false, &shapeOfText, nil},
		{"voltage_max_v", false, &shapeOfPositive, &plausible{from: 12, to: 1100, ground: "common practice", source: "four measured: 58.8 to 500", slips: "cell"}},
		{"voltage_min_v", false, &shapeOfPositive, &plausible{from: 9, to: 950, ground: "common practice", source: "four measured: 42 to 360", slips: "cell"}},
		{"voltage_nominal_v", false, &shapeOfPositive, &plausible{from: 11, to: 1000, ground: "common practice", source: "12, 24, 48, 51.2, 102 to 800; four systems measured: 51.8 to 460", slips: "voltage of a cell (3.2)"}},
		{"width_mm", false, &shapeOfPositive, &plausible{from: 100, to: 2600, ground: "common practice", source: "350 to 1200", slips: "cm (60) or m for mm"}},
	}}

	shapeOfBatteryProvision = shape{kind: isObject, defined: "storage.schema.json#/$defs/battery_provision", must: 1, members: []memberShape{
		{"cable_route_kept", false, &shape{kind: isTrue}, nil},
		{"coupling", false, &shape{kind: isText, words: []string{"dc", "ac"}}, nil},
		{"energy_kwh", false, &shapeOfPositive, &plausible{from: 0.5, to: 5000, ground: "common practice", source: "", slips: "Wh for kWh"}},
		{"inverter", false, &shapeOfID, nil},
		{"note", false, &shapeOfText, nil},
		{"notified", false, &shape{kind: isTrue}, nil},
		{"place", false, &shapeOfPlace, nil},
		{"planned", true, &shape{kind: isTrue}, nil},
		{"power_w", false, &shapeOfPositive, &plausible{from: 300, to: 2000000, ground: "common practice", source: "", slips: "kW for W (5)"}},
		{"space_kept", false, &shape{kind: isTrue}, nil},
		{"way", false, &shapeOfTerminal, nil},
	}}

	shapeOfBoard = shape{kind: isObject, defined: "accircuit.schema.json#/$defs/board", must: 1, members: []memberShape{
		{"adjacent_to_inverter", false, &shape{kind: isTrue}, nil},
		{"busbar_carries_loads", false, &shape{kind: isTrue}, nil},
		{"combustible", false, &shape{kind: isTrue}, nil},
		{"feed", false, &shape{kind: isText, words: []string{"end", "centre"}}, nil},
		{"feed_through_lugs", false, &shape{kind: isTrue}, nil},
		{"fire_sealed", false, &shape{kind: isTrue}, nil},
		{"id", true, &shapeOfID, nil},
		{"incoming_device", false, &shapeOfID, nil},
		{"ip", false, &shapeOfIP, nil},
		{"joined_in", false, &shapeOfTerminal, nil},
		{"main_switch", false, &shapeOfID, nil},
		{"main_switch_lockable", false, &shape{kind: isTrue}, nil},
		{"note", false, &shapeOfText, nil},
		{"place", false, &shapeOfPlace, nil},
		{"rated_a", false, &shapeOfPositive, &plausible{from: 25, to: 6300, ground: "standard", source: "IEC 61439-3 63 to 250 for homes; 61439-2 to 6300"}},
		{"role", false, &shape{kind: isText, words: []string{"main", "sub", "generation", "backup"}}, nil},
		{"short_circuit_rating_ka", false, &shapeOfPositive, &plausible{from: 3, to: 150, ground: "standard", source: "IEC 61439-3 6, 10, 16; 61439-2 to 100", slips: "A for kA (16000)"}},
		{"standard", false, &shapeOfText, nil},
		{"ways", false, &shape{kind: isList, fewest: 0, most: 200, each: &shapeOfBoardWay}, nil},
	}}

	shapeOfBoardWay = shape{kind: isObject, defined: "accircuit.schema.json#/$defs/board_way", must: 1, members: []memberShape{
		{"bus_position", false, &shape{kind: isText, words: []string{"near_incomer", "between", "far_end"}}, nil},
		{"device", false, &shapeOfID, nil},
		{"id", true, &shapeOfID, nil},
		{"identified", false, &shape{kind: isTrue}, nil},
		{"joined_to", false, &shapeOfTerminal, nil},
		{"lockable_off", false, &shape{kind: isTrue}, nil},
		{"note", false, &shapeOfText, nil},
		{"phase", false, &shape{kind: isText, words: []string{"L1", "L2", "L3", "L1_L2", "L2_L3", "L1_L3", "L1_L2_L3"}}, nil},
		{"rcd", false, &shapeOfID, nil},
		{"rcd_fitted", false, &shape{kind: isTrue}, nil},
		{"rcd_shared", false, &shape{kind: isTrue}, nil},
		{"serves", false, &shape{kind: isText, words: []string{"pv_supply", "battery_supply", "hybrid_supply", "ev_charger", "load", "lighting", "sockets", "heating", "sub_board", "backup", "surge_protection", "spare"}}, nil},
		{"source_on", false, &shape{kind: isText, words: []string{"line", "load"}}, nil},
	}}

	shapeOfCableDatasheet = shape{kind: isObject, defined: "cable.schema.json#/$defs/cable_datasheet", must: 1, members: []memberShape{
		{"ambient_max_c", false, &shapeOfTemperature, &plausible{from: 40, to: 125, ground: "standard", source: "EN 50618 90; PVC 60 to 70", slips: "conductor temperature in its place"}},
		{"ambient_min_c", false, &shapeOfTemperature, &plausible{from: -60, to: 10, ground: "standard", source: "EN 50618 -40; PVC 0 to -25, laying +5", slips: "sign lost"}},
		{"armour", false, &shape{kind: isText, words: []string{"none", "steel", "aluminium", "copper"}}, nil},
		{"armour_csa_mm2", false, &shapeOfPositive, &plausible{from: 10, to: 700, ground: "standard", source: "BS 5467: 15 to 90 up to 50 mm²", slips: "diameter over armour in its place"}},
		{"awg", false, &shape{kind: isText, words: []string{"18", "16", "14", "12", "10", "8", "6", "4", "3", "2", "1", "1/0", "2/0", "3/0", "4/0", "250", "300", "350", "400", "500", "600", "700", "750", "800", "900", "1000"}}, nil},
		{"bend_radius_min_diameters", false, &shapeOfPositive, &plausible{from: 2, to: 20, ground: "standard", source: "BS 7671 / On-Site Guide table D5: 3 to 8; mineral 6; large sector 8 to 15", slips: "mm in its place"}},
		{"bend_radius_min_mm", false, &shapeOfPositive, &plausible{from: 8, to: 1500, ground: "common practice", source: "3 to 12 diameters", slips: "diameters in its place (4)"}},
		{"conductor", false, &shape{kind: isText, words: []string{"copper", "aluminium", "copper_clad_aluminium"}}, nil},
		{"conductor_class", false, &shape{kind: isNumber, words: []string{"1", "2", "5", "6"}}, nil},
		{"conductor_fault_c", false, &shapeOfPositive, &plausible{from: 140, to: 350, usual: []float64{140, 160, 200, 220, 250, 350}, ground: "standard", source: "IEC 60364-4-43 table 43A: 140 to 160 PVC, 200 rubber, 220 butyl, 250 XLPE/EPR", slips: "continuous temperature in its place (90)"}},
		{"conductor_max_c", false, &shapeOfTemperature, &plausible{from: 60, to: 110, usual: []float64{60, 70, 75, 85, 90, 105, 110}, ground: "standard", source: "IEC 60364-5-52 table 52.1: 70, 90, mineral 70/105; NEC 60, 75, 90; EN 50618 90", slips: "short-circuit or short-term temperature in its place (120, 250)"}},
		{"conductor_short_term_c", false, &shapeOfTemperature, &plausible{from: 100, to: 150, ground: "standard", source: "EN 50618, IEC 62930: 120 °C for 20000 h", slips: "short-circuit temperature in its place"}},
		{"conductor_short_term_h", false, &shapeOfPositive, &plausible{from: 500, to: 50000, ground: "standard", source: "EN 50618: 20000 h", slips: "years for hours; a factor of 10"}},
		{"conductor_wet_max_c", false, &shapeOfTemperature, &plausible{from: 60, to: 90, ground: "standard", source: "NEC 310: 60, 75, 90"}},
		{"cores", false, &shape{kind: isNumber, whole: true, above: false, least: 1, greatest: 61}, &plausible{from: 1, to: 12, ground: "standard", source: "BS 5467, HD 603: 1 to 5 for power; more are control cables", slips: "a bare protective conductor counted in"}},
		{"cpc_csa_mm2", false, &shapeOfPositive, &plausible{from: 0.75, to: 300, ground: "standard", source: "BS 6004 flat twin and earth 1 to 6; from a third of the line to the same", slips: "swapped with csa_mm2"}},
		{"cpc_insulated", false, &shape{kind: isTrue}, nil},
		{"cpc_resistance_20c_ohm_per_km", false, &shapeOfPositive, &plausible{from: 0.025, to: 30, ground: "standard", source: "IEC 60228"}},
		{"csa_mm2", true, &shapeOfPositive, &plausible{from: 0.5, to: 630, usual: []float64{0.5, 0.75, 1, 1.5, 2.5, 4, 6, 10, 16, 25, 35, 50, 70, 95, 120, 150, 185, 240, 300, 400, 500, 630}, ground: "standard", source: "IEC 60228 sizes 0.5 to 1000 (2500); AWG 18 (0.82) to 1000 kcmil (507)", slips: "AWG number or diameter in its place (4 mm2 has 2.3 mm); area of all cores", where: []plausibleWhere{
			{"country", []string{"US", "CA"}, plausible{from: 0.5, to: 630, ground: "standard", source: "conductors there come in other sizes (AWG)", slips: "AWG number or diameter in its place (4 mm2 has 2.3 mm); area of all cores"}},
		}}},
		{"direct_burial", false, &shape{kind: isTrue}, nil},
		{"double_insulated", false, &shape{kind: isTrue}, nil},
		{"drop_mv_per_a_m", false, &shapeOfPositive, &plausible{from: 0.1, to: 62, ground: "standard", source: "BS 7671 appendix 4: 44 (1 mm²) to 0.17 (400 mm² three-phase)", slips: "single-core value for a pair (/2)"}},
		{"flame_retardant", false, &shape{kind: isTrue}, nil},
		{"halogen_free", false, &shape{kind: isTrue}, nil},
		{"insulation", false, &shape{kind: isText, words: []string{"pvc", "xlpe", "epr", "crosslinked_polyolefin", "rubber", "mineral", "none"}}, nil},
		{"kind", false, &shape{kind: isText, words: []string{"solar_single_core", "single_core_unsheathed", "single_core_sheathed", "multicore", "flat_twin_and_earth", "armoured", "metal_clad", "mineral_insulated", "flexible", "bare"}}, nil},
		{"listed", false, &shapeOfText, nil},
		{"marking", false, &shapeOfText, nil},
		{"note", false, &shapeOfText, nil},
		{"outside_diameter_mm", false, &shapeOfPositive, &plausible{from: 2, to: 90, ground: "standard", source: "EN 50618 specimen 4.5 (1.5 mm²) to 26.3 (240 mm²); BS 5467 four-core 240 mm² 64", slips: "cross-section in its place; radius"}},
		{"outside_height_mm", false, &shapeOfPositive, &plausible{from: 2.5, to: 30, ground: "standard", source: "BS 6004 flat 1.0 mm² about 4.3, 16 mm² about 8.7", slips: "swapped with the width"}},
		{"outside_width_mm", false, &shapeOfPositive, &plausible{from: 4, to: 60, ground: "standard", source: "BS 6004 flat 1.0 mm² about 7.8, 16 mm² about 18", slips: "cm"}},
		{"ratings", false, &shape{kind: isList, fewest: 0, most: 60, each: &shapeOfCableRating}, nil},
		{"reactance_ohm_per_km", false, &shapeOfNotNegative, &plausible{from: 0.05, to: 0.4, ground: "standard", source: "BS 7671 appendix 4 x columns /2: 0.07 to 0.17; single cores spaced to 0.25", zero: true, slips: "Ω/m; a factor of 10"}},
		{"reaction_to_fire", false, &shapeOfText, nil},
		{"resistance_20c_ohm_per_km", false, &shapeOfPositive, &plausible{from: 0.025, to: 30, ground: "standard", source: "IEC 60228: 36 (0.5 mm²) to 0.0283 (630 mm²); 26 at 0.75 mm²", slips: "Ω/m; loop of two conductors; hot value"}},
		{"sheathed", false, &shape{kind: isTrue}, nil},
		{"standard", false, &shapeOfText, nil},
		{"tinned", false, &shape{kind: isTrue}, nil},
		{"uv_resistant", false, &shape{kind: isTrue}, nil},
		{"voltage_ac_to_earth_v", false, &shapeOfPositive, &plausible{from: 130, to: 1000, ground: "standard", source: "300, 450, 600, 1000", slips: "kV for V; swapped with voltage_ac_v"}},
		{"voltage_ac_v", false, &shapeOfPositive, &plausible{from: 230, to: 1000, ground: "standard", source: "HD 21/22, BS 6004, BS 5467: 300/500, 450/750, 600/1000; NEC 600, 1000", slips: "kV for V (0.75, 1.0)"}},
		{"voltage_dc_max_v", false, &shapeOfPositive, &plausible{from: 300, to: 2000, ground: "standard", source: "EN 50618 1.5 kV rated, 1.8 kV maximum", slips: "kV for V (1.5, 1.8)"}},
		{"voltage_dc_to_earth_max_v", false, &shapeOfPositive, &plausible{from: 300, to: 2000, ground: "standard", source: "EN 50618 1.5 kV; 0.9 kV on older types", slips: "kV for V"}},
		{"water_resistant", false, &shape{kind: isTrue}, nil},
	}}

	shapeOfCableEnd = shape{kind: isObject, defined: "cable.schema.json#/$defs/cable_end", must: 0, members: []memberShape{
		{"drip_loop", false, &shape{kind: isTrue}, nil},
		{"entry", false, &shape{kind: isText, words: []string{"bottom", "side", "top", "back"}}, nil},
		{"gland", false, &shape{kind: isText, words: []string{"gland", "conduit_fitting", "grommet", "multi_hole_gland", "open", "none"}}, nil},
		{"gland_fits", false, &shape{kind: isTrue}, nil},
		{"gland_ip", false, &shapeOfIP, nil},
		{"lug_metals_compatible", false, &shape{kind: isTrue}, nil},
		{"note", false, &shapeOfText, nil},
		{"polarity_marked", false, &shape{kind: isTrue}, nil},
		{"strain_relieved", false, &shape{kind: isTrue}, nil},
		{"terminal_temp_max_c", false, &shapeOfTemperature, &plausible{from: 60, to: 125, ground: "standard", source: "IEC 60947-1; printed 60, 70, 75, 90"}},
		{"torque_recorded", false, &shape{kind: isTrue}, nil},
	}}

	shapeOfCablePassage = shape{kind: isObject, defined: "cable.schema.json#/$defs/cable_passage", must: 0, members: []memberShape{
		{"by", false, &shape{kind: isText, words: []string{"vent_tile", "flashing", "sleeve", "gland_plate", "duct", "bare_hole"}}, nil},
		{"falls_outward", false, &shape{kind: isTrue}, nil},
		{"fire_sealed", false, &shape{kind: isTrue}, nil},
		{"note", false, &shapeOfText, nil},
		{"sleeved", false, &shape{kind: isTrue}, nil},
		{"through", false, &shape{kind: isText, words: []string{"roof", "outer_wall", "inner_wall", "floor", "fire_compartment"}}, nil},
		{"weather_sealed", false, &shape{kind: isTrue}, nil},
	}}

	shapeOfCableRating = shape{kind: isObject, defined: "cable.schema.json#/$defs/cable_rating", must: 1, members: []memberShape{
		{"ambient_c", false, &shapeOfTemperature, &plausible{from: 20, to: 70, ground: "standard", source: "IEC 60364-5-52 20 or 30; EN 50618 60; AS/NZS 3008 40", slips: "conductor temperature in its place"}},
		{"conductor_c", false, &shapeOfTemperature, &plausible{from: 60, to: 125, ground: "standard", source: "60, 70, 75, 90, 105, 110, 120"}},
		{"current_a", true, &shapeOfPositive, &plausible{from: 8, to: 1200, ground: "standard", source: "IEC 60364-5-52 tables B.52.2 to B.52.12: 12 to 1000", slips: "cross-section in its place"}},
		{"loaded_conductors", false, &shape{kind: isNumber, whole: true, above: false, least: 1, greatest: 4}, &plausible{from: 1, to: 3, ground: "standard", source: "IEC 60364-5-52: 2 or 3 loaded; EN 50618 also 1", slips: "cores in its place"}},
		{"method", false, &shapeOfText, nil},
	}}

	shapeOfChangeover = shape{kind: isObject, defined: "accircuit.schema.json#/$defs/changeover", must: 1, members: []memberShape{
		{"electrode", false, &shapeOfID, nil},
		{"fault_current_a", false, &shapeOfPositive, &plausible{from: 5, to: 20000, ground: "common practice", source: "inverters 1 to 2 times the rated current", slips: "kA for A (0.06)"}},
		{"id", true, &shapeOfID, nil},
		{"interlocked", false, &shape{kind: isTrue}, nil},
		{"kind", false, &shape{kind: isText, words: []string{"manual", "automatic", "inverter_internal"}}, nil},
		{"neutral_earth_link", false, &shape{kind: isText, words: []string{"none", "relay", "fixed"}}, nil},
		{"note", false, &shapeOfText, nil},
		{"place", false, &shapeOfPlace, nil},
		{"rated_a", false, &shapeOfPositive, &plausible{from: 16, to: 3200, ground: "standard", source: "IEC 60947-6-1"}},
		{"switches_neutral", false, &shape{kind: isTrue}, nil},
		{"voltage_v", false, &shapeOfPositive, &plausible{from: 100, to: 290, ground: "standard", source: "IEC 60038", slips: "line to line"}},
	}}

	shapeOfClamp = shape{kind: isObject, defined: "roof.schema.json#/$defs/clamp", must: 3, members: []memberShape{
		{"datasheet", false, &shapeOfID, nil},
		{"frame_deformed", false, &shape{kind: isTrue}, nil},
		{"fully_on_rail", false, &shape{kind: isTrue}, nil},
		{"holds", true, &shape{kind: isList, fewest: 1, most: 2, each: &shapeOfClampHold}, nil},
		{"id", true, &shapeOfID, nil},
		{"kind", true, &shape{kind: isText, words: []string{"end", "mid"}}, nil},
		{"note", false, &shapeOfText, nil},
		{"on_glass", false, &shape{kind: isTrue}, nil},
		{"overlap_mm", false, &shapeOfNotNegative, &plausible{from: 3, to: 25, ground: "common practice", source: "7 to 15", zero: true, slips: "cm (1)"}},
		{"rail", false, &shapeOfID, nil},
	}}

	shapeOfClampDatasheet = shape{kind: isObject, defined: "roof.schema.json#/$defs/clamp_datasheet", must: 0, members: []memberShape{
		{"frame_height_max_mm", false, &shapeOfPositive, &plausible{from: 5, to: 65, ground: "common practice", source: "as for the member before", slips: "cm"}},
		{"frame_height_min_mm", false, &shapeOfPositive, &plausible{from: 4, to: 60, ground: "common practice", source: "frames 28 to 50; glass clamps 5 to 8", slips: "cm"}},
		{"gap_mm", false, &shapeOfPositive, &plausible{from: 5, to: 50, ground: "common practice", source: "10 to 25", slips: "cm"}},
		{"length_mm", false, &shapeOfPositive, &plausible{from: 20, to: 300, ground: "common practice", source: "40 to 100", slips: "cm"}},
		{"overlap_mm", false, &shapeOfPositive, &plausible{from: 4, to: 25, ground: "common practice", source: "7 to 15", slips: "cm"}},
		{"thickness_mm", false, &shapeOfPositive, &plausible{from: 1.5, to: 15, ground: "common practice", source: "3 to 6", slips: "cm"}},
		{"torque_max_n_m", false, &shapeOfPositive, &plausible{from: 5, to: 40, ground: "common practice", source: "M8 stainless 8 to 20", slips: "kgf·m; in·lb"}},
		{"torque_min_n_m", false, &shapeOfPositive, &plausible{from: 3, to: 30, ground: "common practice", source: "M8 stainless 8 to 20", slips: "kgf·m (/9.81); in·lb; ft·lb (/1.36)"}},
	}}

	shapeOfClampHold = shape{kind: isObject, defined: "roof.schema.json#/$defs/clamp_hold", must: 2, members: []memberShape{
		{"corner", false, &shape{kind: isText, words: []string{"lower", "upper", "left", "right"}}, nil},
		{"from_corner_mm", false, &shapeOfNotNegative, &plausible{from: 10, to: 1300, ground: "common practice", source: "a quarter of the side; at most half of it", zero: true, slips: "cm (38); m (0.38)"}},
		{"module", true, &shapeOfID, nil},
		{"side", true, &shape{kind: isText, words: []string{"left", "right", "top", "bottom"}}, nil},
	}}

	shapeOfClampZone = shape{kind: isObject, defined: "pvstring.schema.json#/$defs/clamp_zone", must: 3, members: []memberShape{
		{"from_mm", true, &shapeOfNotNegative, &plausible{from: 0, to: 1000, ground: "common practice", source: "about a quarter of the side from the corner", zero: true, near: 10, slips: "m or cm for mm; measured from the middle"}},
		{"load_pull_pa", false, &shapeOfPositive, &plausible{from: 400, to: 3599, ground: "standard", source: "as design_load_pull_pa, weaker zones allowed", slips: "test load for design load; kPa"}},
		{"load_push_pa", false, &shapeOfPositive, &plausible{from: 600, to: 5399, ground: "standard", source: "as design_load_push_pa, weaker zones allowed", slips: "test load for design load; kPa"}},
		{"side", true, &shape{kind: isText, words: []string{"long", "short"}}, nil},
		{"to_mm", true, &shapeOfPositive, &plausible{from: 50, to: 1300, ground: "common practice", source: "at most half of the longest side", slips: "m or cm for mm"}},
	}}

	shapeOfCoefficient = shape{kind: isNumber, whole: false, above: false, least: -5, greatest: 5}

	shapeOfCombinerReading = shape{kind: isObject, defined: "commissioning.schema.json#/$defs/combiner_reading", must: 3, members: []memberShape{
		{"against", true, &shapeOfID, nil},
		{"array", false, &shapeOfID, nil},
		{"date", false, &shapeOfDate, nil},
		{"id", true, &shapeOfID, nil},
		{"instrument", false, &shapeOfID, nil},
		{"note", false, &shapeOfText, nil},
		{"pole", false, &shape{kind: isText, words: []string{"positive", "negative"}}, nil},
		{"string", true, &shapeOfID, nil},
		{"voltage_v", false, &shapeOfSigned, &plausible{from: -1600, to: 1600, ground: "common practice", source: "", zero: true}},
	}}

	shapeOfCommissioning = shape{kind: isObject, defined: "commissioning.schema.json#/$defs/commissioning", must: 0, members: []memberShape{
		{"category", false, &shape{kind: isText, words: []string{"category_1", "category_2"}}, nil},
		{"combiners", false, &shape{kind: isList, fewest: 0, most: 20000, each: &shapeOfCombinerReading}, nil},
		{"continuity", false, &shape{kind: isList, fewest: 0, most: 20000, each: &shapeOfContinuityReading}, nil},
		{"curves", false, &shape{kind: isList, fewest: 0, most: 20000, each: &shapeOfIvCurveReading}, nil},
		{"date", false, &shapeOfDate, nil},
		{"electrodes", false, &shape{kind: isList, fewest: 0, most: 200, each: &shapeOfElectrodeReading}, nil},
		{"functional", false, &shape{kind: isList, fewest: 0, most: 5000, each: &shapeOfFunctionalTest}, nil},
		{"inspections", false, &shape{kind: isList, fewest: 0, most: 1000, each: &shapeOfInspectionPoint}, nil},
		{"instruments", false, &shape{kind: isList, fewest: 0, most: 200, each: &shapeOfInstrument}, nil},
		{"insulation", false, &shape{kind: isList, fewest: 0, most: 20000, each: &shapeOfInsulationReading}, nil},
		{"loops", false, &shape{kind: isList, fewest: 0, most: 5000, each: &shapeOfLoopReading}, nil},
		{"note", false, &shapeOfText, nil},
		{"rcds", false, &shape{kind: isList, fewest: 0, most: 5000, each: &shapeOfRCDReading}, nil},
		{"report_signed", false, &shape{kind: isTrue}, nil},
		{"steps", false, &shape{kind: isList, fewest: 0, most: 1000, each: &shapeOfTestStep}, nil},
		{"strings", false, &shape{kind: isList, fewest: 0, most: 20000, each: &shapeOfStringReading}, nil},
		{"supply", false, &shape{kind: isList, fewest: 0, most: 200, each: &shapeOfSupplyReading}, nil},
		{"tester_competence", false, &shapeOfText, nil},
		{"tester_role", false, &shape{kind: isText, words: []string{"electrician", "qualified_supervisor", "inspector", "electrical_engineer", "installer", "other"}}, nil},
		{"tests_complete", false, &shapeOfDate, nil},
		{"thermography", false, &shape{kind: isList, fewest: 0, most: 20000, each: &shapeOfThermographyReading}, nil},
		{"torques", false, &shape{kind: isList, fewest: 0, most: 20000, each: &shapeOfTorqueReading}, nil},
	}}

	shapeOfConnectionCircumstance = shape{kind: isObject, defined: "handover.schema.json#/$defs/connection_circumstance", must: 0, members: []memberShape{
		{"note", false, &shapeOfText, nil},
		{"other_premises_date", false, &shapeOfDate, nil},
		{"other_premises_distance_m", false, &shapeOfNotNegative, &plausible{from: 0, to: 5000, ground: "standard", source: "ENA G98: 500 m", zero: true, slips: "km for m; ft"}},
		{"other_premises_nearby", false, &shape{kind: isTrue}, nil},
	}}

	shapeOfConnectorPair = shape{kind: isObject, defined: "cable.schema.json#/$defs/connector_pair", must: 1, members: []memberShape{
		{"connector", false, &shapeOfText, nil},
		{"current_max_a", false, &shapeOfPositive, &plausible{from: 15, to: 150, ground: "standard", source: "IEC 62852: 17, 22.5, 30, 45, 65, 95 printed"}},
		{"disconnection_point", false, &shape{kind: isTrue}, nil},
		{"distance_to_array_m", false, &shapeOfNotNegative, &plausible{from: 0, to: 200, ground: "common practice", source: "", zero: true, slips: "mm for m"}},
		{"id", true, &shapeOfID, nil},
		{"listed_for_mating", false, &shape{kind: isTrue}, nil},
		{"load_break", false, &shape{kind: isTrue}, nil},
		{"mate", false, &shapeOfText, nil},
		{"note", false, &shapeOfText, nil},
		{"position_m", false, &shapeOfNotNegative, &plausible{from: 0, to: 300, ground: "common practice", source: "within the length of the run", zero: true, slips: "mm for m"}},
		{"readily_accessible", false, &shape{kind: isTrue}, nil},
		{"rests_in_water", false, &shape{kind: isTrue}, nil},
		{"standard", false, &shapeOfText, nil},
		{"tool_to_open", false, &shape{kind: isTrue}, nil},
		{"voltage_max_v", false, &shapeOfPositive, &plausible{from: 300, to: 2000, ground: "standard", source: "IEC 62852: to 1500; printed 600, 1000, 1500, 2000", slips: "kV (1.5)"}},
	}}

	shapeOfContinuityReading = shape{kind: isObject, defined: "commissioning.schema.json#/$defs/continuity_reading", must: 1, members: []memberShape{
		{"conductor", false, &shape{kind: isText, words: []string{"protective", "main_bonding", "supplementary_bonding", "frame_bonding", "functional_earth", "earthing", "lightning_bonding"}}, nil},
		{"date", false, &shapeOfDate, nil},
		{"from", false, &shapeOfTerminal, nil},
		{"id", true, &shapeOfID, nil},
		{"instrument", false, &shapeOfID, nil},
		{"leads_nulled", false, &shape{kind: isTrue}, nil},
		{"note", false, &shapeOfText, nil},
		{"part", false, &shapeOfID, nil},
		{"resistance_ohm", false, &shapeOfNotNegative, &plausible{from: 0.001, to: 10, ground: "common practice", source: "0.01 to 0.5 in PV", zero: true, slips: "mΩ for Ω (30); leads not nulled"}},
		{"run", false, &shapeOfID, nil},
		{"test_current_ma", false, &shapeOfPositive, &plausible{from: 150, to: 30000, ground: "standard", source: "IEC 61557-4: at least 200 mA; high-current testers 10 to 25 A", slips: "A for mA (0.2)"}},
		{"to", false, &shapeOfTerminal, nil},
	}}

	shapeOfCount = shape{kind: isNumber, whole: true, above: false, least: 0, greatest: 100000}

	shapeOfCustomerDecision = shape{kind: isObject, defined: "handover.schema.json#/$defs/customer_decision", must: 2, members: []memberShape{
		{"date", false, &shapeOfDate, nil},
		{"decision", true, &shape{kind: isText, words: []string{"surge_protection_declined", "lightning_protection_declined", "roof_condition_accepted", "shade_accepted", "noise_accepted", "monitoring_declined", "smoke_alarm_declined", "appearance_accepted", "equipment_location_accepted", "maintenance_declined", "other"}}, nil},
		{"id", true, &shapeOfID, nil},
		{"in_writing", false, &shape{kind: isTrue}, nil},
		{"note", false, &shapeOfText, nil},
		{"part", false, &shapeOfID, nil},
		{"reference", false, &shapeOfText, nil},
		{"risk_explained", false, &shape{kind: isTrue}, nil},
	}}

	shapeOfDatasheets = shape{kind: isObject, defined: "project.schema.json#/$defs/datasheets", must: 0, members: []memberShape{
		{"batteries", false, &shape{kind: isObject, most: 1000, form: isID, each: &shapeOfBatteryDatasheet}, nil},
		{"cables", false, &shape{kind: isObject, most: 1000, form: isID, each: &shapeOfCableDatasheet}, nil},
		{"fixings", false, &shape{kind: isObject, most: 1000, form: isID, each: &shapeOfFixingDatasheet}, nil},
		{"inverters", false, &shape{kind: isObject, most: 1000, form: isID, each: &shapeOfInverterDatasheet}, nil},
		{"modules", false, &shape{kind: isObject, most: 1000, form: isID, each: &shapeOfModule}, nil},
		{"protective_devices", false, &shape{kind: isObject, most: 1000, form: isID, each: &shapeOfProtectiveDevice}, nil},
		{"spds", false, &shape{kind: isObject, most: 1000, form: isID, each: &shapeOfSPDDatasheet}, nil},
		{"switch_disconnectors", false, &shape{kind: isObject, most: 1000, form: isID, each: &shapeOfSwitchDisconnector}, nil},
	}}

	shapeOfDate = shape{kind: isText, form: isDate, pattern: "^[0-9]{4}-(0[1-9]|1[0-2])-(0[1-9]|[12][0-9]|3[01])$"}

	shapeOfDeparture = shape{kind: isObject, defined: "handover.schema.json#/$defs/departure", must: 3, members: []memberShape{
		{"author", true, &shapeOfText, nil},
		{"date", true, &shapeOfDate, nil},
		{"member", false, &shapeOfText, nil},
		{"reason", true, &shapeOfText, nil},
		{"requirement", false, &shapeOfText, nil},
		{"subject", false, &shapeOfTerminal, nil},
		{"until", false, &shapeOfDate, nil},
		{"value", false, &shapeOfSigned, nil},
	}}

	shapeOfEarthConductor = shape{kind: isObject, defined: "earthing.schema.json#/$defs/earth_conductor", must: 0, members: []memberShape{
		{"buried", false, &shape{kind: isTrue}, nil},
		{"connected", false, &shape{kind: isTrue}, nil},
		{"corrosion_protected", false, &shape{kind: isTrue}, nil},
		{"csa_mm2", false, &shapeOfPositive, &plausible{from: 2.5, to: 300, ground: "standard", source: "IEC 60364-5-54: 6 to 16 for homes; PME up to 50 and more", slips: "AWG; diameter"}},
		{"insulated", false, &shape{kind: isTrue}, nil},
		{"length_m", false, &shapeOfPositive, &plausible{from: 0.1, to: 200, ground: "common practice", source: "0.5 to 20", slips: "mm for m"}},
		{"material", false, &shape{kind: isText, words: []string{"copper", "tinned_copper", "aluminium", "steel", "stainless_steel"}}, nil},
		{"mechanically_protected", false, &shape{kind: isTrue}, nil},
		{"note", false, &shapeOfText, nil},
	}}

	shapeOfEarthElectrode = shape{kind: isObject, defined: "earthing.schema.json#/$defs/earth_electrode", must: 1, members: []memberShape{
		{"bonded_to_main_terminal", false, &shape{kind: isTrue}, nil},
		{"conductor", false, &shapeOfEarthConductor, nil},
		{"depth_m", false, &shapeOfPositive, &plausible{from: 0.3, to: 60, ground: "standard", source: "BS 7430: rods 1.2 to 10, foundation 0.5", slips: "mm for m (1200)"}},
		{"distance_to_other_m", false, &shapeOfNotNegative, &plausible{from: 0.1, to: 500, ground: "standard", source: "BS 7430: beyond the resistance area, 2.5 to 10", zero: true, slips: "mm for m"}},
		{"id", true, &shapeOfID, nil},
		{"kind", false, &shape{kind: isText, words: []string{"rod", "plate", "tape", "ring", "foundation", "structural_steel", "pipe"}}, nil},
		{"material", false, &shape{kind: isText, words: []string{"copper", "tinned_copper", "aluminium", "steel", "stainless_steel"}}, nil},
		{"measured", false, &shape{kind: isTrue}, nil},
		{"note", false, &shapeOfText, nil},
		{"resistance_ohm", false, &shapeOfPositive, &plausible{from: 0.2, to: 500, ground: "standard", source: "BS 7430, BS 7671 411.5.3: above 200 may be unstable", slips: "kΩ; mΩ"}},
		{"serves", false, &shape{kind: isText, words: []string{"installation", "array", "lightning_protection", "backup_supply"}}, nil},
	}}

	shapeOfEarthFaultAlarm = shape{kind: isObject, defined: "earthing.schema.json#/$defs/earth_fault_alarm", must: 2, members: []memberShape{
		{"id", true, &shapeOfID, nil},
		{"instructions_given", false, &shape{kind: isTrue}, nil},
		{"insulation_measured", false, &shape{kind: isTrue}, nil},
		{"inverter", true, &shapeOfID, nil},
		{"note", false, &shapeOfText, nil},
		{"noticed", false, &shape{kind: isTrue}, nil},
		{"persists", false, &shape{kind: isTrue}, nil},
		{"repeat_min", false, &shapeOfPositive, &plausible{from: 1, to: 1500, ground: "standard", source: "IEC 62109-2: alarm repeated; a day is 1440", slips: "s for min (3600); h (1)"}},
		{"residual_current_monitored", false, &shape{kind: isTrue}, nil},
		{"signal", false, &shape{kind: isText, words: []string{"light", "sound", "message", "light_and_sound", "light_and_message"}}, nil},
	}}

	shapeOfEarthTerminal = shape{kind: isObject, defined: "earthing.schema.json#/$defs/earth_terminal", must: 1, members: []memberShape{
		{"accessible", false, &shape{kind: isTrue}, nil},
		{"board", false, &shapeOfID, nil},
		{"id", true, &shapeOfID, nil},
		{"note", false, &shapeOfText, nil},
		{"place", false, &shapeOfPlace, nil},
	}}

	shapeOfEarthing = shape{kind: isObject, defined: "earthing.schema.json#/$defs/earthing", must: 0, members: []memberShape{
		{"alarms", false, &shape{kind: isList, fewest: 0, most: 5000, each: &shapeOfEarthFaultAlarm}, nil},
		{"arrangement", false, &shape{kind: isText, words: []string{"TN-S", "TN-C-S", "TN-C", "TT", "IT"}}, nil},
		{"arrangement_source", false, &shape{kind: isText, words: []string{"seen", "distributor", "record"}}, nil},
		{"earthing_conductor", false, &shapeOfEarthConductor, nil},
		{"electrode_system", false, &shape{kind: isTrue}, nil},
		{"electrodes", false, &shape{kind: isList, fewest: 0, most: 100, each: &shapeOfEarthElectrode}, nil},
		{"frames", false, &shape{kind: isList, fewest: 0, most: 5000, each: &shapeOfArrayFrame}, nil},
		{"lightning_protection", false, &shapeOfLightningProtection, nil},
		{"main_bonds", false, &shape{kind: isList, fewest: 0, most: 1000, each: &shapeOfMainBond}, nil},
		{"main_terminal", false, &shapeOfEarthTerminal, nil},
		{"note", false, &shapeOfText, nil},
		{"poles", false, &shape{kind: isList, fewest: 0, most: 5000, each: &shapeOfPoleEarthing}, nil},
		{"terminals", false, &shape{kind: isList, fewest: 0, most: 1000, each: &shapeOfEarthTerminal}, nil},
	}}

	shapeOfElectrodeReading = shape{kind: isObject, defined: "commissioning.schema.json#/$defs/electrode_reading", must: 1, members: []memberShape{
		{"date", false, &shapeOfDate, nil},
		{"id", true, &shapeOfID, nil},
		{"instrument", false, &shapeOfID, nil},
		{"method", false, &shape{kind: isText, words: []string{"three_terminal", "two_terminal", "loop_tester", "clamp"}}, nil},
		{"note", false, &shapeOfText, nil},
		{"part", false, &shapeOfID, nil},
		{"resistance_ohm", false, &shapeOfNotNegative, &plausible{from: 0.2, to: 500, ground: "standard", source: "BS 7430; BS 7671 411.5.3", slips: "kΩ"}},
	}}

	shapeOfEnclosure = shape{kind: isObject, defined: "isolator.schema.json#/$defs/enclosure", must: 0, members: []memberShape{
		{"combustible", false, &shape{kind: isTrue}, nil},
		{"drilled_through_back", false, &shape{kind: isTrue}, nil},
		{"entries", false, &shape{kind: isText, words: []string{"bottom", "side", "top", "back"}}, nil},
		{"glands_fit", false, &shape{kind: isTrue}, nil},
		{"in_direct_sun", false, &shape{kind: isTrue}, nil},
		{"ip", false, &shapeOfIP, nil},
		{"uv_resistant", false, &shape{kind: isTrue}, nil},
	}}

	shapeOfExistingGenerator = shape{kind: isObject, defined: "accircuit.schema.json#/$defs/existing_generator", must: 1, members: []memberShape{
		{"ac_apparent_max_va", false, &shapeOfPositive, &plausible{from: 200, to: 1100000, ground: "common practice", source: "", slips: "kVA for VA"}},
		{"ac_current_max_a", false, &shapeOfPositive, &plausible{from: 1, to: 1600, ground: "common practice", source: "follows from power and voltage"}},
		{"ac_power_rated_w", false, &shapeOfPositive, &plausible{from: 200, to: 1000000, ground: "common practice", source: "", slips: "kW for W (3.68)"}},
		{"can_run_without_grid", false, &shape{kind: isTrue}, nil},
		{"grid_type_test", false, &shapeOfText, nil},
		{"id", true, &shapeOfID, nil},
		{"kind", false, &shape{kind: isText, words: []string{"pv", "battery", "wind", "chp", "hydro", "engine", "vehicle", "other"}}, nil},
		{"note", false, &shapeOfText, nil},
		{"notified", false, &shape{kind: isTrue}, nil},
		{"phase", false, &shape{kind: isText, words: []string{"L1", "L2", "L3", "L1_L2", "L2_L3", "L1_L3", "L1_L2_L3"}}, nil},
		{"phases", false, &shape{kind: isNumber, words: []string{"1", "3"}}, nil},
		{"type_tested", false, &shape{kind: isTrue}, nil},
		{"way", false, &shapeOfTerminal, nil},
	}}

	shapeOfExportLimitation = shape{kind: isObject, defined: "accircuit.schema.json#/$defs/export_limitation", must: 1, members: []memberShape{
		{"batteries_do_not_export", false, &shape{kind: isTrue}, nil},
		{"export_limit_per_phase_a", false, &shapeOfNotNegative, &plausible{from: 0.5, to: 6300, ground: "standard", source: "ENA G100: 16 A", zero: true, slips: "W for A"}},
		{"export_limit_w", false, &shapeOfNotNegative, &plausible{from: 100, to: 5000000, ground: "standard", source: "ENA G100", zero: true, slips: "kW for W (3.68)"}},
		{"fail_safe", false, &shape{kind: isTrue}, nil},
		{"fitted", true, &shape{kind: isTrue}, nil},
		{"limit_kind", false, &shape{kind: isText, words: []string{"soft", "hard", "soft_and_hard"}}, nil},
		{"listed", false, &shape{kind: isTrue}, nil},
		{"note", false, &shapeOfText, nil},
		{"response_s", false, &shapeOfPositive, &plausible{from: 0.05, to: 60, ground: "standard", source: "ENA G100: 5 s", slips: "ms for s (5000)"}},
		{"settings_locked", false, &shape{kind: isTrue}, nil},
		{"source_limit_a", false, &shapeOfPositive, &plausible{from: 6, to: 6300, ground: "common practice", source: ""}},
		{"standard", false, &shapeOfText, nil},
	}}

	shapeOfFixing = shape{kind: isObject, defined: "roof.schema.json#/$defs/fixing", must: 3, members: []memberShape{
		{"datasheet", false, &shapeOfID, nil},
		{"end_distance_mm", false, &shapeOfNotNegative, &plausible{from: 1, to: 15000, ground: "common practice", source: "50 to 5000", zero: true, slips: "m (1)"}},
		{"id", true, &shapeOfID, nil},
		{"member", false, &shape{kind: isText, words: []string{"rafter", "noggin", "purlin", "batten", "sarking", "sheet", "standing_seam", "concrete", "masonry", "ballast"}}, nil},
		{"module", false, &shapeOfID, nil},
		{"noggin", false, &shapeOfID, nil},
		{"note", false, &shapeOfText, nil},
		{"off_middle_mm", false, &shapeOfNotNegative, &plausible{from: 0.5, to: 100, ground: "common practice", source: "0 to half the breadth", zero: true, slips: "cm; m"}},
		{"packing_mm", false, &shapeOfNotNegative, &plausible{from: 1, to: 60, ground: "common practice", source: "0 to 30", zero: true, slips: "cm"}},
		{"plate_on", false, &shape{kind: isText, words: []string{"timber", "sarking", "counter_batten", "batten", "sheet"}}, nil},
		{"predrilled", false, &shape{kind: isTrue}, nil},
		{"rail", false, &shapeOfID, nil},
		{"rests_on_tile", false, &shape{kind: isTrue}, nil},
		{"screw", false, &shapeOfID, nil},
		{"screw_angle_deg", false, &shape{kind: isNumber, whole: false, above: false, least: 0, greatest: 90}, &plausible{from: 30, to: 90, ground: "standard", source: "EN 1995-1-1 8.7.2: at least 30", slips: "from the square in place of the grain (0)"}},
		{"screw_arrangement", false, &shape{kind: isText, words: []string{"in_line", "side_by_side", "staggered"}}, nil},
		{"screw_spacing_mm", false, &shapeOfPositive, &plausible{from: 8, to: 300, ground: "standard", source: "EN 1995-1-1 table 8.6: 5 to 7 d", slips: "cm (6)"}},
		{"screws", false, &shapeOfCount, &plausible{from: 1, to: 12, ground: "common practice", source: "2 to 3; brackets on sheet 4 to 8", zero: true}},
		{"tile_clearance_mm", false, &shapeOfNotNegative, &plausible{from: 1, to: 50, ground: "common practice", source: "3 to 20", zero: true, slips: "cm"}},
		{"tile_lies_flat", false, &shape{kind: isTrue}, nil},
		{"tile_notched", false, &shape{kind: isTrue}, nil},
		{"timber_sound", false, &shape{kind: isTrue}, nil},
		{"weathering", false, &shape{kind: isText, words: []string{"under_lap", "flashing", "sealing_washer", "purpose_made_tile", "sealant_only", "none"}}, nil},
		{"x_mm", true, &shapeOfSigned, &plausible{from: -2000, to: 200000, ground: "common practice", source: "within the plane", zero: true, near: 10, slips: "m or cm for mm"}},
		{"y_mm", true, &shapeOfSigned, &plausible{from: -2000, to: 60000, ground: "common practice", source: "within the plane", zero: true, near: 10, slips: "m or cm for mm"}},
	}}

	shapeOfFixingDatasheet = shape{kind: isObject, defined: "roof.schema.json#/$defs/fixing_datasheet", must: 1, members: []memberShape{
		{"certificate", false, &shapeOfText, nil},
		{"clamp", false, &shapeOfClampDatasheet, nil},
		{"hook", false, &shapeOfHookDatasheet, nil},
		{"kind", true, &shape{kind: isText, words: []string{"hook", "hanger_bolt", "seam_clamp", "sheet_bracket", "screw", "rail", "end_clamp", "mid_clamp"}}, nil},
		{"load", false, &shapeOfFixingLoad, nil},
		{"mass_kg", false, &shapeOfPositive, &plausible{from: 0.003, to: 8, ground: "common practice", source: "clamp 0.05 to 0.15, hook 0.4 to 1.5, rail 0.5 to 2.5 a metre", slips: "g for kg (600); of a box"}},
		{"material", false, &shape{kind: isText, words: []string{"aluminium", "stainless_a2", "stainless_a4", "galvanized_steel", "coated_steel", "copper", "other"}}, nil},
		{"note", false, &shapeOfText, nil},
		{"rail", false, &shapeOfRailDatasheet, nil},
		{"screw", false, &shapeOfScrewDatasheet, nil},
	}}

	shapeOfFixingLoad = shape{kind: isObject, defined: "roof.schema.json#/$defs/fixing_load", must: 0, members: []memberShape{
		{"along_slope_kn", false, &shapeOfPositive, &plausible{from: 0.1, to: 20, ground: "common practice", source: "0.5 to 5", slips: "N or kgf for kN"}},
		{"basis", false, &shape{kind: isText, words: []string{"design", "characteristic", "test"}}, nil},
		{"down_kn", false, &shapeOfPositive, &plausible{from: 0.1, to: 30, ground: "common practice", source: "1 to 10", slips: "N or kgf for kN"}},
		{"failure", false, &shape{kind: isText, words: []string{"metal", "pull_out_of_metal", "pull_out_of_timber", "timber", "unknown"}}, nil},
		{"standard", false, &shapeOfText, nil},
		{"tested_in_batten", false, &shape{kind: isTrue}, nil},
		{"tested_in_timber", false, &shape{kind: isTrue}, nil},
		{"uplift_kn", false, &shapeOfPositive, &plausible{from: 0.1, to: 20, ground: "common practice", source: "hooks 0.5 to 5 kN, clamps 1 to 6", slips: "N or kgf for kN"}},
	}}

	shapeOfFraction = shape{kind: isNumber, whole: false, above: false, least: 0, greatest: 1}

	shapeOfFunctionalTest = shape{kind: isObject, defined: "commissioning.schema.json#/$defs/functional_test", must: 2, members: []memberShape{
		{"date", false, &shapeOfDate, nil},
		{"id", true, &shapeOfID, nil},
		{"instrument", false, &shapeOfID, nil},
		{"note", false, &shapeOfText, nil},
		{"part", false, &shapeOfID, nil},
		{"passed", false, &shape{kind: isTrue}, nil},
		{"power_w", false, &shapeOfNotNegative, &plausible{from: 10, to: 1000000, ground: "common practice", source: "", zero: true, slips: "kW for W (3.98)"}},
		{"test", true, &shape{kind: isText, words: []string{"switching_device", "inverter_starts", "loss_of_mains", "reconnection", "grid_settings_read_back", "spd_indicator", "insulation_monitor", "earth_fault_alarm", "residual_current_monitor", "arc_fault_detector", "rapid_shutdown", "fire_service_switch", "export_limit", "storage_shutdown", "backup_changeover", "backup_neutral_earth", "source_isolation", "smoke_alarm", "monitoring", "phase_balance"}}, nil},
		{"time_s", false, &shapeOfNotNegative, &plausible{from: 0.05, to: 1800, ground: "standard", source: "EN 50549-1: disconnection 0.1 to 5, return 10 to 600", zero: true, slips: "ms for s (300); min for s"}},
		{"voltage_after_v", false, &shapeOfNotNegative, &plausible{from: 0, to: 1000, ground: "common practice", source: "below 34 after disconnection (G98: within the time of the label)", zero: true}},
	}}

	shapeOfGridSettings = shape{kind: isObject, defined: "accircuit.schema.json#/$defs/grid_settings", must: 0, members: []memberShape{
		{"dc_injection_max_pct", false, &shapeOfNotNegative, &plausible{from: 0.05, to: 2, ground: "standard", source: "G98 0.25; EN 50549-1, IEEE 1547 0.5; AS/NZS 4777 0.5", zero: true, slips: "fraction (0.0025); mA (20)"}},
		{"droop_pct", false, &shapeOfPositive, &plausible{from: 1, to: 13, ground: "standard", source: "EN 50549-1 2 to 12; G98 10", slips: "fraction (0.05); % a Hz (40)"}},
		{"locked", false, &shape{kind: isTrue}, nil},
		{"note", false, &shapeOfText, nil},
		{"over_frequency_1_hz", false, &shapeOfPositive, &plausible{from: 50.1, to: 66, ground: "standard", source: "EN 50549-1 50 to 52; G98 52.0", slips: "deviation (2.0)"}},
		{"over_frequency_1_s", false, &shapeOfNotNegative, &plausible{from: 0.05, to: 400, ground: "standard", source: "G98 0.5", zero: true, slips: "ms for s"}},
		{"over_frequency_2_hz", false, &shapeOfPositive, &plausible{from: 50.1, to: 66, ground: "standard", source: "EN 50549-1 50 to 55", slips: "deviation"}},
		{"over_frequency_2_s", false, &shapeOfNotNegative, &plausible{from: 0.05, to: 60, ground: "standard", source: "EN 50549-1", zero: true, slips: "ms for s"}},
		{"over_voltage_1_s", false, &shapeOfNotNegative, &plausible{from: 0.05, to: 60, ground: "standard", source: "G98 1.0; IEEE 1547 13", zero: true, slips: "ms for s (1000)"}},
		{"over_voltage_1_v", false, &shapeOfPositive, &plausible{from: 110, to: 320, ground: "standard", source: "EN 50549-1 1.0 to 1.2 Un; G98 262.2; 120 V systems 132", slips: "share of Un (1.14); line to line (453)"}},
		{"over_voltage_2_s", false, &shapeOfNotNegative, &plausible{from: 0.05, to: 10, ground: "standard", source: "G98 0.5; IEEE 1547 0.16", zero: true, slips: "ms for s (500)"}},
		{"over_voltage_2_v", false, &shapeOfPositive, &plausible{from: 110, to: 330, ground: "standard", source: "EN 50549-1 1.0 to 1.3 Un; G98 273.7", slips: "share of Un"}},
		{"over_voltage_mean_v", false, &shapeOfPositive, &plausible{from: 110, to: 290, ground: "standard", source: "EN 50549-1 1.0 to 1.15 Un; 253", slips: "share of Un (1.1)"}},
		{"power_factor_fraction", false, &shapeOfFraction, &plausible{from: 0.8, to: 1, ground: "standard", source: "EN 50549-1 0.9; G98 0.95 to 1", slips: "angle"}},
		{"power_factor_side", false, &shape{kind: isText, words: []string{"leading", "lagging", "unity"}}, nil},
		{"power_reduction_from_hz", false, &shapeOfPositive, &plausible{from: 50.1, to: 62, ground: "standard", source: "EN 50549-1 50.2 to 52; G98 50.4", slips: "deviation (0.2, 0.4)"}},
		{"ramp_pct_per_min", false, &shapeOfPositive, &plausible{from: 1, to: 300, ground: "standard", source: "EN 50549-1 6 to 3000, default 10", slips: "fraction (0.1); % a second"}},
		{"reconnection_s", false, &shapeOfNotNegative, &plausible{from: 5, to: 1800, ground: "standard", source: "EN 50549-1 10 to 600 (60); G98 20; IEEE 1547 300", slips: "min for s (1, 5); ms"}},
		{"rocof_hz_per_s", false, &shapeOfPositive, &plausible{from: 0.1, to: 10, ground: "standard", source: "G98, G99 1.0; EN 50549-1 withstand 2", slips: "mHz/s (1000)"}},
		{"rocof_s", false, &shapeOfNotNegative, &plausible{from: 0.05, to: 5, ground: "standard", source: "G98 0.5", zero: true, slips: "ms for s (500)"}},
		{"set", false, &shapeOfText, nil},
		{"under_frequency_1_hz", false, &shapeOfPositive, &plausible{from: 45, to: 59.9, ground: "standard", source: "EN 50549-1 47 to 50; G98 47.5; 60 Hz 57 to 59", slips: "deviation from nominal (2.5) in its place"}},
		{"under_frequency_1_s", false, &shapeOfNotNegative, &plausible{from: 0.05, to: 400, ground: "standard", source: "EN 50549-1 0.1 to 100; IEEE 1547 180 to 1000", zero: true, slips: "ms for s (20000)"}},
		{"under_frequency_2_hz", false, &shapeOfPositive, &plausible{from: 45, to: 59.5, ground: "standard", source: "EN 50549-1; G98 47.0", slips: "deviation"}},
		{"under_frequency_2_s", false, &shapeOfNotNegative, &plausible{from: 0.05, to: 60, ground: "standard", source: "G98 0.5", zero: true, slips: "ms for s"}},
		{"under_voltage_1_s", false, &shapeOfNotNegative, &plausible{from: 0.05, to: 60, ground: "standard", source: "EN 50549-1; G98 2.5; IEEE 1547 0.16 to 21", zero: true, slips: "ms for s (2500)"}},
		{"under_voltage_1_v", false, &shapeOfPositive, &plausible{from: 90, to: 230, ground: "standard", source: "EN 50549-1 0.2 to 1.0 Un; G98 184; NEC/IEEE 1547 0.5 to 0.88 Un", slips: "share of Un (0.8) in its place; line to line (318)"}},
		{"under_voltage_2_s", false, &shapeOfNotNegative, &plausible{from: 0.05, to: 60, ground: "standard", source: "EN 50549-1", zero: true, slips: "ms for s"}},
		{"under_voltage_2_v", false, &shapeOfPositive, &plausible{from: 40, to: 220, ground: "standard", source: "EN 50549-1; IEEE 1547 0.45 Un", slips: "share of Un"}},
		{"vector_shift_deg", false, &shapeOfPositive, &plausible{from: 3, to: 60, ground: "standard", source: "G59 6 or 12; EN 50549 withstand 20"}},
		{"vector_shift_used", false, &shape{kind: isTrue}, nil},
		{"volt_var", false, &shape{kind: isTrue}, nil},
		{"volt_watt", false, &shape{kind: isTrue}, nil},
	}}

	shapeOfHandover = shape{kind: isObject, defined: "handover.schema.json#/$defs/handover", must: 0, members: []memberShape{
		{"as_built", false, &shapeOfAsBuiltRecord, nil},
		{"attendances", false, &shape{kind: isList, fewest: 0, most: 500, each: &shapeOfSiteAttendance}, nil},
		{"connection", false, &shapeOfConnectionCircumstance, nil},
		{"contract_date", false, &shapeOfDate, nil},
		{"customer_instructed", false, &shape{kind: isTrue}, nil},
		{"date", false, &shapeOfDate, nil},
		{"decisions", false, &shape{kind: isList, fewest: 0, most: 200, each: &shapeOfCustomerDecision}, nil},
		{"departures", false, &shape{kind: isList, fewest: 0, most: 1000, each: &shapeOfDeparture}, nil},
		{"documents", false, &shape{kind: isList, fewest: 0, most: 1000, each: &shapeOfHandoverDocument}, nil},
		{"end_of_work", false, &shapeOfDate, nil},
		{"note", false, &shapeOfText, nil},
		{"notifications", false, &shape{kind: isList, fewest: 0, most: 200, each: &shapeOfNotification}, nil},
		{"performance_estimate", false, &shapeOfPerformanceEstimate, nil},
		{"planning", false, &shapeOfPlanningStatus, nil},
		{"start_of_work", false, &shapeOfDate, nil},
		{"warranties", false, &shape{kind: isList, fewest: 0, most: 200, each: &shapeOfWarranty}, nil},
	}}

	shapeOfHandoverDocument = shape{kind: isObject, defined: "handover.schema.json#/$defs/handover_document", must: 2, members: []memberShape{
		{"date", false, &shapeOfDate, nil},
		{"given", false, &shapeOfDate, nil},
		{"given_to", false, &shape{kind: isText, words: []string{"customer", "occupier", "landlord", "authority", "on_site"}}, nil},
		{"id", true, &shapeOfID, nil},
		{"kind", true, &shape{kind: isText, words: []string{"basic_information", "designer_information", "installer_information", "site_plan", "single_line_diagram", "wiring_diagram", "string_layout", "earthing_and_surge_diagram", "equipment_list", "module_datasheet", "inverter_datasheet", "storage_datasheet", "mounting_datasheet", "mounting_certificate", "structural_assessment", "structural_calculation", "wind_and_snow_calculation", "voltage_calculation", "wind_certificate", "emergency_systems", "emergency_shutdown_procedure", "fire_service_plan", "operation_and_maintenance", "maintenance_schedule", "fault_checklist", "earth_fault_action_list", "user_manual", "warranties", "workmanship_warranty", "insurance_backed_warranty", "test_report", "electrical_certificate", "electrical_safety_certificate", "inspection_record", "building_regulations_certificate", "building_permit", "planning_decision", "scheme_certificate", "consumer_code", "performance_estimate", "contract", "grid_notification", "grid_application", "grid_offer", "grid_acceptance", "grid_installation_document", "permission_to_operate", "type_test_evidence", "listing_evidence", "battery_conformity_statement", "health_and_safety_file", "surge_protection_refusal", "lightning_risk_assessment", "work_at_height_plan", "installer_accreditation", "roof_photographs", "site_photographs", "register_entry", "insurer_consent", "other"}}, nil},
		{"note", false, &shapeOfText, nil},
		{"part", false, &shapeOfID, nil},
		{"reference", false, &shapeOfText, nil},
		{"revision", false, &shapeOfText, nil},
	}}

	shapeOfHookDatasheet = shape{kind: isObject, defined: "roof.schema.json#/$defs/hook_datasheet", must: 0, members: []memberShape{
		{"deflection_mm_per_kn", false, &shapeOfNotNegative, &plausible{from: 0.1, to: 25, ground: "common practice", source: "1 to 8", zero: true}},
		{"lever_arm_mm", false, &shapeOfNotNegative, &plausible{from: 2, to: 200, ground: "common practice", source: "20 to 100; 0 where the pull goes through the screws", zero: true, slips: "cm"}},
		{"member_width_min_mm", false, &shapeOfPositive, &plausible{from: 30, to: 150, ground: "common practice", source: "35 to 60", slips: "cm"}},
		{"pivot_distance_mm", false, &shapeOfPositive, &plausible{from: 5, to: 200, ground: "common practice", source: "20 to 80", slips: "cm"}},
		{"plate_thickness_mm", false, &shapeOfNotNegative, &plausible{from: 1, to: 20, ground: "common practice", source: "4 to 8; brackets of sheet 2 to 4", zero: true, slips: "cm"}},
		{"plate_width_mm", false, &shapeOfPositive, &plausible{from: 20, to: 300, ground: "common practice", source: "40 to 150", slips: "cm"}},
		{"rests_on_tile_by_design", false, &shape{kind: isTrue}, nil},
		{"screws_min", false, &shapeOfCount, &plausible{from: 1, to: 8, ground: "common practice", source: "2 to 3; sheet brackets 4 to 6", zero: true}},
		{"tile_clearance_min_mm", false, &shapeOfNotNegative, &plausible{from: 1, to: 20, ground: "common practice", source: "3 to 8", zero: true, slips: "cm"}},
	}}

	shapeOfID = shape{kind: isText, form: isID, pattern: "^[A-Za-z0-9][A-Za-z0-9_-]{0,39}$"}

	shapeOfIP = shape{kind: isText, form: isIP, pattern: "^IP[0-6X][0-9X]K?[A-D]?[HMSW]?(NW)?$"}

	shapeOfInspectionPoint = shape{kind: isObject, defined: "commissioning.schema.json#/$defs/inspection_point", must: 2, members: []memberShape{
		{"date", false, &shapeOfDate, nil},
		{"id", true, &shapeOfID, nil},
		{"note", false, &shapeOfText, nil},
		{"part", false, &shapeOfID, nil},
		{"point", true, &shape{kind: isText, words: []string{"dc_design_to_standard", "rated_for_voltage_and_current", "double_insulation", "cables_selected_and_fixed", "cables_protected_from_edges_and_sun", "loops_small", "connectors_matched", "dc_switch_disconnector", "dc_overcurrent_protection", "inverter_protection_and_settings", "rcd_type", "earthing_and_bonding", "surge_protection", "lightning_protection", "ac_isolation", "line_and_load_orientation", "corrosion_pairs", "labels", "single_line_diagram_on_site", "settings_displayed", "emergency_procedure", "fixings_tight", "weather_sealing", "ventilation_gap", "module_damage", "enclosure_entries", "fire_sealing", "storage_location", "sources_isolable"}}, nil},
		{"result", false, &shape{kind: isText, words: []string{"satisfactory", "unsatisfactory", "not_inspected", "not_applicable"}}, nil},
	}}

	shapeOfInstallation = shape{kind: isObject, defined: "installation.schema.json", must: 1, members: []memberShape{
		{"$schema", false, &shape{kind: isText, fewest: 0, most: 2000}, nil},
		{"ac", false, &shapeOfAC, nil},
		{"arrays", false, &shape{kind: isList, fewest: 0, most: 5000, each: &shapeOfArray}, nil},
		{"cables", false, &shape{kind: isList, fewest: 0, most: 25000, each: &shapeOfRun}, nil},
		{"commissioning", false, &shapeOfCommissioning, nil},
		{"datasheets", false, &shapeOfDatasheets, nil},
		{"earthing", false, &shapeOfEarthing, nil},
		{"handover", false, &shapeOfHandover, nil},
		{"inverters", false, &shape{kind: isList, fewest: 0, most: 5000, each: &shapeOfInverter}, nil},
		{"isolators", false, &shape{kind: isList, fewest: 0, most: 5000, each: &shapeOfIsolator}, nil},
		{"labels", false, &shape{kind: isList, fewest: 0, most: 100000, each: &shapeOfLabel}, nil},
		{"project", true, &shapeOfProject, nil},
		{"roof", false, &shapeOfRoof, nil},
		{"site", false, &shapeOfSite, nil},
		{"spds", false, &shape{kind: isList, fewest: 0, most: 25000, each: &shapeOfSPD}, nil},
		{"storage", false, &shapeOfStorage, nil},
		{"strings", false, &shape{kind: isList, fewest: 0, most: 10000, each: &shapeOfString}, nil},
	}}

	shapeOfInstrument = shape{kind: isObject, defined: "commissioning.schema.json#/$defs/instrument", must: 2, members: []memberShape{
		{"calibrated", false, &shapeOfDate, nil},
		{"calibration_certificate", false, &shapeOfText, nil},
		{"calibration_due", false, &shapeOfDate, nil},
		{"current_max_a", false, &shapeOfPositive, &plausible{from: 0.2, to: 2000, ground: "common practice", source: "clamp 20 to 1000, PV tester 15 to 40", slips: "mA"}},
		{"id", true, &shapeOfID, nil},
		{"insulation_max_megohm", false, &shapeOfPositive, &plausible{from: 20, to: 1000000, ground: "standard", source: "IEC 61557-2; 200 to 20000", slips: "GΩ for MΩ (2); kΩ"}},
		{"irradiance_sensor", false, &shape{kind: isText, words: []string{"reference_cell", "pyranometer", "photodiode"}}, nil},
		{"kind", true, &shape{kind: isText, words: []string{"multifunction_tester", "insulation_tester", "continuity_tester", "multimeter", "dc_clamp_meter", "pv_tester", "iv_tracer", "irradiance_meter", "thermometer", "earth_tester", "loop_tester", "rcd_tester", "torque_wrench", "thermal_camera", "proving_unit", "other"}}, nil},
		{"measurement_category", false, &shape{kind: isText, words: []string{"none", "II", "III", "IV"}}, nil},
		{"note", false, &shapeOfText, nil},
		{"serial", false, &shapeOfText, nil},
		{"uncertainty_pct", false, &shapeOfNotNegative, &plausible{from: 0.1, to: 15, ground: "standard", source: "IEC 61557: operating uncertainty to 30; typical 1 to 5", slips: "fraction (0.02)"}},
		{"voltage_max_v", false, &shapeOfPositive, &plausible{from: 100, to: 2000, ground: "standard", source: "IEC 61010-1, 61557", slips: "kV (1.5)"}},
	}}

	shapeOfInsulationReading = shape{kind: isObject, defined: "commissioning.schema.json#/$defs/insulation_reading", must: 2, members: []memberShape{
		{"between", false, &shape{kind: isText, words: []string{"positive_to_earth", "negative_to_earth", "joined_to_earth", "positive_to_negative", "live_to_earth", "line_to_neutral", "line_to_line"}}, nil},
		{"date", false, &shapeOfDate, nil},
		{"functional_earth_lifted", false, &shape{kind: isTrue}, nil},
		{"held_s", false, &shapeOfNotNegative, &plausible{from: 1, to: 600, ground: "common practice", source: "5 to 60", zero: true, slips: "min (1); ms"}},
		{"id", true, &shapeOfID, nil},
		{"instrument", false, &shapeOfID, nil},
		{"inverter_connected", false, &shape{kind: isTrue}, nil},
		{"method", false, &shape{kind: isNumber, words: []string{"1", "2"}}, nil},
		{"note", false, &shapeOfText, nil},
		{"over_range", false, &shape{kind: isTrue}, nil},
		{"part", true, &shapeOfID, nil},
		{"resistance_megohm", false, &shapeOfNotNegative, &plausible{from: 0.01, to: 100000, ground: "common practice", source: "1 to 1000 usual; the end of the range where more", zero: true, slips: "kΩ or GΩ"}},
		{"shorting_switch_used", false, &shape{kind: isTrue}, nil},
		{"side", false, &shape{kind: isText, words: []string{"dc", "ac"}}, nil},
		{"spds_connected", false, &shape{kind: isTrue}, nil},
		{"spds_reconnected", false, &shape{kind: isTrue}, nil},
		{"spds_removable", false, &shape{kind: isTrue}, nil},
		{"surface", false, &shape{kind: isText, words: []string{"dry", "damp", "wet"}}, nil},
		{"test_voltage_v", false, &shapeOfPositive, &plausible{from: 100, to: 2500, ground: "standard", source: "IEC 62446-1 table 1: 250, 500, 1000, 1500", slips: "kV (0.5, 1)"}},
		{"together_with", false, &shape{kind: isList, fewest: 0, most: 200, each: &shapeOfID}, nil},
	}}

	shapeOfInterfaceProtection = shape{kind: isObject, defined: "accircuit.schema.json#/$defs/interface_protection", must: 1, members: []memberShape{
		{"fitted", true, &shape{kind: isTrue}, nil},
		{"note", false, &shapeOfText, nil},
		{"redundant", false, &shape{kind: isTrue}, nil},
		{"settings", false, &shapeOfGridSettings, nil},
		{"standard", false, &shapeOfText, nil},
		{"switch", false, &shapeOfID, nil},
		{"tested", false, &shape{kind: isTrue}, nil},
	}}

	shapeOfInverter = shape{kind: isObject, defined: "pvstring.schema.json#/$defs/inverter", must: 2, members: []memberShape{
		{"ambient_max_c", false, &shapeOfTemperature, &plausible{from: 15, to: 65, ground: "common practice", source: "indoors 30 to 40, loft 50 to 60", slips: "°F"}},
		{"backup_used", false, &shape{kind: isTrue}, nil},
		{"battery_fitted", false, &shape{kind: isTrue}, nil},
		{"clearances_kept", false, &shape{kind: isTrue}, nil},
		{"datasheet", true, &shapeOfID, nil},
		{"export_limit_w", false, &shapeOfNotNegative, &plausible{from: 100, to: 1000000, ground: "standard", source: "ENA G100; 0 for none, 3680, 5000 and so on", zero: true, slips: "kW for W (3.68)"}},
		{"id", true, &shapeOfID, nil},
		{"note", false, &shapeOfText, nil},
		{"on_combustible_surface", false, &shape{kind: isTrue}, nil},
		{"place", false, &shapeOfPlace, nil},
		{"serial", false, &shapeOfText, nil},
		{"settings", false, &shapeOfGridSettings, nil},
	}}

	shapeOfInverterDatasheet = shape{kind: isObject, defined: "pvstring.schema.json#/$defs/inverter_datasheet", must: 4, members: []memberShape{
		{"ac_apparent_max_va", false, &shapeOfPositive, &plausible{from: 500, to: 400000, ground: "common practice", source: "1.0 to 1.15 times the rated power", slips: "kVA for VA"}},
		{"ac_current_max_a", false, &shapeOfPositive, &plausible{from: 2, to: 600, ground: "common practice", source: "follows from power and voltage", slips: "mA; DC current in its place"}},
		{"ac_ocpd_max_a", false, &shapeOfPositive, &plausible{from: 6, to: 800, ground: "common practice", source: "1.1 to 2.5 times the AC current", slips: "current in its place"}},
		{"ac_power_rated_w", true, &shapeOfPositive, &plausible{from: 500, to: 350000, ground: "measured", source: "2280 inverters listed in California, March 2019, up to 350 kW: 0.1 % below 700", slips: "kW for W; mW"}},
		{"ac_voltage_v", false, &shapeOfPositive, &plausible{from: 100, to: 800, ground: "measured", source: "inverters listed in California, March 2019: 120 to 800; Europe 230 and 400", slips: "peak for rms (325); kV"}},
		{"ambient_max_c", false, &shapeOfTemperature, &plausible{from: 35, to: 85, ground: "measured", source: "862 inverters listed in California, March 2019: 1 % below 40, 1 % above 70", slips: "sign; °F"}},
		{"ambient_min_c", false, &shapeOfTemperature, &plausible{from: -45, to: 5, ground: "measured", source: "862 inverters listed in California, March 2019: -40 to 0", slips: "sign lost (25 for -25)"}},
		{"backup_output", false, &shape{kind: isTrue}, nil},
		{"battery_current_max_a", false, &shapeOfPositive, &plausible{from: 10, to: 500, ground: "common practice", source: "20 to 200 A", slips: "a factor of 10"}},
		{"battery_voltage_max_v", false, &shapeOfPositive, &plausible{from: 40, to: 1100, ground: "common practice", source: "48 V class 58 to 64, high-voltage class 420 to 1000", slips: "a factor of 10"}},
		{"dc_impulse_withstand_kv", false, &shapeOfPositive, &plausible{from: 1.5, to: 8, ground: "standard", source: "IEC 62109-1 (IEC 60664-1 table F.1): overvoltage category II, 300 V 2.5 kV, 600 V 4 kV, 1000 V 6 kV, 1500 V 8 kV", slips: "V for kV"}},
		{"dc_isolator_built_in", false, &shape{kind: isTrue}, nil},
		{"dc_power_max_w", false, &shapeOfPositive, &plausible{from: 500, to: 600000, ground: "common practice", source: "1.0 to 2.0 times the rated AC power", slips: "kW for W"}},
		{"dc_start_voltage_v", false, &shapeOfPositive, &plausible{from: 20, to: 400, ground: "common practice", source: "40 to 250 on sheets; above the lowest tracking voltage by 10 to 60 V", slips: "a factor of 10"}},
		{"dc_voltage_max_v", true, &shapeOfPositive, &plausible{from: 100, to: 1500, ground: "measured", source: "3153 inverters listed in California, March 2019: 100 to 1300; 1500 is the top of low voltage", slips: "a factor of 10; top of the tracking range in its place"}},
		{"discharge_wait_min", false, &shapeOfNotNegative, &plausible{from: 1, to: 60, ground: "common practice", source: "5 to 30 on warning labels; IEC 62109-1 asks for a mark where more than a few seconds", slips: "seconds for minutes (300)"}},
		{"grid_type_test", false, &shapeOfText, nil},
		{"grid_type_test_reference", false, &shapeOfText, nil},
		{"insulation_min_kohm", false, &shapeOfPositive, &plausible{from: 10, to: 2000, ground: "standard", source: "IEC 62109-2: at least Umax/30 mA, that is 20 kΩ at 600 V, 50 kΩ at 1500 V", slips: "MΩ for kΩ (0.1); Ω"}},
		{"ip", false, &shapeOfIP, nil},
		{"kind", false, &shape{kind: isText, words: []string{"pv", "hybrid", "battery"}}, nil},
		{"leakage_current_ma", false, &shapeOfNotNegative, &plausible{from: 0.1, to: 300, ground: "standard", source: "IEC 62109-2: continuous residual current 300 mA up to 30 kVA, 10 mA/kVA above", zero: true, slips: "A for mA; monitoring limit (300) in place of the current in normal operation"}},
		{"mppts", true, &shape{kind: isList, fewest: 1, most: 64, each: &shapeOfMPPTDatasheet}, nil},
		{"note", false, &shapeOfText, nil},
		{"phases", true, &shape{kind: isNumber, words: []string{"1", "3"}}, nil},
		{"rcd_type_b_not_required", false, &shape{kind: isTrue}, nil},
		{"rcd_type_required", false, &shape{kind: isText, words: []string{"none", "AC", "A", "F", "B"}}, nil},
		{"separation", false, &shape{kind: isText, words: []string{"none", "simple", "transformer"}}, nil},
	}}

	shapeOfIsolator = shape{kind: isObject, defined: "isolator.schema.json#/$defs/isolator", must: 3, members: []memberShape{
		{"ambient_max_c", false, &shapeOfTemperature, &plausible{from: 15, to: 85, ground: "common practice", source: "30 to 60", slips: "°F"}},
		{"built_into", false, &shapeOfID, nil},
		{"circuit", true, &shape{kind: isText, words: []string{"pv_dc", "battery_dc", "ac"}}, nil},
		{"datasheet", false, &shapeOfID, nil},
		{"distance_to_inverter_m", false, &shapeOfNotNegative, &plausible{from: 0, to: 60, ground: "common practice", source: "0 to 30", zero: true, slips: "mm for m (600)"}},
		{"enclosure", false, &shapeOfEnclosure, nil},
		{"id", true, &shapeOfID, nil},
		{"lockable_off", false, &shape{kind: isTrue}, nil},
		{"note", false, &shapeOfText, nil},
		{"place", false, &shapeOfPlace, nil},
		{"poles_in_series", false, &shape{kind: isNumber, whole: true, above: false, least: 1, greatest: 8}, &plausible{from: 1, to: 4, ground: "common practice", source: "1, 2 or 4"}},
		{"readily_accessible", false, &shape{kind: isTrue}, nil},
		{"utilization_category", false, &shape{kind: isText, words: []string{"DC-20A", "DC-20B", "DC-21A", "DC-21B", "DC-22A", "DC-22B", "DC-23A", "DC-23B", "DC-PV0", "DC-PV1", "DC-PV2", "AC-20A", "AC-20B", "AC-21A", "AC-21B", "AC-22A", "AC-22B", "AC-23A", "AC-23B"}}, nil},
		{"ways", true, &shape{kind: isList, fewest: 1, most: 16, each: &shapeOfIsolatorWay}, nil},
	}}

	shapeOfIsolatorWay = shape{kind: isObject, defined: "isolator.schema.json#/$defs/isolator_way", must: 1, members: []memberShape{
		{"conductors_opened", false, &shape{kind: isText, words: []string{"positive", "negative", "both", "line", "line_and_neutral", "all_lines", "all_lines_and_neutral"}}, nil},
		{"id", true, &shapeOfID, nil},
		{"joined_in", false, &shapeOfTerminal, nil},
		{"joined_out", false, &shapeOfTerminal, nil},
	}}

	shapeOfIvCurveReading = shape{kind: isObject, defined: "commissioning.schema.json#/$defs/iv_curve_reading", must: 2, members: []memberShape{
		{"cell_temperature_c", false, &shapeOfTemperature, &plausible{from: -10, to: 85, ground: "common practice", source: "", slips: "°F"}},
		{"date", false, &shapeOfDate, nil},
		{"id", true, &shapeOfID, nil},
		{"imp_a", false, &shapeOfNotNegative, &plausible{from: 0.2, to: 25, ground: "common practice", source: "", zero: true, slips: "mA"}},
		{"instrument", false, &shapeOfID, nil},
		{"irradiance_w_per_m2", false, &shapeOfNotNegative, &plausible{from: 200, to: 1300, ground: "standard", source: "IEC 62446-1 7.2: at least 400", slips: "kW/m2"}},
		{"isc_a", false, &shapeOfNotNegative, &plausible{from: 0.2, to: 25, ground: "common practice", source: "", zero: true, slips: "mA"}},
		{"note", false, &shapeOfText, nil},
		{"shape", false, &shape{kind: isText, words: []string{"smooth", "steps", "low_current", "low_voltage", "rounded_knee", "sloped"}}, nil},
		{"string", true, &shapeOfID, nil},
		{"vmp_v", false, &shapeOfNotNegative, &plausible{from: 12, to: 1400, ground: "common practice", source: "", zero: true, slips: "swapped with Voc"}},
		{"voc_v", false, &shapeOfNotNegative, &plausible{from: 15, to: 1600, ground: "common practice", source: "", zero: true, slips: "module in place of the string"}},
	}}

	shapeOfLabel = shape{kind: isObject, defined: "label.schema.json#/$defs/label", must: 2, members: []memberShape{
		{"ac_current_a", false, &shapeOfPositive, &plausible{from: 0.5, to: 6300, ground: "common practice", source: ""}},
		{"ac_voltage_v", false, &shapeOfPositive, &plausible{from: 100, to: 1000, ground: "common practice", source: ""}},
		{"background", false, &shape{kind: isText, words: []string{"black", "brown", "red", "orange", "yellow", "green", "green_yellow", "blue", "white", "grey", "other"}}, nil},
		{"battery_voltage_v", false, &shapeOfPositive, &plausible{from: 11, to: 1100, ground: "common practice", source: "as on the sheet", slips: "cell"}},
		{"current_max_a", false, &shapeOfPositive, &plausible{from: 1, to: 3000, ground: "common practice", source: "as of the array"}},
		{"date_printed", false, &shapeOfDate, nil},
		{"diameter_mm", false, &shapeOfPositive, &plausible{from: 10, to: 450, ground: "common practice", source: "25 to 200", slips: "cm for mm"}},
		{"discharge_wait_min", false, &shapeOfNotNegative, &plausible{from: 1, to: 60, ground: "common practice", source: "as on the sheet", zero: true, slips: "s for min (300)"}},
		{"distance_to_part_mm", false, &shapeOfNotNegative, &plausible{from: 1, to: 5000, ground: "common practice", source: "0 to 300", zero: true, slips: "m for mm (0.05)"}},
		{"durable", false, &shape{kind: isTrue}, nil},
		{"energy_kwh", false, &shapeOfPositive, &plausible{from: 0.4, to: 10000, ground: "common practice", source: "units times that of the sheet", slips: "Wh for kWh"}},
		{"fault_current_ka", false, &shapeOfPositive, &plausible{from: 0.05, to: 150, ground: "common practice", source: "", slips: "A for kA"}},
		{"fixed_to", false, &shape{kind: isText, words: []string{"fixed_part", "removable_cover", "door_inside", "cable", "conduit", "wall_beside"}}, nil},
		{"height_mm", false, &shapeOfPositive, &plausible{from: 5, to: 900, ground: "common practice", source: "as for the member before", slips: "cm for mm; m"}},
		{"id", true, &shapeOfID, nil},
		{"language", false, &shapeOfText, nil},
		{"legend", true, &shape{kind: isText, words: []string{"dual_supply", "do_not_disconnect_under_load", "dc_junction_box", "dc_isolator", "dc_live_in_daylight", "dc_maximum_values", "inverter_isolate_both", "do_not_block_ventilation", "capacitor_discharge", "main_ac_isolator", "pv_circuit", "pv_on_roof", "dc_cable", "dc_in_roof_space", "multiple_dc_sources", "circuit_diagram", "protection_settings", "shutdown_procedure", "installer_contact", "earth_connection", "rcd_test", "next_inspection", "spd_status", "fuse_under_load", "battery_present", "battery_data", "direction_of_supply", "alternative_source", "pv_system_disconnect", "line_and_load_live", "interconnection_rating", "source_directory", "rapid_shutdown_building", "rapid_shutdown_switch", "rapid_shutdown_plan", "battery_polarity", "do_not_relocate_device", "busbar_sum", "multiple_sources", "dc_polarity", "listing_mark", "emergency_disconnect", "battery_disconnect", "bipolar_earthed", "power_control", "fire_sign_pv", "fire_sign_battery", "disconnection_point", "isolate_before_unplugging", "array_stays_live", "multiple_mode_inverter", "pv_site_information", "main_switch_grid", "main_switch_inverter", "inverter_location", "connected_at_sub_board", "distributor_sign", "pv_layout_plan", "emergency_cut", "first_certified"}}, nil},
		{"legible", false, &shape{kind: isTrue}, nil},
		{"letter_height_mm", false, &shapeOfPositive, &plausible{from: 2, to: 80, ground: "standard", source: "BS 5499-4 / ISO 3864-1: distance over 300; NEC 110.21, UK labels 4.75 mm", slips: "pt for mm (14); cm; m"}},
		{"lettering", false, &shape{kind: isText, words: []string{"black", "brown", "red", "orange", "yellow", "green", "green_yellow", "blue", "white", "grey", "other"}}, nil},
		{"location", false, &shape{kind: isText, words: []string{"origin", "meter", "main_board", "service_equipment", "roof_space_access", "floor_space_access", "building_entrance", "fire_panel", "battery_room_door", "outside_wall", "isolation_point"}}, nil},
		{"made_by", false, &shape{kind: isText, words: []string{"engraved", "printed", "handwritten", "etched"}}, nil},
		{"note", false, &shapeOfText, nil},
		{"on", false, &shapeOfID, nil},
		{"parts_named", false, &shape{kind: isList, fewest: 0, most: 200, each: &shapeOfID}, nil},
		{"position_m", false, &shapeOfNotNegative, &plausible{from: 0, to: 300, ground: "common practice", source: "within the length of the run", zero: true, slips: "mm for m (300)"}},
		{"positions_marked", false, &shape{kind: isTrue}, nil},
		{"reflective", false, &shape{kind: isTrue}, nil},
		{"run", false, &shapeOfID, nil},
		{"side", false, &shape{kind: isText, words: []string{"from_side", "to_side"}}, nil},
		{"sign_code", false, &shapeOfText, nil},
		{"small_letter_height_mm", false, &shapeOfPositive, &plausible{from: 1.5, to: 60, ground: "standard", source: "as for the member before", slips: "pt for mm"}},
		{"steps", false, &shapeOfCount, &plausible{from: 1, to: 20, ground: "common practice", source: "3 to 8", zero: true}},
		{"telephone_printed", false, &shape{kind: isTrue}, nil},
		{"text", false, &shapeOfText, nil},
		{"un_number", false, &shapeOfText, nil},
		{"uv_resistant", false, &shape{kind: isTrue}, nil},
		{"values_at", false, &shape{kind: isText, words: []string{"stc", "maximum"}}, nil},
		{"viewing_distance_m", false, &shapeOfPositive, &plausible{from: 0.3, to: 25, ground: "standard", source: "ISO 3864-1", slips: "mm for m (1500)"}},
		{"visible", false, &shape{kind: isTrue}, nil},
		{"voltage_max_v", false, &shapeOfPositive, &plausible{from: 20, to: 1500, ground: "common practice", source: "as of the string", slips: "module in place of the string"}},
		{"warning_printed", false, &shape{kind: isTrue}, nil},
		{"width_mm", false, &shapeOfPositive, &plausible{from: 8, to: 900, ground: "common practice", source: "cable markers 20; A4 210, 297; A3 420", slips: "cm (10) for mm; m"}},
	}}

	shapeOfLightningProtection = shape{kind: isObject, defined: "earthing.schema.json#/$defs/lightning_protection", must: 1, members: []memberShape{
		{"array_in_protected_zone", false, &shape{kind: isTrue}, nil},
		{"class", false, &shape{kind: isText, words: []string{"I", "II", "III", "IV"}}, nil},
		{"down_conductors", false, &shapeOfCount, &plausible{from: 1, to: 200, ground: "standard", source: "IEC 62305-3: at least 2, one for each 10 to 20 m", zero: true}},
		{"fitted", true, &shape{kind: isTrue}, nil},
		{"gap_material", false, &shape{kind: isText, words: []string{"air", "masonry"}}, nil},
		{"length_to_bond_m", false, &shapeOfPositive, &plausible{from: 0.5, to: 200, ground: "standard", source: "IEC 62305-3: l in s = ki·kc·l/km, height of the building", slips: "mm for m"}},
		{"note", false, &shapeOfText, nil},
		{"risk_assessment", false, &shape{kind: isText, words: []string{"not_done", "not_needed", "needed"}}, nil},
		{"risk_assessment_record", false, &shapeOfText, nil},
		{"separation_kept", false, &shape{kind: isTrue}, nil},
	}}

	shapeOfLoopReading = shape{kind: isObject, defined: "commissioning.schema.json#/$defs/loop_reading", must: 1, members: []memberShape{
		{"at", false, &shape{kind: isText, words: []string{"origin", "board", "circuit_end"}}, nil},
		{"date", false, &shapeOfDate, nil},
		{"fault_current_ka", false, &shapeOfNotNegative, &plausible{from: 0.005, to: 65, ground: "standard", source: "as for circuits", slips: "A for kA (740)"}},
		{"id", true, &shapeOfID, nil},
		{"instrument", false, &shapeOfID, nil},
		{"loop_impedance_ohm", false, &shapeOfNotNegative, &plausible{from: 0.003, to: 250, ground: "standard", source: "BS 7671 tables 41.2 to 41.5, as for circuits", slips: "mΩ (210)"}},
		{"method", false, &shape{kind: isText, words: []string{"measured", "calculated", "declared"}}, nil},
		{"note", false, &shapeOfText, nil},
		{"part", false, &shapeOfID, nil},
		{"r1_r2_ohm", false, &shapeOfNotNegative, &plausible{from: 0.0005, to: 15, ground: "standard", source: "On-Site Guide table I1, as for circuits", zero: true, slips: "mΩ"}},
		{"short_circuit_current_ka", false, &shapeOfNotNegative, &plausible{from: 0.005, to: 65, ground: "standard", source: "as for circuits", slips: "A for kA"}},
	}}

	shapeOfMPPTDatasheet = shape{kind: isObject, defined: "pvstring.schema.json#/$defs/mppt_datasheet", must: 0, members: []memberShape{
		{"current_max_a", false, &shapeOfPositive, &plausible{from: 6, to: 120, ground: "common practice", source: "10 to 45 A", slips: "sum of all inputs in place of one"}},
		{"isc_max_a", false, &shapeOfPositive, &plausible{from: 8, to: 150, ground: "common practice", source: "12.5 to 60 A for each input on string inverters, to 150 with many strings joined", slips: "sum of all inputs in place of one; mA"}},
		{"string_inputs", false, &shapeOfCount, &plausible{from: 1, to: 24, ground: "common practice", source: "1 to 4 usual", slips: "inputs of the whole inverter in place of one tracker"}},
		{"voltage_max_v", false, &shapeOfPositive, &plausible{from: 77, to: 1500, ground: "measured", source: "3139 inverters listed in California, March 2019: from 77, 0.1 % above 1250"}},
		{"voltage_min_v", false, &shapeOfPositive, &plausible{from: 30, to: 900, ground: "measured", source: "3139 inverters listed in California, March 2019: from 30, 0.1 % above 860", slips: "full-power range in place of the working range; swapped"}},
	}}

	shapeOfMainBond = shape{kind: isObject, defined: "earthing.schema.json#/$defs/main_bond", must: 2, members: []memberShape{
		{"bonds", true, &shape{kind: isText, words: []string{"water", "gas", "oil", "structural_steel", "lightning_protection", "heating", "drainage", "other"}}, nil},
		{"conductor", false, &shapeOfEarthConductor, nil},
		{"id", true, &shapeOfID, nil},
		{"note", false, &shapeOfText, nil},
	}}

	shapeOfMeter = shape{kind: isObject, defined: "accircuit.schema.json#/$defs/meter", must: 1, members: []memberShape{
		{"id", true, &shapeOfID, nil},
		{"joined_in", false, &shapeOfTerminal, nil},
		{"joined_out", false, &shapeOfTerminal, nil},
		{"note", false, &shapeOfText, nil},
		{"per_phase", false, &shape{kind: isTrue}, nil},
		{"place", false, &shapeOfPlace, nil},
		{"purpose", false, &shape{kind: isText, words: []string{"import", "import_and_export", "generation", "battery"}}, nil},
	}}

	shapeOfModule = shape{kind: isObject, defined: "pvstring.schema.json#/$defs/module", must: 6, members: []memberShape{
		{"bifacial", false, &shape{kind: isTrue}, nil},
		{"bifaciality_fraction", false, &shapeOfFraction, &plausible{from: 0.5, to: 0.98, ground: "common practice", source: "PERC 0.65 to 0.75, TOPCon 0.75 to 0.85, heterojunction 0.85 to 0.95 (makers' sheets, memory)", zero: true}},
		{"bypass_diodes", false, &shapeOfCount, &plausible{from: 1, to: 8, ground: "common practice", source: "one for each 18 to 24 cells in series: 2 to 4; thin film 0 or 1; shingled up to 6", zero: true}},
		{"cells", false, &shapeOfCount, &plausible{from: 20, to: 420, ground: "measured", source: "16830 modules listed in California, December 2021: 6 to 408; below 20 are small panes", slips: "half cells against whole cells; count of strings"}},
		{"clamp_zones", false, &shape{kind: isList, fewest: 0, most: 8, each: &shapeOfClampZone}, nil},
		{"conductive_frame", false, &shape{kind: isTrue}, nil},
		{"connector", false, &shapeOfText, nil},
		{"design_load_pull_pa", false, &shapeOfPositive, &plausible{from: 800, to: 3599, ground: "standard", source: "IEC 61215-2 MQT 16, as for the front; 2400 may be either", slips: "test load for design load (x1.5: 2400 for 1600, 3600 for 2400); kPa"}},
		{"design_load_push_pa", false, &shapeOfPositive, &plausible{from: 1600, to: 5399, ground: "standard", source: "IEC 61215-2 MQT 16: design load at least 1600 Pa, test load 1.5 times that; 5400 is nearly always the test load of 3600", slips: "test load for design load (x1.5: 5400, 8000); kPa"}},
		{"imp_a", true, &shapeOfPositive, &plausible{from: 0.9, to: 21, ground: "measured", source: "16830 modules listed in California, December 2021: 0.1 % below 1.3, 0.1 % above 17.4; newer classes from memory", slips: "a factor of 10; swapped with Isc", where: []plausibleWhere{
			{"technology", []string{"mono_si", "multi_si", "heterojunction_si"}, plausible{from: 4, to: 21, ground: "measured", source: "16830 modules listed in California, December 2021: 0.1 % below 1.3, 0.1 % above 17.4; newer classes from memory", slips: "a factor of 10; swapped with Isc"}},
			{"technology", []string{"cdte"}, plausible{from: 0.9, to: 3.8, ground: "measured", source: "16830 modules listed in California, December 2021: 0.1 % below 1.3, 0.1 % above 17.4; newer classes from memory", slips: "a factor of 10; swapped with Isc"}},
			{"technology", []string{"cigs"}, plausible{from: 1.4, to: 14, ground: "measured", source: "16830 modules listed in California, December 2021: 0.1 % below 1.3, 0.1 % above 17.4; newer classes from memory", slips: "a factor of 10; swapped with Isc"}},
			{"technology", []string{"other_thin_film"}, plausible{from: 0.8, to: 13, ground: "measured", source: "16830 modules listed in California, December 2021: 0.1 % below 1.3, 0.1 % above 17.4; newer classes from memory", slips: "a factor of 10; swapped with Isc"}},
		}}},
		{"isc_a", true, &shapeOfPositive, &plausible{from: 1, to: 22, ground: "measured", source: "16830 modules listed in California, December 2021: 0.1 % below 1.52, greatest 18.7; newer classes from memory", slips: "mA; a factor of 10; swapped with Imp", where: []plausibleWhere{
			{"technology", []string{"mono_si", "multi_si", "heterojunction_si"}, plausible{from: 4.5, to: 22, ground: "measured", source: "16830 modules listed in California, December 2021: 0.1 % below 1.52, greatest 18.7; newer classes from memory", slips: "mA; a factor of 10; swapped with Imp"}},
			{"technology", []string{"cdte"}, plausible{from: 1, to: 4, ground: "measured", source: "16830 modules listed in California, December 2021: 0.1 % below 1.52, greatest 18.7; newer classes from memory", slips: "mA; a factor of 10; swapped with Imp"}},
			{"technology", []string{"cigs"}, plausible{from: 1.5, to: 15, ground: "measured", source: "16830 modules listed in California, December 2021: 0.1 % below 1.52, greatest 18.7; newer classes from memory", slips: "mA; a factor of 10; swapped with Imp"}},
			{"technology", []string{"other_thin_film"}, plausible{from: 0.9, to: 14, ground: "measured", source: "16830 modules listed in California, December 2021: 0.1 % below 1.52, greatest 18.7; newer classes from memory", slips: "mA; a factor of 10; swapped with Imp"}},
		}}},
		{"isc_coeff_a_per_k", false, &shapeOfCoefficient, &plausible{from: -0.006, to: 0.02, ground: "measured", source: "16830 modules listed in California, December 2021: 0.1 % below -0.0044, greatest 0.0164", slips: "%/K printed, taken for A/K (0.045); mA/K (4.5)"}},
		{"isc_coeff_pct_per_k", false, &shapeOfCoefficient, &plausible{from: -0.06, to: 0.15, ground: "measured", source: "16830 modules listed in California, December 2021: 0.1 % below -0.051, 0.1 % above 0.15", slips: "A/K printed, taken for %/K; mA/K (4.5); per K as fraction (0.0005)"}},
		{"length_mm", false, &shapeOfPositive, &plausible{from: 600, to: 2600, ground: "measured", source: "9816 modules listed in California, December 2021: from 1013, 1 % above 2005; newest classes to 2465 from memory", slips: "m or cm for mm (1.73, 173); swapped with the width"}},
		{"mass_kg", false, &shapeOfPositive, &plausible{from: 2, to: 50, ground: "common practice", source: "10 to 16 kg/m²", slips: "lb for kg; g; mass of a square metre"}},
		{"nmot_c", false, &shapeOfTemperature, &plausible{from: 39, to: 60, ground: "measured", source: "16830 modules listed in California, December 2021: NOCT from 41.1, 0.1 % above 57.3; NMOT is 1 to 3 K lower", slips: "K; rise over ambient (23) in place of the temperature"}},
		{"note", false, &shapeOfText, nil},
		{"ocpr_max_a", false, &shapeOfPositive, &plausible{from: 1.5, to: 50, ground: "common practice", source: "printed are 2 to 5 (CdTe), 10, 15, 20, 25, 30, 35, 40 A", slips: "a factor of 10"}},
		{"pmax_coeff_pct_per_k", false, &shapeOfCoefficient, &plausible{from: -0.6, to: -0.16, ground: "measured", source: "16830 modules listed in California, December 2021: 1 % below -0.544, greatest -0.166", slips: "W/K; sign lost; swapped with the coefficient of Voc", where: []plausibleWhere{
			{"technology", []string{"mono_si", "multi_si", "heterojunction_si"}, plausible{from: -0.6, to: -0.22, ground: "measured", source: "16830 modules listed in California, December 2021: 1 % below -0.544, greatest -0.166", slips: "W/K; sign lost; swapped with the coefficient of Voc"}},
			{"technology", []string{"cdte"}, plausible{from: -0.36, to: -0.18, ground: "measured", source: "16830 modules listed in California, December 2021: 1 % below -0.544, greatest -0.166", slips: "W/K; sign lost; swapped with the coefficient of Voc"}},
			{"technology", []string{"cigs"}, plausible{from: -0.55, to: -0.28, ground: "measured", source: "16830 modules listed in California, December 2021: 1 % below -0.544, greatest -0.166", slips: "W/K; sign lost; swapped with the coefficient of Voc"}},
			{"technology", []string{"other_thin_film"}, plausible{from: -0.55, to: -0.15, ground: "measured", source: "16830 modules listed in California, December 2021: 1 % below -0.544, greatest -0.166", slips: "W/K; sign lost; swapped with the coefficient of Voc"}},
		}}},
		{"pmax_w", true, &shapeOfPositive, &plausible{from: 60, to: 760, ground: "measured", source: "16830 modules listed in California, December 2021: 0.1 % below 70.6, 0.1 % above 657; newer classes to 740 from memory", slips: "kW for W; power of the string", where: []plausibleWhere{
			{"technology", []string{"mono_si", "multi_si", "heterojunction_si"}, plausible{from: 60, to: 760, ground: "measured", source: "16830 modules listed in California, December 2021: 0.1 % below 70.6, 0.1 % above 657; newer classes to 740 from memory", slips: "kW for W; power of the string"}},
			{"technology", []string{"cdte"}, plausible{from: 50, to: 600, ground: "measured", source: "16830 modules listed in California, December 2021: 0.1 % below 70.6, 0.1 % above 657; newer classes to 740 from memory", slips: "kW for W; power of the string"}},
			{"technology", []string{"cigs"}, plausible{from: 50, to: 550, ground: "measured", source: "16830 modules listed in California, December 2021: 0.1 % below 70.6, 0.1 % above 657; newer classes to 740 from memory", slips: "kW for W; power of the string"}},
			{"technology", []string{"other_thin_film"}, plausible{from: 40, to: 550, ground: "measured", source: "16830 modules listed in California, December 2021: 0.1 % below 70.6, 0.1 % above 657; newer classes to 740 from memory", slips: "kW for W; power of the string"}},
		}}},
		{"protection_class", false, &shape{kind: isText, words: []string{"0", "I", "II", "III"}}, nil},
		{"system_voltage_max_v", false, &shapeOfPositive, &plausible{from: 300, to: 1500, usual: []float64{600, 1000, 1500}, ground: "standard", source: "IEC 61730-1 covers up to 1500 V; printed values 600, 1000, 1500", slips: "a factor of 10; kV (1.5)"}},
		{"technology", true, &shape{kind: isText, words: []string{"mono_si", "multi_si", "heterojunction_si", "cdte", "cigs", "other_thin_film"}}, nil},
		{"thickness_mm", false, &shapeOfPositive, &plausible{from: 2, to: 60, ground: "common practice", source: "framed 28 to 50, frameless double glass 5 to 8, flexible 2 to 3", slips: "cm for mm (3.0); depth of the box or of the pallet"}},
		{"vmp_coeff_pct_per_k", false, &shapeOfCoefficient, &plausible{from: -0.7, to: -0.13, ground: "measured", source: "0.76 to 1.35 times that of Voc on 521 modules measured outdoors", slips: "V/K; sign lost; that of Voc or of the power in its place"}},
		{"vmp_v", true, &shapeOfPositive, &plausible{from: 12, to: 240, ground: "measured", source: "16830 modules listed in California, December 2021: 1 % below 18.4, 0.1 % above 182", slips: "swapped with Voc; a factor of 10", where: []plausibleWhere{
			{"technology", []string{"mono_si", "multi_si", "heterojunction_si"}, plausible{from: 12, to: 80, ground: "measured", source: "16830 modules listed in California, December 2021: 1 % below 18.4, 0.1 % above 182", slips: "swapped with Voc; a factor of 10"}},
			{"technology", []string{"cdte"}, plausible{from: 40, to: 240, ground: "measured", source: "16830 modules listed in California, December 2021: 1 % below 18.4, 0.1 % above 182", slips: "swapped with Voc; a factor of 10"}},
			{"technology", []string{"cigs"}, plausible{from: 15, to: 120, ground: "measured", source: "16830 modules listed in California, December 2021: 1 % below 18.4, 0.1 % above 182", slips: "swapped with Voc; a factor of 10"}},
			{"technology", []string{"other_thin_film"}, plausible{from: 15, to: 240, ground: "measured", source: "16830 modules listed in California, December 2021: 1 % below 18.4, 0.1 % above 182", slips: "swapped with Voc; a factor of 10"}},
		}}},
		{"voc_coeff_pct_per_k", false, &shapeOfCoefficient, &plausible{from: -0.52, to: -0.17, ground: "measured", source: "16830 modules listed in California, December 2021: 0.1 % below -0.456, 0.1 % above -0.213; thin film measured outdoors to -0.508", slips: "V/K printed, taken for %/K (-0.10 to -0.18); sign lost; gamma or alpha in its place", where: []plausibleWhere{
			{"technology", []string{"mono_si", "multi_si", "heterojunction_si"}, plausible{from: -0.45, to: -0.2, ground: "measured", source: "16830 modules listed in California, December 2021: 0.1 % below -0.456, 0.1 % above -0.213; thin film measured outdoors to -0.508", slips: "V/K printed, taken for %/K (-0.10 to -0.18); sign lost; gamma or alpha in its place"}},
			{"technology", []string{"cdte"}, plausible{from: -0.36, to: -0.2, ground: "measured", source: "16830 modules listed in California, December 2021: 0.1 % below -0.456, 0.1 % above -0.213; thin film measured outdoors to -0.508", slips: "V/K printed, taken for %/K (-0.10 to -0.18); sign lost; gamma or alpha in its place"}},
			{"technology", []string{"cigs"}, plausible{from: -0.48, to: -0.2, ground: "measured", source: "16830 modules listed in California, December 2021: 0.1 % below -0.456, 0.1 % above -0.213; thin film measured outdoors to -0.508", slips: "V/K printed, taken for %/K (-0.10 to -0.18); sign lost; gamma or alpha in its place"}},
			{"technology", []string{"other_thin_film"}, plausible{from: -0.52, to: -0.17, ground: "measured", source: "16830 modules listed in California, December 2021: 0.1 % below -0.456, 0.1 % above -0.213; thin film measured outdoors to -0.508", slips: "V/K printed, taken for %/K (-0.10 to -0.18); sign lost; gamma or alpha in its place"}},
		}}},
		{"voc_coeff_v_per_k", false, &shapeOfCoefficient, &plausible{from: -1.15, to: -0.04, ground: "measured", source: "16830 modules listed in California, December 2021: 0.1 % below -0.613, 1 % above -0.0785", slips: "%/K printed, taken for V/K (-0.25 to -0.35 on a module of 30 to 50 V); mV/K; sign lost"}},
		{"voc_v", true, &shapeOfPositive, &plausible{from: 15, to: 300, ground: "measured", source: "16830 modules listed in California, December 2021: 1 % below 22.8, 0.1 % above 219, greatest 280", slips: "voltage of the string; swapped with Vmp; mV", where: []plausibleWhere{
			{"technology", []string{"mono_si", "multi_si", "heterojunction_si"}, plausible{from: 15, to: 95, ground: "measured", source: "16830 modules listed in California, December 2021: 1 % below 22.8, 0.1 % above 219, greatest 280", slips: "voltage of the string; swapped with Vmp; mV"}},
			{"technology", []string{"cdte"}, plausible{from: 55, to: 290, ground: "measured", source: "16830 modules listed in California, December 2021: 1 % below 22.8, 0.1 % above 219, greatest 280", slips: "voltage of the string; swapped with Vmp; mV"}},
			{"technology", []string{"cigs"}, plausible{from: 20, to: 140, ground: "measured", source: "16830 modules listed in California, December 2021: 1 % below 22.8, 0.1 % above 219, greatest 280", slips: "voltage of the string; swapped with Vmp; mV"}},
			{"technology", []string{"other_thin_film"}, plausible{from: 20, to: 300, ground: "measured", source: "16830 modules listed in California, December 2021: 1 % below 22.8, 0.1 % above 219, greatest 280", slips: "voltage of the string; swapped with Vmp; mV"}},
		}}},
		{"width_mm", false, &shapeOfPositive, &plausible{from: 350, to: 1400, ground: "measured", source: "9816 modules listed in California, December 2021: 0.1 % below 410, 0.1 % above 1323", slips: "m or cm for mm; swapped with the length"}},
	}}

	shapeOfNoggin = shape{kind: isObject, defined: "roof.schema.json#/$defs/noggin", must: 3, members: []memberShape{
		{"fixed_at_both_ends", false, &shape{kind: isTrue}, nil},
		{"fixed_by", false, &shapeOfText, nil},
		{"height_mm", false, &shapeOfPositive, &plausible{from: 30, to: 300, ground: "common practice", source: "38 to 200", slips: "cm"}},
		{"id", true, &shapeOfID, nil},
		{"length_mm", false, &shapeOfPositive, &plausible{from: 100, to: 3000, ground: "common practice", source: "clear gap between rafters 250 to 850", slips: "cm (55); m"}},
		{"note", false, &shapeOfText, nil},
		{"timber_class", false, &shape{kind: isText, words: []string{"C14", "C16", "C18", "C20", "C22", "C24", "C27", "C30", "C35", "C40", "D24", "D30", "D40", "GL24h", "GL28h"}}, nil},
		{"width_mm", false, &shapeOfPositive, &plausible{from: 25, to: 250, ground: "common practice", source: "38 to 100", slips: "cm"}},
		{"x_mm", true, &shapeOfSigned, &plausible{from: -2000, to: 200000, ground: "common practice", source: "within the plane", zero: true, near: 10, slips: "m or cm for mm"}},
		{"y_mm", true, &shapeOfSigned, &plausible{from: -2000, to: 60000, ground: "common practice", source: "within the plane", zero: true, near: 10, slips: "m or cm for mm"}},
	}}

	shapeOfNotNegative = shape{kind: isNumber, whole: false, above: false, least: 0, greatest: 1000000000}

	shapeOfNotification = shape{kind: isObject, defined: "handover.schema.json#/$defs/notification", must: 2, members: []memberShape{
		{"answer", false, &shape{kind: isText, words: []string{"awaited", "accepted", "accepted_with_conditions", "refused", "not_needed"}}, nil},
		{"applied", false, &shapeOfDate, nil},
		{"approval_until", false, &shapeOfDate, nil},
		{"approved", false, &shapeOfDate, nil},
		{"approved_export_w", false, &shapeOfNotNegative, &plausible{from: 100, to: 5000000, ground: "standard", source: "as for the member before", zero: true, slips: "kW for W"}},
		{"approved_power_w", false, &shapeOfNotNegative, &plausible{from: 100, to: 5000000, ground: "standard", source: "ENA G98, G99: 3680 W single-phase", zero: true, slips: "kW for W (5)"}},
		{"commissioned", false, &shapeOfDate, nil},
		{"conditions", false, &shapeOfText, nil},
		{"document", false, &shapeOfID, nil},
		{"id", true, &shapeOfID, nil},
		{"inspected", false, &shapeOfDate, nil},
		{"note", false, &shapeOfText, nil},
		{"notified", false, &shapeOfDate, nil},
		{"reference", false, &shapeOfText, nil},
		{"route", false, &shape{kind: isText, words: []string{"connect_and_notify", "multiple_premises", "apply_before", "fast_track", "export_limitation", "decommissioning", "competent_person_scheme", "building_notice", "building_warrant", "permit", "prior_approval", "planning_permission", "register_entry", "inspection", "information_only"}}, nil},
		{"standard", false, &shapeOfText, nil},
		{"to", true, &shape{kind: isText, words: []string{"network_operator", "energy_supplier", "building_control", "planning_authority", "certification_scheme", "generator_register", "electrical_safety_authority", "electrical_inspector", "permit_authority", "fire_service", "health_and_safety_authority", "insurer", "landlord"}}, nil},
	}}

	shapeOfOvervoltageRisk = shape{kind: isObject, defined: "accircuit.schema.json#/$defs/overvoltage_risk", must: 0, members: []memberShape{
		{"danger_to_life", false, &shape{kind: isTrue}, nil},
		{"declined_by_owner", false, &shape{kind: isTrue}, nil},
		{"declined_record", false, &shapeOfText, nil},
		{"high_voltage_buried_km", false, &shapeOfNotNegative, &plausible{from: 0.01, to: 50, ground: "standard", source: "as for the member before", zero: true, slips: "m for km"}},
		{"high_voltage_overhead_km", false, &shapeOfNotNegative, &plausible{from: 0.01, to: 50, ground: "standard", source: "as for the member before", zero: true, slips: "m for km"}},
		{"low_voltage_buried_km", false, &shapeOfNotNegative, &plausible{from: 0.005, to: 20, ground: "standard", source: "as for the member before", zero: true, slips: "m for km"}},
		{"low_voltage_overhead_km", false, &shapeOfNotNegative, &plausible{from: 0.01, to: 20, ground: "standard", source: "IEC 60364-4-44 443.5: lengths up to 1 km count", zero: true, slips: "m for km (300)"}},
		{"note", false, &shapeOfText, nil},
		{"safety_service", false, &shape{kind: isTrue}, nil},
		{"significant_loss", false, &shape{kind: isTrue}, nil},
		{"surroundings", false, &shape{kind: isText, words: []string{"rural", "suburban", "urban"}}, nil},
		{"thunderstorm_days_per_yr", false, &shapeOfNotNegative, &plausible{from: 1, to: 200, ground: "standard", source: "IEC 62305-2 (first edition): Ng about 0.1 Td; Europe 5 to 50", zero: true, slips: "flash density for days (/10)", where: []plausibleWhere{
			{"country", []string{"GB"}, plausible{from: 1, to: 20, ground: "standard", source: "Ng at most 2, which the trade's form of the risk calculation takes, is 20 days", zero: true, slips: "flash density for days (/10)"}},
		}}},
	}}

	shapeOfPerformanceEstimate = shape{kind: isObject, defined: "handover.schema.json#/$defs/performance_estimate", must: 0, members: []memberShape{
		{"date", false, &shapeOfDate, nil},
		{"energy_per_year_kwh", false, &shapeOfNotNegative, &plausible{from: 100, to: 5000000, ground: "common practice", source: "", slips: "Wh or MWh"}},
		{"given_before_contract", false, &shape{kind: isTrue}, nil},
		{"method", false, &shape{kind: isText, words: []string{"scheme_method", "hourly_simulation", "other"}}, nil},
		{"method_reference", false, &shapeOfText, nil},
		{"note", false, &shapeOfText, nil},
		{"self_use_fraction", false, &shapeOfFraction, &plausible{from: 0.05, to: 1, ground: "common practice", source: "0.2 to 0.5 without battery, 0.5 to 0.9 with", zero: true}},
		{"shade_factor_fraction", false, &shapeOfFraction, &plausible{from: 0.3, to: 1, ground: "common practice", source: "0.6 to 1", slips: "loss in place of the share left (0.03)"}},
		{"site_specific", false, &shape{kind: isTrue}, nil},
		{"uncertainty_stated", false, &shape{kind: isTrue}, nil},
		{"yield_kwh_per_kw", false, &shapeOfNotNegative, &plausible{from: 300, to: 2200, ground: "memory", source: "Great Britain 650 to 1150; world 700 to 2000", slips: "kWh/m2; specific yield a day (2.4)", where: []plausibleWhere{
			{"country", []string{"GB"}, plausible{from: 500, to: 1250, ground: "memory", source: "650 to 1150 usual", slips: "kWh/m2; specific yield a day (2.4)"}},
		}}},
	}}

	shapeOfPlace = shape{kind: isText, words: []string{"roof_surface", "roof_space", "outdoor_wall", "garage", "plant_room", "habitable_room", "bedroom", "hallway", "cupboard", "cellar", "outbuilding", "outdoor_ground"}}

	shapeOfPlacedModule = shape{kind: isObject, defined: "roof.schema.json#/$defs/placed_module", must: 4, members: []memberShape{
		{"drain_holes_free", false, &shape{kind: isTrue}, nil},
		{"frame_drilled", false, &shape{kind: isTrue}, nil},
		{"id", true, &shapeOfID, nil},
		{"module", false, &shapeOfID, nil},
		{"note", false, &shapeOfText, nil},
		{"orientation", true, &shape{kind: isText, words: []string{"portrait", "landscape"}}, nil},
		{"string", false, &shapeOfID, nil},
		{"x_mm", true, &shapeOfSigned, &plausible{from: -2000, to: 200000, ground: "common practice", source: "within the plane", zero: true, near: 10, slips: "m or cm for mm"}},
		{"y_mm", true, &shapeOfSigned, &plausible{from: -2000, to: 60000, ground: "common practice", source: "within the plane", zero: true, near: 10, slips: "m or cm for mm"}},
	}}

	shapeOfPlane = shape{kind: isObject, defined: "roof.schema.json#/$defs/plane", must: 1, members: []memberShape{
		{"azimuth_deg", false, &shape{kind: isNumber, whole: false, above: false, least: 0, greatest: 360}, &plausible{from: 0, to: 360, ground: "common practice", source: "the whole circle", zero: true, slips: "counted from south (south 0, west +90); magnetic"}},
		{"ballast_mass_kg", false, &shapeOfNotNegative, &plausible{from: 5, to: 300000, ground: "common practice", source: "10 to 60 kg/m²", zero: true, slips: "kg/m2 in its place"}},
		{"bottom_edge", false, &shape{kind: isText, words: []string{"eaves", "parapet", "valley", "abutment"}}, nil},
		{"boundary_distance_m", false, &shapeOfNotNegative, &plausible{from: 0, to: 1000, ground: "common practice", source: "0 to 50", zero: true, slips: "mm for m (9000)"}},
		{"building_length_m", false, &shapeOfPositive, &plausible{from: 2.5, to: 300, ground: "common practice", source: "5 to 100", slips: "mm for m; ft"}},
		{"building_width_m", false, &shapeOfPositive, &plausible{from: 2, to: 250, ground: "common practice", source: "4 to 60", slips: "mm for m; ft"}},
		{"clamps", false, &shape{kind: isList, fewest: 0, most: 20000, each: &shapeOfClamp}, nil},
		{"covering", false, &shapeOfRoofCovering, nil},
		{"dead_load_kn_per_m2", false, &shapeOfPositive, &plausible{from: 0.08, to: 2.5, ground: "standard", source: "EN 1991-1-1 annex A; sheet roof 0.1 to 0.3, slate 0.6, plain tile 1.0, stone 1.6", slips: "kg/m2 (95) or Pa (930) for kN/m2"}},
		{"dead_load_source", false, &shapeOfText, nil},
		{"eaves_height_m", false, &shapeOfPositive, &plausible{from: 1.8, to: 36, ground: "common practice", source: "2.2 to 9", slips: "mm for m (2850); ft (9)"}},
		{"eaves_length_mm", false, &shapeOfPositive, &plausible{from: 1500, to: 200000, ground: "common practice", source: "4 to 20 m homes, to 150 m halls", slips: "m for mm (12.9); cm (1290)"}},
		{"edges", false, &shape{kind: isList, fewest: 0, most: 200, each: &shapeOfRoofEdge}, nil},
		{"faces_highway", false, &shape{kind: isTrue}, nil},
		{"fire_class", false, &shape{kind: isText, words: []string{"A", "B", "C", "BROOF_t1", "BROOF_t2", "BROOF_t3", "BROOF_t4", "none"}}, nil},
		{"fire_class_required", false, &shape{kind: isText, words: []string{"A", "B", "C", "BROOF_t1", "BROOF_t2", "BROOF_t3", "BROOF_t4", "none"}}, nil},
		{"fixings", false, &shape{kind: isList, fewest: 0, most: 20000, each: &shapeOfFixing}, nil},
		{"gap_under_modules_mm", false, &shapeOfNotNegative, &plausible{from: 5, to: 500, ground: "common practice", source: "40 to 200; in roof 0", zero: true, slips: "cm (10); m (0.1)"}},
		{"id", true, &shapeOfID, nil},
		{"imposed_load_kn_per_m2", false, &shapeOfNotNegative, &plausible{from: 0.2, to: 2, ground: "standard", source: "EN 1991-1-1 table 6.10: 0 to 1, British annex 0.6; 1.5 for flat roofs with access", zero: true, slips: "kg/m2 (60) or Pa (600)"}},
		{"left_edge", false, &shape{kind: isText, words: []string{"verge", "party_wall", "abutment", "sloping"}}, nil},
		{"modules", false, &shape{kind: isList, fewest: 0, most: 5000, each: &shapeOfPlacedModule}, nil},
		{"mounting_mass_kg", false, &shapeOfNotNegative, &plausible{from: 3, to: 20000, ground: "common practice", source: "1.5 to 5 kg/m²", slips: "g; of one module"}},
		{"noggins", false, &shape{kind: isList, fewest: 0, most: 2000, each: &shapeOfNoggin}, nil},
		{"note", false, &shapeOfText, nil},
		{"openings", false, &shape{kind: isList, fewest: 0, most: 500, each: &shapeOfRoofOpening}, nil},
		{"pathways", false, &shape{kind: isList, fewest: 0, most: 100, each: &shapeOfRoofPathway}, nil},
		{"penetrations", false, &shape{kind: isList, fewest: 0, most: 2000, each: &shapeOfRoofPenetration}, nil},
		{"pitch_deg", false, &shape{kind: isNumber, whole: false, above: false, least: 0, greatest: 90}, &plausible{from: 1, to: 65, ground: "standard", source: "BS 5534: 12.5 to 60 for tiles; halls 4 to 10, flat 1 to 3", zero: true, slips: "per cent (78) or ratio for degrees; radians (0.66)"}},
		{"projection_mm", false, &shapeOfNotNegative, &plausible{from: 5, to: 600, ground: "common practice", source: "80 to 200", zero: true, slips: "cm (13); m (0.13)"}},
		{"rafters", false, &shapeOfRafterLayout, nil},
		{"rails", false, &shape{kind: isList, fewest: 0, most: 2000, each: &shapeOfRail}, nil},
		{"ridge_height_m", false, &shapeOfPositive, &plausible{from: 2, to: 40, ground: "common practice", source: "4 to 12", slips: "mm for m (5770); ft (19)"}},
		{"right_edge", false, &shape{kind: isText, words: []string{"verge", "party_wall", "abutment", "sloping"}}, nil},
		{"slope_length_mm", false, &shapeOfPositive, &plausible{from: 1000, to: 60000, ground: "common practice", source: "2.5 to 9 m homes, to 30 m halls; a bay over an extension 1.2", slips: "m for mm (4.75); cm (475)"}},
		{"snow_drift", false, &shapeOfSnowDrift, nil},
		{"snow_obstruction", false, &shape{kind: isText, words: []string{"none", "snow_guard", "parapet", "array_ledge", "other"}}, nil},
		{"tile_work", false, &shapeOfTileWork, nil},
		{"tilt_to_roof_deg", false, &shape{kind: isNumber, whole: false, above: false, least: 0, greatest: 90}, &plausible{from: 1, to: 40, ground: "common practice", source: "0; racks 5 to 35", zero: true, slips: "pitch in its place"}},
		{"top_edge", false, &shape{kind: isText, words: []string{"ridge", "mono_ridge", "abutment", "point"}}, nil},
	}}

	shapeOfPlanningStatus = shape{kind: isObject, defined: "handover.schema.json#/$defs/planning_status", must: 0, members: []memberShape{
		{"conservation_area", false, &shape{kind: isTrue}, nil},
		{"listed_building", false, &shape{kind: isTrue}, nil},
		{"note", false, &shapeOfText, nil},
		{"permission_needed", false, &shape{kind: isTrue}, nil},
		{"scheduled_monument", false, &shape{kind: isTrue}, nil},
		{"world_heritage_site", false, &shape{kind: isTrue}, nil},
	}}

	shapeOfPoleEarthing = shape{kind: isObject, defined: "earthing.schema.json#/$defs/pole_earthing", must: 2, members: []memberShape{
		{"at_one_point", false, &shape{kind: isTrue}, nil},
		{"by", false, &shape{kind: isText, words: []string{"solid", "fuse", "resistor", "electronic"}}, nil},
		{"can_be_lifted", false, &shape{kind: isTrue}, nil},
		{"conductor_mm2", false, &shapeOfPositive, &plausible{from: 1.5, to: 300, ground: "standard", source: "IEC 60364-7-712", slips: "AWG"}},
		{"device", false, &shapeOfID, nil},
		{"id", true, &shapeOfID, nil},
		{"inverter", true, &shapeOfID, nil},
		{"note", false, &shapeOfText, nil},
		{"pole", false, &shape{kind: isText, words: []string{"positive", "negative", "midpoint"}}, nil},
		{"reason", false, &shapeOfText, nil},
	}}

	shapeOfPositive = shape{kind: isNumber, whole: false, above: true, least: 0, greatest: 1000000000}

	shapeOfProject = shape{kind: isObject, defined: "project.schema.json#/$defs/project", must: 3, members: []memberShape{
		{"certification_scheme", false, &shape{kind: isTrue}, nil},
		{"country", true, &shape{kind: isText, form: isCountry, pattern: "^[A-Z]{2}$"}, nil},
		{"design_date", false, &shapeOfDate, nil},
		{"note", false, &shapeOfText, nil},
		{"premises", false, &shape{kind: isText, words: []string{"dwelling", "flats", "commercial", "industrial", "agricultural", "public"}}, nil},
		{"reference", true, &shapeOfText, nil},
		{"stage", true, &shape{kind: isText, words: []string{"design", "as_built"}}, nil},
	}}

	shapeOfProtectiveDevice = shape{kind: isObject, defined: "accircuit.schema.json#/$defs/protective_device", must: 1, members: []memberShape{
		{"breaking_capacity_dc_ka", false, &shapeOfPositive, &plausible{from: 0.5, to: 100, ground: "standard", source: "IEC 60269-6 10 to 50", slips: "A for kA"}},
		{"breaking_capacity_ka", false, &shapeOfPositive, &plausible{from: 0.5, to: 200, ground: "standard", source: "IEC 60898-1 1.5 to 25; 60947-2 to 150; BS 88 80 to 120; RCCB (making capacity) 0.5", slips: "A for kA (6000)"}},
		{"characteristic", false, &shape{kind: isText, words: []string{"B", "C", "D", "K", "Z", "gG", "gM", "aM", "gPV", "gR", "gBat", "semi_enclosed", "inverse_time"}}, nil},
		{"continuous_full_load", false, &shape{kind: isTrue}, nil},
		{"conventional_current_a", false, &shapeOfPositive, &plausible{from: 0.7, to: 6400, ground: "standard", source: "1.13 to 2.1 times the rated current", slips: "multiple (1.45) in its place"}},
		{"derating_pct_per_k", false, &shapeOfNotNegative, &plausible{from: 0, to: 2, ground: "common practice", source: "thermal-magnetic 0.3 to 0.8", zero: true, slips: "percent at 10 K in its place; factor 0.95"}},
		{"flow", false, &shape{kind: isText, words: []string{"bidirectional", "unidirectional", "not_stated"}}, nil},
		{"flow_declared_by_maker", false, &shape{kind: isTrue}, nil},
		{"isolating", false, &shape{kind: isTrue}, nil},
		{"kind", true, &shape{kind: isText, words: []string{"fuse", "circuit_breaker", "rccb", "rcbo", "afdd", "afdd_with_rcbo", "dc_circuit_breaker", "rcm"}}, nil},
		{"let_through_a2s", false, &shapeOfPositive, &plausible{from: 30, to: 100000000, ground: "common practice", source: "10 A gG about 500, class 3 breaker 32 A 45000, 1250 A moulded case 1e7", slips: "kA2s for A2s"}},
		{"line_load_marked", false, &shape{kind: isTrue}, nil},
		{"listed_for_pv", false, &shape{kind: isTrue}, nil},
		{"lockable_off", false, &shape{kind: isTrue}, nil},
		{"note", false, &shapeOfText, nil},
		{"opens_neutral", false, &shape{kind: isTrue}, nil},
		{"operates_0_2s_a", false, &shapeOfPositive, &plausible{from: 2, to: 40000, ground: "standard", source: "BS 7671 tables 41.2 to 41.4", slips: "kA; multiple of In in its place"}},
		{"operates_0_4s_a", false, &shapeOfPositive, &plausible{from: 2, to: 40000, ground: "standard", source: "BS 7671 tables 41.2 to 41.4", slips: "kA; multiple of In in its place"}},
		{"operates_1s_a", false, &shapeOfPositive, &plausible{from: 1.5, to: 40000, ground: "standard", source: "BS 7671 tables 41.2 to 41.4", slips: "kA; multiple of In in its place"}},
		{"operates_5s_a", false, &shapeOfPositive, &plausible{from: 1, to: 40000, ground: "standard", source: "BS 7671 tables 41.2 to 41.4", slips: "kA; multiple of In in its place"}},
		{"polarity_sensitive", false, &shape{kind: isTrue}, nil},
		{"poles", false, &shape{kind: isNumber, whole: true, above: false, least: 1, greatest: 8}, &plausible{from: 1, to: 4, ground: "standard", source: "IEC 60898-1, 60947-2 (ganged DC types 8)"}},
		{"power_loss_w", false, &shapeOfNotNegative, &plausible{from: 0.1, to: 250, ground: "standard", source: "IEC 60898-1 table: 3 W to 10 A, 13 W at 63 A, 20 W at 125 A a pole; BS 88 to 60", zero: true, slips: "mW; of all poles"}},
		{"protected_poles", false, &shape{kind: isNumber, whole: true, above: false, least: 0, greatest: 8}, &plausible{from: 0, to: 4, ground: "standard", source: "never above the poles", zero: true}},
		{"rated_a", false, &shapeOfPositive, &plausible{from: 0.5, to: 3200, ground: "standard", source: "IEC 60898-1, 60269-1, 60947-2 preferred values", slips: "kA; adjustable frame"}},
		{"rated_ambient_c", false, &shapeOfTemperature, &plausible{from: 20, to: 65, ground: "standard", source: "IEC 60898-1 30; 60947-2 30 or 40; 60269 20"}},
		{"rcd_type", false, &shape{kind: isText, words: []string{"AC", "A", "F", "B", "EV"}}, nil},
		{"residual_current_ma", false, &shapeOfPositive, &plausible{from: 6, to: 3000, usual: []float64{6, 10, 30, 100, 300, 500, 1000, 3000}, ground: "standard", source: "IEC 61008-1: 6, 10, 30, 100, 300, 500; IEC 60755 and 60947-2 annex B to 3000", slips: "A for mA (0.03)"}},
		{"standard", false, &shapeOfText, nil},
		{"terminal_max_c", false, &shapeOfTemperature, &plausible{from: 60, to: 110, ground: "standard", source: "IEC 60947-1, 60898-1 test rise 60 to 70 K; printed 60, 70, 75, 90"}},
		{"time_delayed", false, &shape{kind: isTrue}, nil},
		{"voltage_ac_v", false, &shapeOfPositive, &plausible{from: 100, to: 1000, ground: "standard", source: "IEC 60898-1 230/400; IEC 60947-2 to 1000"}},
		{"voltage_dc_v", false, &shapeOfPositive, &plausible{from: 24, to: 1500, ground: "standard", source: "IEC 60269-6 gPV 400 to 1500; IEC 60947-2", slips: "AC rating taken for DC"}},
		{"withdrawable_under_load", false, &shape{kind: isTrue}, nil},
	}}

	shapeOfRCDReading = shape{kind: isObject, defined: "commissioning.schema.json#/$defs/rcd_reading", must: 2, members: []memberShape{
		{"date", false, &shapeOfDate, nil},
		{"id", true, &shapeOfID, nil},
		{"instrument", false, &shapeOfID, nil},
		{"note", false, &shapeOfText, nil},
		{"part", true, &shapeOfID, nil},
		{"test_button_works", false, &shape{kind: isTrue}, nil},
		{"test_current_form", false, &shape{kind: isText, words: []string{"AC", "A", "B"}}, nil},
		{"test_current_ma", false, &shapeOfPositive, &plausible{from: 3, to: 3000, ground: "standard", source: "IEC 61557-6: 0.5, 1 and 5 times IΔn", slips: "A for mA (0.03); half or five times the rated current is meant so"}},
		{"trip_time_ms", false, &shapeOfNotNegative, &plausible{from: 2, to: 500, ground: "standard", source: "IEC 61008-1: 300 general, 130 to 500 type S, 40 at 5 IΔn", slips: "s for ms (0.025); end of the range (300, 1999) for \"did not trip\""}},
		{"tripped", false, &shape{kind: isTrue}, nil},
	}}

	shapeOfRafterLayout = shape{kind: isObject, defined: "roof.schema.json#/$defs/rafter_layout", must: 0, members: []memberShape{
		{"altered", false, &shape{kind: isTrue}, nil},
		{"battens_share_load", false, &shape{kind: isTrue}, nil},
		{"condition", false, &shape{kind: isText, words: []string{"sound", "doubtful", "defective"}}, nil},
		{"count", false, &shapeOfCount, &plausible{from: 2, to: 400, ground: "common practice", source: ""}},
		{"direction", false, &shape{kind: isText, words: []string{"up_slope", "across_slope"}}, nil},
		{"first_mm", false, &shapeOfSigned, &plausible{from: -500, to: 6000, ground: "common practice", source: "within one spacing of the edge", zero: true, near: 10, slips: "m or cm for mm"}},
		{"height_mm", false, &shapeOfPositive, &plausible{from: 40, to: 800, ground: "common practice", source: "75 to 250", slips: "cm (15); inches (6); swapped with the width"}},
		{"lines", false, &shape{kind: isList, fewest: 0, most: 500, each: &shapeOfRafterLine}, nil},
		{"note", false, &shapeOfText, nil},
		{"service_class", false, &shape{kind: isNumber, words: []string{"1", "2", "3"}}, nil},
		{"spacing_mm", false, &shapeOfPositive, &plausible{from: 250, to: 6500, ground: "standard", source: "rafters 300 to 900 (trusses 600), purlins of halls 1000 to 2500, portal frames to 6000", slips: "m (0.6) or cm (60)"}},
		{"span_mm", false, &shapeOfPositive, &plausible{from: 500, to: 15000, ground: "standard", source: "span tables 1500 to 4500; purlins of halls 4000 to 7500", slips: "m (2.4) or cm (240)"}},
		{"structure", false, &shape{kind: isText, words: []string{"cut_roof", "trussed_rafter", "attic_truss", "purlin_roof", "steel_frame", "concrete_deck", "other"}}, nil},
		{"supports", false, &shape{kind: isText, words: []string{"none", "purlins", "struts", "purlins_and_struts", "truss_members"}}, nil},
		{"timber_bending_n_per_mm2", false, &shapeOfPositive, &plausible{from: 10, to: 70, ground: "standard", source: "EN 338: C14 14, C24 24, D70 70", slips: "allowable stress of an old code (7.5)"}},
		{"timber_class", false, &shape{kind: isText, words: []string{"C14", "C16", "C18", "C20", "C22", "C24", "C27", "C30", "C35", "C40", "D24", "D30", "D40", "GL24h", "GL28h"}}, nil},
		{"timber_density_kg_per_m3", false, &shapeOfPositive, &plausible{from: 280, to: 900, ground: "standard", source: "EN 338: C14 290, C24 350, D30 530, D70 800", slips: "mean for characteristic; kN/m3 (3.5)"}},
		{"timber_evidence", false, &shape{kind: isText, words: []string{"grading_mark", "grading_report", "drawing", "assumed"}}, nil},
		{"width_mm", false, &shapeOfPositive, &plausible{from: 20, to: 400, ground: "common practice", source: "35 to 100, old oak to 150; cold-formed purlins 60 to 90", slips: "cm (5); inches (2)"}},
	}}

	shapeOfRafterLine = shape{kind: isObject, defined: "roof.schema.json#/$defs/rafter_line", must: 2, members: []memberShape{
		{"at_mm", true, &shapeOfSigned, &plausible{from: -2000, to: 200000, ground: "common practice", source: "within the plane", zero: true, near: 10, slips: "m or cm for mm"}},
		{"height_mm", false, &shapeOfPositive, &plausible{from: 40, to: 800, ground: "common practice", source: "75 to 250", slips: "cm (15); inches (6)"}},
		{"id", true, &shapeOfID, nil},
		{"note", false, &shapeOfText, nil},
		{"width_mm", false, &shapeOfPositive, &plausible{from: 20, to: 400, ground: "common practice", source: "35 to 100", slips: "cm (5); inches (2)"}},
	}}

	shapeOfRail = shape{kind: isObject, defined: "roof.schema.json#/$defs/rail", must: 4, members: []memberShape{
		{"carried_by", false, &shape{kind: isText, words: []string{"fixings", "rails_below"}}, nil},
		{"datasheet", false, &shapeOfID, nil},
		{"direction", true, &shape{kind: isText, words: []string{"across_slope", "up_slope"}}, nil},
		{"id", true, &shapeOfID, nil},
		{"joints", false, &shape{kind: isList, fewest: 0, most: 100, each: &shapeOfRailJoint}, nil},
		{"length_mm", false, &shapeOfPositive, &plausible{from: 200, to: 60000, ground: "common practice", source: "1000 to 15000; joints included", slips: "m (3.64) or cm (364)"}},
		{"note", false, &shapeOfText, nil},
		{"x_mm", true, &shapeOfSigned, &plausible{from: -2000, to: 200000, ground: "common practice", source: "within the plane", zero: true, near: 10, slips: "m or cm for mm"}},
		{"y_mm", true, &shapeOfSigned, &plausible{from: -2000, to: 60000, ground: "common practice", source: "within the plane", zero: true, near: 10, slips: "m or cm for mm"}},
	}}

	shapeOfRailDatasheet = shape{kind: isObject, defined: "roof.schema.json#/$defs/rail_datasheet", must: 0, members: []memberShape{
		{"cantilever_max_fraction", false, &shapeOfFraction, &plausible{from: 0.1, to: 0.5, ground: "common practice", source: "0.2 to 0.4"}},
		{"cantilever_max_mm", false, &shapeOfPositive, &plausible{from: 50, to: 1000, ground: "common practice", source: "150 to 500", slips: "cm"}},
		{"continuous_max_m", false, &shapeOfPositive, &plausible{from: 3, to: 40, ground: "common practice", source: "6 to 20", slips: "mm for m"}},
		{"end_beyond_clamp_min_mm", false, &shapeOfNotNegative, &plausible{from: 5, to: 150, ground: "common practice", source: "10 to 50", zero: true, slips: "cm"}},
		{"expansion_gap_min_mm", false, &shapeOfPositive, &plausible{from: 2, to: 60, ground: "common practice", source: "10 to 30; aluminium 12 m over 60 K moves 17 mm", slips: "cm"}},
		{"expansion_um_per_m_per_k", false, &shapeOfPositive, &plausible{from: 9, to: 26, ground: "standard", source: "handbook: aluminium 23 to 24, stainless 10 to 17, steel 12", slips: "per K as fraction (23e-6)"}},
		{"height_mm", false, &shapeOfPositive, &plausible{from: 15, to: 200, ground: "common practice", source: "25 to 80; long spans 120", slips: "cm"}},
		{"spans", false, &shape{kind: isList, fewest: 0, most: 100, each: &shapeOfRailSpan}, nil},
	}}

	shapeOfRailJoint = shape{kind: isObject, defined: "roof.schema.json#/$defs/rail_joint", must: 2, members: []memberShape{
		{"at_mm", true, &shapeOfNotNegative, &plausible{from: 0, to: 60000, ground: "common practice", source: "within the rail", zero: true, slips: "m or cm"}},
		{"gap_mm", false, &shapeOfNotNegative, &plausible{from: 0, to: 60, ground: "common practice", source: "0 (butted) to 30", zero: true, slips: "cm; m"}},
		{"id", true, &shapeOfID, nil},
		{"kind", false, &shape{kind: isText, words: []string{"rigid", "sliding", "open"}}, nil},
		{"note", false, &shapeOfText, nil},
	}}

	shapeOfRailSpan = shape{kind: isObject, defined: "roof.schema.json#/$defs/rail_span", must: 1, members: []memberShape{
		{"down_kn_per_m", false, &shapeOfNotNegative, &plausible{from: 0.1, to: 12, ground: "common practice", source: "wind and snow 0.8 to 6", slips: "N/m"}},
		{"span_max_mm", true, &shapeOfPositive, &plausible{from: 300, to: 4000, ground: "common practice", source: "800 to 2500", slips: "m for mm"}},
		{"uplift_kn_per_m", false, &shapeOfNotNegative, &plausible{from: 0.1, to: 8, ground: "common practice", source: "wind 0.5 to 3 on 0.9 to 1.2 m strips", zero: true, slips: "N/m"}},
	}}

	shapeOfRoof = shape{kind: isObject, defined: "roof.schema.json#/$defs/roof", must: 0, members: []memberShape{
		{"note", false, &shapeOfText, nil},
		{"plan_area_m2", false, &shapeOfPositive, &plausible{from: 15, to: 50000, ground: "common practice", source: "homes 40 to 250; halls to 30000", slips: "mm2; ft2"}},
		{"planes", false, &shape{kind: isList, fewest: 0, most: 1000, each: &shapeOfPlane}, nil},
		{"shape", false, &shape{kind: isText, words: []string{"duopitch", "monopitch", "hipped", "mansard", "flat", "other"}}, nil},
		{"sprinklered", false, &shape{kind: isTrue}, nil},
		{"storeys", false, &shapeOfCount, &plausible{from: 1, to: 8, ground: "common practice", source: "1 to 4", zero: true}},
		{"survey", false, &shapeOfRoofSurvey, nil},
		{"work_at_height", false, &shapeOfWorkAtHeight, nil},
	}}

	shapeOfRoofCovering = shape{kind: isObject, defined: "roof.schema.json#/$defs/roof_covering", must: 0, members: []memberShape{
		{"age_yr", false, &shapeOfNotNegative, &plausible{from: 0, to: 150, ground: "common practice", source: "", zero: true, slips: "year of building (1998) in its place"}},
		{"batten_spacing_mm", false, &shapeOfPositive, &plausible{from: 50, to: 650, ground: "standard", source: "BS 5534: plain tile 88 to 115, large tile 280 to 380", slips: "cm (10, 34)"}},
		{"batten_thickness_mm", false, &shapeOfNotNegative, &plausible{from: 10, to: 60, ground: "standard", source: "BS 5534: 25; up to 50", zero: true, slips: "cm (2.5)"}},
		{"condition", false, &shape{kind: isText, words: []string{"sound", "worn", "defective"}}, nil},
		{"counter_batten_thickness_mm", false, &shapeOfNotNegative, &plausible{from: 10, to: 100, ground: "common practice", source: "25 to 50", zero: true, slips: "cm"}},
		{"fragile", false, &shape{kind: isTrue}, nil},
		{"kind", false, &shape{kind: isText, words: []string{"plain_tile", "interlocking_tile", "pantile", "natural_slate", "fibre_cement_slate", "shingle", "standing_seam", "trapezoidal_sheet", "corrugated_sheet", "fibre_cement_sheet", "membrane", "thatch", "modules_as_covering", "other"}}, nil},
		{"layers", false, &shapeOfCount, &plausible{from: 1, to: 3, ground: "common practice", source: "", zero: true}},
		{"life_expected_yr", false, &shapeOfNotNegative, &plausible{from: 1, to: 120, ground: "common practice", source: "", zero: true, slips: "calendar year (2060) in its place"}},
		{"maker_consulted", false, &shape{kind: isTrue}, nil},
		{"mass_kg_per_m2", false, &shapeOfPositive, &plausible{from: 2, to: 150, ground: "standard", source: "fibre-cement slate 20, slate 25 to 50, interlocking tile 40 to 55, plain tile 60 to 90, sheet 4 to 15, stone slate 100 to 150", slips: "kN/m2 (0.8) or of one tile"}},
		{"material", false, &shape{kind: isText, words: []string{"clay", "concrete", "slate", "fibre_cement", "steel", "aluminium", "zinc", "copper", "bitumen", "plastic", "timber", "glass", "other"}}, nil},
		{"note", false, &shapeOfText, nil},
		{"profile_height_mm", false, &shapeOfNotNegative, &plausible{from: 1, to: 150, ground: "common practice", source: "flat 5 to 15, pantile 50 to 80, sheet 20 to 110", zero: true, slips: "cm"}},
		{"sarking_thickness_mm", false, &shapeOfNotNegative, &plausible{from: 6, to: 60, ground: "common practice", source: "12 to 25", zero: true, slips: "cm (1.8)"}},
		{"sheet_thickness_mm", false, &shapeOfPositive, &plausible{from: 0.3, to: 13, ground: "common practice", source: "steel 0.5 to 0.7, aluminium 0.7 to 1.0, fibre-cement 6", slips: "cm; m"}},
		{"underlay", false, &shape{kind: isText, words: []string{"none", "bitumen_felt", "membrane", "boards"}}, nil},
	}}

	shapeOfRoofEdge = shape{kind: isObject, defined: "roof.schema.json#/$defs/roof_edge", must: 6, members: []memberShape{
		{"from_x_mm", true, &shapeOfSigned, &plausible{from: -2000, to: 200000, ground: "common practice", source: "within the plane", zero: true, near: 10, slips: "m or cm for mm"}},
		{"from_y_mm", true, &shapeOfSigned, &plausible{from: -2000, to: 60000, ground: "common practice", source: "within the plane", zero: true, near: 10, slips: "m or cm for mm"}},
		{"id", true, &shapeOfID, nil},
		{"kind", true, &shape{kind: isText, words: []string{"ridge", "eaves", "verge", "hip", "valley", "abutment", "parapet", "party_wall", "compartment_wall", "movement_joint"}}, nil},
		{"note", false, &shapeOfText, nil},
		{"to_x_mm", true, &shapeOfSigned, &plausible{from: -2000, to: 200000, ground: "common practice", source: "within the plane", zero: true, near: 10, slips: "m or cm for mm"}},
		{"to_y_mm", true, &shapeOfSigned, &plausible{from: -2000, to: 60000, ground: "common practice", source: "within the plane", zero: true, near: 10, slips: "m or cm for mm"}},
	}}

	shapeOfRoofOpening = shape{kind: isObject, defined: "roof.schema.json#/$defs/roof_opening", must: 4, members: []memberShape{
		{"escape", false, &shape{kind: isTrue}, nil},
		{"height_mm", false, &shapeOfNotNegative, &plausible{from: 1, to: 4000, ground: "common practice", source: "window 30 to 100, chimney 500 to 2500", zero: true, slips: "m (0.45)"}},
		{"id", true, &shapeOfID, nil},
		{"in_use", false, &shape{kind: isTrue}, nil},
		{"kind", true, &shape{kind: isText, words: []string{"roof_window", "dormer", "chimney", "soil_pipe", "vent", "flue", "roof_hatch", "smoke_vent", "rooflight", "aerial", "lightning_rod", "standpipe", "other"}}, nil},
		{"length_mm", false, &shapeOfPositive, &plausible{from: 40, to: 10000, ground: "common practice", source: "window 780 to 1800", slips: "cm (98); m"}},
		{"note", false, &shapeOfText, nil},
		{"opens", false, &shape{kind: isTrue}, nil},
		{"width_mm", false, &shapeOfPositive, &plausible{from: 40, to: 8000, ground: "common practice", source: "vent pipe 50 to 150, window 470 to 1340, dormer to 5000", slips: "cm (55); m (0.55)"}},
		{"x_mm", true, &shapeOfSigned, &plausible{from: -2000, to: 200000, ground: "common practice", source: "within the plane", zero: true, near: 10, slips: "m or cm for mm"}},
		{"y_mm", true, &shapeOfSigned, &plausible{from: -2000, to: 60000, ground: "common practice", source: "within the plane", zero: true, near: 10, slips: "m or cm for mm"}},
	}}

	shapeOfRoofPathway = shape{kind: isObject, defined: "roof.schema.json#/$defs/roof_pathway", must: 1, members: []memberShape{
		{"carries_persons", false, &shape{kind: isTrue}, nil},
		{"direction", false, &shape{kind: isText, words: []string{"up_slope", "across_slope"}}, nil},
		{"from_mm", false, &shapeOfSigned, &plausible{from: -2000, to: 200000, ground: "common practice", source: "within the plane", zero: true, near: 10, slips: "m or cm for mm"}},
		{"id", true, &shapeOfID, nil},
		{"note", false, &shapeOfText, nil},
		{"on_street_side", false, &shape{kind: isTrue}, nil},
		{"reaches_ridge", false, &shape{kind: isTrue}, nil},
		{"serves", false, &shape{kind: isText, words: []string{"ridge", "escape_opening", "roof_hatch", "standpipe", "smoke_vent", "array"}}, nil},
		{"unobstructed", false, &shape{kind: isTrue}, nil},
		{"width_mm", false, &shapeOfPositive, &plausible{from: 250, to: 5000, ground: "standard", source: "IFC 1205: 914 mm (36 in); 600 to 1000 in Europe", slips: "m (0.8) or cm (80); inches (36)"}},
	}}

	shapeOfRoofPenetration = shape{kind: isObject, defined: "roof.schema.json#/$defs/roof_penetration", must: 1, members: []memberShape{
		{"cable_pinched", false, &shape{kind: isTrue}, nil},
		{"drip_loop", false, &shape{kind: isTrue}, nil},
		{"fire_stopped", false, &shape{kind: isTrue}, nil},
		{"id", true, &shapeOfID, nil},
		{"kind", false, &shape{kind: isText, words: []string{"cable", "conduit", "bolt", "pipe", "other"}}, nil},
		{"note", false, &shapeOfText, nil},
		{"run", false, &shapeOfID, nil},
		{"underlay", false, &shape{kind: isText, words: []string{"sealed_grommet", "lapped", "taped", "slit", "no_underlay"}}, nil},
		{"weathering", false, &shape{kind: isText, words: []string{"flashing", "purpose_made_tile", "sealed_boot", "sealing_washer", "under_lap", "sealant_only", "none"}}, nil},
		{"x_mm", false, &shapeOfSigned, &plausible{from: -2000, to: 200000, ground: "common practice", source: "within the plane", zero: true, near: 10, slips: "m or cm for mm"}},
		{"y_mm", false, &shapeOfSigned, &plausible{from: -2000, to: 60000, ground: "common practice", source: "within the plane", zero: true, near: 10, slips: "m or cm for mm"}},
	}}

	shapeOfRoofSurvey = shape{kind: isObject, defined: "roof.schema.json#/$defs/roof_survey", must: 0, members: []memberShape{
		{"asbestos", false, &shape{kind: isText, words: []string{"none", "suspected", "present"}}, nil},
		{"asbestos_rules_kept", false, &shape{kind: isTrue}, nil},
		{"competence", false, &shapeOfText, nil},
		{"damp_seen", false, &shape{kind: isTrue}, nil},
		{"date", false, &shapeOfDate, nil},
		{"engineer_report", false, &shapeOfText, nil},
		{"engineer_report_date", false, &shapeOfDate, nil},
		{"evidence", false, &shapeOfText, nil},
		{"method", false, &shape{kind: isText, words: []string{"from_inside", "from_outside", "both", "photographs", "drawings", "software_only"}}, nil},
		{"note", false, &shapeOfText, nil},
		{"person_named_in_evidence", false, &shape{kind: isTrue}, nil},
		{"rafters_seen", false, &shape{kind: isTrue}, nil},
		{"role", false, &shape{kind: isText, words: []string{"structural_engineer", "building_surveyor", "roofer", "installer", "designer", "other"}}, nil},
		{"rot_or_insects_seen", false, &shape{kind: isTrue}, nil},
		{"sag_seen", false, &shape{kind: isTrue}, nil},
		{"snow_standard", false, &shapeOfText, nil},
		{"split_timber_seen", false, &shape{kind: isTrue}, nil},
		{"strength_found", false, &shape{kind: isText, words: []string{"sufficient", "sufficient_if_strengthened", "insufficient"}}, nil},
		{"strengthened", false, &shape{kind: isTrue}, nil},
		{"wildlife_found", false, &shape{kind: isTrue}, nil},
		{"wind_standard", false, &shapeOfText, nil},
	}}

	shapeOfRun = shape{kind: isObject, defined: "cable.schema.json#/$defs/run", must: 4, members: []memberShape{
		{"bend_radius_min_mm", false, &shapeOfPositive, &plausible{from: 8, to: 1500, ground: "common practice", source: "three to eight outside diameters", slips: "cm for mm (6); m"}},
		{"cable", false, &shapeOfID, nil},
		{"colour_negative", false, &shape{kind: isText, words: []string{"black", "brown", "red", "orange", "yellow", "green", "green_yellow", "blue", "white", "grey", "other"}}, nil},
		{"colour_positive", false, &shape{kind: isText, words: []string{"black", "brown", "red", "orange", "yellow", "green", "green_yellow", "blue", "white", "grey", "other"}}, nil},
		{"conductors_per_pole", false, &shape{kind: isNumber, whole: true, above: false, least: 1, greatest: 12}, &plausible{from: 1, to: 6, ground: "common practice", source: "1; 2 to 4 on large supplies", slips: "cores in its place"}},
		{"connectors", false, &shape{kind: isList, fewest: 0, most: 100, each: &shapeOfConnectorPair}, nil},
		{"double_insulated", false, &shape{kind: isTrue}, nil},
		{"drop_budget_pct", false, &shapeOfPositive, &plausible{from: 0.05, to: 5, ground: "standard", source: "IEC 60364-5-52 table G.52.1: 3 to 5 % in all", slips: "fraction for % (0.01 for 1)"}},
		{"end", false, &shapeOfCableEnd, nil},
		{"from", true, &shapeOfTerminal, nil},
		{"id", true, &shapeOfID, nil},
		{"identified_by_system", false, &shape{kind: isTrue}, nil},
		{"jointed", false, &shape{kind: isTrue}, nil},
		{"laid_with", false, &shapeOfID, nil},
		{"neutral_conductor", false, &shape{kind: isTrue}, nil},
		{"note", false, &shapeOfText, nil},
		{"poles_laid_together", false, &shape{kind: isTrue}, nil},
		{"protective_by_armour", false, &shape{kind: isTrue}, nil},
		{"protective_cable", false, &shapeOfID, nil},
		{"protective_in_service", false, &shape{kind: isTrue}, nil},
		{"segments", false, &shape{kind: isList, fewest: 0, most: 200, each: &shapeOfSegment}, nil},
		{"service", true, &shape{kind: isText, words: []string{"pv_string", "pv_array", "battery", "ac", "protective", "bonding", "earthing", "control"}}, nil},
		{"start", false, &shapeOfCableEnd, nil},
		{"to", true, &shapeOfTerminal, nil},
	}}

	shapeOfSPD = shape{kind: isObject, defined: "surge.schema.json#/$defs/spd", must: 2, members: []memberShape{
		{"backup_device", false, &shapeOfID, nil},
		{"built_into", false, &shapeOfID, nil},
		{"can_be_withdrawn", false, &shape{kind: isTrue}, nil},
		{"circuit", false, &shape{kind: isText, words: []string{"pv_dc", "battery_dc", "ac", "signal"}}, nil},
		{"connected_at", true, &shapeOfTerminal, nil},
		{"connection", false, &shape{kind: isText, words: []string{"spur", "through"}}, nil},
		{"datasheet", false, &shapeOfID, nil},
		{"earth_lead_mm", false, &shapeOfNotNegative, &plausible{from: 10, to: 10000, ground: "standard", source: "as for the member before", zero: true, slips: "m (0.2) or cm (20) for mm"}},
		{"earth_lead_mm2", false, &shapeOfPositive, &plausible{from: 2.5, to: 95, ground: "standard", source: "IEC 60364-5-53 534: 6 type 2, 16 type 1", slips: "AWG"}},
		{"earthed_at", false, &shapeOfTerminal, nil},
		{"id", true, &shapeOfID, nil},
		{"indicator_visible", false, &shape{kind: isTrue}, nil},
		{"live_leads_mm", false, &shapeOfNotNegative, &plausible{from: 10, to: 3000, ground: "standard", source: "IEC 60364-5-53 534: 0.5 m in all, 1 m at most", zero: true, slips: "m (0.15) or cm (15) for mm"}},
		{"live_leads_mm2", false, &shapeOfPositive, &plausible{from: 1.5, to: 70, ground: "standard", source: "IEC 60364-5-53 534: 2.5 type 2, 6 type 1", slips: "AWG"}},
		{"modes", false, &shape{kind: isText, words: []string{"poles_to_earth", "between_poles", "poles_to_earth_and_between", "lines_to_earth", "lines_and_neutral_to_earth", "lines_to_neutral_and_neutral_to_earth"}}, nil},
		{"note", false, &shapeOfText, nil},
		{"place", false, &shapeOfPlace, nil},
		{"remote_contact_used", false, &shape{kind: isTrue}, nil},
		{"status_good", false, &shape{kind: isTrue}, nil},
	}}

	shapeOfSPDDatasheet = shape{kind: isObject, defined: "surge.schema.json#/$defs/spd_datasheet", must: 1, members: []memberShape{
		{"ambient_max_c", false, &shapeOfTemperature, &plausible{from: 40, to: 90, ground: "standard", source: "EN 61643-11: normal range to 40, extended to 70; 80 and 85 printed"}},
		{"backup_device_max_a", false, &shapeOfPositive, &plausible{from: 10, to: 630, ground: "standard", source: "16 to 315 gG printed", slips: "kA"}},
		{"configuration", false, &shape{kind: isText, words: []string{"y", "delta", "l_configuration", "3_plus_1", "1_plus_1", "4_plus_0", "2_plus_0"}}, nil},
		{"disconnector_built_in", false, &shape{kind: isTrue}, nil},
		{"iimp_ka", false, &shapeOfPositive, &plausible{from: 1, to: 100, ground: "standard", source: "EN 61643-11: 1 to 25 a pole", slips: "A for kA; 8/20 value in its place"}},
		{"imax_ka", false, &shapeOfPositive, &plausible{from: 3, to: 160, ground: "standard", source: "EN 61643-11: 10 to 100; 1.5 to 3 times In", slips: "A for kA"}},
		{"in_ka", false, &shapeOfPositive, &plausible{from: 1.5, to: 60, ground: "standard", source: "EN 61643-11: 0.05 to 20 preferred; 5 at least by BS 7671 534", slips: "A for kA"}},
		{"ip", false, &shapeOfIP, nil},
		{"isccr_ka", false, &shapeOfPositive, &plausible{from: 1, to: 120, ground: "standard", source: "EN 61643-11: 1.5 to 100", slips: "A for kA (25000)"}},
		{"iscpv_a", false, &shapeOfPositive, &plausible{from: 50, to: 30000, ground: "standard", source: "EN 61643-31: 1000, 10000, 11000 printed", slips: "kA for A (10, 11); short-circuit current of the module in its place (14):"}},
		{"itotal_ka", false, &shapeOfPositive, &plausible{from: 3, to: 200, ground: "standard", source: "EN 61643-11, -31", slips: "A for kA"}},
		{"note", false, &shapeOfText, nil},
		{"pluggable", false, &shape{kind: isTrue}, nil},
		{"poles", false, &shape{kind: isNumber, whole: true, above: false, least: 1, greatest: 8}, &plausible{from: 1, to: 4, ground: "standard", source: "EN 61643-11, -31: 1 to 4"}},
		{"remote_contact", false, &shape{kind: isTrue}, nil},
		{"standard", false, &shapeOfText, nil},
		{"status_indicator", false, &shape{kind: isTrue}, nil},
		{"system", false, &shape{kind: isText, words: []string{"pv_dc", "dc", "ac", "signal"}}, nil},
		{"type", true, &shape{kind: isText, words: []string{"T1", "T1+T2", "T2", "T2+T3", "T3"}}, nil},
		{"uc_neutral_to_earth_v", false, &shapeOfPositive, &plausible{from: 120, to: 440, ground: "standard", source: "EN 61643-11; 255 or 264 usual"}},
		{"uc_v", false, &shapeOfPositive, &plausible{from: 120, to: 1700, ground: "standard", source: "EN 61643-11: 255, 264, 275, 320, 335, 350, 385, 440; on DC types equal to Ucpv", slips: "nominal mains voltage in its place (230)"}},
		{"ucpv_to_earth_v", false, &shapeOfPositive, &plausible{from: 100, to: 1700, ground: "standard", source: "EN 61643-31"}},
		{"ucpv_v", false, &shapeOfPositive, &plausible{from: 150, to: 1700, ground: "standard", source: "EN 61643-31; printed 500, 600, 720, 800, 1000, 1060, 1100, 1200, 1500", slips: "Uoc max of the string in its place"}},
		{"up_between_poles_kv", false, &shapeOfPositive, &plausible{from: 0.4, to: 8, ground: "standard", source: "as up_kv, sum of two modes", slips: "V for kV"}},
		{"up_kv", false, &shapeOfPositive, &plausible{from: 0.4, to: 7, ground: "standard", source: "EN 61643-11 0.9 to 2.5; EN 61643-31 1.4 to 6", slips: "V for kV"}},
		{"ut_v", false, &shapeOfPositive, &plausible{from: 120, to: 2500, ground: "standard", source: "EN 61643-11 annex B: 1.32 Uref 5 s (335), 1.73 (440), 1200 + U0 (1453)"}},
	}}

	shapeOfScrewDatasheet = shape{kind: isObject, defined: "roof.schema.json#/$defs/screw_datasheet", must: 0, members: []memberShape{
		{"core_diameter_mm", false, &shapeOfPositive, &plausible{from: 2.5, to: 11, ground: "standard", source: "EN 1995-1-1 8.7.2(4): 0.6 to 0.75 of d", slips: "outer diameter in its place"}},
		{"depth_min_mm", false, &shapeOfPositive, &plausible{from: 15, to: 200, ground: "standard", source: "EN 1995-1-1 8.7.2(3): at least 6 d", slips: "cm"}},
		{"diameter_mm", false, &shapeOfPositive, &plausible{from: 4, to: 14, ground: "standard", source: "EN 14592, EN 1995-1-1 8.7.2 holds for 6 to 12; sheet screws 4.8 to 6.3", slips: "length in its place"}},
		{"edge_distance_min_mm", false, &shapeOfPositive, &plausible{from: 8, to: 120, ground: "standard", source: "EN 1995-1-1 table 8.6: 4 d", slips: "multiples of d in its place (4)"}},
		{"end_distance_min_mm", false, &shapeOfPositive, &plausible{from: 15, to: 250, ground: "standard", source: "EN 1995-1-1 table 8.6: 10 d", slips: "multiples of d in its place (10)"}},
		{"head_diameter_mm", false, &shapeOfPositive, &plausible{from: 6, to: 35, ground: "standard", source: "EN 14592: 1.8 to 3 times d"}},
		{"length_mm", false, &shapeOfPositive, &plausible{from: 15, to: 400, ground: "standard", source: "EN 14592; 25 for sheet, 80 to 300 for rafters", slips: "cm"}},
		{"spacing_min_mm", false, &shapeOfPositive, &plausible{from: 15, to: 200, ground: "standard", source: "EN 1995-1-1 table 8.6: 7 d", slips: "multiples of d in its place (7)"}},
		{"tension_kn", false, &shapeOfPositive, &plausible{from: 2, to: 60, ground: "standard", source: "EN 14592 declarations: 6 mm 7 to 13, 8 mm 16 to 25, 12 mm 38 to 45", slips: "N for kN"}},
		{"thread_length_mm", false, &shapeOfPositive, &plausible{from: 10, to: 350, ground: "standard", source: "EN 14592: at least 4 d", slips: "cm; length in its place"}},
		{"withdrawal_density_kg_per_m3", false, &shapeOfPositive, &plausible{from: 290, to: 750, ground: "standard", source: "EN 338: C14 290 to D40 550; declarations use 350 or 380, hardwood 730", slips: "mean density in place of the characteristic one"}},
		{"withdrawal_n_per_mm2", false, &shapeOfPositive, &plausible{from: 6, to: 25, ground: "standard", source: "EN 1995-1-1 (8.39): 6 mm in C24 about 14.5 with l_ef 80; EN 14592 classes 7 to 16", slips: "kN of the whole screw in its place"}},
		{"yield_moment_n_m", false, &shapeOfPositive, &plausible{from: 2, to: 120, ground: "standard", source: "EN 1995-1-1 (8.14): 0.3·fu·d^2.6; 6 mm 9.5 to 19, 8 mm 20 to 30, 12 mm 36 to 60", slips: "Nmm for Nm"}},
	}}

	shapeOfSegment = shape{kind: isObject, defined: "cable.schema.json#/$defs/segment", must: 0, members: []memberShape{
		{"ambient_c", false, &shapeOfTemperature, &plausible{from: 10, to: 80, ground: "standard", source: "IEC 60364-5-52 30 in air; roof spaces 45 to 60, behind modules 70 (IEC 62548)", slips: "°F"}},
		{"ambient_source", false, &shapeOfText, nil},
		{"barrier", false, &shape{kind: isTrue}, nil},
		{"burial_depth_mm", false, &shapeOfPositive, &plausible{from: 200, to: 2000, ground: "standard", source: "IEC 60364-5-52 0.7 m; BS 7671 table 52; NEC 300.5 150 to 600", slips: "m (0.6) or cm (60) for mm"}},
		{"concealed_depth_mm", false, &shapeOfNotNegative, &plausible{from: 1, to: 300, ground: "standard", source: "BS 7671 522.6.202: 50 mm is the figure that matters", zero: true, slips: "cm (5); m"}},
		{"current_carrying_conductors", false, &shape{kind: isNumber, whole: true, above: false, least: 1, greatest: 500}, &plausible{from: 1, to: 60, ground: "standard", source: "NEC 310.15(C)(1): table ends at 41; 2 to 3 for each circuit", slips: "all conductors, cpc counted in"}},
		{"distance_to_ac_mm", false, &shapeOfNotNegative, &plausible{from: 5, to: 20000, ground: "common practice", source: "50 to 1000", zero: true, slips: "m for mm (0.3)"}},
		{"distance_to_lightning_protection_m", false, &shapeOfNotNegative, &plausible{from: 0.02, to: 200, ground: "standard", source: "IEC 62305-3: separation distance 0.2 to 2 m; 100 stated where there is none near", zero: true, slips: "mm for m"}},
		{"distance_to_services_mm", false, &shapeOfNotNegative, &plausible{from: 5, to: 20000, ground: "common practice", source: "25 to 1000", zero: true, slips: "m for mm"}},
		{"edges_protected", false, &shape{kind: isTrue}, nil},
		{"enclosure", false, &shape{kind: isText, words: []string{"none", "conduit", "flexible_conduit", "trunking", "ducting", "unperforated_tray", "perforated_tray", "ladder", "basket", "channel_cover"}}, nil},
		{"enclosure_drained", false, &shape{kind: isTrue}, nil},
		{"enclosure_duty", false, &shape{kind: isText, words: []string{"light", "medium", "heavy"}}, nil},
		{"enclosure_earthed", false, &shape{kind: isTrue}, nil},
		{"enclosure_inside_mm2", false, &shapeOfPositive, &plausible{from: 50, to: 60000, ground: "standard", source: "EN 61386: 16 mm conduit about 130 mm²; trunking 300 x 150 45000", slips: "diameter in its place (20); cm2"}},
		{"enclosure_material", false, &shape{kind: isText, words: []string{"metal", "plastic", "halogen_free_plastic", "composite", "concrete"}}, nil},
		{"enclosure_other_cables_mm2", false, &shapeOfNotNegative, &plausible{from: 5, to: 40000, ground: "common practice", source: "a 4 mm² solar cable covers 24 mm²", zero: true, slips: "copper area in place of the overall one"}},
		{"enclosure_uv_resistant", false, &shape{kind: isTrue}, nil},
		{"ends_at", false, &shape{kind: isText, words: []string{"straight_on", "bend", "wall", "floor", "ceiling", "roof", "enclosure", "terminal"}}, nil},
		{"formation", false, &shape{kind: isText, words: []string{"single", "touching", "trefoil", "flat_touching", "flat_spaced_horizontal", "flat_spaced_vertical"}}, nil},
		{"function_evident", false, &shape{kind: isTrue}, nil},
		{"gap_to_roof_mm", false, &shapeOfNotNegative, &plausible{from: 3, to: 500, ground: "common practice", source: "10 to 150", zero: true, slips: "cm"}},
		{"ground_c", false, &shapeOfTemperature, &plausible{from: 0, to: 40, ground: "standard", source: "IEC 60364-5-52 20 reference; IEC 60287-3-1 10 to 30", slips: "air temperature in its place"}},
		{"group_arrangement", false, &shape{kind: isText, words: []string{"bunched", "single_layer_surface", "single_layer_under_ceiling", "single_layer_perforated_tray", "single_layer_ladder"}}, nil},
		{"group_length_m", false, &shapeOfPositive, &plausible{from: 0.1, to: 300, ground: "common practice", source: "at most the length of the stretch", slips: "mm for m"}},
		{"group_spacing_diameters", false, &shapeOfNotNegative, &plausible{from: 0.1, to: 10, ground: "standard", source: "IEC 60364-5-52: no reduction above 2 diameters", zero: true, slips: "mm for diameters"}},
		{"grouped_circuits", false, &shape{kind: isNumber, whole: true, above: false, least: 1, greatest: 100}, &plausible{from: 1, to: 24, ground: "standard", source: "IEC 60364-5-52 table B.52.17 ends at 20", slips: "conductors for circuits"}},
		{"grouped_lightly_loaded", false, &shapeOfCount, &plausible{from: 0, to: 24, ground: "standard", source: "below grouped_circuits", zero: true}},
		{"height_above_ceiling_mm", false, &shapeOfNotNegative, &plausible{from: 1, to: 5000, ground: "common practice", source: "0 to 2500", zero: true, slips: "cm; m (0.9)"}},
		{"in_direct_sun", false, &shape{kind: isTrue}, nil},
		{"in_escape_route", false, &shape{kind: isTrue}, nil},
		{"in_other_occupancy", false, &shape{kind: isTrue}, nil},
		{"in_safe_zone", false, &shape{kind: isTrue}, nil},
		{"length_m", false, &shapeOfPositive, &plausible{from: 0.1, to: 300, ground: "common practice", source: "roofs: 0.5 to 60; halls to 250", slips: "mm for m; cm"}},
		{"marked_above", false, &shape{kind: isTrue}, nil},
		{"mechanically_protected", false, &shape{kind: isTrue}, nil},
		{"method", false, &shapeOfText, nil},
		{"note", false, &shapeOfText, nil},
		{"passage", false, &shapeOfCablePassage, nil},
		{"place", false, &shape{kind: isText, words: []string{"behind_modules", "roof_surface", "roof_penetration", "roof_space", "wall_cavity", "wall_penetration", "floor_penetration", "indoors_surface", "indoors_concealed", "outdoor_wall", "duct", "underground", "switchgear"}}, nil},
		{"poles_in_separate_enclosures", false, &shape{kind: isTrue}, nil},
		{"readily_accessible", false, &shape{kind: isTrue}, nil},
		{"roof_space_route", false, &shape{kind: isText, words: []string{"along_eaves", "along_ridge", "hip_or_valley", "above_ceiling", "elsewhere"}}, nil},
		{"shares_enclosure_with", false, &shape{kind: isText, words: []string{"nothing", "same_circuit_kind", "other_dc", "ac", "low_voltage_signals"}}, nil},
		{"soil_resistivity_k_m_per_w", false, &shapeOfPositive, &plausible{from: 0.4, to: 4, ground: "standard", source: "IEC 60364-5-52 table B.52.16: 0.5 to 3", slips: "W/(m K) in its place"}},
		{"straight", false, &shape{kind: isTrue}, nil},
		{"support", false, &shape{kind: isText, words: []string{"clips", "saddles", "cleats", "ties", "enclosure", "tray", "buried", "module_frame_clips", "none"}}, nil},
		{"support_fire_resistant", false, &shape{kind: isTrue}, nil},
		{"support_material", false, &shape{kind: isText, words: []string{"metal", "stainless_steel", "coated_metal", "uv_stable_plastic", "plastic"}}, nil},
		{"support_spacing_mm", false, &shapeOfPositive, &plausible{from: 50, to: 2000, ground: "standard", source: "On-Site Guide table D1: 250 to 400 for small cables; single cores in clips to 1000; trays to 2000", slips: "m for mm (0.3); cm (30)"}},
		{"thermal_insulation", false, &shape{kind: isText, words: []string{"none", "one_side", "surrounded"}}, nil},
		{"thermal_insulation_length_mm", false, &shapeOfNotNegative, &plausible{from: 10, to: 20000, ground: "standard", source: "BS 7671 523.9: table 50 to 400 mm", zero: true, slips: "m for mm (0.5)"}},
		{"thermal_insulation_thickness_mm", false, &shapeOfPositive, &plausible{from: 10, to: 600, ground: "common practice", source: "50 to 400", slips: "cm (20) or m"}},
		{"touches_roof_covering", false, &shape{kind: isTrue}, nil},
		{"visible", false, &shape{kind: isTrue}, nil},
	}}

	shapeOfSerialRecord = shape{kind: isObject, defined: "handover.schema.json#/$defs/serial_record", must: 2, members: []memberShape{
		{"part", true, &shapeOfID, nil},
		{"serial", true, &shapeOfText, nil},
	}}

	shapeOfSigned = shape{kind: isNumber, whole: false, above: false, least: -1000000000, greatest: 1000000000}

	shapeOfSite = shape{kind: isObject, defined: "project.schema.json#/$defs/site", must: 0, members: []memberShape{
		{"albedo_fraction", false, &shapeOfFraction, &plausible{from: 0.05, to: 0.9, ground: "measured", source: "14 surfaces in an open table: 0.06 (sea) to 0.85 (aluminium), asphalt 0.12, grass 0.20, fresh snow 0.75"}},
		{"altitude_m", false, &shapeOfSigned, &plausible{from: -10, to: 2000, ground: "standard", source: "2000 m is the normal service limit of IEC 62109-1 and IEC 61439-1; lowest inhabited polders -7", zero: true, slips: "feet for metres; mm", where: []plausibleWhere{
			{"country", []string{"GB"}, plausible{from: -5, to: 600, ground: "memory", source: "highest villages about 460 m", zero: true, slips: "feet for metres; mm"}},
		}}},
		{"distance_into_town_km", false, &shapeOfNotNegative, &plausible{from: 0, to: 30, ground: "standard", source: "the British annex to EN 1991-1-4 (figures NA.7, NA.8) uses up to 20 km", zero: true, slips: "m for km"}},
		{"distance_to_sea_km", false, &shapeOfNotNegative, &plausible{from: 0, to: 1000, ground: "memory", source: "any place in Europe below 1000", zero: true, slips: "m for km", where: []plausibleWhere{
			{"country", []string{"GB"}, plausible{from: 0, to: 115, ground: "memory", source: "farthest place about 113 km", zero: true, slips: "m for km"}},
		}}},
		{"lightning_ng_per_km2_yr", false, &shapeOfNotNegative, &plausible{from: 0.01, to: 25, ground: "standard", source: "IEC 62305-2; Europe up to about 8", zero: true, slips: "days of thunderstorm for flash density (x10, IEC 62305-2: Ng about 0.1 Td)", where: []plausibleWhere{
			{"country", []string{"GB"}, plausible{from: 0.01, to: 2, ground: "standard", source: "Great Britain up to 1.5", zero: true, slips: "days of thunderstorm for flash density (x10, IEC 62305-2: Ng about 0.1 Td)"}},
		}}},
		{"note", false, &shapeOfText, nil},
		{"orography_significant", false, &shape{kind: isTrue}, nil},
		{"snow_sk_kn_per_m2", false, &shapeOfNotNegative, &plausible{from: 0.1, to: 10, ground: "standard", source: "EN 1991-1-3 annex C and national maps", zero: true, slips: "Pa for kN/m2; kg/m2", where: []plausibleWhere{
			{"country", []string{"GB"}, plausible{from: 0.1, to: 3, ground: "memory", source: "annex to EN 1991-1-3, below 500 m", zero: true, slips: "Pa for kN/m2; kg/m2"}},
		}}},
		{"snow_source", false, &shapeOfText, nil},
		{"temp_max_c", false, &shapeOfTemperature, &plausible{from: 20, to: 50, ground: "memory", source: "European record 48.8, British 40.3; nobody's highest temperature is below 20 outside high islands", slips: "°F for °C (82); mean summer maximum in place of the highest", where: []plausibleWhere{
			{"country", []string{"GB"}, plausible{from: 20, to: 41, ground: "memory", source: "record 40.3 °C", slips: "°F for °C (82); mean summer maximum in place of the highest"}},
		}}},
		{"temp_min_c", false, &shapeOfTemperature, &plausible{from: -50, to: 15, ground: "memory", source: "coldest inhabited places about -50; a lowest temperature above 15 only in the tropics", slips: "sign lost (10 for -10); °F", where: []plausibleWhere{
			{"country", []string{"GB"}, plausible{from: -28, to: -3, ground: "memory", source: "record -27.2 °C; the mildest coasts have had -5: take the lowest on record near the site, or -15 °C", slips: "sign lost (10 for -10); °F"}},
		}}},
		{"temp_source", false, &shapeOfText, nil},
		{"terrain", false, &shape{kind: isText, words: []string{"0", "I", "II", "III", "IV", "sea", "country", "town"}}, nil},
		{"wind_source", false, &shapeOfText, nil},
		{"wind_vb_map_m_per_s", false, &shapeOfPositive, &plausible{from: 20, to: 45, ground: "standard", source: "EN 1991-1-4 national maps: 20 to 36 in Europe", slips: "km/h; mph; gust for ten-minute mean", where: []plausibleWhere{
			{"country", []string{"GB"}, plausible{from: 20, to: 35, ground: "standard", source: "national annex to EN 1991-1-4, figure NA.1", slips: "km/h; mph; gust for ten-minute mean"}},
		}}},
	}}

	shapeOfSiteAttendance = shape{kind: isObject, defined: "handover.schema.json#/$defs/site_attendance", must: 2, members: []memberShape{
		{"date", false, &shapeOfDate, nil},
		{"id", true, &shapeOfID, nil},
		{"note", false, &shapeOfText, nil},
		{"phase", true, &shape{kind: isText, words: []string{"set_up", "during_installation", "testing_and_commissioning"}}, nil},
		{"photographed", false, &shape{kind: isTrue}, nil},
		{"role", false, &shape{kind: isText, words: []string{"designer", "installer", "supervisor"}}, nil},
	}}

	shapeOfSnowDrift = shape{kind: isObject, defined: "roof.schema.json#/$defs/snow_drift", must: 0, members: []memberShape{
		{"height_m", false, &shapeOfPositive, &plausible{from: 0.2, to: 20, ground: "standard", source: "EN 1991-1-3 5.3.6, 6.2", slips: "mm for m"}},
		{"length_b1_m", false, &shapeOfPositive, &plausible{from: 0.5, to: 200, ground: "standard", source: "EN 1991-1-3 5.3.6", slips: "mm for m"}},
		{"length_b2_m", false, &shapeOfPositive, &plausible{from: 0.5, to: 200, ground: "standard", source: "EN 1991-1-3 5.3.6", slips: "mm for m"}},
	}}

	shapeOfStorage = shape{kind: isObject, defined: "storage.schema.json#/$defs/storage", must: 0, members: []memberShape{
		{"batteries", false, &shape{kind: isList, fewest: 0, most: 200, each: &shapeOfBattery}, nil},
		{"conformity_statement", false, &shapeOfText, nil},
		{"note", false, &shapeOfText, nil},
		{"provision", false, &shapeOfBatteryProvision, nil},
		{"risk_assessment_record", false, &shapeOfText, nil},
		{"vehicles_kept_kwh", false, &shapeOfNotNegative, &plausible{from: 0.3, to: 500, ground: "common practice", source: "cycle 0.5, car 15 to 110", zero: true, slips: "Wh for kWh"}},
	}}

	shapeOfString = shape{kind: isObject, defined: "pvstring.schema.json#/$defs/string", must: 3, members: []memberShape{
		{"connector_mate", false, &shapeOfText, nil},
		{"id", true, &shapeOfID, nil},
		{"module", true, &shapeOfID, nil},
		{"modules_in_series", true, &shape{kind: isNumber, whole: true, above: false, least: 1, greatest: 200}, &plausible{from: 2, to: 32, ground: "common practice", source: "1500 V over Voc cold 45 V gives 33; open inverters start no string of one pane", slips: "modules of the array in its place"}},
		{"mounting", false, &shape{kind: isText, words: []string{"in_roof", "on_roof", "tilted_rack", "free_standing"}}, nil},
		{"note", false, &shapeOfText, nil},
		{"overcurrent", false, &shapeOfStringOvercurrent, nil},
		{"plane", false, &shapeOfID, nil},
	}}

	shapeOfStringOvercurrent = shape{kind: isObject, defined: "pvstring.schema.json#/$defs/string_overcurrent", must: 1, members: []memberShape{
		{"accessible_without_tool", false, &shape{kind: isTrue}, nil},
		{"ambient_max_c", false, &shapeOfTemperature, &plausible{from: 15, to: 85, ground: "common practice", source: "box in the shade 35 to 45, in the sun or under a roof 50 to 70", slips: "°F"}},
		{"device", false, &shapeOfID, nil},
		{"fitted", true, &shape{kind: isTrue}, nil},
		{"poles", false, &shape{kind: isText, words: []string{"positive", "negative", "both"}}, nil},
	}}

	shapeOfStringReading = shape{kind: isObject, defined: "commissioning.schema.json#/$defs/string_reading", must: 2, members: []memberShape{
		{"air_temperature_c", false, &shapeOfTemperature, &plausible{from: -20, to: 48, ground: "common practice", source: "", slips: "°F; back of module"}},
		{"cell_temperature_c", false, &shapeOfTemperature, &plausible{from: -10, to: 85, ground: "common practice", source: "15 to 70 at tests", slips: "°F; air temperature in its place"}},
		{"date", false, &shapeOfDate, nil},
		{"id", true, &shapeOfID, nil},
		{"instrument", false, &shapeOfID, nil},
		{"irradiance_instrument", false, &shapeOfID, nil},
		{"irradiance_plane", false, &shape{kind: isText, words: []string{"modules", "horizontal", "other"}}, nil},
		{"irradiance_simultaneous", false, &shape{kind: isTrue}, nil},
		{"irradiance_w_per_m2", false, &shapeOfNotNegative, &plausible{from: 50, to: 1300, ground: "standard", source: "IEC 61724-1, 62446-1: clear sky 1000 to 1100; over-irradiance at cloud edges to 1300", slips: "kW/m2 (0.742); lux; on the horizontal"}},
		{"isc_a", false, &shapeOfNotNegative, &plausible{from: 0.2, to: 25, ground: "common practice", source: "", zero: true, slips: "mA; of the array"}},
		{"light", false, &shape{kind: isText, words: []string{"steady", "changing"}}, nil},
		{"load_break_device_used", false, &shape{kind: isTrue}, nil},
		{"module_back_temperature_c", false, &shapeOfTemperature, &plausible{from: -10, to: 85, ground: "common practice", source: "1 to 3 K below the cell at 1000 W/m²", slips: "°F"}},
		{"negative_to_earth_v", false, &shapeOfSigned, &plausible{from: -1500, to: 1500, ground: "common practice", source: "", zero: true, slips: "sign lost (143 for -143)"}},
		{"note", false, &shapeOfText, nil},
		{"operating_current_a", false, &shapeOfNotNegative, &plausible{from: 0.1, to: 25, ground: "common practice", source: "", zero: true, slips: "mA; of the array"}},
		{"polarity", false, &shape{kind: isText, words: []string{"correct", "reversed"}}, nil},
		{"positive_to_earth_v", false, &shapeOfSigned, &plausible{from: -1500, to: 1500, ground: "common practice", source: "at most Voc", zero: true, slips: "sign lost"}},
		{"string", true, &shapeOfID, nil},
		{"temperature_instrument", false, &shapeOfID, nil},
		{"time", false, &shape{kind: isText, form: isTime, pattern: "^([01][0-9]|2[0-3]):[0-5][0-9]$"}, nil},
		{"voc_v", false, &shapeOfNotNegative, &plausible{from: 20, to: 1600, ground: "common practice", source: "", zero: true, slips: "module in place of the string; mV"}},
		{"wind_speed_m_per_s", false, &shapeOfNotNegative, &plausible{from: 0, to: 20, ground: "common practice", source: "work stops above 8 to 12", zero: true, slips: "km/h, mph"}},
	}}

	shapeOfSupply = shape{kind: isObject, defined: "accircuit.schema.json#/$defs/supply", must: 1, members: []memberShape{
		{"agreed_capacity_kva", false, &shapeOfPositive, &plausible{from: 3, to: 5000, ground: "common practice", source: "homes 7 to 25, halls to several thousand", slips: "VA (14500) or A (63) in its place"}},
		{"device", false, &shapeOfID, nil},
		{"form", false, &shape{kind: isText, words: []string{"single_phase", "split_phase", "three_phase", "three_phase_delta"}}, nil},
		{"frequency_hz", false, &shapeOfPositive, &plausible{from: 50, to: 60, usual: []float64{50, 60}, ground: "standard", source: "IEC 60038: 50 or 60, nothing between", where: []plausibleWhere{
			{"country", []string{"GB"}, plausible{from: 50, to: 50, usual: []float64{50}, ground: "standard", source: "ESQCR"}},
		}}},
		{"id", true, &shapeOfID, nil},
		{"line_mm2", false, &shapeOfPositive, &plausible{from: 4, to: 1300, ground: "standard", source: "as for the member before", slips: "diameter; AWG"}},
		{"main_isolating_switch", false, &shapeOfID, nil},
		{"network_operator", false, &shapeOfText, nil},
		{"neutral_mm2", false, &shapeOfPositive, &plausible{from: 4, to: 1300, ground: "standard", source: "service cables 16 to 35; 2 x 240 or more for halls", slips: "diameter; AWG"}},
		{"note", false, &shapeOfText, nil},
		{"phases", false, &shape{kind: isNumber, words: []string{"1", "2", "3"}}, nil},
		{"place", false, &shapeOfPlace, nil},
		{"prospective_fault_ka", false, &shapeOfPositive, &plausible{from: 0.1, to: 65, ground: "standard", source: "British service 16 kA single-phase at most; transformers of 1 MVA 25 kA, 2 MVA 50 kA", slips: "A for kA (1100)"}},
		{"service_cable_drop_pct", false, &shapeOfNotNegative, &plausible{from: 0, to: 5, ground: "common practice", source: "0.1 to 2", zero: true, slips: "V for %"}},
		{"shared_feeder", false, &shape{kind: isTrue}, nil},
		{"supply_number", false, &shapeOfText, nil},
		{"voltage_between_lines_v", false, &shapeOfPositive, &plausible{from: 170, to: 500, usual: []float64{173, 200, 208, 220, 240, 380, 400, 415, 440, 480}, ground: "standard", source: "IEC 60038: 173, 208, 380, 400, 415, 480; split phase 240", slips: "line to neutral in its place"}},
		{"voltage_measured_max_v", false, &shapeOfPositive, &plausible{from: 100, to: 300, ground: "standard", source: "as for the member before", slips: "line to line"}},
		{"voltage_measured_v", false, &shapeOfPositive, &plausible{from: 100, to: 300, ground: "standard", source: "EN 50160 ±10 %, British ESQCR 216.2 to 253", slips: "line to line in its place", where: []plausibleWhere{
			{"country", []string{"GB"}, plausible{from: 210, to: 256, ground: "standard", source: "ESQCR 216.2 to 253", slips: "line to line in its place"}},
		}}},
		{"voltage_v", false, &shapeOfPositive, &plausible{from: 100, to: 290, usual: []float64{100, 110, 115, 120, 127, 220, 230, 240, 277}, ground: "standard", source: "IEC 60038: 100, 120, 127, 220, 230, 240, 277", slips: "line to line in its place (400)", where: []plausibleWhere{
			{"country", []string{"GB"}, plausible{from: 220, to: 240, usual: []float64{220, 230, 240}, ground: "standard", source: "ESQCR 230", slips: "line to line in its place (400)"}},
		}}},
		{"ze_known_by", false, &shape{kind: isText, words: []string{"measured", "declared", "enquiry", "calculated"}}, nil},
		{"ze_ohm", false, &shapeOfPositive, &plausible{from: 0.003, to: 200, ground: "standard", source: "PME 0.35, TN-S 0.8, TT 21 to 200 declared; halls from 0.004", slips: "mΩ (210)"}},
	}}

	shapeOfSupplyReading = shape{kind: isObject, defined: "commissioning.schema.json#/$defs/supply_reading", must: 1, members: []memberShape{
		{"at", false, &shape{kind: isText, words: []string{"origin", "board", "inverter"}}, nil},
		{"between", false, &shape{kind: isText, words: []string{"line_to_neutral", "line_to_line", "line_to_earth", "neutral_to_earth"}}, nil},
		{"date", false, &shapeOfDate, nil},
		{"frequency_hz", false, &shapeOfPositive, &plausible{from: 49, to: 61, ground: "standard", source: "EN 50160: 49.5 to 50.5; 59.5 to 60.5"}},
		{"id", true, &shapeOfID, nil},
		{"instrument", false, &shapeOfID, nil},
		{"inverter_running", false, &shape{kind: isTrue}, nil},
		{"note", false, &shapeOfText, nil},
		{"part", false, &shapeOfID, nil},
		{"phase", false, &shape{kind: isText, words: []string{"L1", "L2", "L3"}}, nil},
		{"phase_sequence", false, &shape{kind: isText, words: []string{"correct", "reversed"}}, nil},
		{"polarity", false, &shape{kind: isText, words: []string{"correct", "reversed"}}, nil},
		{"time", false, &shape{kind: isText, form: isTime, pattern: "^([01][0-9]|2[0-3]):[0-5][0-9]$"}, nil},
		{"voltage_v", false, &shapeOfNotNegative, &plausible{from: 0, to: 500, ground: "standard", source: "between neutral and earth 0 to 5, else EN 50160", zero: true, slips: "line to line against line to neutral"}},
	}}

	shapeOfSwitchDisconnector = shape{kind: isObject, defined: "isolator.schema.json#/$defs/switch_disconnector", must: 1, members: []memberShape{
		{"breaks_all_poles_together", false, &shape{kind: isTrue}, nil},
		{"independent_manual_operation", false, &shape{kind: isTrue}, nil},
		{"ip", false, &shapeOfIP, nil},
		{"ithe_a", false, &shapeOfPositive, &plausible{from: 10, to: 4000, ground: "standard", source: "IEC 60947-3"}},
		{"ithe_ambient_c", false, &shapeOfTemperature, &plausible{from: 30, to: 75, ground: "standard", source: "IEC 60947-1 35 mean, 40 peak; PV types (IEC 60947-3 annex D) 40 and 60"}},
		{"lockable_off", false, &shape{kind: isTrue}, nil},
		{"note", false, &shapeOfText, nil},
		{"on_off_marked", false, &shape{kind: isTrue}, nil},
		{"polarity_sensitive", false, &shape{kind: isTrue}, nil},
		{"poles", false, &shape{kind: isNumber, whole: true, above: false, least: 1, greatest: 16}, &plausible{from: 1, to: 12, ground: "common practice", source: "2 to 4 per string pair, 8 for four; 10 and 12 exist as ganged units"}},
		{"ratings", true, &shape{kind: isList, fewest: 1, most: 100, each: &shapeOfSwitchRating}, nil},
		{"standard", false, &shapeOfText, nil},
	}}

	shapeOfSwitchRating = shape{kind: isObject, defined: "isolator.schema.json#/$defs/switch_rating", must: 4, members: []memberShape{
		{"ie_a", true, &shapeOfPositive, &plausible{from: 3, to: 3200, ground: "standard", source: "IEC 60947-3; 6 to 63 on roofs, to 3200 for main switches", slips: "thermal current in its place"}},
		{"poles_in_series", true, &shape{kind: isNumber, whole: true, above: false, least: 1, greatest: 8}, &plausible{from: 1, to: 4, ground: "common practice", source: "1, 2 or 4", slips: "poles of the device in its place"}},
		{"ue_v", true, &shapeOfPositive, &plausible{from: 200, to: 1500, ground: "standard", source: "IEC 60947-3: AC 230 to 690, DC to 1500", slips: "insulation voltage Ui in its place"}},
		{"utilization_category", true, &shape{kind: isText, words: []string{"DC-20A", "DC-20B", "DC-21A", "DC-21B", "DC-22A", "DC-22B", "DC-23A", "DC-23B", "DC-PV0", "DC-PV1", "DC-PV2", "AC-20A", "AC-20B", "AC-21A", "AC-21B", "AC-22A", "AC-22B", "AC-23A", "AC-23B"}}, nil},
	}}

	shapeOfTemperature = shape{kind: isNumber, whole: false, above: false, least: -90, greatest: 150}

	shapeOfTerminal = shape{kind: isText, form: isTerminal, pattern: "^[A-Za-z0-9][A-Za-z0-9_-]{0,39}(\\.[A-Za-z0-9][A-Za-z0-9_-]{0,39}){0,2}$"}

	shapeOfTestStep = shape{kind: isObject, defined: "commissioning.schema.json#/$defs/test_step", must: 2, members: []memberShape{
		{"date", false, &shapeOfDate, nil},
		{"fault_corrected", false, &shape{kind: isTrue}, nil},
		{"id", true, &shapeOfID, nil},
		{"note", false, &shapeOfText, nil},
		{"part", false, &shapeOfID, nil},
		{"passed", false, &shape{kind: isTrue}, nil},
		{"repeat", false, &shape{kind: isTrue}, nil},
		{"test", true, &shape{kind: isText, words: []string{"inspection", "ac_tests", "continuity", "polarity", "combiner", "open_circuit_voltage", "current", "functional", "insulation", "iv_curve", "thermography", "voltage_to_earth", "blocking_diode", "wet_insulation", "shade", "storage"}}, nil},
		{"time", false, &shape{kind: isText, form: isTime, pattern: "^([01][0-9]|2[0-3]):[0-5][0-9]$"}, nil},
	}}

	shapeOfText = shape{kind: isText, fewest: 1, most: 2000}

	shapeOfThermographyReading = shape{kind: isObject, defined: "commissioning.schema.json#/$defs/thermography_reading", must: 2, members: []memberShape{
		{"date", false, &shapeOfDate, nil},
		{"difference_k", false, &shapeOfNotNegative, &plausible{from: 0, to: 80, ground: "standard", source: "IEC TS 62446-3: above 10 to 40 K is a finding", zero: true, slips: "temperature in place of the difference"}},
		{"id", true, &shapeOfID, nil},
		{"instrument", false, &shapeOfID, nil},
		{"irradiance_w_per_m2", false, &shapeOfNotNegative, &plausible{from: 200, to: 1300, ground: "standard", source: "IEC TS 62446-3: at least 600", slips: "kW/m2"}},
		{"load_current_a", false, &shapeOfNotNegative, &plausible{from: 0.2, to: 6300, ground: "common practice", source: "", zero: true, slips: "mA"}},
		{"note", false, &shapeOfText, nil},
		{"part", true, &shapeOfID, nil},
	}}

	shapeOfTileWork = shape{kind: isObject, defined: "roof.schema.json#/$defs/tile_work", must: 0, members: []memberShape{
		{"broken_left", false, &shapeOfCount, &plausible{from: 0, to: 50, ground: "common practice", source: "", zero: true}},
		{"broken_replaced", false, &shapeOfCount, &plausible{from: 0, to: 200, ground: "common practice", source: "", zero: true}},
		{"cut_by_disc", false, &shape{kind: isTrue}, nil},
		{"gaps_seen", false, &shape{kind: isTrue}, nil},
		{"note", false, &shapeOfText, nil},
		{"photographed", false, &shape{kind: isTrue}, nil},
		{"removed_refixed", false, &shape{kind: isTrue}, nil},
		{"underlay_repaired", false, &shape{kind: isTrue}, nil},
	}}

	shapeOfTorqueReading = shape{kind: isObject, defined: "commissioning.schema.json#/$defs/torque_reading", must: 2, members: []memberShape{
		{"date", false, &shapeOfDate, nil},
		{"id", true, &shapeOfID, nil},
		{"instrument", false, &shapeOfID, nil},
		{"marked", false, &shape{kind: isTrue}, nil},
		{"note", false, &shapeOfText, nil},
		{"part", true, &shapeOfTerminal, nil},
		{"specified_n_m", false, &shapeOfPositive, &plausible{from: 0.2, to: 120, ground: "common practice", source: "as for the member before", slips: "in·lb; kgf·m"}},
		{"torque_n_m", false, &shapeOfNotNegative, &plausible{from: 0.2, to: 120, ground: "common practice", source: "terminals 0.5 to 10, clamps 8 to 20, busbars to 80", zero: true, slips: "in·lb; kgf·m"}},
	}}

	shapeOfWarranty = shape{kind: isObject, defined: "handover.schema.json#/$defs/warranty", must: 2, members: []memberShape{
		{"id", true, &shapeOfID, nil},
		{"insurance_backed", false, &shape{kind: isTrue}, nil},
		{"kind", true, &shape{kind: isText, words: []string{"module_product", "module_performance", "inverter", "storage", "mounting", "workmanship", "weather_tightness"}}, nil},
		{"note", false, &shapeOfText, nil},
		{"period_yr", false, &shapeOfPositive, &plausible{from: 0.5, to: 40, ground: "common practice", source: "2 to 30", slips: "months (120) or a calendar year"}},
		{"reference", false, &shapeOfText, nil},
		{"start", false, &shapeOfDate, nil},
	}}

	shapeOfWorkAtHeight = shape{kind: isObject, defined: "roof.schema.json#/$defs/work_at_height", must: 0, members: []memberShape{
		{"edge_protection", false, &shape{kind: isTrue}, nil},
		{"fragile_surfaces_controlled", false, &shape{kind: isTrue}, nil},
		{"gust_limit_m_per_s", false, &shapeOfPositive, &plausible{from: 6, to: 20, ground: "common practice", source: "11.6 m/s = 26 mph", slips: "km/h (42), mph (26) for m/s"}},
		{"lifting", false, &shape{kind: isText, words: []string{"two_persons", "hoist", "crane", "ladder_carried"}}, nil},
		{"lone_working", false, &shape{kind: isTrue}, nil},
		{"note", false, &shapeOfText, nil},
		{"overhead_lines_checked", false, &shape{kind: isTrue}, nil},
		{"plan", false, &shapeOfText, nil},
		{"plan_date", false, &shapeOfDate, nil},
		{"rescue_planned", false, &shape{kind: isTrue}, nil},
		{"scaffold", false, &shape{kind: isTrue}, nil},
		{"wind_limit_m_per_s", false, &shapeOfPositive, &plausible{from: 4, to: 15, ground: "common practice", source: "7.6 m/s = 17 mph is the usual figure; Beaufort 5 ends at 10.7", slips: "km/h (27), mph (17) or knots (15) for m/s"}},
	}}
)
