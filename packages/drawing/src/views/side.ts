import { term } from '@cribwright/messages';
import { drawElevation } from '../pieces/elevation.js';
import { alongStations } from '../pieces/measured-places.js';
import { fromDriverSide } from '../space/project.js';
import type { View } from './view.js';

/** Seen from the driver side; what stands on the far side is drawn in broken lines. */
export const view: View = {
  id: 'side',
  order: 20,
  name: term('view.side'),
  shows: term('view.side-shows'),
  offered: () => true,
  draw: (look) =>
    drawElevation(look, {
      title: term('view.side-title'),
      looking: fromDriverSide,
      high: 105,
      far: (center) => center.y > 0.05,
      stations: alongStations,
      front: 'left',
    }),
};
