stands-on = { $support } se apoya en { $part } de { $vehicle }, que no debe cargarse. { $remark } Apóyelo en el suelo o en una parte que pueda cargarse.
crib = El crib { $name }
step-chock = La calza escalonada { $name }
part-here = Aquí se describe { $part }.
