// Code generated from roof.schema.json by go generate; DO NOT EDIT.

package schema

// Roof mirrors roof: the roof that carries the modules: what was there, and what was put on it.
type Roof struct {
	Pointer
	Note         Text         `json:"note"`
	Shape        Text         `json:"shape"`          // shape of the roof as a whole
	Storeys      Number       `json:"storeys"`        // storeys of the building below the roof
	PlanAreaM2   Number       `json:"plan_area_m2"`   // horizontal projection of the whole roof, planes without modules included
	Sprinklered  Flag         `json:"sprinklered"`    // whether the whole building has sprinklers
	Survey       RoofSurvey   `json:"survey"`         // check of the roof before the work
	WorkAtHeight WorkAtHeight `json:"work_at_height"` // how the work on the roof is made safe
	Planes       []Plane      `json:"planes"`         // planes of the roof
}

// RoofSurvey mirrors roof_survey: who looked at the roof, how, and what was found. Persons are given by their role, never by name.
type RoofSurvey struct {
	Pointer
	Note                  Text `json:"note"`
	Date                  Text `json:"date"`                     // date of the check
	Role                  Text `json:"role"`                     // role of the person who answers for the check
	Competence            Text `json:"competence"`               // qualification of that person
	PersonNamedInEvidence Flag `json:"person_named_in_evidence"` // whether the evidence names that person
	Evidence              Text `json:"evidence"`                 // reference of the report or file that shows the check
	Method                Text `json:"method"`                   // how the roof was looked at
	RaftersSeen           Flag `json:"rafters_seen"`             // whether the rafters themselves were seen
	WindStandard          Text `json:"wind_standard"`            // standard used for the wind load in the evidence
	SnowStandard          Text `json:"snow_standard"`            // standard used for the snow load in the evidence
	StrengthFound         Text `json:"strength_found"`           // what the check says of the roof
	Strengthened          Flag `json:"strengthened"`             // whether the strengthening asked for was done
	EngineerReport        Text `json:"engineer_report"`          // reference of a structural engineer's report
	EngineerReportDate    Text `json:"engineer_report_date"`     // date of that report
	SagSeen               Flag `json:"sag_seen"`                 // whether the roof sags
	RotOrInsectsSeen      Flag `json:"rot_or_insects_seen"`      // whether timber is rotten or eaten
	SplitTimberSeen       Flag `json:"split_timber_seen"`        // whether rafters are split
	DampSeen              Flag `json:"damp_seen"`                // whether water gets in
	Asbestos              Text `json:"asbestos"`                 // asbestos in the covering or below it
	AsbestosRulesKept     Flag `json:"asbestos_rules_kept"`      // whether the work is planned and done by the rules for asbestos, as if it were there where nobody knows
	WildlifeFound         Flag `json:"wildlife_found"`           // whether protected animals nest in the roof
}

// WorkAtHeight mirrors work_at_height: how falls from the roof and falling objects are prevented.
type WorkAtHeight struct {
	Pointer
	Note                      Text   `json:"note"`
	Plan                      Text   `json:"plan"`                        // reference of the written plan
	PlanDate                  Text   `json:"plan_date"`                   // date of the plan
	Scaffold                  Flag   `json:"scaffold"`                    // whether there is a scaffold or equal with platform, guard-rails and toe-boards
	EdgeProtection            Flag   `json:"edge_protection"`             // whether every edge from which one can fall is guarded
	WindLimitMPerS            Number `json:"wind_limit_m_per_s"`          // mean wind speed at which work stops
	GustLimitMPerS            Number `json:"gust_limit_m_per_s"`          // gust speed at which work stops
	FragileSurfacesControlled Flag   `json:"fragile_surfaces_controlled"` // whether fragile surfaces are covered or fenced off
	OverheadLinesChecked      Flag   `json:"overhead_lines_checked"`      // whether overhead lines were looked for
	Lifting                   Text   `json:"lifting"`                     // how modules are raised
	LoneWorking               Flag   `json:"lone_working"`                // whether somebody works alone on the roof
	RescuePlanned             Flag   `json:"rescue_planned"`              // whether rescue of a fallen person is planned
}

