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
};
