title = Contacto sin cuñas, o cuñas abiertas demasiado
protects = Un contacto que no está apretado no lleva nada hasta que la carga se ha movido.
few = El crib { $crib } tiene { $pairs ->
        [one] 1 par
       *[other] { $pairs } pares
    } de cuñas para { $loaded } contactos cargados. Un contacto sin cuñas puede no quedar apretado. Use { $loaded } pares.
none = El crib { $crib } no tiene cuñas. Use { $loaded ->
        [one] 1 par de cuñas para apretar su contacto cargado.
       *[other] { $loaded } pares de cuñas para apretar sus { $loaded } contactos cargados.
    }
travel = Crib { $crib }: cada par de cuñas debe cerrar { $travel }. El límite es { $most }. Más allá, las cuñas se apoyan en la punta. Use calzas finas u otra hilada.
fix-pairs =
    { $pairs ->
        [one] Usar 1 par de cuñas
       *[other] Usar { $pairs } pares de cuñas
    }
