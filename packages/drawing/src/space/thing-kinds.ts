import type { ThingKind } from './thing.js';

/** How the drawings treat all elements of a kind. */
export interface ThingLook {
  /** Seen from above, what has the lower rank is drawn first and lies below. */
  readonly above: number;
  /** Seen from a side, what is near and has the lower rank is drawn first. */
  readonly side: number;
  /** Whether it carries a load, and is checked for it. */
  readonly carries: boolean;
  /** The room that its shape takes: one box, or a box for each of its pieces, which enclose a lot that is free. */
  readonly room: 'one box' | 'pieces';
  /** Its hidden edges: one outline around it, or each of its pieces. */
  readonly hidden: 'outline' | 'pieces';
  /** Where its name is put: on drawings and on the model that rotates, on drawings alone, or nowhere. */
  readonly named: 'everywhere' | 'on drawings' | 'nowhere';
  /** Whether the table of supports on the field sheet lists it. Others stand among the steps and the materials. */
  readonly inSupportTable: boolean;
}

/** Every kind of element that the drawings know. */
export const thingKinds: Readonly<Record<ThingKind, ThingLook>> = {
  vehicle: {
    above: 0,
    side: 1,
    carries: false,
    room: 'one box',
    hidden: 'pieces',
    named: 'everywhere',
    inSupportTable: false,
  },
  pad: {
    above: 1,
    side: 2,
    carries: false,
    room: 'one box',
    hidden: 'pieces',
    named: 'nowhere',
    inSupportTable: false,
  },
  chock: {
    above: 2,
    side: 2,
    carries: false,
    room: 'pieces',
    hidden: 'pieces',
    named: 'on drawings',
    inSupportTable: false,
  },
  crib: {
    above: 3,
    side: 3,
    carries: true,
    room: 'one box',
    hidden: 'outline',
    named: 'everywhere',
    inSupportTable: true,
  },
  'step chock': {
    above: 4,
    side: 3,
    carries: true,
    room: 'one box',
    hidden: 'outline',
    named: 'everywhere',
    inSupportTable: true,
  },
  tie: {
    above: 5,
    side: 5,
    carries: true,
    room: 'pieces',
    hidden: 'pieces',
    named: 'everywhere',
    inSupportTable: true,
  },
  strut: {
    above: 6,
    side: 4,
    carries: true,
    room: 'pieces',
    hidden: 'pieces',
    named: 'everywhere',
    inSupportTable: true,
  },
  egress: {
    above: 7,
    side: 6,
    carries: false,
    room: 'one box',
    hidden: 'pieces',
    named: 'everywhere',
    inSupportTable: false,
  },
};
