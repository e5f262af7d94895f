title = Base abierta en suelo blando, o placa demasiado pequeña
protects = En suelo blando los dos maderos de una base abierta se hunden de forma desigual y el crib se ladea.
open-on-soft = El crib { $crib } tiene base abierta sobre { $surface }, que no está pavimentado. Los maderos de su base se hunden de forma desigual. Presión sobre el suelo: { $pressure }. Use una base sólida o una placa.
short-pad = El crib { $crib } está sobre la placa { $pad }, que mide { $size } por el lado corto. Los maderos de su base miden { $length } y sobresalen. Use una placa al menos igual de larga que los maderos.
no-pad = El crib { $crib } está sobre una placa que no está en este plan.
fix-solid = Usar una base sólida
