// Code generated from commissioning.schema.json by go generate; DO NOT EDIT.

package schema

// Commissioning mirrors commissioning: the inspection and the tests before the installation goes into service, as recorded.
type Commissioning struct {
	Pointer
	Note             Text                  `json:"note"`
	Date             Text                  `json:"date"`              // date on which the installation went into service
	TestsComplete    Text                  `json:"tests_complete"`    // date on which the last test was done
	Category         Text                  `json:"category"`          // test regime of IEC 62446-1
	TesterRole       Text                  `json:"tester_role"`       // role of the person who tested
	TesterCompetence Text                  `json:"tester_competence"` // qualification or registration of that person, without a name
	ReportSigned     Flag                  `json:"report_signed"`     // whether the test report is signed
	Instruments      []Instrument          `json:"instruments"`       // instruments used
	Steps            []TestStep            `json:"steps"`             // tests, in the order of their dates and times; in that of the list where none is stated
	Inspections      []InspectionPoint     `json:"inspections"`       // points looked at before testing
	Strings          []StringReading       `json:"strings"`           // readings on each string
	Combiners        []CombinerReading     `json:"combiners"`         // polarity readings where strings are put in parallel
	Curves           []IvCurveReading      `json:"curves"`            // current-voltage curves
	Insulation       []InsulationReading   `json:"insulation"`        // insulation resistance
	Continuity       []ContinuityReading   `json:"continuity"`        // continuity of protective and bonding conductors
	Electrodes       []ElectrodeReading    `json:"electrodes"`        // resistance of earth electrodes
	Loops            []LoopReading         `json:"loops"`             // earth fault loop impedance and prospective fault current
	Rcds             []RCDReading          `json:"rcds"`              // tests of residual current devices
	Supply           []SupplyReading       `json:"supply"`            // voltage and frequency of the supply
	Functional       []FunctionalTest      `json:"functional"`        // functional tests
	Torques          []TorqueReading       `json:"torques"`           // tightening torques
	Thermography     []ThermographyReading `json:"thermography"`      // temperature differences seen with a thermal camera
}

// Instrument mirrors instrument: a test instrument.
type Instrument struct {
	Pointer
	ID                     Text   `json:"id"`
	Note                   Text   `json:"note"`
	Kind                   Text   `json:"kind"`                    // what it is
	Serial                 Text   `json:"serial"`                  // serial number
	VoltageMaxV            Number `json:"voltage_max_v"`           // highest voltage it may be connected to
	MeasurementCategory    Text   `json:"measurement_category"`    // measurement category of IEC 61010
	CurrentMaxA            Number `json:"current_max_a"`           // highest current it reads
	InsulationMaxMegohm    Number `json:"insulation_max_megohm"`   // highest insulation resistance it reads
	IrradianceSensor       Text   `json:"irradiance_sensor"`       // sensor of an irradiance meter
	UncertaintyPct         Number `json:"uncertainty_pct"`         // uncertainty of its readings
	Calibrated             Text   `json:"calibrated"`              // date of the last calibration
	CalibrationDue         Text   `json:"calibration_due"`         // date until which that calibration counts
	CalibrationCertificate Text   `json:"calibration_certificate"` // reference of the calibration certificate
}

// TestStep mirrors test_step: one test in the order of the work; a test done again is a further step.
type TestStep struct {
	Pointer
	ID             Text `json:"id"`
	Note           Text `json:"note"`
	Test           Text `json:"test"`                // which test
	Part           Text `json:"part" ref:"any_part"` // part tested, where it was not the whole installation
	Date           Text `json:"date"`                // date of the test
	Time           Text `json:"time"`                // time of day, as 14:05
	Passed         Flag `json:"passed"`              // whether the tester passed it
	FaultCorrected Flag `json:"fault_corrected"`     // whether a fault found was corrected
	Repeat         Flag `json:"repeat"`              // whether it repeats an earlier test
}

// InspectionPoint mirrors inspection_point: one thing looked at before testing.
type InspectionPoint struct {
	Pointer
	ID     Text `json:"id"`
	Note   Text `json:"note"`
	Point  Text `json:"point"`               // what was looked at
	Part   Text `json:"part" ref:"any_part"` // part looked at, where it was not the whole installation
	Result Text `json:"result"`              // what was found
	Date   Text `json:"date"`                // date of the inspection
}

