### prefix: cli

caution = Límites de esta herramienta.
could-not-read = NO SE PUDO LEER
could-not-run = NO SE PUDO HACER
error = ERROR
danger = PELIGRO
warning = ADVERTENCIA
note = NOTA
accepted-severity = ACEPTADO: { $severity }
fix = arreglo
governs = rige
see = vea
sources = fuentes
nothing-found = no se encontró nada
expected-and-so = { $count } resultados previstos, y así es
expected-but = se preveía { $text }, pero { $why }
not-whole = NO SE LEYÓ ENTERO. Lo que falta no se comprobó, y nada de esto cuenta como seguro.
not-read = no leído
more = { $count } más
more-in = y { $count } más de estos en { $path }
accepted-by = aceptado por { $by } hasta { $until }: { $reason }
plans =
    { $count ->
        [one] 1 plan
       *[other] { $count } planes
    }
dangers =
    { $count ->
        [one] 1 peligro
       *[other] { $count } peligros
    }
warnings =
    { $count ->
        [one] 1 advertencia
       *[other] { $count } advertencias
    }
notes =
    { $count ->
        [one] 1 nota
       *[other] { $count } notas
    }
accepted = { $count } aceptados
checks-not-run =
    { $count ->
        [one] 1 comprobación no se pudo hacer
       *[other] { $count } comprobaciones no se pudieron hacer
    }
paths-not-read =
    { $count ->
        [one] 1 ruta no se pudo leer
       *[other] { $count } rutas no se pudieron leer
    }
as-stated = como está escrito
set-by-policy = fijado por la norma
invented = inventado
not-known = no se conoce
from-its-source = de su fuente
computed = calculado
computed-from = calculado a partir de: { $sources }
not-expected = NO PREVISTO
finding-on = { $rule } en { $subject }: { $message }
as-expected = como se preveía
not-as-expected = NO COMO SE PREVEÍA
nothing-expected = no se preveía nada: agregue una línea `expect`
expectations-held = se cumplieron { $held } de { $all } previsiones; { $odd ->
        [one] 1 peligro no previsto
       *[other] { $odd } peligros no previstos
    }
path-not-read = { $path } no se pudo leer: { $why }
problems-left-out = { $path }: se omiten { $count } problemas más del texto
plan-not-whole = El plan “{ $plan }” no se leyó entero. Lo que falta no se comprobó.
justification = { $by }, hasta { $until }: { $reason }
list-may-lack = NO SE LEYÓ ENTERO: en esta lista puede faltar parte de lo que se necesita.
needs-nothing = no necesita nada de un acopio
needed = necesario
carried = traído
short = falta
short-mark = FALTA
syntax = la escritura
no-rule = No hay ninguna comprobación { $rule }.
did-you-mean = ¿Quiso decir { $near }?
see-list = Vea la lista con: cribwright explain
gone = no existe ese archivo ni carpeta
outside = es un enlace que sale de esta carpeta. Copie el archivo en la carpeta, o nómbrelo por sí solo
not-a-file = no es un archivo
not-text = no es texto en UTF-8. Guárdelo como texto UTF-8
too-large = pasa de 4 MB, así que no es un plan
looping-link = es un enlace que vuelve a sí mismo
not-permitted = no hay permiso para abrirlo
failed = no se pudo abrir
no-plan-file = no hay ningún archivo .crib dentro
input-empty = la entrada estándar está vacía
no-plan = no hay ningún plan dentro, así que no se comprobó nada
