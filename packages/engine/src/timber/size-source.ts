import type { SourceNote } from '@cribwright/messages';
import type { Timber } from '@cribwright/model';

/** Where a timber's dressed size is from. Its species' values have a source of their own. */
export const sizeSource = (timber: Timber): SourceNote => timber.dressedSource ?? timber.source;
