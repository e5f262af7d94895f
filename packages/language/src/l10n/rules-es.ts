/** What the rules say, in Spanish, by message id. A message that is not here is said in English. */
export const rulesEs: Readonly<Record<string, string>> = {
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