// Plane mirrors plane: one plane of the roof. Positions on it lie in the slope: x from the left end of the eaves, seen from outside, y up the slope from the eaves.
type Plane struct {
	Pointer
	ID                 Text              `json:"id"`
	Note               Text              `json:"note"`
	PitchDeg           Number            `json:"pitch_deg"`              // pitch, from the horizontal
	AzimuthDeg         Number            `json:"azimuth_deg"`            // direction in which it looks, clockwise from north
	EavesLengthMm      Number            `json:"eaves_length_mm"`        // extent along the eaves
	SlopeLengthMm      Number            `json:"slope_length_mm"`        // extent up the slope, from eaves to ridge
	LeftEdge           Text              `json:"left_edge"`              // what its left side is; sloping when it is drawn among the edges
	RightEdge          Text              `json:"right_edge"`             // what its right side is; sloping when it is drawn among the edges
	TopEdge            Text              `json:"top_edge"`               // what its upper side is; a mono ridge has no slope behind it
	BottomEdge         Text              `json:"bottom_edge"`            // what its lower side is
	Edges              []RoofEdge        `json:"edges"`                  // lines on the plane besides its four sides: hips, valleys, walls below, joints
	RidgeHeightM       Number            `json:"ridge_height_m"`         // height of the ridge above the ground
	EavesHeightM       Number            `json:"eaves_height_m"`         // height of the eaves above the ground
	BuildingLengthM    Number            `json:"building_length_m"`      // length of the building, or its wing, along these eaves
	BuildingWidthM     Number            `json:"building_width_m"`       // width of the building, or its wing, across these eaves, in plan
	BoundaryDistanceM  Number            `json:"boundary_distance_m"`    // shortest distance in plan from the modules to the boundary of the plot
	FacesHighway       Flag              `json:"faces_highway"`          // whether the plane faces a highway
	DeadLoadKnPerM2    Number            `json:"dead_load_kn_per_m2"`    // existing dead load on a square metre of slope: covering, battens, underlay and rafters
	DeadLoadSource     Text              `json:"dead_load_source"`       // where that dead load comes from
	ImposedLoadKnPerM2 Number            `json:"imposed_load_kn_per_m2"` // imposed load for access for which the roof counts, on plan
	MountingMassKg     Number            `json:"mounting_mass_kg"`       // mass of rails, hooks, clamps and cable on this plane, without the modules
	BallastMassKg      Number            `json:"ballast_mass_kg"`        // mass of ballast on this plane
	SnowObstruction    Text              `json:"snow_obstruction"`       // what keeps snow from sliding off
	SnowDrift          SnowDrift         `json:"snow_drift"`             // what lets snow drift against the plane
	FireClass          Text              `json:"fire_class"`             // fire classification of the modules with their mounting on this covering; BROOF_t4 stands for BROOF(t4) of EN 13501-5
	FireClassRequired  Text              `json:"fire_class_required"`    // fire classification the roof needs
	GapUnderModulesMm  Number            `json:"gap_under_modules_mm"`   // gap from the covering to the underside of the modules
	ProjectionMm       Number            `json:"projection_mm"`          // how far the modules stand above the slope, square to it
	TiltToRoofDeg      Number            `json:"tilt_to_roof_deg"`       // angle between the modules and the plane
	Covering           RoofCovering      `json:"covering"`               // covering of the plane
	Rafters            RafterLayout      `json:"rafters"`                // timbers that carry the plane
	Noggins            []Noggin          `json:"noggins"`                // timbers set between the rafters for fixings
	Openings           []RoofOpening     `json:"openings"`               // roof windows, chimneys and whatever else comes through the plane
	Pathways           []RoofPathway     `json:"pathways"`               // strips kept clear for access
	Modules            []PlacedModule    `json:"modules"`                // modules on the plane
	Rails              []Rail            `json:"rails"`                  // rails
	Fixings            []Fixing          `json:"fixings"`                // hooks and other fixings that hold the rails to the building
	Clamps             []Clamp           `json:"clamps"`                 // clamps that hold the modules
	Penetrations       []RoofPenetration `json:"penetrations"`           // places where a cable or fixing goes through the covering
	TileWork           TileWork          `json:"tile_work"`              // state of the tiles after the work
}

// RoofEdge mirrors roof_edge: a straight line on the plane.
type RoofEdge struct {
	Pointer
	ID      Text   `json:"id"`
	Note    Text   `json:"note"`
	Kind    Text   `json:"kind"`      // what the line is
	FromXMm Number `json:"from_x_mm"` // start of the line along the eaves
	FromYMm Number `json:"from_y_mm"` // start of the line up the slope
	ToXMm   Number `json:"to_x_mm"`   // end of the line along the eaves
	ToYMm   Number `json:"to_y_mm"`   // end of the line up the slope
}

