title = Saliente demasiado corto o demasiado largo
protects = Las puntas de madero demasiado cortas se rajan, y los maderos se salen bajo carga. Las demasiado largas estrechan la base y bajan el límite de altura.
too-short = Crib { $crib }: los maderos sobresalen { $overhang } de los contactos. El mínimo es { $least }. Las puntas más cortas se rajan y dejan que los maderos se salgan.
too-long = Crib { $crib }: los maderos sobresalen { $overhang } de los contactos. El límite es { $most }. Un saliente mayor estrecha la base, que ahora mide { $width }.
set-here = El límite se fija aquí: { $limit }.
fix-overhang = Usar un saliente de { $overhang }