// StringReading mirrors string_reading: voltage, current and weather read on one string. Of several readings of a string the latest counts.
type StringReading struct {
	Pointer
	ID                     Text        `json:"id"`
	Note                   Text        `json:"note"`
	String                 Ref[String] `json:"string" ref:"string"`                   // string read
	Date                   Text        `json:"date"`                                  // date of the reading
	Time                   Text        `json:"time"`                                  // time of day, as 14:05
	Polarity               Text        `json:"polarity"`                              // polarity found
	VocV                   Number      `json:"voc_v"`                                 // open-circuit voltage
	IscA                   Number      `json:"isc_a"`                                 // short-circuit current
	OperatingCurrentA      Number      `json:"operating_current_a"`                   // current with the inverter running
	PositiveToEarthV       Number      `json:"positive_to_earth_v"`                   // open-circuit voltage from positive to earth
	NegativeToEarthV       Number      `json:"negative_to_earth_v"`                   // open-circuit voltage from negative to earth
	IrradianceWPerM2       Number      `json:"irradiance_w_per_m2"`                   // irradiance
	IrradiancePlane        Text        `json:"irradiance_plane"`                      // plane in which the irradiance was read
	IrradianceSimultaneous Flag        `json:"irradiance_simultaneous"`               // whether irradiance was read together with the current
	Light                  Text        `json:"light"`                                 // state of the light
	CellTemperatureC       Number      `json:"cell_temperature_c"`                    // temperature of the cells
	ModuleBackTemperatureC Number      `json:"module_back_temperature_c"`             // temperature of the back of a module
	AirTemperatureC        Number      `json:"air_temperature_c"`                     // temperature of the air in the shade
	WindSpeedMPerS         Number      `json:"wind_speed_m_per_s"`                    // wind speed at the modules
	LoadBreakDeviceUsed    Flag        `json:"load_break_device_used"`                // whether the short circuit was made and broken by a device made for it
	Instrument             Text        `json:"instrument" ref:"any_part"`             // instrument used for voltage and current
	IrradianceInstrument   Text        `json:"irradiance_instrument" ref:"any_part"`  // instrument used for the irradiance
	TemperatureInstrument  Text        `json:"temperature_instrument" ref:"any_part"` // instrument used for the temperature
}

// CombinerReading mirrors combiner_reading: voltage between one pole of two strings before they are joined: near zero when both are the right way round.
type CombinerReading struct {
	Pointer
	ID         Text        `json:"id"`
	Note       Text        `json:"note"`
	Array      Ref[Array]  `json:"array" ref:"array"`         // array in which they are joined
	String     Ref[String] `json:"string" ref:"string"`       // string read
	Against    Ref[String] `json:"against" ref:"string"`      // string it was read against
	Pole       Text        `json:"pole"`                      // which poles
	VoltageV   Number      `json:"voltage_v"`                 // voltage
	Date       Text        `json:"date"`                      // date of the reading
	Instrument Text        `json:"instrument" ref:"any_part"` // instrument used
}

// IvCurveReading mirrors iv_curve_reading: what was read from one current-voltage curve.
type IvCurveReading struct {
	Pointer
	ID               Text        `json:"id"`
	Note             Text        `json:"note"`
	String           Ref[String] `json:"string" ref:"string"`       // string read
	VocV             Number      `json:"voc_v"`                     // open-circuit voltage
	IscA             Number      `json:"isc_a"`                     // short-circuit current
	VmpV             Number      `json:"vmp_v"`                     // voltage at maximum power
	ImpA             Number      `json:"imp_a"`                     // current at maximum power
	IrradianceWPerM2 Number      `json:"irradiance_w_per_m2"`       // irradiance in the plane of the modules
	CellTemperatureC Number      `json:"cell_temperature_c"`        // temperature of the cells
	Shape            Text        `json:"shape"`                     // shape of the curve
	Date             Text        `json:"date"`                      // date of the reading
	Instrument       Text        `json:"instrument" ref:"any_part"` // instrument used
}

