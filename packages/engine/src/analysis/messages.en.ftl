rigid-bodies = Vehicles are rigid bodies. Frames and bodies do not bend.
tight-contacts = Every counted contact is wedged tight and square to the load.
slow-loads = Loads come on slowly. Nothing drops, shakes or swings.
crib-height = A crib is as tall as its courses. Wedges and shims are not counted in the height limit.
sound-timber = Timber is sound, straight and dry unless the plan says that it is wet.
caution = This is a planning and teaching aid. It does not see the scene, and it can be wrong. It does not replace the authority having jurisdiction, local procedures, a licensed engineer, or your own size-up. If what you see differs from the plan, believe what you see.
