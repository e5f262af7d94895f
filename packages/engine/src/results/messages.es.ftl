### prefix: analysis

rigid-bodies = Los vehículos son cuerpos rígidos. Bastidores y carrocerías no se doblan.
tight-contacts = Cada contacto contado está bien acuñado y a escuadra con la carga.
slow-loads = Las cargas llegan despacio. Nada cae, se sacude ni se balancea.
crib-height = Un crib es tan alto como sus hiladas. Cuñas y calzas no cuentan en el límite de altura.
sound-timber = La madera está sana, recta y seca, salvo que el plan diga que está húmeda.
