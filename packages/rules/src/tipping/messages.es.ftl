title = El vehículo vuelca con un empuje pequeño
protects = Un vehículo con un centro de gravedad alto y cerca del borde de sus apoyos vuelca con un empujón, o cuando su carga se mueve.
tips = { $vehicle } vuelca { $toward } con un empuje lateral de { $share } de su peso ({ $sum }). La norma exige { $limit }. Ponga puntales en ambos lados, o apoyos más afuera.
unknown = { $vehicle }: altura del centro de gravedad desconocida, vuelco sin comprobar. Escriba la altura. Esta comprobación no se da por buena.
set-here = El margen de empuje se fija aquí: { $limit }.
