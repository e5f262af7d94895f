title = Material insuficiente en las unidades que responden
protects = Un equipo al que le faltan cuatro maderos arma el crib más bajo, o con lo que haya a mano.
short = Hacen falta { $needed } { $item } en el momento de más uso. Las unidades llevan { $carried }, faltan { $short }. { $advice }
stand-in = Posibles sustitutos: { $items }. Calcule otra vez el plan con ellos.
call-more = Pida otra unidad, o arme con menos.
