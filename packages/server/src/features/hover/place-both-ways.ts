import { list, type Message, message, name, quantity } from '@cribwright/messages';
import { toVehicle } from '@cribwright/model';
import type { PlanReply } from '@cribwright/workspace';
import { plain } from '../../context/markdown.js';
import { type Locale, say as translate } from '../../l10n/say.js';
import { type UnitsChoice, unitsFor } from '../units-for.js';

/**
 * Where a support is along the main vehicle, as each crew measures it: back from the front, forward from the rear, and
 * from the nearest axle. Nothing for a line that gives no place.
 */
export function placeBothWays(
  desk: UnitsChoice & { readonly locale: Locale },
  reply: PlanReply,
  element: string,
  key: string,
): readonly string[] {
  const { plan } = reply;
  const [main] = plan.vehicles;
  const strut = plan.struts.find((s) => s.id === element);
  const point =
    key === 'at'
      ? [...plan.cribs, ...plan.stepChocks].find((s) => s.id === element)?.at
      : key === 'head'
        ? strut?.head
        : key === 'base'
          ? strut?.foot
          : undefined;
  if (main === undefined || point === undefined) return [];
  const { x } = toVehicle(main, point);
  const length = (value: number) => quantity('place', Math.abs(value), 'nearest');
  const nearest = [...main.axles].sort((a, b) => Math.abs(a.x - x) - Math.abs(b.x - x))[0];
  const ways: Message[] = [
    message(x < 0 ? 'editor.place-ahead-of-front' : 'editor.place-from-front', { far: length(x) }),
    message(x > main.length ? 'editor.place-behind-rear' : 'editor.place-from-rear', {
      far: length(main.length - x),
    }),
    ...(nearest === undefined
      ? []
      : [
          message(nearest.x > x ? 'editor.place-ahead-of-axle' : 'editor.place-behind-axle', {
            far: length(nearest.x - x),
            axle: name(nearest.name),
          }),
        ]),
  ];
  return [
    plain(
      translate(
        message('editor.place-ways', { ways: list(ways, 'plain') }),
        desk.locale,
        unitsFor(desk, reply),
      ),
    ),
  ];
}
