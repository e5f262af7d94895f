title = Cribs de distinta madera bajo un vehículo
protects = El crib más rígido toma carga que debía compartir el más blando.
mixed = Los cribs { $first } y { $second } sostienen { $vehicle } con madera distinta: { $one } y { $other }. El crib más rígido toma { $times } veces la carga con el mismo asiento. Arme los dos de la misma madera, o revise sus cargas.
timber = { $size } { $species }
timber-wet = { $size } { $species } húmedo
other-here = El otro crib está aquí.
