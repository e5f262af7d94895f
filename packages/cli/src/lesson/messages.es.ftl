### Headings of a lesson's handout and of its key.
### prefix: handout

key-title = { $lesson }: respuestas
not-whole = NO SE LEYÓ ENTERO: puede faltar parte de esta lección. No la reparta.
student = Nombre ____________________  Fecha ____________  Puntos ______ de { $points }
points =
    { $points ->
        [one] 1 punto
       *[other] { $points } puntos
    }
no-key = Sin clave: { $why }
