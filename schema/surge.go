// Code generated from surge.schema.json by go generate; DO NOT EDIT.

package schema

// SPD mirrors spd: a surge protective device (SPD) as installed.
type SPD struct {
	Pointer
	ID                Text                  `json:"id"`
	Note              Text                  `json:"note"`
	ConnectedAt       Text                  `json:"connected_at" ref:"terminal"`                       // terminal at which it is connected
	Datasheet         Ref[SPDDatasheet]     `json:"datasheet" ref:"datasheets/spds"`                   // key of the SPD among the datasheets
	Circuit           Text                  `json:"circuit"`                                           // which circuit it protects
	BuiltInto         Ref[Inverter]         `json:"built_into" ref:"inverter"`                         // inverter it is part of
	Place             Text                  `json:"place"`                                             // where it stands
	Connection        Text                  `json:"connection"`                                        // whether the SPD hangs on a spur or the circuit passes through its terminals
	Modes             Text                  `json:"modes"`                                             // between which conductors it is connected
	LiveLeadsMm       Number                `json:"live_leads_mm"`                                     // length of the leads from the live conductors to the SPD
	EarthLeadMm       Number                `json:"earth_lead_mm"`                                     // length of the lead from the SPD to the nearest earthing bar
	LiveLeadsMm2      Number                `json:"live_leads_mm2"`                                    // cross-section of the leads to the live conductors
	EarthLeadMm2      Number                `json:"earth_lead_mm2"`                                    // cross-section of the earthing lead
	EarthedAt         Text                  `json:"earthed_at" ref:"terminal"`                         // terminal or earthing bar to which it is earthed
	BackupDevice      Ref[ProtectiveDevice] `json:"backup_device" ref:"datasheets/protective_devices"` // key of the overcurrent device in front of it
	IndicatorVisible  Flag                  `json:"indicator_visible"`                                 // whether its status can be seen
	RemoteContactUsed Flag                  `json:"remote_contact_used"`                               // whether its remote contact is connected
	CanBeWithdrawn    Flag                  `json:"can_be_withdrawn"`                                  // whether it can be taken out of circuit for an insulation test
	StatusGood        Flag                  `json:"status_good"`                                       // whether its indicator shows it sound
}

// SPDDatasheet mirrors spd_datasheet: a surge protective device as its maker's sheet prints it.
type SPDDatasheet struct {
	Pointer
	Note                Text   `json:"note"`
	Type                Text   `json:"type"`                  // type (test class)
	System              Text   `json:"system"`                // kind of circuit it is made for
	Standard            Text   `json:"standard"`              // product standard printed on it
	Poles               Number `json:"poles"`                 // protected poles
	Configuration       Text   `json:"configuration"`         // how its elements are joined
	UcpvV               Number `json:"ucpv_v"`                // maximum continuous PV voltage between poles, Ucpv
	UcpvToEarthV        Number `json:"ucpv_to_earth_v"`       // maximum continuous PV voltage from pole to earth
	UcV                 Number `json:"uc_v"`                  // maximum continuous operating voltage, Uc
	UcNeutralToEarthV   Number `json:"uc_neutral_to_earth_v"` // maximum continuous operating voltage from neutral to earth
	UpKv                Number `json:"up_kv"`                 // voltage protection level, Up
	UpBetweenPolesKv    Number `json:"up_between_poles_kv"`   // voltage protection level between poles
	UtV                 Number `json:"ut_v"`                  // temporary overvoltage it withstands
	InKa                Number `json:"in_ka"`                 // nominal discharge current, In, per mode
	ImaxKa              Number `json:"imax_ka"`               // maximum discharge current, Imax
	IimpKa              Number `json:"iimp_ka"`               // impulse discharge current (10/350), Iimp
	ItotalKa            Number `json:"itotal_ka"`             // total discharge current
	IscpvA              Number `json:"iscpv_a"`               // short-circuit current rating for PV, Iscpv
	IsccrKa             Number `json:"isccr_ka"`              // short-circuit current rating, Isccr
	BackupDeviceMaxA    Number `json:"backup_device_max_a"`   // greatest overcurrent device in front of it
	StatusIndicator     Flag   `json:"status_indicator"`      // whether it shows its state
	RemoteContact       Flag   `json:"remote_contact"`        // whether it has a remote contact
	DisconnectorBuiltIn Flag   `json:"disconnector_built_in"` // whether its own disconnector is built in
	Pluggable           Flag   `json:"pluggable"`             // whether its element can be pulled out
	AmbientMaxC         Number `json:"ambient_max_c"`         // highest ambient temperature
	IP                  Text   `json:"ip"`                    // degree of protection
}
