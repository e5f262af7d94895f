### prefix: remedy

strap-across = Amarrar entre sí las bases de { $strut } y { $other }
strap-to-part = Amarrar la base de { $strut } a { $part } de { $vehicle }
strap-to-anchor = Amarrar la base de { $strut } a { $anchor }
mirror-strut = Poner el puntal { $new } del otro lado, frente a { $strut }, y amarrar entre sí sus bases
move = Mover { $support } a { $place }
capture = Poner { $support } bajo { $parts } de { $vehicle }
build = Armar el crib { $crib }: { $layout } de { $timber }, { $courses } hiladas
step-after = Hacer el paso { $step } después del paso { $other }
step-before = Hacer el paso { $step } antes del paso { $other }
step-for = Añadir { $support } a los pasos
step-lock = Trabar { $support } en los pasos
step-capture = Añadir un paso que estabilice { $vehicle } con { $supports }
use-gear = Usar { $gear } para { $support }

twin-front =
    { $count ->
        [one] Poner un puntal más, { $struts }, igual que { $like }, { $far } más hacia el frente
       *[other] Poner { $count } puntales más, { $struts }, iguales que { $like }, { $far } más hacia el frente
    }
twin-rear =
    { $count ->
        [one] Poner un puntal más, { $struts }, igual que { $like }, { $far } más hacia atrás
       *[other] Poner { $count } puntales más, { $struts }, iguales que { $like }, { $far } más hacia atrás
    }
strap-vehicle = Amarrar { $vehicle } a un anclaje { $anchor } que aguante { $holds }, { $toward }: búsquelo, por ejemplo un camión de rescate o un bolardo
