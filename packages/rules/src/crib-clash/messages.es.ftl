title = Dos cosas en el mismo lugar
protects = Un apoyo que no se puede armar como se planeó se arma de otra manera, y esa no está comprobada.
two-supports = Mismo lugar: { $first } y { $second } se traslapan { $depth }. Mueva uno de los dos.
body = Mismo lugar: { $first } se traslapa { $depth } con { $second }. Mueva el crib.
wheels = Mismo lugar: { $first } se traslapa { $depth } con una rueda de { $second }. Mueva el crib.
strut-through = Mismo lugar: { $first } atraviesa { $second }. Mueva uno de los dos.
other-here = Esto estorba.

vehicles = { $second } y { $first } están en el mismo lugar: se traslapan { $depth }. Mueva uno de los dos, o indique dónde uno se apoya en el otro.
vehicle-wheels = Una rueda de { $second } está donde hay una rueda de { $first }: se traslapan { $depth }. Mueva uno de los vehículos.
vehicles-maybe = { $second } puede estar donde está { $first }: vistos desde arriba se traslapan { $depth }, y no se sabe la altura de cada uno allí. Mida, o indique dónde uno se apoya en el otro.
vehicle-here = El otro vehículo está aquí.
