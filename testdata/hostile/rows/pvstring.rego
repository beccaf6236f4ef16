package rows.pvstring

x := 1
