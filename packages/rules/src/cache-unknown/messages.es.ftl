title = Material de las unidades desconocido
protects = Un plan fracasa en el lugar si ninguna unidad trae el material para armarlo.
no-unit = Unidades que responden no indicadas. No se conoce su material. Nombre las unidades después de `responding`.
empty-unit = La lista de material de { $unit } está vacía. No se conoce su material.
