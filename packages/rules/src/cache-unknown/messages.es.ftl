title = Material desconocido
protects = Un plan para el que ninguna unidad trae material fracasa en el lugar.
no-unit = Unidades que responden no indicadas. No se sabe qué llevan. Nómbrelas después de `responding`.
empty-unit = { $unit } responde, y su lista de material está vacía. No se sabe qué lleva.
