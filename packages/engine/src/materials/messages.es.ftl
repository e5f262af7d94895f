wedge-pairs = pares de cuñas
wheel-chocks = calzas de rueda
step-chocks = calzas escalonadas
pads = placas
shims = calzas finas
