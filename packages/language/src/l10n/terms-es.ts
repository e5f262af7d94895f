/** Short phrases that fill the holes of messages, in Spanish. Words of the plan language stay as they are written. */
export const termsEs: Readonly<Record<string, string>> = {
  'not known': 'desconocido',
  'the cargo': 'la carga',
  'the cab': 'la cabina',
  'the coupling': 'el acoplamiento',
  'the vehicle': 'el vehículo',
  'the weight or the center of gravity of the vehicle is not known':
    'no se conoce el peso o el centro de gravedad del vehículo',
  'the height of its center of gravity is not known': 'no se conoce la altura de su centro de gravedad',
  'it lies on the ground, and how its metal grips there is not known: say the body friction of the surface':
    'yace en el suelo, y no se sabe cuánto agarra ahí su chapa: diga el agarre de la carrocería (body friction) en ese suelo',
  'no answer could be proven in one of the directions':
    'en una de las direcciones no se pudo probar ninguna respuesta',
  'both ways': 'en ambos sentidos',
  'either way': 'en ambos sentidos',
  forward: 'hacia adelante',
  rearward: 'hacia atrás',
  driver: 'del conductor',
  passenger: 'del acompañante',
  'the front': 'el frente',
  'the rear': 'la parte trasera',
  'the driver side': 'el lado del conductor',
  'the passenger side': 'el lado del acompañante',
};

/** `in a crib`, `This crib`, `a crib`: patterns around a word of the plan language. */
export const phrasesEs: readonly (readonly [RegExp, string])[] = [
  [/^in ([a-z ]+) (\S+)$/, 'en $1 $2'],
  [/^An? ([a-z ]+)$/, 'Un $1'],
  [/^an? ([a-z, ]+)$/, 'un $1'],
  [/^ground gives way under the foot of (.+)$/, 'el suelo cede bajo el pie de $1'],
  [/^ground gives way under (.+)$/, 'el suelo cede bajo $1'],
  [/^(.+): tire lost$/, '$1: neumático perdido'],
  [/^(.+): air springs let down$/, '$1: resortes de aire sin presión'],
  [/^(.+) gives way$/, '$1 cede'],
];
