package storage

import (
	"regexp"
	"slices"

	"sunclause/facts/working"
	"sunclause/schema"
)

// Battery holds the facts of one battery.
type Battery struct {
	working.Subject

	Place             working.Text   `json:"place" words:"where it stands"`
	Room              working.Text   `json:"room" words:"room or space, in words"`
	Outdoors          working.Flag   `json:"outdoors" words:"whether it stands in the open"`
	Detached          working.Flag   `json:"detached_building" words:"whether the building it stands in is detached"`
	OpensIntoBedroom  working.Flag   `json:"opens_into_bedroom" words:"whether the space opens into a room for sleeping"`
	InEscapeRoute     working.Flag   `json:"in_escape_route" words:"whether it stands in an escape route"`
	InProtectedRoute  working.Flag   `json:"in_protected_route" words:"whether it stands in a protected corridor, stair, lobby or shaft"`
	OutsideAccess     working.Flag   `json:"outside_access" words:"whether the space can be entered from outside"`
	OutdoorsFeasible  working.Flag   `json:"outdoors_practicable" words:"whether it could stand outdoors"`
	ToEscapeRouteM    working.Number `json:"distance_to_escape_route_m" words:"distance from escape routes and exits"`
	ToOpeningM        working.Number `json:"distance_to_opening_m" words:"distance from doors, windows and ventilation openings"`
	ToFlammablesM     working.Number `json:"distance_to_flammables_m" words:"distance from stored flammable materials"`
	ToBoundaryM       working.Number `json:"distance_to_boundary_m" words:"distance from the boundary"`
	WallToRoom        working.Flag   `json:"wall_to_habitable_room" words:"whether the wall behind it is shared with a habitable room"`
	SeparationMin     working.Number `json:"fire_separation_min" words:"fire resistance between it and habitable rooms, in minutes"`
	Detection         working.Text   `json:"fire_detection" words:"fire detection at the battery: none, alone or interlinked"`
	Ventilated        working.Flag   `json:"ventilated" words:"whether the space is ventilated"`
	VehicleProtection working.Flag   `json:"vehicle_protection" words:"whether it is guarded against vehicles"`
	FloodSafe         working.Flag   `json:"flood_safe" words:"whether it stands above expected water"`
	ClearancesKept    working.Flag   `json:"clearances_kept" words:"whether the maker's clearances are kept"`
	AmbientMinC       working.Number `json:"ambient_min_c" words:"lowest ambient temperature where it stands"`
	AmbientMaxC       working.Number `json:"ambient_max_c" words:"highest ambient temperature where it stands"`
	AllowedMinC       working.Number `json:"allowed_min_c" words:"lowest ambient temperature that the maker allows"`
	AllowedMaxC       working.Number `json:"allowed_max_c" words:"highest ambient temperature that the maker allows"`
	AllowedThere      working.Flag   `json:"allowed_there" words:"whether the maker allows it outdoors or indoors, as it stands"`
	SecondLife        working.Flag   `json:"second_life" words:"whether its cells served before elsewhere"`
	Chemistry         working.Text   `json:"chemistry" words:"chemistry"`
	Standards         working.Names  `json:"standards" words:"numbers of the product standards printed on it, as 62619"`
	Shrouded          working.Flag   `json:"terminals_shrouded" words:"whether live parts cannot be touched in use and in upkeep"`
	BackupOutput      working.Flag   `json:"backup_output" words:"whether it can supply loads without the grid"`
	Coupling          working.Text   `json:"coupling" words:"side on which its maker connects it: dc or ac"`
	EnergyKwh         working.Number `json:"energy_kwh" words:"rated energy of all its units"`
	VoltageMaxV       working.Number `json:"voltage_max_v" words:"highest voltage at its terminals"`
	CurrentMaxA       working.Number `json:"current_max_a" words:"greater of its maximum charging and discharging currents"`
	DischargeMaxA     working.Number `json:"discharge_max_a" words:"maximum discharging current"`
	ShortCircuitKa    working.Number `json:"short_circuit_ka" words:"prospective short-circuit current at its terminals"`
	Wiring
	Isolation
	Protection
}

var outdoorPlaces = []string{"roof_surface", "outdoor_wall", "outdoor_ground"}

