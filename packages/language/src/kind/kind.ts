import type { SupportKind } from '@cribwright/model';

/** Everything that can be named and referred to. A reference says which kinds it will take. */
export type Kind =
  | 'plan'
  | 'lesson'
  | 'site'
  | 'policy'
  | 'surface'
  | 'species'
  | 'timber'
  | 'cargo type'
  | 'vehicle type'
  | 'strut type'
  | 'strap type'
  | 'chain type'
  | 'wire rope type'
  | 'step chock type'
  | 'cache'
  | 'pattern'
  | 'pattern use'
  | 'parameter'
  | 'value'
  | 'vehicle'
  | 'part'
  | 'axle'
  | SupportKind
  | 'anchor'
  | 'load'
  | 'egress'
  | 'step'
  | 'dock'
  | 'exercise';
