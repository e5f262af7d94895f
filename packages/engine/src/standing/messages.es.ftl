nothing-holds = nada sujeta { $vehicle } de este lado
reaches-its-rating = { $element } llega a su carga nominal
moves = { $vehicle } se mueve más de { $limit }
slides = { $vehicle } desliza
tips = { $vehicle } vuelca
when = { " " }con { $case }
balance-in-space = del equilibrio de todas las fuerzas y momentos en el espacio, con fricción
pushed-in-space = el mayor empuje que aguantó al empujar despacio, con la fricción de la carga que hay
