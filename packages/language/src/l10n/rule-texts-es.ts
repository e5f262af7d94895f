/** Each rule's title and what it protects against, in Spanish. */
export const ruleTextsEs: Readonly<Record<string, { readonly title: string; readonly protects: string }>> = {
  'acceptance-expired': {
    title: 'Aceptación vencida',
    protects: 'Lo que se aceptó por un tiempo no queda aceptado para siempre.',
  },
  'air-spring-free': {
    title: 'Cabina dejada sobre sus resortes neumáticos',
    protects:
      'Una cabina sobre resortes neumáticos se mueve con las herramientas y cae cuando se corta una manguera.',
  },
  'axle-overweight': {
    title: 'Ejes con más peso del que permite la ley',
    protects: 'Un peso o un lugar mal escrito hace falsas todas las demás cifras.',
  },
  'cache-short': {
    title: 'Hace falta más de lo que llevan las unidades',
    protects:
      'A un crib al que le faltan cuatro maderos se lo construye más bajo, o con lo que haya por ahí.',
  },
  'cache-unknown': {
    title: 'Material que nadie conoce',
    protects: 'Un plan para el que nadie trae material se descubre en el lugar.',
  },
  'count-mismatch': {
    title: 'Cuentas que se contradicen',
    protects: 'La madera que se cuenta dos veces está una sola vez.',
  },
  'crew-short': {
    title: 'Más gente trabajando de la que viene',
    protects: 'Un plan para más manos de las que hay se construye con prisa, o a medias.',
  },
  'crib-alignment': {
    title: 'Contactos fuera de línea, o captura inclinada',
    protects: 'Una carga que no baja derecha dobla los maderos y empuja el crib hasta volcarlo.',
  },
  'crib-base': {
    title: 'Base que se hunde o sobresale',
    protects: 'En suelo blando dos maderos de base se hunden de forma desigual y el crib se ladea.',
  },
  'crib-clash': {
    title: 'Dos cosas en el mismo lugar',
    protects:
      'Lo que no se puede construir como se planeó se construye de otra manera, y eso nadie lo ha comprobado.',
  },
  'crib-eccentric': {
    title: 'Crib cargado de un lado',
    protects:
      'Un crib cargado fuera de su centro se inclina hacia ese lado; solo llevan los contactos cargados.',
  },
  'crib-height': {
    title: 'Crib demasiado alto para su ancho',
    protects: 'Un crib alto y estrecho, o cargado de un solo lado, se balancea y vuelca.',
  },
  'crib-layout': {
    title: 'Hiladas que no se pueden poner así',
    protects:
      'Un crib con un solo madero en una hilada rueda; uno con más maderos de los que caben no se puede construir como está dibujado.',
  },
  'crib-load': {
    title: 'Crib o contacto sobrecargado',
    protects:
      'La madera cargada más de lo que aguanta perpendicular a la fibra se aplasta, y la carga se inclina y se va.',
  },
  'crib-mixed-timber': {
    title: 'Cribs de distinta madera bajo un vehículo',
    protects: 'El crib más rígido toma la carga que debía compartir el más blando.',
  },
  'crib-overhang': {
    title: 'Puntas de madero demasiado cortas o largas más allá de los contactos',
    protects:
      'Las puntas cortas se rajan y se salen bajo carga; las largas estrechan la base con la que cuenta la altura.',
  },
  'crib-reach': {
    title: 'Crib que no llega, o no cabe, bajo lo que captura',
    protects: 'Un crib que no alcanza la carga no lleva nada hasta que la carga le cae encima.',
  },
  'crib-packing': {
    title: 'Demasiado relleno en un crib',
    protects:
      'Un montón de calzas sueltas se sale o se vuelca cuando la carga se mueve; las hiladas se traban entre sí.',
  },
  'crib-wedge': {
    title: 'Contacto sin cuñas, o cuñas demasiado estiradas',
    protects: 'Un contacto que no está apretado no lleva nada hasta que la carga se ha movido.',
  },
  'egress-blocked': {
    title: 'Salida bloqueada, estrecha o ausente',
    protects: 'Quien está ahí de rodillas debe poder salir enseguida, sin mirar dónde pisa.',
  },
  'expectation-unmet': {
    title: 'Plan que no da lo que espera',
    protects: 'Un plan que era correcto cuando se escribió, y ya no lo es.',
  },
  'geometry-impossible': {
    title: 'Medidas y lugares que no pueden ser',
    protects: 'Un número mal escrito hace falsas todas las cifras que vienen después.',
  },
  'grade-slide': {
    title: 'Resbala cuesta abajo',
    protects: 'En una pendiente el peso tira cuesta abajo; calzas en muy pocas ruedas resbalan con él.',
  },
  'ground-bearing': {
    title: 'Suelo presionado más de lo que soporta',
    protects: 'Una base que se hunde de un lado ladea lo que está encima.',
  },
  'joist-miss': {
    title: 'Contacto al lado de la parte que debía tocar',
    protects: 'Un contacto entre dos viguetas toca solo chapa o piso y no lleva nada.',
  },
  'lifting-intent': {
    title: 'Levantamiento que nadie quiso',
    protects:
      'Estabilizar no es levantar: lo que se levanta mueve su carga y puede resbalar de lo que lo sujetaba.',
  },
  'loss-of-support': {
    title: 'No se sostiene si un apoyo cede',
    protects:
      'Un neumático, un resorte neumático, una pata de apoyo o el auto de debajo pueden ceder mientras se trabaja; lo que pusieron los equipos debe aguantar entonces.',
  },
  'order-ground-up': {
    title: 'Vehículo de arriba sujeto antes que el de abajo',
    protects: 'Lo que se construye sobre algo suelto se mueve con ello: primero el vehículo de abajo.',
  },
  'order-missing': {
    title: 'Pasos que olvidan algo o vienen en mal orden',
    protects:
      'Lo que ningún paso pone no está cuando hace falta; lo que viene demasiado pronto no se apoya en nada.',
  },
  'part-cannot-bear': {
    title: 'Apoyo bajo una parte que no puede llevar carga',
    protects:
      'Chapa, tanques, partes móviles y soportes se doblan o giran con una carga que el bastidor llevaría.',
  },
  'policy-loosened': {
    title: 'Límite hecho menos seguro',
    protects: 'Un límite que se aflojó sin avisar lo toman por el de siempre quienes confían en el plan.',
  },
  'post-slender': {
    title: 'Poste demasiado esbelto',
    protects: 'Un poste largo y delgado se arquea y se parte mucho antes de que la madera se aplaste.',
  },
  'push-margin': {
    title: 'Aguanta un empuje demasiado pequeño',
    protects:
      'Una herramienta, una carga que se mueve o un segundo vehículo empujan el conjunto de lado, y resbala o vuelca.',
  },
  'size-up-missing': {
    title: 'Evaluación que olvida algo',
    protects:
      'El combustible, las baterías, la carga y la energía de los frenos hieren a quien no los buscó.',
  },
  'stage-unsafe': {
    title: 'Inseguro a medio construir',
    protects: 'Lo que se sostiene terminado puede caer mientras se construye o se desmonta.',
  },
  'strut-angle': {
    title: 'Puntal demasiado tendido, demasiado parado o distinto de lo escrito',
    protects: 'Un puntal tendido expulsa su pie; uno parado no sujeta nada de lado.',
  },
  'strut-head': {
    title: 'Cabeza de puntal en una parte que se mueve o no lleva carga',
    protects:
      'Una cabeza en una puerta, un capó, una cabina con resortes o chapa resbala o se desgarra cuando llega la carga.',
  },
  'strut-length': {
    title: 'Puntal demasiado corto o largo para su lugar',
    protects: 'Un puntal que no llega se estira más allá de su último agujero, o se pone sobre algo suelto.',
  },
  'strut-load': {
    title: 'Puntal sobrecargado',
    protects: 'Un puntal cargado más de su valor se dobla sin aviso, y antes cuanto más largo es.',
  },
  'strut-lock': {
    title: 'Puntal sin traba mecánica',
    protects: 'Un puntal que se sostiene solo con aceite o aire baja cuando cede un sello o una manguera.',
  },
  'strut-one-sided': {
    title: 'Puntales de un solo lado',
    protects: 'Los puntales de un lado empujan el vehículo hacia el otro.',
  },
  'strut-slip': {
    title: 'Pie de puntal que resbala',
    protects: 'Un pie que resbala se lleva el puntal en cuanto llega la carga.',
  },
  'tie-anchor': {
    title: 'Correa o cadena amarrada a algo que quizá no aguante',
    protects: 'Una correa vale lo que vale aquello a lo que se amarra.',
  },
  'tie-load': {
    title: 'Correa o cadena sobrecargada',
    protects: 'Una correa que se corta suelta los dos pies a la vez.',
  },
  'tie-missing': {
    title: 'Pie de puntal sin amarrar',
    protects: 'Un puntal inclinado empuja su propio pie hacia fuera; sin amarre resbala y la carga baja.',
  },
  tipping: {
    title: 'Vuelca con un empuje pequeño',
    protects:
      'Un centro de gravedad alto y cerca de la línea de los apoyos vuelca con un empujón, o cuando la carga se mueve.',
  },
  'unsupported-end': {
    title: 'Un extremo que nada sujeta',
    protects: 'Un vehículo cuyos apoyos no rodean su centro de gravedad cae hacia el lado abierto.',
  },
  'upper-on-unstable-lower': {
    title: 'Vehículo apoyado en otro que nada sujeta',
    protects:
      'Un auto sobre sus propios resortes y neumáticos se mece y se hunde bajo el camión que se apoya en él.',
  },
  'weight-sum': {
    title: 'Pesos que no suman',
    protects: 'Un peso mal escrito hace falsas todas las cargas del plan.',
  },
  'wheels-unchocked': {
    title: 'Ruedas libres para rodar',
    protects: 'Un vehículo que rueda una pulgada saca de línea todos los cribs y puntales.',
  },
};
