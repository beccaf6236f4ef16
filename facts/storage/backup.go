package storage

import (
	"sunclause/facts/circuit"
	"sunclause/facts/working"
	"sunclause/schema"
)

// Backup holds how an inverter or a battery supplies loads while the grid is away.
type Backup struct {
	BackupPossible  working.Flag `json:"backup_possible" words:"whether it can supply loads without the grid, by its sheet"`
	BackupStated    working.Text `json:"backup_stated" words:"whether it is said to supply loads while the grid is away"`
	BackupByCircuit working.Text `json:"backup_by_circuit" words:"whether it does by what is joined to it"`
	BackupUsed      working.Flag `json:"backup_used" words:"whether it supplies loads while the grid is away: as wired, as stated, or not where its sheet says that it cannot"`
	BackupSwitched  working.Flag `json:"backup_switched" words:"whether a switch stands between those loads and the grid"`
}

// backupOf takes what is stated of the backup supply of a part and what is joined to it.
func backupOf(in *schema.Installation, c *circuit.Circuit, id, at string, possible, used schema.Flag) Backup {
	wired := c.Backup(in, id, at)
	b := Backup{
		BackupPossible:  working.StatedFlag(possible),
		BackupStated:    working.UnknownText(used.At()),
		BackupByCircuit: working.KnownText("no", at),
		BackupUsed:      working.StatedFlag(used),
		BackupSwitched:  working.KnownFlag(wired.Switch != "", at),
	}
	if used.Stated() {
		b.BackupStated = working.KnownText(map[bool]string{true: "yes", false: "no"}[used.Value], used.At())
	}
	if !used.Stated() && possible.Stated() && !possible.Value {
		b.BackupUsed = working.KnownFlag(false, possible.At())
	}
	if wired.By != "" {
		b.BackupByCircuit, b.BackupUsed = working.KnownText("yes", wired.By), working.KnownFlag(true, wired.By)
	}
	return b
}
