import { term } from '@cribwright/messages';
import { drawElevation } from '../pieces/elevation.js';
import { offCenterStations } from '../pieces/measured-places.js';
import { fromBehind } from '../space/project.js';
import type { View } from './view.js';

/** Seen from behind, the driver side to the left. */
export const view: View = {
  id: 'end',
  order: 30,
  name: term('view.end'),
  shows: term('view.end-shows'),
  offered: () => true,
  draw: (look) =>
    drawElevation(look, {
      title: term('view.end-title'),
      looking: fromBehind,
      high: 120,
      far: () => false,
      stations: offCenterStations,
      front: undefined,
    }),
};
