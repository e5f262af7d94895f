import type { Pad, Plan } from '@cribwright/model';
import { sizeText } from '../vehicle/place-words.js';

/** The sides of a pad as the text of a plan spells them: `30 in by 30 in`. */
export const sidesText = ({ length, width }: Pick<Pad, 'length' | 'width'>, units: Plan['display']): string =>
  `${sizeText(length, units, 'nearest')} by ${sizeText(width, units, 'nearest')}`;

/** A pad as the text of a plan writes it, with its own name and that of the support on it. */
export function padText(
  pad: Pick<Pad, 'length' | 'width' | 'thickness' | 'material'>,
  own: string,
  under: string,
  units: Plan['display'],
): string {
  const lines = [
    `size       ${sidesText(pad, units)}`,
    `thickness  ${sizeText(pad.thickness, units, 'down')}`,
    ...(pad.material === undefined ? [] : [`material   ${pad.material}`]),
    `under      ${under}`,
  ];
  return `pad ${own} {\n  ${lines.join('\n  ')}\n}`;
}
