### prefix: analysis

rigid-bodies = Vehicles are rigid bodies. Frames and bodies do not bend.
tight-contacts = Every counted contact is wedged tight and square to the load.
slow-loads = Loads come on slowly. Nothing drops, shakes or swings.
crib-height = A crib is as tall as its courses. Wedges and shims are not counted in the height limit.
sound-timber = Timber is sound, straight and dry unless the plan says that it is wet.
