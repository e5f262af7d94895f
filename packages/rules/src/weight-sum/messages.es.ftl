title = Pesos que no suman
protects = Un peso equivocado hace falsas todas las cargas del plan.
differ = El peso en vacío indicado de { $vehicle } es { $stated }. Sus ejes y demás apoyos llevan { $sum } en vacío ({ $parts }). Uno de los dos está mal. El plan usa el peso indicado.
less-than-axles = El peso en vacío indicado de { $vehicle } es { $stated }. Solo sus ejes llevan { $sum } en vacío ({ $parts }). Uno de los dos está mal. El plan usa el peso indicado.
fix-leave-out = Quitar el peso y usar las cargas en los ejes y demás apoyos de { $vehicle }
carried-here = Esto lleva { $load } en vacío.
