title = Crib o contacto sobrecargado
protects = La madera cargada más de lo que aguanta perpendicular a la fibra se aplasta, y la carga se inclina y cae.
over-contact = Crib { $crib }, contacto { $contact }: carga de hasta { $load } ({ $governs }). Capacidad { $capacity } ({ $sum }). Reparta la carga en más contactos o use maderos más grandes.
over-whole = Crib { $crib }: carga de hasta { $load } ({ $governs }). Capacidad { $capacity } con { $contacts ->
        [one] 1 contacto cargado
       *[other] { $contacts } contactos cargados
    } ({ $sum }). Añada un crib o use maderos más grandes.
over-limit = Crib { $crib }, contacto { $contact }: carga de hasta { $load } ({ $governs }), { $use } de su capacidad de { $capacity }. La norma permite { $limit }.
unknown = Crib { $crib }: carga desconocida. { $why } Esta comprobación no se da por buena.
step-over = Calza escalonada { $chock }: carga de hasta { $load } ({ $governs }). Capacidad { $capacity }. Use un crib o más calzas escalonadas.
step-unrated = Calza escalonada { $chock }: capacidad desconocida, carga de hasta { $load }. Tome el valor de su fabricante. Esta comprobación no se da por buena.
step-unknown = Calza escalonada { $chock }: carga desconocida. { $why } Esta comprobación no se da por buena.
weigh-it = Dé el peso y el centro de gravedad de lo que descansa encima.
fix-build = Armar { $layout } de { $timber }, { $courses ->
        [one] 1 hilada
       *[other] { $courses } hiladas
    } ({ $use } de su capacidad)
