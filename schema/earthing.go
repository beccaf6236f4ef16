// Code generated from earthing.schema.json by go generate; DO NOT EDIT.

package schema

// Earthing mirrors earthing: how the installation and the array frames are earthed. Bonding and earthing conductors of the PV work itself are runs of cable with service protective, bonding or earthing.
type Earthing struct {
	Pointer
	Note                Text                `json:"note"`
	Arrangement         Text                `json:"arrangement"`          // system earthing at the origin
	ArrangementSource   Text                `json:"arrangement_source"`   // how the system earthing is known
	MainTerminal        EarthTerminal       `json:"main_terminal"`        // main earthing terminal
	Terminals           []EarthTerminal     `json:"terminals"`            // other earthing bars and terminals
	EarthingConductor   EarthConductor      `json:"earthing_conductor"`   // earthing conductor from the main earthing terminal to the means of earthing
	Electrodes          []EarthElectrode    `json:"electrodes"`           // earth electrodes
	ElectrodeSystem     Flag                `json:"electrode_system"`     // whether the building has an electrode system
	MainBonds           []MainBond          `json:"main_bonds"`           // main bonding conductors of the building
	Frames              []ArrayFrame        `json:"frames"`               // frames of the arrays, and other metal of the PV work
	Poles               []PoleEarthing      `json:"poles"`                // poles of arrays connected to earth on purpose
	Alarms              []EarthFaultAlarm   `json:"alarms"`               // what tells people of an earth fault of the array
	LightningProtection LightningProtection `json:"lightning_protection"` // lightning protection system of the building
}

// EarthTerminal mirrors earth_terminal: an earthing bar or terminal. Runs end at its id.
type EarthTerminal struct {
	Pointer
	ID         Text       `json:"id"`
	Note       Text       `json:"note"`
	Place      Text       `json:"place"`             // where it stands
	Board      Ref[Board] `json:"board" ref:"board"` // board it stands in
	Accessible Flag       `json:"accessible"`        // whether it can be reached for tests
}

// EarthConductor mirrors earth_conductor: a conductor of the earthing of the building.
type EarthConductor struct {
	Pointer
	Note                  Text   `json:"note"`
	CsaMm2                Number `json:"csa_mm2"`                // cross-section
	Material              Text   `json:"material"`               // metal
	LengthM               Number `json:"length_m"`               // length
	Insulated             Flag   `json:"insulated"`              // whether it is insulated
	Buried                Flag   `json:"buried"`                 // whether it is buried
	MechanicallyProtected Flag   `json:"mechanically_protected"` // whether it is guarded against damage
	CorrosionProtected    Flag   `json:"corrosion_protected"`    // whether it is guarded against corrosion
	Connected             Flag   `json:"connected"`              // whether it was found connected at both ends
}

// EarthElectrode mirrors earth_electrode: an earth electrode. Runs end at its id.
type EarthElectrode struct {
	Pointer
	ID                   Text           `json:"id"`
	Note                 Text           `json:"note"`
	Kind                 Text           `json:"kind"`                    // kind of electrode
	Serves               Text           `json:"serves"`                  // what it earths
	Material             Text           `json:"material"`                // metal
	DepthM               Number         `json:"depth_m"`                 // depth
	ResistanceOhm        Number         `json:"resistance_ohm"`          // measured resistance to earth
	Measured             Flag           `json:"measured"`                // whether the resistance was measured and not computed
	DistanceToOtherM     Number         `json:"distance_to_other_m"`     // distance from the nearest electrode of another earthing system
	BondedToMainTerminal Flag           `json:"bonded_to_main_terminal"` // whether it is joined to the main earthing terminal
	Conductor            EarthConductor `json:"conductor"`               // conductor that leads to it, where it is no run of cable
}

// MainBond mirrors main_bond: a main bonding conductor of the building.
type MainBond struct {
	Pointer
	ID        Text           `json:"id"`
	Note      Text           `json:"note"`
	Bonds     Text           `json:"bonds"`     // what it bonds
	Conductor EarthConductor `json:"conductor"` // the conductor
}

