### prefix: step

size-up = evaluar
chock = calzar
capture = capturar
build = armar
slide = deslizar
set = colocar
lock = bloquear
tension = tensar
check = revisar
remove = quitar
work = { $action } { $targets }
work-with = { $action } { $targets } con { $with }
numbered = paso { $number }: { $work }
untimed = los pasos sin tiempo cuentan como nada: { $steps }
