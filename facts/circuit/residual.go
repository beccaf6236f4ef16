package circuit

import (
	"sunclause/facts/working"
	"sunclause/schema"
)

// OpensOnResidual reports whether a protective device is one that opens on residual
// current, by what its sheet says it is.
func OpensOnResidual(d *schema.ProtectiveDevice) working.Flag {
	return working.StatedText(d.Kind).OneOf("rccb", "rcbo", "afdd_with_rcbo")
}
