import type { editorWords } from './words.js';

/** The editor's own words in Spanish. Ids as in `words.ts`. */
const spanish: Readonly<Record<keyof typeof editorWords, string>> = {
  source: 'Fuente: {source}',
  governs: 'Determina: {governs}',
  about: '{text} son {other}',
  declaredIn: 'en {where}',
  fixAll: 'Corregir todo lo que tiene una sola respuesta segura',
  couldNotRun: 'Esta comprobación no pudo hacerse: nada aquí dice que sea seguro.',
  broke:
    'Las comprobaciones de este archivo se detuvieron: {why}. No confíe en lo que se muestra; por favor, avise.',
  more: 'Hay más: {count} mensajes no se muestran. Corrija primero estos.',
  aboutWriting:
    'Trata de cómo está escrito un plan. La línea en la que aparece no pudo leerse entera; el resto del plan se comprueba igualmente, y avisa donde depende de esta línea.',
  whatItSays: 'Lo que dice',
  whatItOffers: 'Lo que ofrece corregir',
  libraryName:
    '{name} viene con la herramienta y conserva su nombre. Cópielo en un archivo propio para llamarlo de otra manera.',
  noName: 'Aquí no hay ningún nombre que se pueda cambiar.',
  notAName:
    '"{name}" no puede ser un nombre. Un nombre es una sola palabra: letras, cifras y _, sin empezar por una cifra.',
  nameTaken: '{name} ya es el nombre de algo aquí. Elija otro.',
  nameChanges: 'Con el nombre {name} el plan se leería de otra manera: {what}. Elija otro.',
  movedOn: 'El texto ha cambiado desde que se hizo el dibujo. Inténtelo de nuevo.',
  noFile: 'El archivo ya no está.',
  noPlan: 'No hay ningún plan en este archivo.',
  safe: 'no se encontró nada inseguro',
  notWhole: 'NO SE LEYÓ COMPLETO',
  dangers: '{count} inseguro',
  warnings: '{count} por revisar',
  notRun: '{count} sin comprobar',
  otherBuild:
    'Armar {crib} {layout} de {timber}, {courses} hiladas: {timbers} maderos, {use} de su capacidad en uso',
  ruleOn: '{rule} en {on}',
  fixRaises: '{fix}. Entonces inseguro: {what}',
  fixRemains: '{fix}. No basta por sí solo',
  pending: 'calculando aún el empuje y las cargas peores',
  loadsPending: 'calculando aún las cargas',
  seeDrawing: 'Ver el dibujo',
  heldExpectations: '{held} de {all} expectativas cumplidas',
};

/** By message id, as `editor.source`. */
export const editorEs: Readonly<Record<string, string>> = Object.fromEntries(
  Object.entries(spanish).map(([key, words]) => [`editor.${key}`, words]),
);
