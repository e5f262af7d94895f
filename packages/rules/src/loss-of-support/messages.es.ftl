title = Vehículo no sostenido si falla un apoyo
protects = Un neumático, un resorte neumático, una pata de apoyo o el vehículo de abajo pueden fallar mientras se trabaja. Los apoyos que pusieron los equipos deben sostener entonces el vehículo.
falls = Apoyo perdido: { $loss }. Nada sostiene { $end } de { $vehicle }{ $when }. Ponga un apoyo debajo.
balances = Apoyo perdido: { $loss }. { $vehicle } solo queda en equilibrio{ $when }. Ponga apoyos a ambos lados de su centro de gravedad.
unsolved = Apoyo perdido: { $loss }. Sin resultado para { $vehicle }. Trátelo como no sostenido. Esta comprobación no se da por buena.
lost-here = Este apoyo se pierde.
