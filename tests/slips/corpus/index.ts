import { braces } from './braces.js';
import { files } from './files.js';
import { lines } from './lines.js';
import { names } from './names.js';
import { numbers } from './numbers.js';
import { places } from './places.js';
import { text } from './text.js';
import { words } from './words.js';

export const corpus = [braces, lines, text, numbers, words, names, places, files];
