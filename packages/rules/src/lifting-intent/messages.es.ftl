title = Levantamiento no declarado
protects = Estabilizar no es levantar. Un vehículo levantado mueve su carga y puede resbalar de sus apoyos.
lifts = Los apoyos bajo { $vehicle } empujan hacia arriba con { $upward } en total ({ $sum }), { $share } de su peso. El límite sin levantamiento es { $limit }. Ponga los apoyos ajustados, o escriba `lift intended`.
follow = Levantamiento previsto, pero ningún crib captura { $vehicle }. Levante una pulgada, arme crib una pulgada.
