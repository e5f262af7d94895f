title = Anotado o armado dos veces
protects = Un madero que se cuenta dos veces está en el lugar una sola vez.
listed-twice = { $unit } anota { $item } dos veces, con { $first } y con { $second }. Se usa el número menor. Corrija la lista.
built-twice = Los pasos { $first } y { $second } arman { $support }. Ármelo en un solo paso.
first-here = Anotado primero aquí.