// InsulationReading mirrors insulation_reading: insulation resistance of one circuit, or of several joined for the test.
type InsulationReading struct {
	Pointer
	ID                    Text   `json:"id"`
	Note                  Text   `json:"note"`
	Part                  Text   `json:"part" ref:"any_part"`          // string, array, run or circuit tested
	TogetherWith          []Text `json:"together_with" ref:"any_part"` // further parts joined to it for the test
	Side                  Text   `json:"side"`                         // side of the inverter
	Between               Text   `json:"between"`                      // between what
	Method                Number `json:"method"`                       // method of IEC 62446-1: 1 each pole in turn, 2 poles joined
	TestVoltageV          Number `json:"test_voltage_v"`               // test voltage
	ResistanceMegohm      Number `json:"resistance_megohm"`            // resistance read; the end of the range where the instrument showed more
	OverRange             Flag   `json:"over_range"`                   // whether the instrument showed more than its range
	SPDsConnected         Flag   `json:"spds_connected"`               // whether surge protective devices were connected during the test
	SPDsRemovable         Flag   `json:"spds_removable"`               // whether the surge protective devices can be disconnected
	SPDsReconnected       Flag   `json:"spds_reconnected"`             // whether they were connected again after the test
	InverterConnected     Flag   `json:"inverter_connected"`           // whether the inverter was connected during the test
	FunctionalEarthLifted Flag   `json:"functional_earth_lifted"`      // whether a functional earth was lifted during the test
	ShortingSwitchUsed    Flag   `json:"shorting_switch_used"`         // whether the poles were joined by a switch rated for it
	HeldS                 Number `json:"held_s"`                       // time the voltage was held until the reading stood still
	Surface               Text   `json:"surface"`                      // state of the modules
	Date                  Text   `json:"date"`                         // date of the reading
	Instrument            Text   `json:"instrument" ref:"any_part"`    // instrument used
}

// ContinuityReading mirrors continuity_reading: resistance of a protective or bonding conductor, from end to end.
type ContinuityReading struct {
	Pointer
	ID            Text     `json:"id"`
	Note          Text     `json:"note"`
	Conductor     Text     `json:"conductor"`                 // which duty the conductor has
	Part          Text     `json:"part" ref:"any_part"`       // conductor, circuit or part tested
	Run           Ref[Run] `json:"run" ref:"run"`             // run of cable tested
	From          Text     `json:"from" ref:"terminal"`       // where one lead stood
	To            Text     `json:"to" ref:"terminal"`         // where the other lead stood
	ResistanceOhm Number   `json:"resistance_ohm"`            // resistance
	TestCurrentMa Number   `json:"test_current_ma"`           // test current
	LeadsNulled   Flag     `json:"leads_nulled"`              // whether the resistance of the leads was taken off
	Date          Text     `json:"date"`                      // date of the reading
	Instrument    Text     `json:"instrument" ref:"any_part"` // instrument used
}

// ElectrodeReading mirrors electrode_reading: resistance of an earth electrode.
type ElectrodeReading struct {
	Pointer
	ID            Text   `json:"id"`
	Note          Text   `json:"note"`
	Part          Text   `json:"part" ref:"any_part"`       // electrode, where it stands in this document
	ResistanceOhm Number `json:"resistance_ohm"`            // resistance to earth
	Method        Text   `json:"method"`                    // how it was read
	Date          Text   `json:"date"`                      // date of the reading
	Instrument    Text   `json:"instrument" ref:"any_part"` // instrument used
}

// LoopReading mirrors loop_reading: earth fault loop impedance and prospective fault current at one point.
type LoopReading struct {
	Pointer
	ID                    Text   `json:"id"`
	Note                  Text   `json:"note"`
	Part                  Text   `json:"part" ref:"any_part"`       // board, circuit or device at which it was read
	At                    Text   `json:"at"`                        // point of the installation
	LoopImpedanceOhm      Number `json:"loop_impedance_ohm"`        // earth fault loop impedance (Ze at the origin, Zs elsewhere)
	R1R2Ohm               Number `json:"r1_r2_ohm"`                 // resistance of line and protective conductor of the circuit, R1 + R2
	FaultCurrentKa        Number `json:"fault_current_ka"`          // prospective fault current
	ShortCircuitCurrentKa Number `json:"short_circuit_current_ka"`  // prospective short-circuit current
	Method                Text   `json:"method"`                    // how it was found
	Date                  Text   `json:"date"`                      // date of the reading
	Instrument            Text   `json:"instrument" ref:"any_part"` // instrument used
}

