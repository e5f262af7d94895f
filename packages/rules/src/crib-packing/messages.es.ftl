title = Demasiado relleno en un crib
protects = Una pila de calzas finas sueltas se sale o vuelca cuando la carga se mueve. Las hiladas se traban entre sí.
shims = El crib { $crib } tiene { $shims } de calzas finas. El límite es { $limit }. Las tablas sueltas se salen y vuelcan. { $advice }
packing = El crib { $crib } tiene { $packing } de calzas finas y cuñas ({ $sum }). El límite es { $limit }. { $advice }
limit-set-here = El límite se fija aquí: { $limit }.
