import type { editWords } from './words.js';

/** The reasons of `words.ts` in Spanish. */
const spanish: Readonly<Record<keyof typeof editWords, string>> = {
  'not here': '{element} no está en el texto de este plan. Cámbielo donde está escrito.',
  'no body': '{element} no tiene líneas propias que cambiar.',
  'from pattern': '{element} viene de un patrón. Cambie el patrón, o escriba el apoyo en el plan.',
  'worked out':
    '{value} se calcula a partir de otra cosa, así que no se puede arrastrar. Cámbielo en el texto.',
  'by part': 'Su lugar se dice por una pieza ({place}). Escriba una distancia y se podrá arrastrar.',
  range: '{value} es un intervalo, así que no se puede arrastrar. Cámbielo en el texto.',
  'no place': '{element} no tiene una línea que diga dónde está. Escríbala y se podrá arrastrar.',
  unreadable: 'No se puede leer la línea que dice dónde está {element}. Corríjala primero.',
  'cannot move': '{element} no se puede arrastrar así.',
};

/** By message id, as `edit.range`. */
export const editEs: Readonly<Record<string, string>> = Object.fromEntries(
  Object.entries(spanish).map(([key, words]) => [`edit.${key}`, words]),
);
