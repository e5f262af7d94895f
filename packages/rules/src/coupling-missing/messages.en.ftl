title = Coupling without its other half
protects = A trailer that is not coupled rests on nothing at its kingpin.

# $vehicle (name)
not-held = No vehicle in the plan carries the kingpin of { $vehicle }, and nothing else holds its front. Sliding, rolling, tipping and loss of supports were not checked. Add the tractor and write “coupled to” it, or set supports under the front.
