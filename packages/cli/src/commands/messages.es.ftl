### The help of the command line, and what is wrong with a command line.
### prefix: command

usage = Uso:
arguments = Argumentos:
options = Opciones:
commands = Órdenes:
options-wanted = opciones
command-wanted = orden
path-wanted = ruta
file-wanted = archivo
format-wanted = formato
title-wanted = título
view-wanted = vista
name-wanted = nombre
number-wanted = número
loss-wanted = nombre
theme-wanted = tema
rule-wanted = regla
language-wanted = idioma
units-wanted = unidades
choices = valores: { $choices }
default = si no se indica: { $value }
version = muestra la versión
help = muestra esta ayuda
help-of = muestra la ayuda de una orden
language = idioma de lo que se muestra
units = unidades de EE. UU. (us) o del SI (si); plan: las que pide cada plan
paths = archivos o carpetas
plan-file = el archivo del plan
lesson-file = el archivo de la lección
output = dónde escribirlo; sin esta opción, en la salida estándar
plan = título del plan, si el archivo tiene más de uno

check-summary = informa qué es inseguro en los planes, y por qué
check =
    Lee archivos de planes, o todos los archivos .crib de una carpeta, e informa qué es inseguro, con el cálculo y lo que lo corregiría. La ruta - lee un plan de la entrada estándar.

    Código de salida: 0 si no se encontró nada inseguro; 1 si se encontró algo inseguro; 2 si no se pudo leer un archivo, no había ningún plan, no se pudo escribir la salida o no se pudo hacer una comprobación.
format = cómo mostrar el informe

test-summary = compara cada plan con sus líneas expect
test =
    Comprueba los planes y compara lo encontrado con sus líneas expect. Un peligro que ninguna línea expect nombra cuenta como no previsto.

    Código de salida: 0 si todo salió como se preveía; 1 si no; 2 si no se pudo leer un archivo o no se pudo hacer una comprobación.
quiet = no muestra los resultados de las comprobaciones

draw-summary = dibuja un plan como SVG
draw =
    Dibuja una vista de un plan, como la muestra el dibujo en el editor. Con --every, dibuja todas las vistas de todos los planes del archivo en la carpeta que indica -o.

    Código de salida: 0; o 2 si no se pudo leer entero el archivo u otro que sus planes usan. El dibujo de un plan así lo dice.
view = top, side, end, crib, strut, "side push", utilization, timeline, ground, 3d …
subject = el crib o puntal que se ve de cerca
stage = hasta dónde está construido: 0 es como se encontró
lost = el apoyo, amarre o pieza que falló
theme = light, dark, high-contrast o high-contrast-light
every = todas las vistas de todos los planes

sheet-summary = escribe la hoja de campo de un plan: una página para imprimir
sheet =
    Escribe la página que lleva la cuadrilla, como página web que no necesita ningún otro archivo. Imprímala desde cualquier navegador.

    Código de salida: 0; o 2 si no se pudo leer entero el archivo u otro que sus planes usan. La página de un plan así lo dice.
calculations = con los cálculos: cargas tal como se construyó, y qué pasa si falla un vehículo de abajo

materials-summary = lista lo que necesita cada plan, lo que traen los acopios que responden y lo que falta
materials =
    Lista lo que necesita cada plan, lo que traen los acopios que responden y lo que falta.

    Código de salida: 0 si no falta nada; 1 si falta algo; 2 si no se pudo leer entero un archivo u otro que un plan usa: entonces la lista puede no tener todo lo necesario.

lesson-summary = escribe la hoja de una lección, o sus respuestas
lesson =
    Escribe una lección como página web para imprimir. Con --key, escribe la copia del instructor: cada respuesta con su cálculo a partir del plan.

    Código de salida: 0; o 2 si un ejercicio no tiene respuesta, o si no se pudo leer parte de lo que usa la lección: entonces la página lo dice.
key = con las respuestas

explain-summary = muestra la página de una regla: de qué protege, su cálculo, sus fuentes
explain = Muestra la página de una regla. Sin regla, las lista todas.
rule = el nombre que aparece junto a un resultado, como crib-height

see-help = Para ver la ayuda: cribwright --help
unknown-command = No hay ninguna orden “{ $word }”.
unknown-option = Aquí no hay ninguna opción { $word }.
missing-argument = La orden no está completa. Agregue: { $word }.
missing-value = La opción { $word } necesita un valor.
unknown-value = “{ $value }” no es un valor de { $option }. Use uno de: { $values }.
too-many = La orden tiene más argumentos de los que admite.
not-understood = No se pudo leer la orden: { $text }

revision-wanted = antes
later-wanted = después
folder-wanted = carpeta
compare-summary = decir qué cambió entre dos versiones de los planes, y qué es inseguro ahora
compare =
    Compara dos archivos, dos carpetas o dos revisiones de git: las líneas que cambiaron de significado, los hallazgos nuevos, los que ya no están y los aceptados, los límites y las cifras que cambiaron, y el material. La disposición y los comentarios no cuentan. Reconoce planes y apoyos con otro nombre o en otro lugar. Con una sola revisión, la compara con los archivos de esta carpeta.

    Código de salida: 0 si ningún plan es menos seguro que antes; 1 si alguno lo es; 2 si algo no se pudo leer.
compare-before = un archivo, una carpeta o una revisión de git, como main o HEAD~1
compare-after = lo mismo; sin esto, los archivos de esta carpeta
compare-in = para una revisión de git: la carpeta cuyos planes se comparan

fix-summary = cambiar los planes para que haya menos inseguro en ellos
fix =
    Prueba uno por uno los arreglos que las verificaciones ofrecen, y conserva uno solo si con él hay menos inseguro y nada nuevo lo es. Si ningún arreglo ayuda por sí solo, prueba pares. Imprime cada paso y escribe los archivos. Con --dry-run, no escribe nada.

    Código de salida: 0 si no queda nada inseguro; 1 si queda algo inseguro; 2 si un archivo no se pudo leer o escribir.
dry-run = imprimir los pasos y las líneas cambiadas; no escribir nada
