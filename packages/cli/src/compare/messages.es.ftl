title = Cambios de { $before } a { $after }
title-here = Cambios de { $before } a los archivos de aquí
no-change = Nada cambió de significado.
compared =
    { $count ->
        [one] 1 plan comparado
       *[other] { $count } planes comparados
    }
worse =
    { $count ->
        [0] ningún plan es menos seguro
        [one] 1 plan es menos seguro
       *[other] { $count } planes son menos seguros
    }
added = agregado
removed = quitado
renamed-from = con otro nombre, antes { $name }
moved-from = en otro archivo, antes en { $path }
line = { $before } → { $after }
unsafe = INSEGURO
not-checked = SIN VERIFICAR
no-danger = sin peligro encontrado
no-plan = sin plan
verdict = { $before } → { $after }
finding-new = nuevo
finding-gone = ya no está
finding-worse = peor
finding-better = mejor
finding-accepted = aceptado
finding-no-longer-accepted = ya no aceptado
figures = Cifras
by = { $by }
by-more = +{ $by }
by-less = −{ $by }
findings = Hallazgos
stock = Material
changes = Cambios en el texto
needed = { $item }: se necesitan { $before } → { $after }
short = faltan { $short }
needed-unknown = { $item }: no se sabe cuántos se necesitan
more-figures =
    { $count ->
        [one] 1 cifra más cambió
       *[other] { $count } cifras más cambiaron
    }
text-lines-alone = Cambió el texto; ninguna verificación, cifra ni material cambió.
by-use = Su propio texto es el mismo. Cambió un archivo que usa.
before = Antes
after = Después
drawing = Dibujo. Lo que cambió está marcado.
element = Elemento
figure = Cifra
change = Cambio
rule = Regla
message = Hallazgo
plans = Planes
verdict-heading = Resultado
not-all-compared = NO SE COMPARÓ TODO. Aquí falta lo que no se pudo leer.
no-git = No se encontró git, así que no se puede leer ninguna revisión. Indique dos archivos o dos carpetas.
no-repository = No existe ese archivo ni esa carpeta, y esta carpeta no está en ningún repositorio de git.
no-revision = No existe ese archivo, carpeta ni revisión de git.
git-failed = Git no pudo leer la revisión.
looser = LÍMITE MÁS FLOJO
limit-changed = límite cambiado
limit = { $policy }, { $limit }
