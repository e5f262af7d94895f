/** What the models take for granted, for every sheet. */
export const assumptions: readonly string[] = [
  'Vehicles are rigid bodies; frames and bodies do not bend.',
  'Every counted contact is wedged tight and square to the load.',
  'Loads come on slowly: nothing drops, shakes or swings.',
  'A crib is as tall as its courses; wedges and shims are not counted in the height limit.',
  'Timber is sound, straight and dry unless the plan says that it is wet.',
];
