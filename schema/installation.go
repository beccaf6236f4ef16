// Code generated from installation.schema.json by go generate; DO NOT EDIT.

package schema

// Installation mirrors installation: one rooftop PV installation, as designed or as built. A member left out means not stated.
type Installation struct {
	Pointer
	Project       Project       `json:"project"`
	Site          Site          `json:"site"`
	Datasheets    Datasheets    `json:"datasheets"`
	Strings       []String      `json:"strings"`   // PV strings
	Arrays        []Array       `json:"arrays"`    // PV arrays: strings put in parallel before the inverter
	Cables        []Run         `json:"cables"`    // runs of cable
	Isolators     []Isolator    `json:"isolators"` // isolators
	SPDs          []SPD         `json:"spds"`      // surge protective devices
	Inverters     []Inverter    `json:"inverters"` // inverters
	AC            AC            `json:"ac"`
	Storage       Storage       `json:"storage"`
	Earthing      Earthing      `json:"earthing"`
	Labels        []Label       `json:"labels"` // labels and notices put up
	Roof          Roof          `json:"roof"`
	Commissioning Commissioning `json:"commissioning"`
	Handover      Handover      `json:"handover"`
}
