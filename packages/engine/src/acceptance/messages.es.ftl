### prefix: expectation

safe = nada inseguro
finding = { $rule } en { $on }
finding-anywhere = { $rule }
figure = { $figure } en { $on } { $value }
contact-of = { $element }, contacto { $contact }
held = se cumple
unsafe = { $count ->
        [one] 1 inseguro
       *[other] { $count } inseguros
    }: { $rules }
not-run = { $count ->
        [one] 1 comprobación no pudo hacerse
       *[other] { $count } comprobaciones no pudieron hacerse
    }: { $rules }
not-found = { $rule } no encontró nada ahí
no-figure = { $on } no tiene { $figure }
figure-is = { $figure } es { $value }
partial = el plan no se leyó entero
