import { inflateRawSync } from 'node:zlib';
import { oncePacked } from './once-packed.mjs';

export const unpack = oncePacked((bytes) => inflateRawSync(bytes));