// SnowDrift mirrors snow_drift: the step or parapet against which snow can drift, as in annex B of EN 1991-1-3.
type SnowDrift struct {
	Pointer
	HeightM   Number `json:"height_m"`    // height of the step or parapet, h
	LengthB1M Number `json:"length_b1_m"` // length b1 of the annex
	LengthB2M Number `json:"length_b2_m"` // length b2 of the annex
}

// RoofCovering mirrors roof_covering: tiles, slates or sheets, and what lies under them.
type RoofCovering struct {
	Pointer
	Note                     Text   `json:"note"`
	Kind                     Text   `json:"kind"`                        // kind of covering
	Material                 Text   `json:"material"`                    // what it is made of
	MassKgPerM2              Number `json:"mass_kg_per_m2"`              // mass on a square metre of slope, covering alone
	Layers                   Number `json:"layers"`                      // layers of covering on top of each other
	AgeYr                    Number `json:"age_yr"`                      // age
	LifeExpectedYr           Number `json:"life_expected_yr"`            // years it is expected to last from now
	Condition                Text   `json:"condition"`                   // condition before the work
	Fragile                  Flag   `json:"fragile"`                     // whether it breaks under a person
	ProfileHeightMm          Number `json:"profile_height_mm"`           // height of the profile of the tile or sheet
	SheetThicknessMm         Number `json:"sheet_thickness_mm"`          // thickness of the sheet
	BattenThicknessMm        Number `json:"batten_thickness_mm"`         // thickness of the battens
	BattenSpacingMm          Number `json:"batten_spacing_mm"`           // distance of the battens up the slope (gauge)
	CounterBattenThicknessMm Number `json:"counter_batten_thickness_mm"` // thickness of the counter-battens, 0 where there are none
	SarkingThicknessMm       Number `json:"sarking_thickness_mm"`        // thickness of the boards on the rafters, 0 where there are none
	Underlay                 Text   `json:"underlay"`                    // underlay below the covering
	MakerConsulted           Flag   `json:"maker_consulted"`             // whether the maker of the covering was asked
}

// RafterLayout mirrors rafter_layout: the timbers that carry the covering, and into which the fixings go. They run up the slope unless stated otherwise.
type RafterLayout struct {
	Pointer
	Note                 Text         `json:"note"`
	Structure            Text         `json:"structure"`                // kind of structure
	Direction            Text         `json:"direction"`                // direction of these timbers
	FirstMm              Number       `json:"first_mm"`                 // middle of the first one from the left end of the eaves, or from the eaves when they run across the slope
	SpacingMm            Number       `json:"spacing_mm"`               // distance from middle to middle
	Count                Number       `json:"count"`                    // how many there are
	Lines                []RafterLine `json:"lines"`                    // the timbers one by one, where they are not evenly spaced
	WidthMm              Number       `json:"width_mm"`                 // width of one
	HeightMm             Number       `json:"height_mm"`                // depth of one
	TimberClass          Text         `json:"timber_class"`             // strength class of the timber (EN 338, EN 14080)
	TimberEvidence       Text         `json:"timber_evidence"`          // how the strength class is known
	TimberDensityKgPerM3 Number       `json:"timber_density_kg_per_m3"` // characteristic density, where the timber has no class of the list
	TimberBendingNPerMm2 Number       `json:"timber_bending_n_per_mm2"` // characteristic bending strength, where the timber has no class of the list
	ServiceClass         Number       `json:"service_class"`            // service class of EN 1995-1-1
	SpanMm               Number       `json:"span_mm"`                  // longest span between supports, along the timber
	Supports             Text         `json:"supports"`                 // what holds the timbers between wall and ridge
	BattensShareLoad     Flag         `json:"battens_share_load"`       // whether battens spread the load over neighbouring timbers
	Altered              Flag         `json:"altered"`                  // whether timbers or trusses were cut or changed
	Condition            Text         `json:"condition"`                // condition of the timber
}

// RafterLine mirrors rafter_line: the middle line of one rafter.
type RafterLine struct {
	Pointer
	ID       Text   `json:"id"`
	Note     Text   `json:"note"`
	AtMm     Number `json:"at_mm"`     // middle from the left end of the eaves, or from the eaves when it runs across the slope
	WidthMm  Number `json:"width_mm"`  // width, where it differs from the others
	HeightMm Number `json:"height_mm"` // depth, where it differs from the others
}

