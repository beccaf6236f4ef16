package storage

import (
	"sunclause/facts/working"
	"sunclause/schema"
)

// Surroundings holds where a battery stands and what is around it.
type Surroundings struct {
	Place             working.Text   `json:"place" words:"where it stands"`
	Room              working.Text   `json:"room" words:"room or space, in words"`
	Outdoors          working.Flag   `json:"outdoors" words:"whether it stands in the open"`
	Detached          working.Flag   `json:"detached_building" words:"whether it stands in a building apart from the dwelling, as a detached garage"`
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
}

func surroundingsOf(s *schema.Battery, sheet *schema.BatteryDatasheet) Surroundings {
	f := Surroundings{
		Place:             working.StatedText(s.Place),
		Room:              working.StatedText(s.Room),
		Outdoors:          working.Outdoors(s.Place),
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
	}
	f.AllowedThere = allowedThere(f.Outdoors, sheet)
	f.ClearancesKept = clearancesKept(s, sheet)
	return f
}

func allowedThere(outdoors working.Flag, sheet *schema.BatteryDatasheet) working.Flag {
	switch {
	case !outdoors.Known():
		return outdoors
	case outdoors.Value():
		return working.StatedFlag(sheet.OutdoorUse)
	}
	return working.StatedFlag(sheet.IndoorUse)
}

// clearancesKept is what is stated, unless a space is known to be less than the
// maker requires. Where only one of the two is stated the other is needed: what
// is said in general must not stand for a figure that was left out.
func clearancesKept(s *schema.Battery, sheet *schema.BatteryDatasheet) working.Flag {
	kept := []working.Flag{working.StatedFlag(s.ClearancesKept)}
	for _, p := range [][2]schema.Number{{s.ClearAboveMm, sheet.ClearanceTopMm}, {s.ClearSideMm, sheet.ClearanceSideMm}, {s.ClearFrontMm, sheet.ClearanceFrontMm}} {
		if p[0].Stated() || p[1].Stated() {
			kept = append(kept, working.AtLeast(working.Stated("d", "mm", p[0]), working.Stated("d_min", "mm", p[1])))
		}
	}
	return working.All(kept...)
}
