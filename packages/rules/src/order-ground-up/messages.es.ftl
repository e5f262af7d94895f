title = Vehículo de arriba estabilizado antes que el de abajo
protects = Un apoyo armado sobre algo suelto se mueve con ello. Estabilice primero el vehículo de abajo.
lower-first = El paso { $step } estabiliza { $upper } antes que { $lower }, que está debajo. Arme desde el suelo hacia arriba. { $advice }
lower-never = Ningún paso estabiliza { $lower }. Estabilícelo en un paso anterior.
move-after = Haga primero el paso { $first }.
base-first = El paso { $step } arma { $support } antes de que esté la placa { $pad } que va debajo. Ponga primero la placa.
held-here = Aquí se estabiliza { $lower }.
fix-after = Hacer que el paso { $step } espere al paso { $first }
