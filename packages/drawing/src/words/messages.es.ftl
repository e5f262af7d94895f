### prefix: spoken

placed = { $thing }, a { $back } del frente, { $side }
centerline = en la línea central
driver-side = lado del conductor { $distance }
passenger-side = lado del acompañante { $distance }
loads-finished = Cargas de la obra terminada, tal como está armada
loads-at-stage = Cargas en esta etapa, tal como está armada
loads-if-lost = Cargas si se pierde: { $loss }
no-load = Sin carga: { $elements }

lock-pinned = con pasador
lock-collar = con collar de seguro
lock-pump-only = solo su bomba
