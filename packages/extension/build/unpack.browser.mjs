import { inflateSync } from 'fflate';
import { oncePacked, withIdsOf } from './once-packed.mjs';

export const unpack = oncePacked((bytes) => inflateSync(bytes));
export const withIds = withIdsOf(unpack);
