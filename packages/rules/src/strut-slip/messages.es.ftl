title = La base del puntal resbala
protects = Una base que resbala se lleva el puntal en cuanto llega la carga.
slides = Puntal { $strut }: su base resbala con cualquier carga. A { $angle } necesita un rozamiento de { $needed } ({ $sum }). El rozamiento que cuenta es { $friction }. Sin correa el puntal no sostiene nada. Amarre su base.
tied-aside = Puntal { $strut }: { $tie } tira de través a la dirección en que resbala la base y no la sujeta. Llévelo de vuelta hacia el vehículo, a la base del otro lado.
