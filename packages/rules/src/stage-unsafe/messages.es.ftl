title = Plan inseguro a medio armar
protects = Un sistema de estabilización que aguanta completo puede fallar mientras se arma o se desmonta.
falls = Después de este paso ({ $stage }), nada sostiene { $end } de { $vehicle }{ $when }. Ponga antes de este paso un apoyo que lo sostenga.
worse = Después de este paso ({ $stage }), nada sostiene { $end } de { $vehicle }{ $when } si se pierde este apoyo: { $loss }. Antes de este paso sí estaba sostenido.
