title = Hace falta más de lo que llevan las unidades
protects = Un crib al que le faltan cuatro maderos se arma más bajo, o con lo que haya a mano.
short = Hacen falta { $needed } { $item } en el momento de más uso. Las unidades llevan { $carried }, faltan { $short }. { $advice }
stand-in = Posibles sustitutos: { $items }. Calcule otra vez el plan con ellos.
call-more = Pida otra unidad, o arme con menos.