// Noggin mirrors noggin: a timber set between rafters so that a fixing has something to hold.
type Noggin struct {
	Pointer
	ID              Text   `json:"id"`
	Note            Text   `json:"note"`
	XMm             Number `json:"x_mm"`               // its middle along the eaves
	YMm             Number `json:"y_mm"`               // its middle up the slope
	LengthMm        Number `json:"length_mm"`          // length between the rafters
	WidthMm         Number `json:"width_mm"`           // width of the face that takes the screws
	HeightMm        Number `json:"height_mm"`          // depth in the direction of the screws
	TimberClass     Text   `json:"timber_class"`       // strength class of the timber (EN 338, EN 14080)
	FixedAtBothEnds Flag   `json:"fixed_at_both_ends"` // whether both ends are fixed to a rafter
	FixedBy         Text   `json:"fixed_by"`           // how its ends are fixed
}

// RoofOpening mirrors roof_opening: something that comes through the plane or stands on it.
type RoofOpening struct {
	Pointer
	ID       Text   `json:"id"`
	Note     Text   `json:"note"`
	Kind     Text   `json:"kind"`      // what it is
	XMm      Number `json:"x_mm"`      // its lower left corner along the eaves
	YMm      Number `json:"y_mm"`      // its lower left corner up the slope
	WidthMm  Number `json:"width_mm"`  // extent along the eaves
	LengthMm Number `json:"length_mm"` // extent up the slope
	HeightMm Number `json:"height_mm"` // how far it stands above the plane
	Opens    Flag   `json:"opens"`     // whether it opens
	InUse    Flag   `json:"in_use"`    // whether a chimney, flue or vent is in use
	Escape   Flag   `json:"escape"`    // whether it serves for escape or rescue
}

// RoofPathway mirrors roof_pathway: a strip of the plane kept clear so that people can walk on it.
type RoofPathway struct {
	Pointer
	ID             Text   `json:"id"`
	Note           Text   `json:"note"`
	Direction      Text   `json:"direction"`       // direction of the strip
	FromMm         Number `json:"from_mm"`         // its near edge: along the eaves for a strip up the slope, up the slope for one across it
	WidthMm        Number `json:"width_mm"`        // width
	ReachesRidge   Flag   `json:"reaches_ridge"`   // whether it leads from the lowest edge to the ridge
	Serves         Text   `json:"serves"`          // what it leads to
	OnStreetSide   Flag   `json:"on_street_side"`  // whether it lies on the side of a street or driveway
	CarriesPersons Flag   `json:"carries_persons"` // whether the structure below it carries people with their equipment
	Unobstructed   Flag   `json:"unobstructed"`    // whether no vent, conduit or equipment stands in it
}

// PlacedModule mirrors placed_module: one module where it lies.
type PlacedModule struct {
	Pointer
	ID             Text        `json:"id"`
	Note           Text        `json:"note"`
	String         Ref[String] `json:"string" ref:"string"`             // string it belongs to
	Module         Ref[Module] `json:"module" ref:"datasheets/modules"` // key of the module among the datasheets, where it belongs to no string
	XMm            Number      `json:"x_mm"`                            // its lower left corner along the eaves
	YMm            Number      `json:"y_mm"`                            // its lower left corner up the slope
	Orientation    Text        `json:"orientation"`                     // which way its longer side runs: portrait up the slope, landscape across it
	FrameDrilled   Flag        `json:"frame_drilled"`                   // whether holes were drilled in its frame
	DrainHolesFree Flag        `json:"drain_holes_free"`                // whether the drain holes of its frame are free
}

// Rail mirrors rail: a rail that carries modules. Positions along it start at its left end, or at its lower end when it runs up the slope.
type Rail struct {
	Pointer
	ID        Text                 `json:"id"`
	Note      Text                 `json:"note"`
	Datasheet Ref[FixingDatasheet] `json:"datasheet" ref:"datasheets/fixings"` // key of the rail among the datasheets of fixings
	XMm       Number               `json:"x_mm"`                               // middle line of its start along the eaves
	YMm       Number               `json:"y_mm"`                               // middle line of its start up the slope
	Direction Text                 `json:"direction"`                          // direction of the rail
	LengthMm  Number               `json:"length_mm"`                          // length, joints included
	CarriedBy Text                 `json:"carried_by"`                         // what carries it
	Joints    []RailJoint          `json:"joints"`                             // joints in its length
}

