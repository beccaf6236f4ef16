// Code generated from project.schema.json by go generate; DO NOT EDIT.

package schema

// Project mirrors project: which job this is and how far it has come.
type Project struct {
	Pointer
	Reference           Text `json:"reference"`            // reference of the job
	Note                Text `json:"note"`                 // a remark for readers
	Stage               Text `json:"stage"`                // how far the job has come
	DesignDate          Text `json:"design_date"`          // date of the design; it chooses the edition of the rules
	Premises            Text `json:"premises"`             // kind of premises
	Country             Text `json:"country"`              // country, ISO 3166-1 code of two letters
	CertificationScheme Flag `json:"certification_scheme"` // whether the job is certified under an installer scheme
}

// Site mirrors site: what the place brings with it.
type Site struct {
	Pointer
	Note                 Text   `json:"note"`
	TempMinC             Number `json:"temp_min_c"`              // lowest expected ambient temperature
	TempMaxC             Number `json:"temp_max_c"`              // highest expected ambient temperature
	TempSource           Text   `json:"temp_source"`             // where the design temperatures come from
	AltitudeM            Number `json:"altitude_m"`              // height above sea level
	Terrain              Text   `json:"terrain"`                 // terrain category of EN 1991-1-4
	DistanceToSeaKm      Number `json:"distance_to_sea_km"`      // distance to the shore upwind
	DistanceIntoTownKm   Number `json:"distance_into_town_km"`   // distance from the upwind edge of the town
	WindVbMapMPerS       Number `json:"wind_vb_map_m_per_s"`     // basic wind velocity from the map, before altitude
	WindSource           Text   `json:"wind_source"`             // where the wind velocity comes from
	OrographySignificant Flag   `json:"orography_significant"`   // whether the site is on a hill or escarpment that speeds the wind up
	SnowSkKnPerM2        Number `json:"snow_sk_kn_per_m2"`       // characteristic snow load on the ground
	SnowSource           Text   `json:"snow_source"`             // where the snow load comes from
	LightningNgPerKm2Yr  Number `json:"lightning_ng_per_km2_yr"` // lightning ground flash density, Ng
	AlbedoFraction       Number `json:"albedo_fraction"`         // reflectance of the ground or roof in front of bifacial modules
}

// Datasheets mirrors datasheets: values as the makers' sheets print them, each under a key that the parts refer to.
type Datasheets struct {
	Pointer
	Modules             map[string]*Module             `json:"modules"`              // PV modules
	Inverters           map[string]*InverterDatasheet  `json:"inverters"`            // inverters
	Cables              map[string]*CableDatasheet     `json:"cables"`               // cables
	SwitchDisconnectors map[string]*SwitchDisconnector `json:"switch_disconnectors"` // switch-disconnectors
	SPDs                map[string]*SPDDatasheet       `json:"spds"`                 // surge protective devices
	ProtectiveDevices   map[string]*ProtectiveDevice   `json:"protective_devices"`   // fuses, circuit-breakers and residual current devices
	Fixings             map[string]*FixingDatasheet    `json:"fixings"`              // roof hooks, screws, rails and clamps
	Batteries           map[string]*BatteryDatasheet   `json:"batteries"`            // batteries
}
