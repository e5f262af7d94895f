title = Contacto fuera de la parte capturada
protects = Un contacto entre dos viguetas toca solo chapa o piso y no lleva carga.
misses = Crib { $crib }: el contacto { $contact } queda a { $off } de { $part }. El límite es { $reach }. { $advice }
nothing = El crib { $crib } no captura ninguna parte. Escriba qué parte toca arriba.
to-meet = Parte por capturar: { $part }.
move-it = Mueva el crib a { $place }.
look-again = Ningún lugar cercano pone todos los contactos bajo su parte. Pruebe otro arreglo.
fix-move = Mover el crib a { $place }
