package label

import (
	"sunclause/facts/working"
	"sunclause/schema"
)

// Label holds the facts of one label put up.
type Label struct {
	working.Subject

	Legend              working.Text   `json:"legend" words:"what it says, as a word of the label table"`
	On                  working.Text   `json:"on" words:"part or run it is fixed to, or the word for its location"`
	FixedTo             working.Text   `json:"fixed_to" words:"what carries it"`
	Outdoors            working.Flag   `json:"outdoors" words:"whether it hangs in the open"`
	Legible             working.Flag   `json:"legible" words:"whether it can be read"`
	Durable             working.Flag   `json:"durable" words:"whether it lasts as long as the part"`
	UVResistant         working.Flag   `json:"uv_resistant" words:"whether it resists sunlight"`
	Visible             working.Flag   `json:"visible" words:"whether it can be seen without opening or moving anything"`
	Language            working.Text   `json:"language" words:"language of its words"`
	LetterHeightMm      working.Number `json:"letter_height_mm" words:"height of its capitals"`
	WidthMm             working.Number `json:"width_mm" words:"width"`
	HeightMm            working.Number `json:"height_mm" words:"height"`
	AlongRun            working.Flag   `json:"along_run" words:"whether it is fixed along a run of cable"`
	RunBeyondM          working.Number `json:"run_beyond_m" words:"length of that run beyond its place"`
	HeightOverLetters   working.Number `json:"height_over_letters" words:"height, or diameter of a round sign, over height of its capitals"`
	DistanceOverLetters working.Number `json:"distance_over_letters" words:"distance from which it must be read over height of its capitals"`
	WarningPrinted      working.Flag   `json:"warning_printed" words:"whether it carries the word or symbol of danger"`
	PositionsMarked     working.Flag   `json:"positions_marked" words:"whether it marks the on and off positions"`
	TelephonePrinted    working.Flag   `json:"telephone_printed" words:"whether a telephone number is printed on it"`
	Steps               working.Number `json:"steps" words:"steps of the procedure on it"`
	VoltagePrintedV     working.Number `json:"voltage_printed_v" words:"maximum voltage printed on it"`
	CurrentPrintedA     working.Number `json:"current_printed_a" words:"maximum or short-circuit current printed on it"`
	ValuesAt            working.Text   `json:"values_at" words:"conditions to which the printed values belong: stc or maximum"`
	VoltageDerivedV     working.Number `json:"voltage_derived_v" words:"voltage of the strings behind its part under those conditions"`
	CurrentDerivedA     working.Number `json:"current_derived_a" words:"short-circuit current of the strings behind its part, one way or input, under those conditions"`
	VoltageRatio        working.Number `json:"voltage_ratio" words:"voltage printed over voltage derived"`
	CurrentRatio        working.Number `json:"current_ratio" words:"current printed over current derived"`
	DischargeWaitMin    working.Number `json:"discharge_wait_min" words:"minutes to wait printed on it"`
	DischargeMakerMin   working.Number `json:"discharge_wait_maker_min" words:"minutes to wait that the maker of the inverter asks for"`
	EnergyPrintedKwh    working.Number `json:"energy_printed_kwh" words:"stored energy printed on it"`
	EnergyDerivedKwh    working.Number `json:"energy_derived_kwh" words:"rated energy of the battery it is on"`
	BatteryPrintedV     working.Number `json:"battery_voltage_printed_v" words:"nominal voltage of the battery printed on it"`
	BatteryNominalV     working.Number `json:"battery_voltage_nominal_v" words:"nominal voltage of the battery it is on"`
	Batteries           working.Number `json:"batteries" words:"batteries of the installation"`
	DaysAfterService    working.Number `json:"days_after_service" words:"days from going into service to the date printed on it"`
	SourcesNotNamed     working.Number `json:"sources_not_named" words:"sources of supply for which it names no part that isolates them"`
	IsolatorsNotNamed   working.Number `json:"isolators_not_named" words:"isolators that it does not name"`
	DcIsolatorsNotNamed working.Number `json:"dc_isolators_not_named" words:"isolators of the strings that it does not name"`
	WordsUnlike         working.Text   `json:"words_unlike" words:"what in its words is not what is stated or worked out elsewhere; none where all of it is"`
}