// ArrayFrame mirrors array_frame: metal that carries modules, or other metal of the PV work that people can touch. Runs end at its id.
type ArrayFrame struct {
	Pointer
	ID                           Text          `json:"id"`
	Note                         Text          `json:"note"`
	Strings                      []Ref[String] `json:"strings" ref:"string"`             // strings whose modules it carries
	Conductive                   Flag          `json:"conductive"`                       // whether it is of metal
	Material                     Text          `json:"material"`                         // metal
	Connection                   Text          `json:"connection"`                       // how it is connected to earth
	Reason                       Text          `json:"reason"`                           // why it is connected so, or not at all
	ResistanceToMainTerminalKohm Number        `json:"resistance_to_main_terminal_kohm"` // resistance between the frame, not yet bonded, and the main earthing terminal
	TouchesBuildingMetal         Flag          `json:"touches_building_metal"`           // whether it touches metal of the building that leads to earth
	WithinReachFrom              Text          `json:"within_reach_from"`                // from where people can touch it
	OutsideEquipotentialZone     Flag          `json:"outside_equipotential_zone"`       // whether it stands where the main bonding does not reach, as on a detached building
	ModulesBondedBy              Text          `json:"modules_bonded_by"`                // what joins module frames to rails
	BondListed                   Flag          `json:"bond_listed"`                      // whether clamps, rails and jumpers are certified as means of bonding
	ModuleCanBeRemoved           Flag          `json:"module_can_be_removed"`            // whether the bond of the others stays when a module is taken out
	MetalsCompatible             Flag          `json:"metals_compatible"`                // whether the joints are of metals that do not corrode each other
	JointsLabelled               Flag          `json:"joints_labelled"`                  // whether earthing joints outside switchgear carry a label
	GapToLightningProtectionM    Number        `json:"gap_to_lightning_protection_m"`    // least distance from conductors of the lightning protection system
}

// PoleEarthing mirrors pole_earthing: a pole of an array that is connected to earth on purpose.
type PoleEarthing struct {
	Pointer
	ID           Text                  `json:"id"`
	Note         Text                  `json:"note"`
	Inverter     Ref[Inverter]         `json:"inverter" ref:"inverter"`                    // inverter that the array feeds
	Pole         Text                  `json:"pole"`                                       // which pole
	By           Text                  `json:"by"`                                         // through what
	Reason       Text                  `json:"reason"`                                     // why, as in a demand of the module maker
	Device       Ref[ProtectiveDevice] `json:"device" ref:"datasheets/protective_devices"` // key of the device that interrupts the earth current
	ConductorMm2 Number                `json:"conductor_mm2"`                              // cross-section of the conductor
	AtOnePoint   Flag                  `json:"at_one_point"`                               // whether it is connected at one point only
	CanBeLifted  Flag                  `json:"can_be_lifted"`                              // whether it can be opened for an insulation test
}

// EarthFaultAlarm mirrors earth_fault_alarm: what tells people that an array has an earth fault.
type EarthFaultAlarm struct {
	Pointer
	ID                       Text          `json:"id"`
	Note                     Text          `json:"note"`
	Inverter                 Ref[Inverter] `json:"inverter" ref:"inverter"`    // inverter that watches the array
	Signal                   Text          `json:"signal"`                     // how it tells them
	Noticed                  Flag          `json:"noticed"`                    // whether the owner will notice it where it is
	Persists                 Flag          `json:"persists"`                   // whether it lasts until the fault is cleared
	RepeatMin                Number        `json:"repeat_min"`                 // time between repeats
	InstructionsGiven        Flag          `json:"instructions_given"`         // whether the owner has written instructions what to do
	ResidualCurrentMonitored Flag          `json:"residual_current_monitored"` // whether the residual current of the array is watched
	InsulationMeasured       Flag          `json:"insulation_measured"`        // whether the insulation is measured before each start
}

// LightningProtection mirrors lightning_protection: the lightning protection system of the building.
type LightningProtection struct {
	Pointer
	Note                 Text   `json:"note"`
	Fitted               Flag   `json:"fitted"`                  // whether the building has one
	Class                Text   `json:"class"`                   // class of the system in IEC 62305-3
	DownConductors       Number `json:"down_conductors"`         // down-conductors
	LengthToBondM        Number `json:"length_to_bond_m"`        // length along the conductors from the array to the nearest point of equipotential bonding
	GapMaterial          Text   `json:"gap_material"`            // what fills the gap to the array
	SeparationKept       Flag   `json:"separation_kept"`         // whether the system's designer states that the separation distance is kept
	ArrayInProtectedZone Flag   `json:"array_in_protected_zone"` // whether the array stands within the zone that the air terminals protect
	RiskAssessment       Text   `json:"risk_assessment"`         // what a risk assessment to IEC 62305-2 says
	RiskAssessmentRecord Text   `json:"risk_assessment_record"`  // reference of the risk assessment
}