// RailJoint mirrors rail_joint: where one piece of rail ends and the next begins.
type RailJoint struct {
	Pointer
	ID    Text   `json:"id"`
	Note  Text   `json:"note"`
	AtMm  Number `json:"at_mm"`  // distance from the start of the rail
	Kind  Text   `json:"kind"`   // whether the pieces are held rigidly, may slide, or are not joined
	GapMm Number `json:"gap_mm"` // gap between the pieces
}

// Fixing mirrors fixing: a hook or other fixing that holds a rail (or a module) to the building.
type Fixing struct {
	Pointer
	ID               Text                 `json:"id"`
	Note             Text                 `json:"note"`
	Datasheet        Ref[FixingDatasheet] `json:"datasheet" ref:"datasheets/fixings"` // key of the hook among the datasheets of fixings
	Rail             Ref[Rail]            `json:"rail" ref:"rail"`                    // rail it carries
	Module           Ref[PlacedModule]    `json:"module" ref:"placed_module"`         // module it carries, where there is no rail
	XMm              Number               `json:"x_mm"`                               // its middle along the eaves
	YMm              Number               `json:"y_mm"`                               // its middle up the slope
	Member           Text                 `json:"member"`                             // what it is fixed into
	Noggin           Text                 `json:"noggin" ref:"any_part"`              // noggin it is fixed into
	OffMiddleMm      Number               `json:"off_middle_mm"`                      // distance of the screws from the middle line of the timber
	EndDistanceMm    Number               `json:"end_distance_mm"`                    // distance of the nearest screw from the end of the timber
	Screw            Ref[FixingDatasheet] `json:"screw" ref:"datasheets/fixings"`     // key of the screw among the datasheets of fixings
	Screws           Number               `json:"screws"`                             // screws in it
	ScrewArrangement Text                 `json:"screw_arrangement"`                  // how the screws stand to the grain of the timber
	ScrewSpacingMm   Number               `json:"screw_spacing_mm"`                   // smallest distance from screw to screw
	ScrewAngleDeg    Number               `json:"screw_angle_deg"`                    // angle between the screws and the grain
	Predrilled       Flag                 `json:"predrilled"`                         // whether the timber was predrilled
	PlateOn          Text                 `json:"plate_on"`                           // what its plate lies on
	PackingMm        Number               `json:"packing_mm"`                         // thickness of solid packing under its plate
	TimberSound      Flag                 `json:"timber_sound"`                       // whether the timber was found sound and did not split
	TileClearanceMm  Number               `json:"tile_clearance_mm"`                  // clearance over the tile below it, unloaded
	RestsOnTile      Flag                 `json:"rests_on_tile"`                      // whether it bears on the tile below
	TileNotched      Flag                 `json:"tile_notched"`                       // whether the tile above it was notched or ground to fit
	TileLiesFlat     Flag                 `json:"tile_lies_flat"`                     // whether the tile above it lies as flat as before
	Weathering       Text                 `json:"weathering"`                         // what keeps water out where it goes through the covering
}

// Clamp mirrors clamp: a clamp that holds one module, or two with a mid clamp.
type Clamp struct {
	Pointer
	ID            Text                 `json:"id"`
	Note          Text                 `json:"note"`
	Datasheet     Ref[FixingDatasheet] `json:"datasheet" ref:"datasheets/fixings"` // key of the clamp among the datasheets of fixings
	Kind          Text                 `json:"kind"`                               // whether it holds the last module of a row or stands between two
	Rail          Ref[Rail]            `json:"rail" ref:"rail"`                    // rail it is fixed to
	Holds         []ClampHold          `json:"holds"`                              // modules it holds
	FullyOnRail   Flag                 `json:"fully_on_rail"`                      // whether it sits on the rail with its whole length
	OverlapMm     Number               `json:"overlap_mm"`                         // how far it reaches over the frame
	OnGlass       Flag                 `json:"on_glass"`                           // whether it touches the glass
	FrameDeformed Flag                 `json:"frame_deformed"`                     // whether it deforms the frame
}

