import type { SourceNote } from '../model/source-note.js';
import type { Timber } from '../model/support.js';

/** Where a timber's dressed size is from. Its species' values have a source of their own. */
export const sizeSource = (timber: Timber): SourceNote => timber.dressedSource ?? timber.source;
