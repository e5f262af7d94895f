title = Rueda, resbala o vuelca en una etapa
protects = Un vehículo puede rodar, resbalar o volcar mientras se ponen o se quitan apoyos y calzas.
rolls = Después de { $stage }, { $what } rueda en la pendiente de { $grade }{ $when }. Calce sus ruedas en ambos sentidos antes de este paso.
slides = Después de { $stage }, { $what } resbala{ $when }. La pendiente es { $grade }. El rozamiento de sus apoyos no lo sujeta. Calce más ejes, o ánclelo cuesta arriba, antes de este paso.
falls = Después de { $stage }, nada sujeta { $what } para que no vuelque ni caiga{ $when }. Ponga antes de este paso los apoyos que lo sujetan.
moves = Después de { $stage }, { $what } se mueve más de lo que las comprobaciones permiten antes de que sus apoyos lo sujeten{ $when }. Considérelo no sujeto.
unsolved = No se pudo calcular cómo queda { $what } después de { $stage }{ $when }. Considérelo no sujeto. Esta comprobación no se da por buena.
left-out = { $vehicles }: la pérdida de apoyos, el resbalamiento, el vuelco y los empujes laterales se comprobaron en { $done } de { $of } extremos de los intervalos. Puede haber uno peor. Pese o mida lo que se pueda, o compruebe menos vehículos a la vez. Esta comprobación no se da por buena.
