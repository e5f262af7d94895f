title = Crib que no llega, o no cabe, bajo lo que captura
protects = Un crib que no alcanza la carga no lleva nada hasta que la carga le cae encima.
short = El crib { $crib } no llega a { $part } de { $vehicle }. El espacio es de { $gap } ({ $sum }). { $wedges } { $advice }
wedges-close = Sus cuñas cierran { $closes }.
wedges-close-nothing = Sus cuñas no cierran nada.
tall = El crib { $crib } es { $over } demasiado alto para { $part } de { $vehicle } ({ $sum }). { $advice }
loose = Crib { $crib }: las cuñas no entran. Necesitan un espacio de al menos { $closes }. El espacio es de { $gap } ({ $sum }). { $advice }
step-none = La calza escalonada { $chock } es demasiado alta para { $part } de { $vehicle } en todos sus escalones. Use una más baja.
step-gap = Calza escalonada { $chock }: el espacio entre su escalón y { $part } de { $vehicle } es de { $gap } ({ $sum }). Métala hasta otro escalón o llene el espacio con una cuña.
step-beside = La calza escalonada { $chock } está a { $off } de { $part } de { $vehicle }. Métala debajo.
use-courses = Use { $courses ->
        [one] 1 hilada
       *[other] { $courses } hiladas
    }. Así queda un espacio de { $gap } para las cuñas.
use-shims = Use { $shims } de calzas finas bajo la carga.
measure-first = Mida el espacio y después elija hiladas y calzas finas que ajusten.
fix-courses =
    { $courses ->
        [one] Usar 1 hilada
       *[other] Usar { $courses } hiladas
    }
fix-shims = Usar { $shims } de calzas finas
