title = Personal insuficiente
protects = Si un plan necesita más personal del que hay en el lugar, el equipo lo arma con prisa, o a medias.
short = Los pasos { $steps } van al mismo tiempo y necesitan { $needed } personas. El personal es de { $have }. Deje esperar algunos de estos pasos, o pida más personal.
one-step = El paso { $step } necesita { $needed ->
        [one] 1 persona
       *[other] { $needed } personas
    }. El personal es de { $have }. Pida más personal.
unknown = No se indica el personal. Los pasos necesitan { $needed ->
        [one] 1 persona
       *[other] { $needed } personas
    } en el momento de más trabajo.
