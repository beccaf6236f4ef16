// Code generated from isolator.schema.json by go generate; DO NOT EDIT.

package schema

// SwitchDisconnector mirrors switch_disconnector: a switch-disconnector (IEC 60947-3) as its maker's sheet prints it.
type SwitchDisconnector struct {
	Pointer
	Note                       Text           `json:"note"`
	Standard                   Text           `json:"standard"`                     // product standard printed on it
	Poles                      Number         `json:"poles"`                        // poles
	Ratings                    []SwitchRating `json:"ratings"`                      // rated operational values; one row for each utilization category, wiring and voltage
	ItheA                      Number         `json:"ithe_a"`                       // rated thermal current in an enclosure
	ItheAmbientC               Number         `json:"ithe_ambient_c"`               // ambient temperature to which that thermal current belongs
	BreaksAllPolesTogether     Flag           `json:"breaks_all_poles_together"`    // whether one movement opens all poles
	IndependentManualOperation Flag           `json:"independent_manual_operation"` // whether its speed does not depend on the hand
	PolaritySensitive          Flag           `json:"polarity_sensitive"`           // whether it breaks current in one direction only
	LockableOff                Flag           `json:"lockable_off"`                 // whether it can be locked open
	OnOffMarked                Flag           `json:"on_off_marked"`                // whether ON and OFF are marked
	IP                         Text           `json:"ip"`                           // degree of protection of its own enclosure
}

// SwitchRating mirrors switch_rating: one row of the maker's table.
type SwitchRating struct {
	Pointer
	UtilizationCategory Text   `json:"utilization_category"` // utilization category of IEC 60947-3
	PolesInSeries       Number `json:"poles_in_series"`      // poles wired in series in each conductor for this row
	UeV                 Number `json:"ue_v"`                 // rated operational voltage, Ue
	IeA                 Number `json:"ie_a"`                 // rated operational current, Ie
}

// Isolator mirrors isolator: a switch-disconnector as installed. Way 1 of ID is wired at ID.1.in (side of the generator) and ID.1.out.
type Isolator struct {
	Pointer
	ID                  Text                    `json:"id"`
	Note                Text                    `json:"note"`
	Circuit             Text                    `json:"circuit"`                                         // which circuit it opens
	Datasheet           Ref[SwitchDisconnector] `json:"datasheet" ref:"datasheets/switch_disconnectors"` // key of the switch-disconnector among the datasheets
	UtilizationCategory Text                    `json:"utilization_category"`                            // utilization category it is used in
	PolesInSeries       Number                  `json:"poles_in_series"`                                 // poles wired in series in each conductor
	Ways                []IsolatorWay           `json:"ways"`                                            // circuits that it opens together
	BuiltInto           Ref[Inverter]           `json:"built_into" ref:"inverter"`                       // inverter it is part of
	DistanceToInverterM Number                  `json:"distance_to_inverter_m"`                          // distance from the inverter
	Place               Text                    `json:"place"`                                           // where it stands
	AmbientMaxC         Number                  `json:"ambient_max_c"`                                   // highest ambient temperature around it, sun and roof space included
	ReadilyAccessible   Flag                    `json:"readily_accessible"`                              // whether it can be reached without a ladder, tool or key
	LockableOff         Flag                    `json:"lockable_off"`                                    // whether it can be locked open as installed
	Enclosure           Enclosure               `json:"enclosure"`                                       // enclosure around it
}

// IsolatorWay mirrors isolator_way: one circuit through the isolator.
type IsolatorWay struct {
	Pointer
	ID               Text `json:"id" unique:"part"`          // name of the way: 1, 2, …
	ConductorsOpened Text `json:"conductors_opened"`         // in which conductors it breaks
	JoinedIn         Text `json:"joined_in" ref:"terminal"`  // terminal to which its in side is joined without a run of cable
	JoinedOut        Text `json:"joined_out" ref:"terminal"` // terminal to which its out side is joined without a run of cable
}

// Enclosure mirrors enclosure: the box around a device as installed.
type Enclosure struct {
	Pointer
	IP                 Text `json:"ip"`                   // degree of protection as installed
	UVResistant        Flag `json:"uv_resistant"`         // whether it resists sunlight
	InDirectSun        Flag `json:"in_direct_sun"`        // whether the sun shines on it
	Entries            Text `json:"entries"`              // face through which cables enter
	GlandsFit          Flag `json:"glands_fit"`           // whether the glands fit their cables
	DrilledThroughBack Flag `json:"drilled_through_back"` // whether fixing holes were drilled through the back
	Combustible        Flag `json:"combustible"`          // whether the enclosure burns
}
