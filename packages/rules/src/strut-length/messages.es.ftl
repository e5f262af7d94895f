title = Puntal demasiado corto o demasiado largo
protects = Un puntal que no llega se extiende más allá de su último agujero o se pone sobre algo suelto.
too-long = El puntal { $strut } necesita { $length } de la base a la cabeza ({ $sum }). El largo máximo de { $gear } es { $longest }. Use un puntal más largo, o acerque la base.
too-short = El puntal { $strut } tiene { $length } de la base a la cabeza ({ $sum }). El largo mínimo de { $gear } es { $shortest }. Use un puntal más corto, o aleje la base.
