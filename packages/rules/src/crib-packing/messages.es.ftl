title = Demasiado relleno en un crib
protects = Un montón de calzas sueltas se sale o se vuelca cuando la carga se mueve; las hiladas se traban entre sí.
shims = El crib { $crib } tiene { $shims } de calzas. El límite es { $limit }: las tablas sueltas se salen y se vuelcan. { $advice }
packing = El crib { $crib } tiene { $packing } de calzas y cuñas ({ $sum }). El límite es { $limit }. { $advice }
limit-set-here = El límite se fija aquí: { $limit }.