var readFrom = working.NewFormula("d/h", "", "1000 · d / h", working.ByDefinition)

// sizes sets the sizes of a label against each other.
func (f *Label) sizes(l *schema.Label) {
	height := f.HeightMm
	if l.DiameterMm.Stated() && !l.HeightMm.Stated() {
		height = working.Stated("D", "mm", l.DiameterMm)
	}
	f.HeightOverLetters = working.Ratio("h_lab/h", height, f.LetterHeightMm)
	f.DistanceOverLetters = readFrom.Of(working.Stated("d", "m", l.ViewingDistanceM), f.LetterHeightMm)
}

// along sets the place of a label along a run against the length of the run.
func (f *Label) along(j *job, l *schema.Label) {
	f.AlongRun = working.KnownFlag(l.Run.Stated(), l.At())
	f.RunBeyondM = working.NoNumber("l − x", "m")
	if i, is := j.runs[l.Run.Value]; is {
		f.RunBeyondM = working.Difference("l − x", "m", j.cables.Runs[i].LengthM, working.Stated("x", "m", l.PositionM))
	}
}

// labels derives the facts of every label; nil when the document states none.
func (j *job) labels() []Label {
	if j.in.Labels == nil {
		return nil
	}
	all := make([]Label, len(j.in.Labels))
	for i := range j.in.Labels {
		l := &j.in.Labels[i]
		all[i] = fromDocument(l)
		all[i].Outdoors = j.outdoors(l)
		all[i].sizes(l)
		all[i].along(j, l)
		all[i].printed(j, l)
		all[i].battery(j, l)
		all[i].identification(j, l)
		all[i].WordsUnlike = j.wordsUnlike(&all[i], l)
		all[i].DaysAfterService = daysAfter(j.in.Commissioning.Date, l.DatePrinted)
	}
	return all
}

// fromDocument takes what the document states of a label.
func fromDocument(l *schema.Label) Label {
	return Label{
		Subject:          working.Subject{ID: l.ID.Value, At: l.At(), Name: "label " + l.ID.Value},
		Legend:           working.StatedText(l.Legend),
		On:               carrier(l),
		FixedTo:          working.StatedText(l.FixedTo),
		Legible:          working.StatedFlag(l.Legible),
		Durable:          working.StatedFlag(l.Durable),
		UVResistant:      working.StatedFlag(l.UVResistant),
		Visible:          working.StatedFlag(l.Visible),
		Language:         working.StatedText(l.Language),
		LetterHeightMm:   working.Stated("h", "mm", l.LetterHeightMm),
		WidthMm:          working.Stated("b", "mm", l.WidthMm),
		HeightMm:         working.Stated("h_lab", "mm", l.HeightMm),
		WarningPrinted:   working.StatedFlag(l.WarningPrinted),
		PositionsMarked:  working.StatedFlag(l.PositionsMarked),
		TelephonePrinted: working.StatedFlag(l.TelephonePrinted),
		Steps:            working.Stated("n_steps", "", l.Steps),
		VoltagePrintedV:  working.Stated("U_lab", "V", l.VoltageMaxV),
		CurrentPrintedA:  working.Stated("I_lab", "A", l.CurrentMaxA),
		ValuesAt:         working.StatedText(l.ValuesAt),
		DischargeWaitMin: working.Stated("t_lab", "min", l.DischargeWaitMin),
		EnergyPrintedKwh: working.Stated("E_lab", "kWh", l.EnergyKwh),
		BatteryPrintedV:  working.Stated("U_lab", "V", l.BatteryVoltageV),
	}
}

// carrier is the part, run or location that carries a label.
func carrier(l *schema.Label) working.Text {
	for _, t := range []schema.Text{l.On, l.Run.Text, l.Location} {
		if t.Stated() {
			return working.StatedText(t)
		}
	}
	return working.UnknownText(l.On.At())
}

// daysAfter counts the days from one date to another, as a bare count.
func daysAfter(from, to schema.Text) working.Number {
	days := working.Days("n_days", from, to)
	if !days.Known() {
		return working.Unknown("n_days", "", days.Missing()...)
	}
	return working.Counted("n_days", int(days.Value()), to.At())
}
