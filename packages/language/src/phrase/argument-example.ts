const examples: Readonly<Record<string, string>> = {
  length: '4 ft',
  weight: '5,000 lb',
  angle: '45 deg',
  ratio: '10 %',
  count: '2',
  part: 'rail',
  vehicle: 'trailer',
  timber: 'Fir4x4',
  'strut type': 'Strut4to8ft',
  'strap type': 'RatchetStrap2in',
};

/** Something that may be given for a parameter of that kind. */
export const argumentExample = (typeWord: string): string => examples[typeWord] ?? 'rail';
