title = Lower vehicle not stabilized
protects = A car on its own springs and tires rocks and sinks under the truck that rests on it.

# $upper (name)
# $lower (name)
not-held = The { $upper } rests on the { $lower }, and nothing holds the { $lower }. Put cribs or step chocks under the { $lower } before anyone touches the { $upper }.

# $upper (name)
rests-here = The { $upper } rests on it here.
