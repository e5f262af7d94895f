title = Crib deslizado sin revisar
protects = Los contactos del lado lejano de un crib que se deslizó a su lugar no se ven. Puede que no toquen la parte que deben cargar.
unchecked = El crib { $crib } se desliza a su lugar, así que sus contactos del lado lejano no se ven. Ningún paso posterior lo revisa. Agregue un paso que revise el crib { $crib } desde el otro lado.
