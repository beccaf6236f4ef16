package parameters.voc_factor

x := 1
