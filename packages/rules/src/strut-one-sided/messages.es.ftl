title = Puntales de un solo lado
protects = Los puntales de un solo lado pueden empujar el vehículo hasta volcarlo hacia el otro.
driver-only = { $vehicle } tiene puntales en el lado del conductor ({ $struts }) y ninguno en el lado del acompañante. Ponga puntales también en el lado del acompañante.
passenger-only = { $vehicle } tiene puntales en el lado del acompañante ({ $struts }) y ninguno en el lado del conductor. Ponga puntales también en el lado del conductor.
