title = Extremo sin apoyo
protects = Un vehículo cuyos apoyos no rodean su centro de gravedad cae hacia el lado abierto.
falls = Nada sostiene { $end } de { $vehicle }{ $when }. Ponga un apoyo debajo.
balances = { $vehicle } solo está en equilibrio{ $when }. Ponga apoyos a ambos lados de su centro de gravedad.
unsolved = Sin resultado para { $vehicle }. Trátelo como no sostenido. Esta comprobación no se da por buena.
unknown = { $vehicle }: peso o centro de gravedad desconocido, apoyo sin comprobar. Escriba sus cargas por eje, o su peso y su centro de gravedad. Esta comprobación no se da por buena.
mixes = Demasiados pesos y lugares son intervalos ({ $vehicles }). No se probaron todas las combinaciones, y puede haber una peor. Pese o mida lo que se pueda, o planee menos vehículos a la vez. Esta comprobación no se da por buena.
as-found = Tal como se encontró, nada en el plan sostiene { $end } de { $vehicle }{ $when }. Puede caer en cualquier momento. Escriba qué lo sostiene ahora, y no se acerque hasta que haya un apoyo.
