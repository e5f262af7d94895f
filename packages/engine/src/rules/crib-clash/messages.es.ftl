vehicles = { $second } y { $first } están en el mismo lugar: se traslapan { $depth }. Mueva uno de los dos, o indique dónde uno se apoya en el otro.
vehicle-wheels = Una rueda de { $second } está donde hay una rueda de { $first }: se traslapan { $depth }. Mueva uno de los vehículos.
vehicles-maybe = { $second } puede estar donde está { $first }: vistos desde arriba se traslapan { $depth }, y no se sabe la altura de cada uno allí. Mida, o indique dónde uno se apoya en el otro.
vehicle-here = El otro vehículo está aquí.
