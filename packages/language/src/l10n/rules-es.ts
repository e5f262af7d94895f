/** What the rules say, in Spanish, by message id. A message that is not here is said in English. */
export const rulesEs: Readonly<Record<string, string>> = {
  'acceptance-expired.expired':
    '{by} aceptó {rule} en {on} hasta {until}, y ese día ya pasó. Mírelo de nuevo: corríjalo o acéptelo otra vez.',
  'acceptance-expired.no-day':
    'Nada dice qué día es hoy, así que nadie sabe si lo que {by} aceptó ({rule} en {on}, hasta {until}) sigue en pie. No cuenta.',
  'acceptance-expired.bad-date': 'La fecha {until} no se puede leer. Escríbala como año-mes-día: 2027-03-01.',
  'acceptance-expired.no-finding':
    '{by} aceptó {rule} en {on}, y {rule} no encuentra nada ahí. Quite la línea.',
  'air-spring-free.on-air':
    'La cabina de {vehicle} todavía descansa sobre {mounts}. Se mueve mientras trabajan las herramientas y cae si el aire se va. Arme un crib entre cabina y bastidor, o ponga puntales bajo la cabina, para que descanse sobre madera y no sobre aire.',
  'axle-overweight.over':
    '{axles} llevan {load}. La ley permite {limit} ({by}). Revise los pesos y los lugares que escribió. Si son correctos, el camión lleva exceso de peso.',
  'axle-overweight.one-over':
    '{axles} lleva {load}. La ley permite {limit} ({by}). Revise el peso que escribió. Si es correcto, el camión lleva exceso de peso.',
  'axle-overweight.unknown':
    'No se pudo decir cuánto llevan los ejes de {vehicle} con su carga, así que no se compararon con los límites legales. Las cargas por eje se dicen para un vehículo con dos grupos de ejes, o con un kingpin y un grupo.',
  'axle-overweight.limit-set-here': 'El límite se fija aquí: {limit}.',
  'cache-short.short':
    'Hacen falta {needed} {item} en el momento de más trabajo y se llevan {carried}: faltan {short}. {advice}',
  'cache-short.stand-in': 'Podría servir en su lugar: {items}. Calcule el plan otra vez con eso.',
  'cache-short.call-more': 'Pida otra unidad, o construya con menos.',
  'cache-unknown.no-unit':
    'Nadie dice qué unidades responden, así que no se sabe nada de lo que llevan. Nómbrelas después de `units respond`.',
  'cache-unknown.empty-unit': '{unit} responde, y su lista está vacía. No se sabe lo que lleva.',
  'count-mismatch.listed-twice':
    '{unit} anota {item} dos veces, con {first} y con {second}. Nadie sabe cuál es correcto: se cuenta el menor.',
  'count-mismatch.built-twice':
    '{support} se pone en el paso {first} y otra vez en el paso {second}. Una cosa está una sola vez: cuente de nuevo.',
  'count-mismatch.first-here': 'También está anotado aquí.',
  'crew-short.short':
    'A la vez trabajan {needed} personas (pasos {steps}), y vienen {have}. Deje esperar algunos de estos pasos, o pida más gente.',
  'crew-short.one-step': 'El paso {steps} necesita {needed} personas, y vienen {have}. Pida más gente.',
  'crew-short.unknown': 'Nadie dice cuántas personas vienen. Los pasos necesitan {needed} a la vez.',
  'crib-alignment.off-line':
    'Crib {crib}: el contacto {contact} está a {off} de {part} de {vehicle} que tiene debajo. A más de {most} fuera de línea la carga no baja derecha. Mueva el crib encima.',
  'crib-alignment.no-part-below': 'El crib {crib} debe apoyarse en {part}, y {vehicle} no tiene esa parte.',
  'crib-alignment.sloped':
    'Crib {crib}: {part} de {vehicle} está inclinado {slope}. Por encima de {most} resbala de un crib plano. Llene el ángulo con cuñas o con una tapa inclinada, y amárrelo.',
  'crib-base.open-on-soft':
    'El crib {crib} tiene base abierta sobre {surface}, que no está pavimentado. Sus maderas se hunden una por una: use una base sólida, o una placa. Presiona con {pressure}.',
  'crib-base.short-pad':
    'El crib {crib} está sobre la placa {pad}, que mide {size} por el lado corto. Las maderas de su base miden {length} y sobresalen. Use una placa al menos igual de larga.',
  'crib-base.no-pad': 'El crib {crib} debe estar sobre una placa que no está en este plan.',
  'crib-base.fix-solid': 'Usar una base sólida',
  'crib-clash.two-supports':
    '{first} y {second} están en el mismo lugar: se meten {depth} uno en otro. Mueva uno de los dos.',
  'crib-clash.body': '{first} está donde está {second}: {depth} hacia adentro. Mueva el crib.',
  'crib-clash.wheels': '{first} está donde hay una rueda de {second}: {depth} hacia adentro. Mueva el crib.',
  'crib-clash.strut-through': '{first} atraviesa {second}. Mueva uno de los dos.',
  'crib-clash.other-here': 'Esto estorba.',
  'crib-eccentric.one-side':
    'El crib {crib} está cargado a {off} de su centro ({contacts} contactos). A más de {kern} ({sum}) el lado lejano se levanta y el cercano lo lleva todo. Capture también el otro lado.',
  'crib-layout.one-timber':
    'El crib {crib} tiene {timbers} madera en una hilada. Para sostenerse solo necesita al menos 2 en cada hilada. Use un arreglo de 2 por 2.',
  'crib-layout.no-room':
    'Crib {crib}: {timbers} maderas de {width} no caben una al lado de otra en {room}. Use como mucho {most}.',
  'crib-layout.no-width':
    'Crib {crib}: maderas de {length} con un saliente de {overhang} no dejan ancho entre los contactos. Use maderas más largas o menos saliente.',
  'crib-layout.no-courses': 'El crib {crib} tiene {courses} hiladas. Necesita al menos 1.',
  'crib-layout.part-course':
    'El crib {crib} tiene {courses} hiladas. Una hilada está entera o no está: use {whole}.',
  'crib-layout.fix-layout': 'Usar un arreglo de {layout}',
  'crib-mixed-timber.mixed':
    'Los cribs {first} y {second} sostienen {vehicle} y son de maderas distintas ({one} y {other}). El más rígido toma {times} veces más con el mismo asiento. Arme los dos iguales, o mire sus cargas.',
  'crib-mixed-timber.other-here': 'El otro está aquí.',
  'crib-overhang.too-short':
    'Crib {crib}: sus maderas sobresalen {overhang} de los contactos. Se pide al menos {least}, o los extremos se rajan y se salen.',
  'crib-overhang.too-long':
    'Crib {crib}: sus maderas sobresalen {overhang} de los contactos. Más de {most} hace angosta la base: mide {width}.',
  'crib-overhang.set-here': 'El límite se fija aquí: {limit}.',
  'crib-overhang.fix-overhang': 'Usar un saliente de {overhang}',
  'crib-reach.short':
    'El crib {crib} no llega a {part}: quedan {gap} abiertos ({sum}) y sus cuñas cierran {closes}. {advice}',
  'crib-reach.tall': 'El crib {crib} es demasiado alto para {part}: necesitaría {over} más ({sum}). {advice}',
  'crib-reach.loose':
    'Crib {crib}: sus cuñas cierran al menos {closes}, y solo hay {gap} abiertos ({sum}). No entran. {advice}',
  'crib-reach.step-none':
    'La calza escalonada {chock} es demasiado alta para {part} en todos sus escalones. Use una más baja.',
  'crib-reach.step-gap':
    'Calza escalonada {chock}: quedan {gap} abiertos entre su escalón y {part} ({sum}). Métala hasta otro escalón o llene el espacio con una cuña.',
  'crib-reach.step-beside': 'La calza escalonada {chock} está al lado de {part}, a {off}. Métala debajo.',
  'crib-reach.use-courses': 'Use {courses} hiladas: quedan {gap} para las cuñas.',
  'crib-reach.use-shims': 'Ponga {shims} de calzas bajo la carga.',
  'crib-reach.measure-first': 'Mida el espacio y elija hiladas y calzas que ajusten.',
  'crib-reach.fix-courses': 'Usar {courses} hiladas',
  'crib-reach.fix-shims': 'Añadir {shims} de calzas',
  'crib-wedge.few':
    'El crib {crib} tiene {pairs} para {loaded} contactos cargados. Un contacto sin cuñas puede no quedar apretado: use {loaded} pares.',
  'crib-wedge.none':
    'El crib {crib} no tiene cuñas. Nada aprieta sus {loaded} contactos cargados: use {loaded} pares.',
  'crib-wedge.travel':
    'Crib {crib}: sus cuñas deben cerrar {travel}. Un par cierra como mucho {most}; con más quedan de punta. Use calzas u otra hilada.',
  'crib-wedge.fix-pairs': 'Usar {pairs} pares de cuñas',
  'egress-blocked.blocked': 'La salida {way} está bloqueada por {what}. Muévalo, o deje otra salida.',
  'egress-blocked.across':
    'Salida {way}: {what} la cruza cerca del suelo. Llévela por otro lado, o quien sale de prisa se cae.',
  'egress-blocked.narrow': 'La salida {way} mide {width} de ancho. Se pide al menos {least}.',
  'egress-blocked.none':
    'El plan no da ninguna salida. Diga dónde se arrodilla el rescatista y por dónde sale.',
  'egress-blocked.in-the-way': 'Esto estorba.',
  'expectation-unmet.unmet': 'El plan espera {text}. No se cumple: {why}.',
  'expectation-unmet.partial':
    'El plan no se leyó completo, así que nada de lo que espera se compara con lo que encuentran las comprobaciones.',
  'geometry-impossible.no-size': '{vehicle} no tiene largo, ancho o alto. Diga su tamaño.',
  'geometry-impossible.part-outside': '{part} de {vehicle} va de {from} a {to}, y el vehículo mide {length}.',
  'geometry-impossible.axle-outside': '{axle} de {vehicle} está en {at}, y el vehículo mide {length}.',
  'geometry-impossible.cargo-outside':
    '{cargo} de {vehicle} va de {from} a {to}, y el vehículo mide {length}.',
  'geometry-impossible.height-backwards': '{part} de {vehicle} está más alto que el propio vehículo.',
  'geometry-impossible.rests-beside':
    '{upper} debe descansar sobre {lower} en {at}, donde {lower} no está. Lo más cercano queda a {off}.',
  'geometry-impossible.rests-not-part': '{upper} debe descansar en su {part}, a {off} de él.',
  'geometry-impossible.rests-gap':
    '{upper} descansa sobre {lower}, y entre {part} ({high}) y {under} ({low}) hay {gap}. Una de las alturas está mal.',
  'geometry-impossible.no-weight':
    '{vehicle} no pesa nada: sus ejes no llevan nada y no se dice ningún peso.',
  'grade-slide.slides':
    'En una pendiente de {grade}, {vehicle} tira {demand} cuesta abajo ({sum}). Lo que está calzado aguanta {capacity} ({hold}). Calce más ejes, o tienda un cable cuesta arriba.',
  'grade-slide.grade-here': 'La pendiente se fija aquí: {grade}.',
  'grade-slide.grade-unsaid':
    'Nadie dice cómo baja el terreno, así que no se comprobó si algo se desliza o rueda cuesta abajo, y todo lo demás se calculó como si fuera llano. Mídalo y escríbalo: `grade 0 %`, o `grade 2 % toward rear`.',
  'grade-slide.direction-unsaid':
    'Se dice una pendiente de {grade}, pero no hacia dónde baja. Se calculó como si bajara hacia atrás, así que nadie sabe cómo es hacia los otros lados. Escríbalo: `grade {grade} toward rear`.',
};
