title = Enganche sin su otra mitad
protects = Un remolque que no está enganchado no descansa sobre nada en su perno rey.
not-held = Ningún vehículo del plan lleva el perno rey de { $vehicle }, y nada más sujeta su frente. No se comprobó si desliza, rueda, vuelca o pierde apoyos. Añada el tractor y escriba “coupled to”, o ponga apoyos bajo el frente.
