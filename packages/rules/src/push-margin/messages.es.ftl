title = Aguanta un empuje lateral demasiado pequeño
protects = Una herramienta, una carga que se mueve o un segundo vehículo empujan el vehículo de lado, y resbala o vuelca.
too-little = Empuje lateral { $toward } a { $height }: { $vehicle } y sus apoyos aguantan { $share } de su peso ({ $sum }). La norma exige { $limit }. { $first }
first = Falla primero: { $how }.
unknown = Empuje lateral sin calcular: { $why }. Esta comprobación no se da por buena.
set-here = El margen de empuje se fija aquí: { $limit }.