// RCDReading mirrors rcd_reading: one test of a residual current device.
type RCDReading struct {
	Pointer
	ID              Text   `json:"id"`
	Note            Text   `json:"note"`
	Part            Text   `json:"part" ref:"any_part"`       // device, or circuit it protects
	TestCurrentMa   Number `json:"test_current_ma"`           // test current
	TestCurrentForm Text   `json:"test_current_form"`         // form of the test current
	TripTimeMs      Number `json:"trip_time_ms"`              // time in which it opened
	Tripped         Flag   `json:"tripped"`                   // whether it opened
	TestButtonWorks Flag   `json:"test_button_works"`         // whether its test button opens it
	Date            Text   `json:"date"`                      // date of the reading
	Instrument      Text   `json:"instrument" ref:"any_part"` // instrument used
}

// SupplyReading mirrors supply_reading: voltage and frequency of the supply at one point.
type SupplyReading struct {
	Pointer
	ID              Text   `json:"id"`
	Note            Text   `json:"note"`
	At              Text   `json:"at"`                        // point of the installation
	Part            Text   `json:"part" ref:"any_part"`       // board or inverter at which it was read
	Between         Text   `json:"between"`                   // between which conductors
	Phase           Text   `json:"phase"`                     // which line conductor
	VoltageV        Number `json:"voltage_v"`                 // voltage
	FrequencyHz     Number `json:"frequency_hz"`              // frequency
	InverterRunning Flag   `json:"inverter_running"`          // whether the inverter was feeding at the time
	Polarity        Text   `json:"polarity"`                  // polarity of the supply
	PhaseSequence   Text   `json:"phase_sequence"`            // phase sequence of a three-phase supply
	Time            Text   `json:"time"`                      // time of day, as 14:05
	Date            Text   `json:"date"`                      // date of the reading
	Instrument      Text   `json:"instrument" ref:"any_part"` // instrument used
}

// FunctionalTest mirrors functional_test: one thing made to work, and what it did.
type FunctionalTest struct {
	Pointer
	ID            Text   `json:"id"`
	Note          Text   `json:"note"`
	Test          Text   `json:"test"`                      // what was tested
	Part          Text   `json:"part" ref:"any_part"`       // part tested
	Passed        Flag   `json:"passed"`                    // whether the tester passed it
	TimeS         Number `json:"time_s"`                    // time until it acted
	VoltageAfterV Number `json:"voltage_after_v"`           // voltage left after it acted
	PowerW        Number `json:"power_w"`                   // power read while it acted
	Date          Text   `json:"date"`                      // date of the reading
	Instrument    Text   `json:"instrument" ref:"any_part"` // instrument used
}

// TorqueReading mirrors torque_reading: a torque as tightened or checked.
type TorqueReading struct {
	Pointer
	ID          Text   `json:"id"`
	Note        Text   `json:"note"`
	Part        Text   `json:"part" ref:"terminal"`       // clamp, fixing or terminal tightened
	TorqueNM    Number `json:"torque_n_m"`                // torque
	SpecifiedNM Number `json:"specified_n_m"`             // torque that the maker asks for, where no datasheet here prints it
	Marked      Flag   `json:"marked"`                    // whether it was marked after tightening
	Date        Text   `json:"date"`                      // date of the reading
	Instrument  Text   `json:"instrument" ref:"any_part"` // instrument used
}

// ThermographyReading mirrors thermography_reading: temperature difference of a part to its like, seen with a thermal camera.
type ThermographyReading struct {
	Pointer
	ID               Text   `json:"id"`
	Note             Text   `json:"note"`
	Part             Text   `json:"part" ref:"any_part"`       // part seen
	DifferenceK      Number `json:"difference_k"`              // how much hotter it is than its like
	IrradianceWPerM2 Number `json:"irradiance_w_per_m2"`       // irradiance in the plane of the modules
	LoadCurrentA     Number `json:"load_current_a"`            // current at the time
	Date             Text   `json:"date"`                      // date of the reading
	Instrument       Text   `json:"instrument" ref:"any_part"` // instrument used
}
