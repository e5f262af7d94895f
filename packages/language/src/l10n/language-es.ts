import type { words } from '../problems/words.js';

/** What the language says, in Spanish. Words of the plan language itself stay as they are written in a plan. */
const spanish: Readonly<Record<keyof typeof words, string>> = {
  'brace-not-closed':
    'El bloque que se abre aquí nunca se cierra. Ponga una llave de cierre en una línea propia donde termina.',
  'brace-not-closed.fix': 'Cerrarlo aquí',
  'brace-not-opened':
    'Falta una llave { al final de esta línea. Lo que está más adentro debajo se toma como suyo.',
  'brace-not-opened.fix': 'Abrir el bloque aquí',
  'brace-stray': 'Esta llave no cierra nada. Quítela, o abra el bloque al que pertenece.',
  'brace-stray.fix': 'Quitar la llave',
  'braces-too-deep': 'Aquí hay más de {most} bloques uno dentro de otro. Lo que está más adentro no se lee.',
  'file-too-long':
    'El archivo es demasiado largo. Nada después de este lugar se lee: divídalo y una las partes con use.',
  'too-many-plans':
    'El archivo tiene más de {most} planes. Desde aquí NO se revisan: páselos a archivos propios.',
  'plan-too-large.vehicles':
    'Este plan tiene {count} vehículos. Juntos se pueden revisar como mucho {most}, así que NO se revisa. Divídalo en planes de los vehículos que se tocan.',
  'plan-too-large.supports':
    'Este plan tiene {count} apoyos, contando los de los patrones. Juntos se pueden revisar como mucho {most}, así que NO se revisa. Divídalo en varios planes.',
  'plan-too-large.steps':
    'Este plan tiene {count} pasos. Juntos se pueden revisar como mucho {most}, así que NO se revisa. Ponga varios apoyos en un paso, o divida el plan.',
  'plan-too-large.loads':
    'Este plan tiene {count} cargas. Juntas se pueden revisar como mucho {most}, así que NO se revisa. Divídalo en varios planes.',
  'plan-too-large.parts':
    'El vehículo {vehicle} tiene {count} ejes y partes. Se pueden revisar como mucho {most}, así que este plan NO se revisa. Quite las partes que nada toca.',
  'part-too-many':
    'La parte {part} resulta en {count} travesaños. Se pueden revisar y dibujar como mucho {most}: vea por dónde va y su separación.',
  'text-not-closed':
    'A este texto le falta la comilla de cierre en su línea. Un texto entre comillas queda en una sola línea.',
  'text-not-closed.fix': 'Cerrar la comilla',
  'comment-not-closed': 'A este comentario le falta */ al final: el resto del archivo no se lee.',
  'strange-character.quote': 'Un texto va entre comillas rectas, "así".',
  'strange-character.fix': 'Cambiar por una comilla recta',
  'strange-character.hidden': 'Este texto tiene un signo que no se ve: {character}. Quítelo.',
  'strange-character.hiddenFix': 'Quitar lo que no se ve',
  'strange-character':
    '{character} no significa nada aquí. Los planes se escriben con letras, números, llaves y , : = + - * / % ( ).',

  'unknown-line': '{what} no puede empezar una línea {where}.',
  'unknown-line.near': '{what} no puede empezar una línea {where}. ¿Quiso decir {near}?',
  'unknown-line.choices': '{what} no puede empezar una línea {where}. Aquí se puede escribir {choices}.',
  'unknown-line.height':
    'Un crib no tiene una línea para su altura: resulta de sus hiladas. Escriba courses, y la altura se calcula.',
  'unknown-line.fix': 'Cambiar por {near}',
  'wrong-place': '{what} no va {where}. Va {rightPlace}.',
  'line-twice': '{what} se dice dos veces {where}. Solo cuenta la primera.',
  'line-twice.first': 'la primera',
  'line-twice.fix': 'Quitar esta línea',
  'line-missing': '{subject} necesita una línea que diga {key}, por ejemplo: {example}',
  'line-missing.fix': 'Añadir {key}',
  'line-missing.several': '{subject} necesita todavía estas líneas: {keys}.',
  'line-missing.allFix': 'Añadirlas, para completarlas',
  'line-too-long': 'Esta línea NO se lee: tiene más de {most} palabras. Divídala en varias.',
  'line-empty': '{key} necesita algo más: {example}',
  'body-missing': '{subject} necesita sus líneas, entre llaves.',
  'body-unexpected': '{what} es una sola línea y no lleva llaves.',
  'name-missing': '{kind} necesita un nombre: {example}',
  'name-malformed':
    '{text} no puede ser un nombre. Un nombre empieza con una letra y tiene letras, cifras y _.',
  'name-is-unit': '{text} es una unidad, así que no puede ser también un nombre.',
  'title-missing': '{kind} necesita un título entre comillas: {example}',
  'title-missing.fix': 'Ponerlo entre comillas',
  'type-missing': '{subject} necesita su {kind} después de dos puntos: {example}',
  'type-missing.fix': 'Poner dos puntos antes de {near}',
  'type-unexpected': '{kind} no lleva un tipo después de dos puntos.',
  'name-malformed.fix': 'Escribir {near}',
  'head-unexpected': '{text} no se entiende aquí. La línea empieza así: {example}',

  'word-unexpected': '{text} no se entiende aquí.',
  'word-unexpected.choices':
    '{text} no se entiende aquí. Lo que puede ir aquí: {choices}. La línea se escribe así: {example}',
  'word-unexpected.sign': 'No va {text} entre una palabra y su valor. La línea se escribe así: {example}',
  'word-unexpected.and':
    'Entre las cosas de una lista va una coma, no {text}. La línea se escribe así: {example}',
  'word-unexpected.comma': 'Poner una coma',
  'word-unexpected.near': '{text} no se entiende aquí. ¿Quiso decir {near}?',
  'word-unexpected.end': '{text} sobra: la línea ya estaba completa. Se escribe así: {example}',
  'word-unexpected.fix': 'Cambiar por {near}',
  'word-unexpected.drop': 'Quitar {text}',
  'line-unfinished': 'La línea termina demasiado pronto. Lo que sigue: {choices}. Se escribe así: {example}',

  'unknown-name': 'No hay ningún {kind} con el nombre {text}.',
  'unknown-name.near': 'No hay ningún {kind} con el nombre {text}. ¿Quiso decir {near}?',
  'unknown-name.choices': 'No hay ningún {kind} con el nombre {text}. Hay: {choices}.',
  'unknown-name.use': 'Aquí no hay ningún {kind} con el nombre {text}. Está en {file}: úselo.',
  'unknown-name.fix': 'Cambiar por {near}',
  'unknown-name.useFix': 'Añadir use "{file}"',
  'wrong-kind': '{text} es {is}. Aquí va {kind}.',
  'wrong-kind.near': '{text} es {is}. Aquí va {kind}, por ejemplo {near}.',
  'wrong-kind.foot': '{text} es un puntal, y una correa o cadena se amarra a su pie: escriba {near}.',
  'wrong-kind.declared': '{text} recibe su nombre aquí',
  'unknown-part': '{vehicle} no tiene ninguna parte con el nombre {text}.',
  'unknown-part.near': '{vehicle} no tiene ninguna parte con el nombre {text}. ¿Quiso decir {near}?',
  'unknown-part.choices': '{vehicle} no tiene ninguna parte con el nombre {text}. Sus partes: {choices}.',
  'unknown-part.none': 'No se encuentra {text}: {vehicle} no tiene partes descritas.',
  'unknown-axle': '{vehicle} no tiene el eje {text}.',
  'unknown-axle.choices': '{vehicle} no tiene el eje {text}. Sus ejes: {choices}.',
  'unknown-rule': 'No hay ninguna comprobación con el nombre {text}.',
  'unknown-rule.near': 'No hay ninguna comprobación con el nombre {text}. ¿Quiso decir {near}?',
  'name-twice': 'El nombre {text} ya está tomado. Dos cosas de un plan no pueden llamarse igual.',
  'name-twice.first': 'el primer {text}',
  'name-twice.fix': 'Cambiar el nombre a {near}',
  'type-cycle': '{text} termina por extenderse a sí mismo: {path}.',
  'value-cycle': '{text} se calcula a partir de sí mismo: {path}.',
  'unused-name': '{text} no se usa nunca.',
  'unused-name.fix': 'Quitar {text}',
  'unused-use': 'Aquí no se usa nada de {file}.',
  'unused-use.fix': 'Quitar esta línea',

  'number-malformed': '{why}.',
  'number-malformed.fix': 'Escribir {near}',
  'unit-missing': '¿{text} qué? {due} necesita su unidad, por ejemplo {example}.',
  'unit-missing.fix': 'Escribir {near}',
  'percent-missing': '{text} solo querría decir {percent}. Escriba {example}.',
  'unit-unknown': '{text} no es una unidad. {due} se escribe por ejemplo {example}.',
  'unit-unknown.near': '{text} no es una unidad. ¿Quiso decir {near}?',
  'unit-unknown.fix': 'Cambiar por {near}',
  'unit-order': '{why}.',
  'feet-mark': 'Escriba {near}: los signos de pies y pulgadas no se leen.',
  'feet-mark.fix': 'Escribir {near}',
  'wrong-dimension': 'Aquí va {due}, por ejemplo {example}. {text} es {is}.',
  'wrong-dimension.fix': 'Cambiar la unidad por {near}',
  'dimension-clash': '{left} es {leftIs} y {right} es {rightIs}: no se pueden {done}.',
  'dimension-clash.near':
    '{left} es {leftIs} y {right} es {rightIs}: no se pueden {done}. Quizá quiso decir {near}.',
  'dimension-clash.fix': 'Cambiar por {near}',
  'range-unexpected': 'Aquí va un solo valor, no un intervalo.',
  'range-unexpected.example': 'Aquí va un solo valor, no un intervalo: escriba {example}.',
  'range-unexpected.fix': 'Dejar {near}',
  'range-order': 'El intervalo baja de {low} a {high}. Escriba primero el menor.',
  'range-order.fix': 'Cambiar los dos extremos',
  'not-whole': '{text} debe ser un número entero.',
  'too-small': '{text} es muy poco: aquí va al menos {least}.',
  'too-large': '{text} es demasiado: aquí va como mucho {most}.',
  'below-zero': '{due} no puede ser menor que cero.',
  'calculation-too-long':
    'Este cálculo tiene más de {most} partes. Divídalo: dé nombre a partes de él con let.',
  'divided-by-zero': 'Esto divide entre cero.',
  'date-malformed': '{text} no es una fecha. Escriba año, mes, día, por ejemplo 2027-03-01.',

  'use-misplaced': 'Una línea use va al principio del archivo, no dentro de un bloque.',
  'use-malformed': 'Después de use va un archivo entre comillas: use "caches/rescue-12.crib"',
  'use-not-found': 'No existe el archivo {path}.',
  'use-not-found.near': 'No existe el archivo {path}. ¿Quiso decir {near}?',
  'use-not-found.fix': 'Cambiar por {near}',
  'use-outside':
    '{path} está fuera de esta carpeta. Se pueden usar archivos de dentro de ella o de la biblioteca.',
  'use-unreadable.outside':
    '{path} es un enlace que lleva fuera de esta carpeta, así que no se lee. Copie el archivo a la carpeta.',
  'use-unreadable.noFile': '{path} no es un archivo, así que no se lee.',
  'use-unreadable.noText':
    '{path} no es texto en UTF-8, así que no se lee. Guárdelo como texto UTF-8, o nombre el archivo correcto.',
  'use-unreadable.large': '{path} pasa de 4 MB: no es un archivo de planes y no se lee.',
  'use-unreadable.loop': '{path} es un enlace que lleva a sí mismo: no hay nada que leer.',
  'use-unreadable.permission': '{path} no se puede leer: usted no tiene permiso para abrirlo.',
  'use-unreadable.failed': '{path} está ahí, pero no se puede leer.',
  'use-unreadable.half':
    'Esta ruta tiene la mitad de un carácter, y ningún archivo se llama así. Escriba otra vez el nombre del archivo.',
  'use-not-crib': '{path} no es un archivo de planes. Los archivos que se usan aquí terminan en .crib.',
  'use-cycle': 'Estos archivos se usan unos a otros en círculo: {path}.',
  'use-itself': 'El archivo se usa a sí mismo.',
  'use-too-many':
    'Los archivos se usan unos a otros en más de {most} niveles, o son más de {files}. Lo que queda más allá no se lee.',
  'use-twice': '{path} se usa dos veces.',
  'use-not-whole':
    'Los planes de aquí NO SE LEYERON COMPLETOS. Lo que leen por {path} tiene errores: {count}, el primero en {file}, línea {line}. Corríjalos allí. Hasta entonces nada aquí cuenta como seguro.',

  'argument-missing': '{pattern} necesita también {names}.',
  'argument-missing.fix': 'Añadir {names}',
  'argument-unknown': '{pattern} no tiene {text}. Recibe {names}.',
  'argument-twice': '{text} se da dos veces.',
  'argument-wrong': '{text} debe ser {due}.',
  'arguments-missing': 'Después de {pattern} va lo que necesita, entre paréntesis: {example}',
  'parameter-type': '{text} no es algo que un pattern pueda recibir. Puede ser {choices}.',

  'vehicle-missing': 'El plan no tiene ningún vehículo. Necesita al menos uno: {example}',
  'step-twice': 'Hay dos pasos {number}. Cada paso tiene su propio número.',
  'step-number-missing': 'Un paso empieza con su número: {example}',
  'step-number-missing.fix': 'Escribir {near}',
  'step-unknown': 'No hay ningún paso {number}.',
  'tie-end-missing': '{what} está sujeto solo por un extremo. Diga también el otro: {example}',
  'contact-none':
    '{part} de {upper} no pasa por encima de {lower} tal como están. Revise dónde está {lower}, o diga dónde se tocan: {example}',
  'ground-missing':
    'El plan no dice sobre qué suelo está. Se toma como desconocido: casi sin agarre, y nadie sabe cuánto aguanta.',
  'ground-missing.fix': 'Añadir el suelo, para completarlo',
  'plan-unchecked': '{plan} no se puede comprobar tal como está. NADA en él se ha comprobado.',
  'vehicle-size': '{vehicle} no tiene {what}, así que no se puede comprobar. Dígalo, por ejemplo: {example}',
  'vehicle-weight':
    '{vehicle} no tiene ejes ni peso, así que no se puede comprobar. Use un tipo con ejes, o diga su peso y su centro.',
  'value-unknown': '{text} no se puede calcular aquí: {why}.',
  'not-in-plan':
    '{what} no se pudo leer, así que queda fuera de las comprobaciones. El plan NO está comprobado entero.',
  'plan-not-whole':
    'Este plan NO SE LEYÓ COMPLETO: algo en él no se pudo leer y no se comprueba. Nada aquí cuenta como seguro.',
  'chock-ways':
    'Este paso no dice hacia qué lado no deben rodar las ruedas, así que no se cuenta ninguna cuña. Dígalo: both directions (ambos sentidos), forward (adelante) o rearward (atrás).',
  'chock-ways.fix': 'Calzar hacia ambos lados',
  'load-height':
    'La carga {load} empuja hacia un lado, y nada dice a qué altura, así que queda fuera de las comprobaciones. El plan NO está comprobado entero. Dígalo, por ejemplo: {example}',
  'exercise-plan': 'Esta lección tiene {count} planes: diga de cuál trata este ejercicio.',
  'exercise-figure': '{on} no tiene {figure}, así que este ejercicio no tiene solución.',
  'exercise-fault': 'Ninguna comprobación encuentra aquí una falta, así que no hay nada que buscar.',
  'exercise-finish':
    'Para este ejercicio el plan debe tener una falta en {on}, o una línea que quede en blanco.',
  finding: '{text}',
};

/** By message id. */
export const languageEs: Readonly<Record<string, string>> = Object.fromEntries(
  Object.entries(spanish).map(([key, text]) => [`language.${key}`, text]),
);
