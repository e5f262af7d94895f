/** Thrown at whoever asks for a load while the loads are not to be worked out yet: a rule that does speaks later. */
export class LoadsLater extends Error {}
