### Where in a file something stands, and the block that a message is about.
### prefix: place

in-a = en un bloque { $keyword }
in-an = en un bloque { $keyword }
in-the = en { $keyword }
in-this = en este bloque { $keyword }
in-named = en { $block }
top = al principio de un archivo
this-block = Este bloque { $keyword }
the-vehicle = el vehículo
