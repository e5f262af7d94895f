import { asRight, type Group, slips } from '../slip.js';

export const files: Group = {
  name: 'files',
  title: 'Files that a plan uses',
  slips: slips([
    ['The vehicles are not used', 'use "library/vehicles.crib"\n', '', 'Add a use line', asRight],
    [
      'The gear is not used',
      'use "library/vehicles.crib"\nuse "library/gear.crib"\n',
      'use "library/vehicles.crib"\n',
      'Add a use line',
      'use "library/gear.crib"\nuse "library/vehicles.crib"\n',
    ],
    [
      'The cache is not used',
      'use "library/vehicles.crib"\nuse "library/gear.crib"\nuse "caches/rescue-12.crib"\n',
      'use "library/vehicles.crib"\nuse "library/gear.crib"\n',
      'Add a use line',
      'use "caches/rescue-12.crib"\nuse "library/vehicles.crib"\nuse "library/gear.crib"\n',
    ],
    [
      'A path that is misspelled',
      '"caches/rescue-12.crib"',
      '"‹cache/rescue-12.crib›"',
      'caches/rescue-12.crib',
      asRight,
    ],
    [
      'A file that is not there',
      '"caches/rescue-12.crib"',
      '"caches/rescue-12.crib"\nuse "‹caches/engine-9.crib›"',
      'no file',
    ],
    ['A path without its ending', '"library/gear.crib"', '"‹library/gear›"', '.crib', asRight],
    [
      'A path with backslashes',
      '"caches/rescue-12.crib"',
      '"‹caches\\rescue-12.crib›"',
      'caches/rescue-12.crib',
      asRight,
    ],
    [
      'A path of the own computer',
      '"caches/rescue-12.crib"',
      '"‹C:/plans/caches/rescue-12.crib›"',
      'outside',
    ],
    [
      'The folder left out',
      '"caches/rescue-12.crib"',
      '"‹rescue-12.crib›"',
      'caches/rescue-12.crib',
      asRight,
    ],
    ['The word library left out', '"library/gear.crib"', '"‹gear.crib›"', 'library/gear.crib', asRight],
    ['"include" for use', 'use "library/gear.crib"', '‹include› "library/gear.crib"', 'use', asRight],
    ['"import" for use', 'use "library/gear.crib"', '‹import› "library/gear.crib"', 'use', asRight],
    ['"using" for use', 'use "library/gear.crib"', '‹using› "library/gear.crib"', 'use', asRight],
    [
      'Volume without the use of its type',
      '16,000 to 20,000 lb from',
      '200 to 250 ft3 of ‹Water› from',
      'library/cargo.crib',
    ],
    [
      'Two files on one use line',
      'use "library/vehicles.crib"\nuse "library/gear.crib"',
      'use "library/vehicles.crib"‹,› "library/gear.crib"',
      'own',
      asRight,
    ],
    [
      'A semicolon inside the quotes',
      'use "library/gear.crib"',
      'use "‹library/gear.crib;›"',
      '.crib',
      asRight,
    ],
  ]),
  accepted: [
    {
      title: 'A use line twice',
      right: 'use "library/gear.crib"\n',
      written: 'use "library/gear.crib"\nuse "library/gear.crib"\n',
    },
  ],
};
