package circuit

import "sunclause/schema"

// Backup is how a source is connected that can supply loads without the grid.
type Backup struct {
	By     string // JSON pointer of what shows that loads hang on it; "" where nothing does
	Switch string // JSON pointer of the switch between it and the grid; "" where there is none
}

// Backup follows what is joined to the backup output of a source, and whether it is the
// other source of a switch. A switch inside an inverter has no terminals of its own.
func (c *Circuit) Backup(in *schema.Installation, id, at string) Backup {
	var b Backup
	for _, terminal := range []string{id + ".backup", id + ".ac"} {
		if s := c.branchOf(terminal).source; s != "" {
			b = Backup{s, s}
		}
	}
	if b.By == "" && c.branchOf(id+".backup").terminals > 1 {
		b.By = at
	}
	for i := range in.AC.Changeovers {
		if x := &in.AC.Changeovers[i]; b.Switch == "" && x.Kind.Is("inverter_internal") {
			b.Switch = x.At()
		}
	}
	return b
}

// OnBackup is the place of an inverter on whose backup output a terminal hangs; "" where
// it hangs on none.
func (c *Circuit) OnBackup(terminal string) string { return c.branchOf(terminal).backup }