// batteryOf takes what the battery and its datasheet state.
func batteryOf(s schema.Battery, sheet schema.BatteryDatasheet) Battery {
	f := Battery{
		Subject:           working.Subject{ID: s.ID.Value, At: s.At(), Name: "battery " + s.ID.Value},
		Place:             working.StatedText(s.Place),
		Room:              working.StatedText(s.Room),
		Outdoors:          outdoors(s.Place),
		Detached:          working.StatedFlag(s.DetachedBuilding),
		OpensIntoBedroom:  working.StatedFlag(s.OpensIntoBedroom),
		InEscapeRoute:     working.StatedFlag(s.InEscapeRoute),
		InProtectedRoute:  working.StatedFlag(s.InProtectedRoute),
		OutsideAccess:     working.StatedFlag(s.OutsideAccess),
		OutdoorsFeasible:  working.StatedFlag(s.OutdoorsPracticable),
		ToEscapeRouteM:    working.Stated("d_escape", "m", s.DistanceToEscapeRouteM),
		ToOpeningM:        working.Stated("d_opening", "m", s.DistanceToOpeningM),
		ToFlammablesM:     working.Stated("d_flammables", "m", s.DistanceToFlammablesM),
		ToBoundaryM:       working.Stated("d_boundary", "m", s.DistanceToBoundaryM),
		WallToRoom:        working.StatedFlag(s.WallToHabitableRoom),
		SeparationMin:     working.Stated("t_fire", "min", s.FireSeparationMin),
		Detection:         working.StatedText(s.FireDetection),
		Ventilated:        working.StatedFlag(s.Ventilated),
		VehicleProtection: working.StatedFlag(s.VehicleProtection),
		FloodSafe:         working.StatedFlag(s.FloodSafe),
		AmbientMinC:       working.Stated("T_min", "°C", s.AmbientMinC),
		AmbientMaxC:       working.Stated("T_max", "°C", s.AmbientMaxC),
		AllowedMinC:       working.Stated("T_allowed,min", "°C", sheet.AmbientMinC),
		AllowedMaxC:       working.Stated("T_allowed,max", "°C", sheet.AmbientMaxC),
		SecondLife:        working.StatedFlag(s.SecondLife),
		Chemistry:         working.StatedText(sheet.Chemistry),
		Standards:         standards(sheet.Standard),
		Shrouded:          working.StatedFlag(s.TerminalsShrouded),
		BackupOutput:      working.StatedFlag(sheet.BackupOutput),
		Coupling:          working.StatedText(sheet.Coupling),
	}
	f.AllowedThere = allowedThere(f.Outdoors, sheet)
	f.ClearancesKept = clearancesKept(s, sheet)
	return f
}

func outdoors(place schema.Text) working.Flag {
	if !place.Stated() {
		return working.UnknownFlag(place.At())
	}
	return working.Is(slices.Contains(outdoorPlaces, place.Value), place.At())
}

func allowedThere(outdoors working.Flag, sheet schema.BatteryDatasheet) working.Flag {
	switch {
	case !outdoors.Known():
		return outdoors
	case outdoors.Value():
		return working.StatedFlag(sheet.OutdoorUse)
	}
	return working.StatedFlag(sheet.IndoorUse)
}

var standardNumber = regexp.MustCompile(`\b[0-9]{4,5}(-[0-9]+)*\b`)

// standards finds the numbers of the standards in what is printed; a year after
// a colon is none.
func standards(printed schema.Text) working.Names {
	if !printed.Stated() {
		return working.UnknownList(printed.At())
	}
	withoutYears := regexp.MustCompile(`:[0-9]{4}`).ReplaceAllString(printed.Value, "")
	return working.List(standardNumber.FindAllString(withoutYears, -1)...)
}

// clearancesKept is what is stated, unless a space is known to be less than the
// maker asks for.
func clearancesKept(s schema.Battery, sheet schema.BatteryDatasheet) working.Flag {
	for _, p := range [][2]schema.Number{{s.ClearAboveMm, sheet.ClearanceTopMm}, {s.ClearSideMm, sheet.ClearanceSideMm}, {s.ClearFrontMm, sheet.ClearanceFrontMm}} {
		if p[0].Stated() && p[1].Stated() && p[0].Value < p[1].Value {
			return working.Is(false, p[0].At())
		}
	}
	return working.StatedFlag(s.ClearancesKept)
}

// rate works out energy, voltage and currents of all units: in series their
// voltages add up, in parallel their currents.
func (f *Battery) rate(s schema.Battery, sheet schema.BatteryDatasheet) {
	n := working.Stated("n", "", s.Units)
	inSeries, inParallel := counted(s, n, "series", "n_s"), counted(s, n, "parallel", "n_p")
	f.EnergyKwh = times("E", "kWh", n, working.Stated("E_unit", "kWh", sheet.EnergyKwh))
	f.VoltageMaxV = times("U_max", "V", inSeries, working.Stated("U_unit", "V", sheet.VoltageMaxV))
	f.DischargeMaxA = times("I_dis", "A", inParallel, working.Stated("I_unit", "A", sheet.DischargeCurrentMaxA))
	f.CurrentMaxA = working.Greatest("I_max", "A", f.DischargeMaxA, times("I_ch", "A", inParallel, working.Stated("I_unit", "A", sheet.ChargeCurrentMaxA)))
	f.ShortCircuitKa = times("I_k", "kA", inParallel, working.Stated("I_k,unit", "kA", sheet.ShortCircuitKa))
}

// counted is the number of units joined in one way; 1 when they are joined in
// the other. One unit need not say.
func counted(s schema.Battery, n working.Number, way, symbol string) working.Number {
	switch {
	case !n.Known() || n.Value() == 1 || s.UnitsJoined.Is(way):
		return n.As(symbol)
	case !s.UnitsJoined.Stated():
		return working.Unknown(symbol, "", s.UnitsJoined.At())
	}
	return working.Counted(symbol, 1, s.UnitsJoined.At())
}

func times(symbol, unit string, n, of working.Number) working.Number {
	f := working.Formula{Symbol: symbol, Unit: unit, Text: n.Symbol() + " · " + of.Symbol(), Source: working.ByDefinition}
	return f.Of(func(x ...float64) float64 { return x[0] * x[1] }, n, of)
}
