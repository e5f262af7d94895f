### prefix: spoken

placed = { $thing }, a { $back } del frente, { $side }
centerline = en la línea central
driver-side = lado del conductor { $distance }
passenger-side = lado del pasajero { $distance }
loads-finished = Cargas de la obra terminada, como está construida
loads-at-stage = Cargas en esta etapa, como está construida
loads-if-lost = Cargas si se pierde: { $loss }
no-load = Sin carga: { $elements }