// ClampHold mirrors clamp_hold: where a clamp grips one module. The sides are those seen from outside, with the eaves below.
type ClampHold struct {
	Pointer
	Module       Ref[PlacedModule] `json:"module" ref:"placed_module"` // module it grips
	Side         Text              `json:"side"`                       // side of the module
	FromCornerMm Number            `json:"from_corner_mm"`             // distance along that side from the nearest corner to the middle of the clamp
	Corner       Text              `json:"corner"`                     // which corner that is
}

// RoofPenetration mirrors roof_penetration: a place where something goes through the covering.
type RoofPenetration struct {
	Pointer
	ID           Text     `json:"id"`
	Note         Text     `json:"note"`
	Kind         Text     `json:"kind"`          // what goes through
	Run          Ref[Run] `json:"run" ref:"run"` // run of cable that goes through
	XMm          Number   `json:"x_mm"`          // its middle along the eaves
	YMm          Number   `json:"y_mm"`          // its middle up the slope
	Weathering   Text     `json:"weathering"`    // what keeps water out
	Underlay     Text     `json:"underlay"`      // what was done where it goes through the underlay
	DripLoop     Flag     `json:"drip_loop"`     // whether the cable hangs in a drip loop before it goes in
	CablePinched Flag     `json:"cable_pinched"` // whether a tile pinches the cable
	FireStopped  Flag     `json:"fire_stopped"`  // whether the way through is sealed against fire
}

// TileWork mirrors tile_work: state of the tiles when the work was done.
type TileWork struct {
	Pointer
	Note             Text   `json:"note"`
	BrokenLeft       Number `json:"broken_left"`       // broken or cracked tiles left in place
	BrokenReplaced   Number `json:"broken_replaced"`   // broken or cracked tiles replaced
	RemovedRefixed   Flag   `json:"removed_refixed"`   // whether tiles taken out were fixed back mechanically
	CutByDisc        Flag   `json:"cut_by_disc"`       // whether tiles were cut or ground with a disc, not with a hammer
	GapsSeen         Flag   `json:"gaps_seen"`         // whether tiles lift or gape anywhere
	UnderlayRepaired Flag   `json:"underlay_repaired"` // whether damage to the underlay was made good
	Photographed     Flag   `json:"photographed"`      // whether hooks and tiles were photographed before the modules covered them
}

// FixingDatasheet mirrors fixing_datasheet: a hook, screw, rail or clamp as its maker's sheet prints it.
type FixingDatasheet struct {
	Pointer
	Note        Text           `json:"note"`
	Kind        Text           `json:"kind"`        // what it is
	Material    Text           `json:"material"`    // what it is made of
	MassKg      Number         `json:"mass_kg"`     // mass of one piece; of a metre for a rail
	Certificate Text           `json:"certificate"` // certificate and its standard, as printed
	Load        FixingLoad     `json:"load"`        // loads it is declared for
	Hook        HookDatasheet  `json:"hook"`        // values of a hook or other fixing to the building
	Screw       ScrewDatasheet `json:"screw"`       // values of a screw
	Rail        RailDatasheet  `json:"rail"`        // values of a rail
	Clamp       ClampDatasheet `json:"clamp"`       // values of a clamp
}

// FixingLoad mirrors fixing_load: resistance of one piece as the maker declares it.
type FixingLoad struct {
	Pointer
	Basis          Text   `json:"basis"`            // what the figures are: design resistance, characteristic resistance, or the load reached in the test
	Failure        Text   `json:"failure"`          // what gave way in the test
	UpliftKn       Number `json:"uplift_kn"`        // away from the roof
	DownKn         Number `json:"down_kn"`          // towards the roof
	AlongSlopeKn   Number `json:"along_slope_kn"`   // down the slope
	Standard       Text   `json:"standard"`         // standard of the test
	TestedInTimber Flag   `json:"tested_in_timber"` // whether it was tested with its screws in timber
	TestedInBatten Flag   `json:"tested_in_batten"` // whether it was tested fixed to battens or boards alone
}

