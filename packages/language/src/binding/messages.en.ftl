### Where in a file something stands, and the block that a message is about.
### prefix: place

# $keyword (name)
in-a = in a { $keyword }
# $keyword (name)
in-an = in an { $keyword }
# $keyword (name)
in-the = in the { $keyword }
# $keyword (name)
in-this = in this { $keyword }
# $block (name)
in-named = in { $block }
top = at the top of a file
# $keyword (name)
this-block = This { $keyword }
the-vehicle = the vehicle
