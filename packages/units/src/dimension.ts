/** What kind of quantity a number is. `ratio` covers per cent and grade; `count` is whole things. */
export type Dimension =
  | 'length'
  | 'force'
  | 'mass'
  | 'angle'
  | 'ratio'
  | 'count'
  | 'pressure'
  | 'area'
  | 'volume'
  | 'duration'
  | 'density'
  | 'unit weight'
  | 'stiffness'
  | 'moment';
