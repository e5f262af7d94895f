title = Correa o cadena en un anclaje que quizá no aguante
protects = Una correa no aguanta más de lo que aguanta su anclaje.
holds-unknown = Anclaje { $anchor } de { $tie }: capacidad desconocida. Escriba su capacidad después de `holds`, o amarre base con base. Esta comprobación no se da por buena.
holds-less = Anclaje { $anchor } de { $tie }: tiro de hasta { $load }. Capacidad { $holds }. Use un anclaje más fuerte.
moves = Anclaje de { $tie }: { $part } de { $vehicle } se mueve. Sujételo al bastidor.
no-part = Anclaje de { $tie }: { $vehicle } no tiene { $part }.
not-there = Anclaje de { $tie }: no está en este plan.
same-end = Los dos extremos de { $tie } están en el mismo lugar. No sujeta nada.
