import { inflateSync } from 'fflate';
import { oncePacked } from './once-packed.mjs';

export const unpack = oncePacked((bytes) => inflateSync(bytes));
