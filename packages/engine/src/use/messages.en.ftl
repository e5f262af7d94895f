### Labels of what a part of a vehicle carries.
### prefix: figure

# $part (name)
width-of-part = width of the { $part }
# $part (name)
rating-of-part = rating of the { $part }
overlap-of-part-and-timber = overlap of part and timber
bearing-of-part-on-timber = bearing of the part on the timber
