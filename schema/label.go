// Code generated from label.schema.json by go generate; DO NOT EDIT.

package schema

// Label mirrors label: a label or notice as put up, or to be put up. It is fixed to a part, along a run of cable, or at a location that is no part.
type Label struct {
	Pointer
	ID                  Text     `json:"id"`
	Note                Text     `json:"note"`
	Legend              Text     `json:"legend"`                     // what it says, as a word of the label lists of the rule sets
	On                  Text     `json:"on" ref:"any_part"`          // part it is fixed to
	Run                 Ref[Run] `json:"run" ref:"run"`              // run of cable along which it is fixed
	PositionM           Number   `json:"position_m"`                 // distance from the start of the run
	Side                Text     `json:"side"`                       // side of a wall, floor or roof on which it stands, seen along the run
	Location            Text     `json:"location"`                   // where it hangs when that is no part of this document
	FixedTo             Text     `json:"fixed_to"`                   // what carries it
	DistanceToPartMm    Number   `json:"distance_to_part_mm"`        // distance from the part it speaks of
	Text                Text     `json:"text"`                       // words printed on it
	Language            Text     `json:"language"`                   // language of the words, ISO 639 code
	PartsNamed          []Text   `json:"parts_named" ref:"any_part"` // parts named or shown on it
	VoltageMaxV         Number   `json:"voltage_max_v"`              // maximum voltage printed on it
	CurrentMaxA         Number   `json:"current_max_a"`              // maximum or short-circuit current printed on it
	ValuesAt            Text     `json:"values_at"`                  // conditions to which the printed values belong
	ACVoltageV          Number   `json:"ac_voltage_v"`               // AC voltage printed on it
	ACCurrentA          Number   `json:"ac_current_a"`               // AC current printed on it
	FaultCurrentKa      Number   `json:"fault_current_ka"`           // fault current printed on it
	DischargeWaitMin    Number   `json:"discharge_wait_min"`         // minutes to wait printed on it
	EnergyKwh           Number   `json:"energy_kwh"`                 // stored energy printed on it
	BatteryVoltageV     Number   `json:"battery_voltage_v"`          // nominal voltage of the battery printed on it
	SignCode            Text     `json:"sign_code"`                  // code on the sign for the fire service, as in AC, SW, DP
	UnNumber            Text     `json:"un_number"`                  // UN number of the battery printed on it
	DatePrinted         Text     `json:"date_printed"`               // date printed on it
	TelephonePrinted    Flag     `json:"telephone_printed"`          // whether a telephone number is printed on it
	PositionsMarked     Flag     `json:"positions_marked"`           // whether it marks the on and off positions
	WarningPrinted      Flag     `json:"warning_printed"`            // whether it carries the word or symbol of danger
	Steps               Number   `json:"steps"`                      // steps of the procedure on it
	LetterHeightMm      Number   `json:"letter_height_mm"`           // height of its capitals, of the title where there is one
	SmallLetterHeightMm Number   `json:"small_letter_height_mm"`     // height of its smaller letters
	ViewingDistanceM    Number   `json:"viewing_distance_m"`         // distance from which it must be read
	WidthMm             Number   `json:"width_mm"`                   // width
	HeightMm            Number   `json:"height_mm"`                  // height
	DiameterMm          Number   `json:"diameter_mm"`                // diameter of a round sign
	Background          Text     `json:"background"`                 // colour of its ground
	Lettering           Text     `json:"lettering"`                  // colour of its letters
	Reflective          Flag     `json:"reflective"`                 // whether it reflects light
	MadeBy              Text     `json:"made_by"`                    // how the letters are made
	Durable             Flag     `json:"durable"`                    // whether it lasts as long as the part
	UVResistant         Flag     `json:"uv_resistant"`               // whether it resists sunlight
	Legible             Flag     `json:"legible"`                    // whether it can be read
	Visible             Flag     `json:"visible"`                    // whether it can be seen without opening or moving anything
}
