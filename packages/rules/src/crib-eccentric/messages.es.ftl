title = Crib cargado fuera de su centro
protects = Un crib cargado fuera de su centro se inclina hacia ese lado. Solo llevan los contactos cargados.
one-side = Crib { $crib }: carga a { $off } del centro ({ $loaded ->
        [one] contacto { $contacts } cargado
       *[other] contactos { $contacts } cargados
    }). El límite es { $kern } ({ $sum }). Más allá el lado lejano se levanta y el cercano lleva toda la carga. Capture también el otro lado.
