import { brotliDecompressSync } from 'node:zlib';
import { oncePacked, withIdsOf } from './once-packed.mjs';

export const unpack = oncePacked((bytes) => brotliDecompressSync(bytes));
export const withIds = withIdsOf(unpack);
