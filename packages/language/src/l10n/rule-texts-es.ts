/** Each rule's title and what it protects against, in Spanish. */
export const ruleTextsEs: Readonly<Record<string, { readonly title: string; readonly protects: string }>> = {
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
