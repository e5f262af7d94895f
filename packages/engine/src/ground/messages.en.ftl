### Labels of the checks of ground and pads.
### prefix: figure

anywhere-in-its-bay = anywhere in its bay: it may shift
allowable-bending-stress = allowable bending stress
allowable-shear-stress = allowable shear stress
area-of-the-pad-that-bears = area of the pad that bears
area-of-the-base-that-bears = area of the base that bears
edge-pressure = pressure at the edge
edge-over-mean-pressure = edge pressure over mean pressure
layers-that-bend-one-by-one = layers that bend one by one
load-off-the-middle = load off the middle of the base
overhang-that-the-pad-carries = overhang that the pad carries
# $side (figure)
pad-of-unknown-material = between what stands on it and { $side }: material not stated
# $side (figure)
# $overhang (figure)
pad-and-overhang = what stands on it and twice { $overhang }, at most { $side }
# $side (figure)
pad-across-the-grain = what stands on it, at most { $side }: timbers side by side do not spread a load across
# $thickness (figure)
# $bending (figure)
# $shear (figure)
# $layers (figure)
# $pressure (figure)
pad-in-bending = the lesser of { $thickness } × sqrt({ $bending } ÷ (3 × { $layers } × { $pressure })) and { $thickness } × { $shear } ÷ (1.5 × { $pressure })
# $along (figure)
# $across (figure)
share-of-the-base = each side less twice what the load is off its middle: { $along } lengthwise, { $across } crosswise
share-of-the-base-that-bears = share of the base that bears
# $along (figure)
# $across (figure)
edge-of-the-base = a stiff base with the load { $along } off its middle lengthwise and { $across } crosswise; no pull on the side that lifts
side-of-the-pad = side of the pad
side-of-the-pad-that-bears = side of the pad that bears
thickness-of-the-pad = thickness of the pad
