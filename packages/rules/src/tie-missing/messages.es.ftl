title = Base de puntal sin amarrar
protects = Un puntal inclinado empuja su propia base hacia afuera. Sin correa la base resbala y la carga baja.
untied = Puntal { $strut }: base sin amarrar. A { $angle } la carga empuja la base hacia afuera. { $advice }
tie-across = Tienda una correa de su base a la base de { $other }.
tie-somewhere = Tienda una correa de su base a la base de un puntal del otro lado, o a un anclaje.
