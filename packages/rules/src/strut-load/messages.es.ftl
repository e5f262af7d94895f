title = Puntal sobrecargado
protects = Un puntal cargado más allá de su valor nominal se pandea sin aviso. Cuanto más largo el puntal, menor su valor nominal.
over = Puntal { $strut }: carga de hasta { $load } ({ $governs }). Capacidad { $capacity } con { $length }. Use un puntal más fuerte o más corto, o añada puntales.
over-limit = Puntal { $strut }: carga de hasta { $load } ({ $governs }), { $use } de su capacidad de { $capacity } con { $length }. La norma permite { $limit }.
no-rating = Puntal { $strut }: capacidad con { $length } desconocida, carga de hasta { $load }. Tome el valor de su fabricante. Esta comprobación no se da por buena.
