title = Puntal demasiado corto o demasiado largo
protects = Un equipo extiende el puntal que no llega más allá de su último agujero, o lo pone sobre algo suelto.
too-long = El puntal { $strut } necesita { $length } de la base a la cabeza ({ $sum }). El largo máximo de { $gear } es { $longest }. Use un puntal más largo, o acerque la base.
too-short = El puntal { $strut } tiene { $length } de la base a la cabeza ({ $sum }). El largo mínimo de { $gear } es { $shortest }. Use un puntal más corto, o aleje la base.
