### Labels of a policy's limits. The English is the keyword of the policy block.
### prefix: limit

crossing-stress = crossing stress
crossing-basis = crossing basis
crossing-rounding = crossing rounding
height-ratio-all-contacts = height ratio all contacts
height-ratio-some-contacts = height ratio some contacts
height-ratio-one-contact = height ratio one contact
least-overhang = least overhang
most-overhang = most overhang
wedge-travel = wedge travel
most-shims = most shims
most-packing = most packing
joist-reach = joist reach
contact-alignment = contact alignment
steepest-capture = steepest capture
least-strut-angle = least strut angle
most-strut-angle = most strut angle
push-margin = push margin
push-height = push height
use-limit = use limit
friction-timber-on-timber = friction timber on timber
friction-timber-on-metal = friction timber on metal
friction-strut-base = friction strut base
grade-needing-chocks = grade needing chocks
dressed-size-of-8x8 = dressed size of 8x8
axle-limit-single = axle limit single
axle-limit-tandem = axle limit tandem
gross-limit = gross limit
egress-width = egress width
post-slenderness = post slenderness
sudden-loss-factor = sudden loss factor
stiffness-spread = stiffness spread
ground-under-cribs = ground under cribs
