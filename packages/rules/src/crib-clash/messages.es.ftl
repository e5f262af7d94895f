title = Dos cosas en el mismo lugar
protects = Un apoyo que no se puede armar como se planeó se arma de otra manera, y esa no está comprobada.
two-supports = Mismo lugar: { $first } y { $second } se traslapan { $depth }. Mueva uno de los dos.
body = Mismo lugar: { $first } se traslapa { $depth } con { $second }. Mueva el crib.
wheels = Mismo lugar: { $first } se traslapa { $depth } con una rueda de { $second }. Mueva el crib.
strut-through = Mismo lugar: { $first } atraviesa { $second }. Mueva uno de los dos.
other-here = Esto estorba.
