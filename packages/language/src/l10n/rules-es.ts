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
    'Nadie dice qué unidades responden, así que no se sabe nada de lo que llevan. Nómbrelas después de `responding`.',
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
  'ground-bearing.too-much':
    '{support} presiona {surface} con {pressure} ({sum}). Aguanta {allowable}. Serviría una placa de {pad}.',
  'ground-bearing.surface-unknown':
    '{support}: nadie sabe cuánto aguanta {surface}. Hasta entonces esta comprobación no se da por buena. Diga cuánto aguanta el suelo, o ponga una placa y vigile si se hunde.',
  'ground-bearing.foot-unknown':
    '{support}: nada dice de qué tamaño es su pie, así que no se pudo comprobar lo que hace al {surface}. Escriba el tamaño de su placa, o ponga una de al menos {pad}.',
  'ground-bearing.fix-pad': 'Poner una placa de {size}',
  'ground-bearing.surface-here': 'Lo que aguanta el suelo se fija aquí.',
  'joist-miss.misses':
    'Crib {crib}: el contacto {contact} no da con {part}: el más cercano está a {off}, y se cuenta como debajo hasta {reach}. {advice}',
  'joist-miss.no-such-part': 'El crib {crib} debe capturar {part}, y {vehicle} no tiene esa parte.',
  'joist-miss.nothing': 'El crib {crib} no captura nada. Diga qué encuentra arriba.',
  'joist-miss.to-meet': 'Debe encontrar {part}.',
  'joist-miss.move-it': 'Mueva el crib a {place}.',
  'joist-miss.look-again':
    'Ningún lugar cercano pone todos los contactos bajo su parte. Busque otro arreglo.',
  'joist-miss.fix-move': 'Mover el crib a {place}',
  'lifting-intent.lifts':
    'Los apoyos bajo {vehicle} se ponen con {upward} hacia arriba en total ({sum}), {share} de su peso. Eso lo levanta, y el plan no dice que quiera levantar. Póngalos ajustados, o escriba `lift intended`.',
  'lifting-intent.follow':
    'El plan quiere levantar {vehicle}, y ningún crib lo sigue. Arme crib a medida que sube, pulgada a pulgada.',
  'loss-of-support.falls':
    'Si esto falla ({loss}), nada sostiene {end} de {vehicle}{when}. Ponga un apoyo debajo.',
  'loss-of-support.balances':
    'Si esto falla ({loss}), {vehicle} solo queda en equilibrio{when}. Ponga apoyos a ambos lados de su centro de gravedad.',
  'loss-of-support.unsolved':
    'No se pudo calcular cómo descansa {vehicle} si esto falla ({loss}). Trátelo como no sostenido: esta comprobación no se da por buena.',
  'loss-of-support.lost-here': 'Esto es lo que falla.',
  'order-ground-up.lower-first':
    'El paso {step} sostiene {upper} antes de que esté sostenido {lower}, que está debajo. Construya desde el suelo: {advice}',
  'order-ground-up.lower-never': 'ningún paso sostiene {lower}. Sosténgalo en un paso anterior a este.',
  'order-ground-up.move-after': 'haga antes el paso {first}.',
  'order-ground-up.base-first':
    'El paso {step} construye {support} antes de que esté la placa {pad} sobre la que va. Ponga primero la placa.',
  'order-ground-up.held-here': 'Aquí se sostiene {lower}.',
  'order-ground-up.fix-after': 'Hacer que el paso {step} espere al paso {first}',
  'order-missing.no-steps': 'El plan dice qué hay y no en qué orden se construye. Escriba los pasos.',
  'order-missing.no-step': '{support} está en el plan y ningún paso lo pone.',
  'order-missing.never-locked':
    '{support} se coloca y ningún paso lo asegura. Asegúrelo antes de que alguien trabaje en el camino de la carga.',
  'order-missing.chocks-first':
    'El paso {step} trabaja en {vehicle} antes de calzar sus ruedas (paso {first}). Calce primero.',
  'order-missing.ends-first':
    'El paso {step} tensa {tie} antes de que esté {support}. Una correa o cadena se tensa cuando están sus dos extremos.',
  'order-missing.lock-late':
    'El paso {step} revisa o confía en {support} antes de que esté asegurado (paso {first}). Asegure primero.',
  'order-missing.circle':
    'Los pasos {steps} se esperan unos a otros, así que ninguno puede empezar. Quite un `after`.',
  'order-missing.remove-early': 'El paso {step} quita {support}, que ningún paso anterior puso.',
  'part-cannot-bear.may-not-bear':
    '{support} debe apoyar en {part} de {vehicle}, que no debe cargarse. {remark}{advice}',
  'part-cannot-bear.no-part': '{support} debe apoyar en {part}, y {vehicle} no tiene esa parte. {advice}',
  'part-cannot-bear.no-vehicle': '{support} debe apoyar en {vehicle}, que no está en este plan.',
  'part-cannot-bear.use-instead': 'Partes que pueden cargarse: {parts}.',
  'part-cannot-bear.none-bears': 'De ninguna parte se sabe que pueda cargarse.',
  'part-cannot-bear.fix-part': 'Capturar {part} en su lugar',
  'policy-loosened.with-reason':
    'La norma {policy} deja {limit} en {value}, que es menos seguro que {shipped}, a lo que reemplaza. Su razón: {reason}',
  'policy-loosened.no-reason':
    'La norma {policy} deja {limit} en {value}, que es menos seguro que {shipped}, a lo que reemplaza, y no da ninguna razón. Escriba por qué, después de `because`.',
  'policy-loosened.replaced-here': 'Reemplaza a esto.',
  'post-slender.too-slender':
    'El puntal {strut} es un {post} de {length}: esbeltez {slenderness} ({sum}). Un poste puede tener {limit}. Use un poste más grueso, o uno de {most} como mucho.',
  'post-slender.limit-set-here': 'El límite se fija aquí: {limit}.',
  'size-up-missing.fuel': 'La evaluación no dice nada del combustible. Busque fugas, y diga lo que encontró.',
  'size-up-missing.battery':
    'La evaluación no dice nada de las baterías. Busque alto voltaje, y diga lo que encontró.',
  'size-up-missing.cargo': 'La evaluación no dice nada de la carga. Pregunte qué es y si puede moverse.',
  'size-up-missing.brakes':
    'La evaluación no dice nada de los frenos. Los frenos de aire y sus resortes guardan energía: diga cómo están.',
  'size-up-missing.fix-add': 'Añadir la línea a la evaluación',
  'stage-unsafe.falls':
    'Después de {stage}, nada sostiene {end} de {vehicle}{when}. Ponga lo que debe sostenerlo antes de este paso.',
  'stage-unsafe.worse':
    'Después de {stage}, {end} de {vehicle} ya no queda sostenido si esto falla ({loss}){when}. Antes de este paso sí.',
  'strut-angle.too-flat':
    'El puntal {strut} está a {angle} del suelo ({sum}). Más tendido que {least} empuja más hacia afuera que hacia arriba. {advice}',
  'strut-angle.too-steep':
    'El puntal {strut} está a {angle} del suelo ({sum}). Más empinado que {most} no sostiene nada de lado. {advice}',
  'strut-angle.upside':
    'Puntal {strut}: su cabeza no está por encima de su pie. Un puntal empuja hacia arriba desde el suelo.',
  'strut-angle.not-as-typed':
    'Del puntal {strut} se dice que está a {typed}. De cabeza a pie está a {angle} ({sum}).',
  'strut-angle.set-foot': 'Ponga el pie a {out} hacia afuera.',
  'strut-angle.set-here': 'El límite se fija aquí: {limit}.',
  'strut-angle.fix-foot': 'Poner el pie a {out} hacia afuera',
  'strut-angle.fix-typed': 'Escribir {angle}',
  'strut-head.moves':
    'El puntal {strut} tiene la cabeza en {part} de {vehicle}, que se mueve. {remark}Póngala en un larguero o un travesaño.',
  'strut-head.may-not-bear':
    'El puntal {strut} tiene la cabeza en {part} de {vehicle}, que no debe cargarse. {remark}Póngala en un larguero o un travesaño.',
  'strut-head.no-part':
    'El puntal {strut} tiene la cabeza en {part}, y {vehicle} no tiene esa parte. Partes que pueden cargarse: {parts}.',
  'strut-head.no-vehicle': 'El puntal {strut} tiene la cabeza en {vehicle}, que no está en este plan.',
  'strut-head.beside': 'Puntal {strut}: su cabeza queda a {off} de {part} de {vehicle}.',
  'strut-length.too-long':
    'El puntal {strut} debe medir {length} de cabeza a pie ({sum}). {gear} llega a {longest}. Use uno más largo, o acerque el pie.',
  'strut-length.too-short':
    'El puntal {strut} mide solo {length} de cabeza a pie ({sum}). {gear} mide al menos {shortest}. Use uno más corto, o aleje el pie.',
  'strut-load.over':
    'El puntal {strut} puede tener que llevar {load} ({governs}). Con {length} aguanta {capacity}. Use uno más fuerte o más corto, o más de ellos.',
  'strut-load.over-limit':
    'El puntal {strut} puede tener que llevar {load} ({governs}), {use} de los {capacity} que aguanta con {length}. La norma permite {limit}.',
  'strut-load.no-rating':
    'Puntal {strut}: nada dice cuánto aguanta con {length}, y puede tener que llevar {load}. Hasta entonces esta comprobación no se da por buena. Tome el valor de la tabla de su fabricante.',
  'strut-load.as-built': 'tal como se construyó',
  'strut-lock.no-lock':
    'Puntal {strut}: nada dice cómo está asegurado. Póngale el pasador, o bájelo sobre su seguro, antes de que alguien confíe en él.',
  'strut-lock.pump-only':
    'El puntal {strut} se sostiene solo con su bomba. Una fuga lo baja. Póngale el pasador, o bájelo sobre su seguro.',
  'strut-lock.fix-pin': 'Asegurarlo: pinned',
  'strut-one-sided.one-side':
    '{vehicle} tiene puntales en su lado {side} ({struts}) y ninguno en el otro. Lo que se hace en un lado se responde en el otro: ponga puntales también en el lado {other}.',
  'strut-slip.slides':
    'Puntal {strut}: su pie resbala con cualquier carga. A {angle} necesita un roce de {needed} ({sum}), y se cuenta con {friction}. Sin amarrar, el puntal no aporta nada. Amarre su pie.',
  'strut-slip.tied-aside':
    'Puntal {strut}: {tie} tira de través a como resbalaría su pie, así que no lo sujeta. Llévelo de vuelta hacia el vehículo, al pie de enfrente.',
  'tie-anchor.holds-unknown':
    '{tie} está sujeto a {anchor}, y nadie sabe cuánto aguanta. Hasta entonces esta comprobación no se da por buena. Escriba `holds` con lo que vale, o amarre pie con pie.',
  'tie-anchor.holds-less': '{tie} puede tirar {load}, y {anchor} aguanta {holds}. Busque un anclaje mejor.',
  'tie-anchor.moves': '{tie} está sujeto a {part} de {vehicle}, que se mueve. Sujételo al bastidor.',
  'tie-anchor.no-part': '{tie} está sujeto a {part}, y {vehicle} no tiene esa parte.',
  'tie-anchor.not-there': '{tie} está sujeto a algo que no está en este plan.',
  'tie-anchor.same-end': '{tie} tiene los dos extremos en el mismo lugar. No sujeta nada.',
  'tie-load.over':
    '{tie} puede tener que tirar {load} ({governs}): {sum}. Su carga límite de trabajo es {capacity}. Use uno más fuerte, o dos, o ponga los puntales más empinados.',
  'tie-load.over-limit':
    '{tie} puede tener que tirar {load} ({governs}), {use} de su carga límite de trabajo de {capacity}. La norma permite {limit}.',
  'tie-load.no-rating':
    '{tie}: nadie sabe su carga límite de trabajo, y puede tener que tirar {load}. Hasta entonces esta comprobación no se da por buena. Lea su etiqueta.',
  'tie-load.as-built': 'tal como se construyó',
  'tie-missing.untied':
    'Puntal {strut}: nada amarra su pie. A {angle} la carga empuja el pie hacia afuera. {advice}',
  'tie-missing.tie-across': 'Tienda una correa de su pie al pie de {other}.',
  'tie-missing.tie-somewhere':
    'Tienda una correa de su pie al pie de un puntal del otro lado, o a un anclaje.',
  'tie-missing.fix-tie': 'Amarrar entre sí los pies de {strut} y {other}',
  'tipping.tips':
    '{vehicle} vuelca {toward} con un empuje de {share} de su peso ({sum}). La norma pide {limit}. Ponga puntales en ambos lados, o apoyos más afuera.',
  'tipping.unknown':
    'No se sabe cuánto empuje vuelca {vehicle}, porque no se sabe la altura de su centro de gravedad. Dígala. Hasta entonces esta comprobación no se da por buena.',
  'tipping.set-here': 'El margen se fija aquí: {limit}.',
  'unsupported-end.falls': 'Nada sostiene {end} de {vehicle}{when}. Ponga un apoyo debajo.',
  'unsupported-end.balances':
    '{vehicle} solo está en equilibrio{when}: nada impide que se vaya. Ponga apoyos a ambos lados de su centro de gravedad.',
  'unsupported-end.unsolved':
    'No se pudo calcular cómo descansa {vehicle}. Trátelo como no sostenido: esta comprobación no se da por buena.',
  'unsupported-end.unknown':
    'No se conoce el peso o el centro de gravedad de {vehicle}, así que nadie puede decir qué lo sostiene. Dé sus cargas por eje, o su peso y su centro. Hasta entonces esta comprobación no se da por buena.',
  'unsupported-end.mixes':
    'Tantos pesos y lugares de {vehicles} son intervalos que no pudieron probarse todas sus combinaciones. Puede haber una peor que las mostradas: esta comprobación no se ha superado. Pese o mida lo que se pueda, o calcule menos vehículos a la vez.',
  'unsupported-end.as-found':
    'Tal como se encontró, nada en el plan sostiene {end} de {vehicle}{when}. Algo más lo sostiene, o falta muy poco para que caiga: escriba qué lo sostiene, y no se acerque hasta que haya un apoyo.',
  'upper-on-unstable-lower.not-held':
    '{upper} descansa sobre {lower}, y nada sostiene {lower}. Ponga cribs o calzas escalonadas debajo antes de tocar {upper}.',
  'upper-on-unstable-lower.rests-here': 'Aquí descansa {upper} sobre él.',
  'weight-sum.differ':
    '{vehicle} pesa {stated} vacío según lo escrito, pero aquello sobre lo que está lleva {sum} ({parts}). Uno de los dos está mal. El plan sigue el peso escrito.',
  'weight-sum.less-than-axles':
    '{vehicle} pesa {stated} vacío según lo escrito, pero solo sus ejes llevan {sum} ({parts}). Uno de los dos está mal. El plan sigue el peso escrito.',
  'weight-sum.fix-leave-out': 'Quitar el peso, y seguir lo que lleva aquello sobre lo que está {vehicle}',
  'weight-sum.carried-here': 'Esto lleva {load} vacío.',
  'wheels-unchocked.none':
    '{vehicle} está sobre sus ruedas y nada impide que rueden. Cálcelas en ambos sentidos.',
  'wheels-unchocked.one-way': '{vehicle} está calzado solo contra rodar {ways}. Cálcelo en ambos sentidos.',
  'wheels-unchocked.on-a-grade':
    '{vehicle} está en una pendiente de {grade} y sus ruedas pueden rodar {missing}. Cálcelas en ambos sentidos.',
  'wheels-unchocked.fix-chock': 'Calzar {vehicle} en ambos sentidos',
};
