title = Cabina dejada sobre sus resortes neumáticos
protects = Una cabina sobre resortes neumáticos se mueve con las herramientas y cae cuando se corta una manguera.
on-air = La cabina de { $vehicle } todavía descansa sobre { $mounts }. Se mueve mientras trabajan las herramientas y cae si se escapa el aire. Arme un crib entre la cabina y el bastidor, o ponga puntales bajo la cabina.
