title = Enganche sin su otra mitad
protects = Un remolque que no está enganchado no descansa sobre nada en su kingpin.
not-held = Ningún vehículo del plan lleva el kingpin de { $vehicle }, y nada más sujeta su frente. No se comprobó si resbala, rueda, vuelca o pierde apoyos. Añada el tractor y escriba “coupled to”, o ponga apoyos bajo el frente.
