### The reference page of the plan language.
### prefix: reference

title = El lenguaje de los planes, línea por línea
how-to-read = Lea cada dibujo de izquierda a derecha, siguiendo la línea. Los recuadros redondeados son palabras que se escriben. Los cuadrados son lo que se completa. Donde la línea se divide, tome cualquiera de los caminos. Donde vuelve atrás, puede repetir esa parte.
file = Un archivo contiene líneas `use "archivo.crib"`, líneas `let` y bloques. Una instrucción termina al final de su línea o en `;`. Una línea que termina en coma sigue en la siguiente. `//` inicia un comentario; `/*` y `*/` encierran uno.
blocks = Bloques: { $blocks }.
blocks-inside = Bloques adentro: { $blocks }.
lines-of = Las líneas de { $block }
let-and-patterns = let y patrones
goes = Va { $places }.
at-the-top = al principio de un archivo
in-block = en `{ $block }`
required = obligatoria
repeatable = se puede repetir
numbered-lines = líneas numeradas
number = número
or-a-range = { $quantity } o un rango
part = parte
name-of = nombre: { $what }
date = fecha
size = tamaño
name-of-a-check = nombre de una comprobación
calculation = cálculo
name-is-value = (nombre = valor, …)
value = valor