// HookDatasheet mirrors hook_datasheet: what the maker prints about a hook or other fixing to the building.
type HookDatasheet struct {
	Pointer
	PlateThicknessMm    Number `json:"plate_thickness_mm"`      // thickness of its plate
	PlateWidthMm        Number `json:"plate_width_mm"`          // width of its plate
	LeverArmMm          Number `json:"lever_arm_mm"`            // distance of the pull from the middle of the screws
	PivotDistanceMm     Number `json:"pivot_distance_mm"`       // distance from the middle of the screws to the edge on which the plate turns
	ScrewsMin           Number `json:"screws_min"`              // fewest screws
	DeflectionMmPerKn   Number `json:"deflection_mm_per_kn"`    // how far it bends towards the tile under load
	TileClearanceMinMm  Number `json:"tile_clearance_min_mm"`   // smallest clearance over the tile below
	RestsOnTileByDesign Flag   `json:"rests_on_tile_by_design"` // whether it is made to rest on the tile below
	MemberWidthMinMm    Number `json:"member_width_min_mm"`     // smallest width of timber it may be fixed into
}

// ScrewDatasheet mirrors screw_datasheet: what the maker prints about a screw or bolt.
type ScrewDatasheet struct {
	Pointer
	DiameterMm               Number `json:"diameter_mm"`                  // outer diameter of the thread, d
	CoreDiameterMm           Number `json:"core_diameter_mm"`             // inner diameter of the thread, d1
	LengthMm                 Number `json:"length_mm"`                    // length under the head
	ThreadLengthMm           Number `json:"thread_length_mm"`             // length of the thread
	HeadDiameterMm           Number `json:"head_diameter_mm"`             // diameter of the head
	WithdrawalNPerMm2        Number `json:"withdrawal_n_per_mm2"`         // characteristic withdrawal parameter, fax,k
	WithdrawalDensityKgPerM3 Number `json:"withdrawal_density_kg_per_m3"` // timber density to which that parameter belongs
	TensionKn                Number `json:"tension_kn"`                   // characteristic tensile capacity, ftens,k
	YieldMomentNM            Number `json:"yield_moment_n_m"`             // characteristic yield moment, My,k
	DepthMinMm               Number `json:"depth_min_mm"`                 // smallest depth of thread in the timber
	EdgeDistanceMinMm        Number `json:"edge_distance_min_mm"`         // smallest distance from the edge of the timber that the maker declares
	EndDistanceMinMm         Number `json:"end_distance_min_mm"`          // smallest distance from the end of the timber that the maker declares
	SpacingMinMm             Number `json:"spacing_min_mm"`               // smallest distance along the grain from screw to screw that the maker declares
}

// RailDatasheet mirrors rail_datasheet: what the maker prints about a rail.
type RailDatasheet struct {
	Pointer
	HeightMm              Number     `json:"height_mm"`                // height of the section
	Spans                 []RailSpan `json:"spans"`                    // largest span for each line load
	CantileverMaxMm       Number     `json:"cantilever_max_mm"`        // longest free end beyond the last fixing
	CantileverMaxFraction Number     `json:"cantilever_max_fraction"`  // longest free end over the span beside it
	ContinuousMaxM        Number     `json:"continuous_max_m"`         // longest length without a break for expansion
	ExpansionGapMinMm     Number     `json:"expansion_gap_min_mm"`     // smallest gap at a break
	EndBeyondClampMinMm   Number     `json:"end_beyond_clamp_min_mm"`  // smallest length of rail beyond the end clamp
	ExpansionUmPerMPerK   Number     `json:"expansion_um_per_m_per_k"` // thermal expansion
}

// RailSpan mirrors rail_span: one row of the maker's span table.
type RailSpan struct {
	Pointer
	UpliftKnPerM Number `json:"uplift_kn_per_m"` // line load away from the roof, as design value
	DownKnPerM   Number `json:"down_kn_per_m"`   // line load towards the roof, as design value
	SpanMaxMm    Number `json:"span_max_mm"`     // largest distance between fixings
}

// ClampDatasheet mirrors clamp_datasheet: what the maker prints about a clamp.
type ClampDatasheet struct {
	Pointer
	FrameHeightMinMm Number `json:"frame_height_min_mm"` // lowest module frame it fits
	FrameHeightMaxMm Number `json:"frame_height_max_mm"` // highest module frame it fits
	LengthMm         Number `json:"length_mm"`           // length along the frame
	ThicknessMm      Number `json:"thickness_mm"`        // thickness
	OverlapMm        Number `json:"overlap_mm"`          // how far it reaches over the frame
	GapMm            Number `json:"gap_mm"`              // gap between modules that a mid clamp makes
	TorqueMinNM      Number `json:"torque_min_n_m"`      // lowest tightening torque
	TorqueMaxNM      Number `json:"torque_max_n_m"`      // highest tightening torque
}
