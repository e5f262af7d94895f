### What the editor says beside findings and problems.
### prefix: editor

source = Fuente: { $source }
governs = Determina: { $governs }
about = { $text } son { $other }
declared-in = en { $where }
fix-all = Corregir todo lo que tiene una sola respuesta segura
make-safe = Hacer seguro este plan
could-not-run = Esta comprobación no se hizo: nada aquí indica que el plan sea seguro.
broke = Las comprobaciones de este archivo se detuvieron: { $why }. No confíe en lo que se muestra. Por favor, avise.
more = { $count ->
     [one] 1 mensaje más no se muestra.
    *[other] { $count } mensajes más no se muestran.
    } Corrija primero estos.
about-syntax = Este mensaje trata del texto de un plan. La línea no se pudo leer. El resto del plan se comprueba igualmente, y cada comprobación que necesita esta línea lo avisa.
messages = Mensajes
fixes = Correcciones que ofrece
library-name = { $name } viene con la herramienta y no se puede renombrar. Cópielo en un archivo propio y cambie el nombre de la copia.
no-name = Aquí no hay ningún nombre que cambiar.
not-a-name = "{ $name }" no puede ser un nombre. Un nombre es una sola palabra: letras, cifras y _, sin empezar por una cifra.
name-taken = El nombre { $name } ya está en uso aquí.
name-changes = Con el nombre { $name } el plan se leería de otra manera. { $what } Elija otro nombre.
moved-on = El texto cambió después de hacerse el dibujo. Inténtelo de nuevo.
no-file = El archivo ya no está.
no-plan = No hay ningún plan en este archivo.
safe = no se encontró nada inseguro
safe-else = no se encontró nada más inseguro
accepted-count = { $count } aceptados
accepted = Aceptado por { $by } hasta { $until }. Motivo: { $reason }. { $message }
not-whole = NO SE LEYÓ COMPLETO
dangers = { $count ->
     [one] 1 inseguro
    *[other] { $count } inseguros
    }
warnings = { $count ->
     [one] 1 advertencia
    *[other] { $count } advertencias
    }
not-run = { $count } sin comprobar
other-build = Armar { $crib } { $layout } de { $timber }, { $courses } hiladas: { $timbers } maderos, { $use } de su capacidad en uso
rule-on = { $rule } en { $on }
fix-effect = { $fix } ({ $effect })
fix-raises = { $fix }. Nuevos hallazgos inseguros: { $what }
fix-remains = { $fix }. No basta por sí solo
pending = empuje lateral y cargas peores aún sin calcular
loads-pending = cargas aún sin calcular
see-drawing = Ver el dibujo
held-expectations = { $held } de { $all } expectativas cumplidas
place-ways = { $ways }.
place-from-front = { $far } hacia atrás desde el frente
place-from-rear = { $far } hacia adelante desde la parte trasera
place-ahead-of-front = { $far } delante del frente
place-behind-rear = { $far } detrás de la parte trasera
place-ahead-of-axle = { $far } delante de { $axle }
place-behind-axle = { $far } detrás de { $axle }
