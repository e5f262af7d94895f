### prefix: word

not-known = no se conoce
list-and = { $first } y { $last }
list-or = { $first } o { $last }
lesser = el menor de { $a } y { $b }
larger = el mayor de { $a } y { $b }
floor-to = { $value }, redondeado hacia abajo a un múltiplo de { $step }
range = { $low } a { $high }
