import { drawElevation } from '../pieces/elevation.js';
import { alongStations } from '../pieces/measured-places.js';
import { fromDriverSide } from '../space/project.js';
import type { View } from './view.js';

/** Seen from the driver side; what stands on the far side is drawn in broken lines. */
export const view: View = {
  id: 'side',
  order: 20,
  name: 'Side',
  shows: 'The side elevation, from the driver side',
  offered: () => true,
  draw: (look) =>
    drawElevation(look, {
      title: 'Side elevation, from the driver side',
      looking: fromDriverSide,
      high: 105,
      far: (center) => center.y > 0.05,
      stations: alongStations,
      front: 'left',
    }),
};
