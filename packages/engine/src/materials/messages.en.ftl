### Pieces that have no name of their own in the plan.

wedge-pairs = wedge pairs
wheel-chocks = wheel chocks
step-chocks = step chocks
pads = pads
shims = shims
