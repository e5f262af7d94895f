title = Se mueve si un apoyo cede
protects = Cuando cede un neumático, un vehículo de debajo o el suelo bajo un puntal, el empuje, las cintas y la fricción deben seguir en equilibrio.
rolls = Si se pierde este apoyo ({ $loss }), { $what } rueda{ $when }. Calce más ejes en ambos sentidos.
slides = Si se pierde este apoyo ({ $loss }), { $what } desliza{ $when }. La fricción que queda no lo sujeta. Una entre sí las bases de los puntales, o calce más ejes.
falls = Si se pierde este apoyo ({ $loss }), nada sujeta { $what }{ $when }. Añada un apoyo que se sostenga por sí solo.
moves = Si se pierde este apoyo ({ $loss }), { $what } se mueve más de lo que las comprobaciones permiten antes de que sus apoyos lo sujeten{ $when }. Considérelo no sujeto.
unsolved = No se pudo calcular cómo queda { $what } si se pierde este apoyo ({ $loss }){ $when }. Considérelo no sujeto. Esta comprobación no se da por buena.
lost-here = Este es el apoyo que se pierde.
