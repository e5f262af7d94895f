title = Crib demasiado alto para su ancho
protects = Un crib alto y estrecho, o cargado de un solo lado, se balancea y vuelca.
too-high = El crib { $crib } mide { $height } de alto. El límite es { $limit } con { $loaded } ({ $sum }). { $advice }
all-loaded =
    { $contacts ->
        [one] su único contacto cargado
       *[other] los { $contacts } contactos cargados
    }
some-loaded =
    { $loaded ->
        [one] 1 de { $contacts } contactos cargado
       *[other] { $loaded } de { $contacts } contactos cargados
    }
use-courses =
    { $courses ->
        [one] Use 1 hilada.
       *[other] Use { $courses } hiladas.
    }
capture-all = Capture los { $contacts } contactos (límite { $limit }), o use { $courses } { $courses ->
        [one] hilada
       *[other] hiladas
    }.
capture-and-lower = Use { $courses } { $courses ->
        [one] hilada
       *[other] hiladas
    }, o capture los { $contacts } contactos y use { $more } (límite { $limit }).
none-holds = Ningún número de hiladas cumple el límite. Use maderos más largos.
ratio-set-here = La proporción de altura se fija aquí: { $ratio }.
captured-here = Capturas escritas aquí: { $loaded }.
fix-courses =
    { $courses ->
        [one] Usar 1 hilada
       *[other] Usar { $courses } hiladas
    }
fix-capture = Capturar los { $contacts } contactos: { $parts }
