### prefix: cli

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
expected-and-so = { $count } como se preveía
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
nothing-expected = este plan no tiene ninguna línea expect: agregue una
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
syntax = Sintaxis
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
input-too-large = La entrada estándar pasa de 4 MB, así que no es un plan.
input-not-text = La entrada estándar no es texto en UTF-8. Guárdela como texto UTF-8.
written-lacks = NO SE LEYÓ ENTERO. Lo que no se pudo leer falta en lo que se escribió.
nothing-to-draw = No hay ningún plan en { $path } que se pueda dibujar.
no-lesson = No hay ninguna lección en { $path }.
no-key = { $exercise } no tiene respuesta. { $why }
quoted = “{ $text }”
no-plan-named = No hay ningún plan “{ $plan }” en este archivo. Hay: { $plans }.
no-stage = No hay ninguna etapa { $stage }. Este plan tiene las etapas 0 (como se encontró) a { $last }.
no-view = No hay ninguna vista “{ $word }”.
no-theme = No hay ningún tema “{ $word }”.
no-support = No hay ningún apoyo “{ $word }”.
no-loss = No hay ninguna pérdida “{ $word }”.
plan-has-none = Este plan no tiene ninguna.
there-are = Hay: { $names }.
which-folder = Diga en qué carpeta escribir: -o CARPETA.
broke = Algo falló, así que el resultado no está completo: { $why }
output-fault = No se pudo escribir la salida, así que no está completa: { $why }
