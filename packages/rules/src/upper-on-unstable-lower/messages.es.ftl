title = Vehículo de abajo sin estabilizar
protects = Un auto sobre sus propios resortes y neumáticos se mece y se hunde bajo el camión que descansa sobre él.
not-held = { $upper } descansa sobre { $lower }, y nada sostiene { $lower }. Ponga cribs o calzas escalonadas bajo { $lower } antes de que alguien toque { $upper }.
rests-here = { $upper } descansa aquí sobre él.
