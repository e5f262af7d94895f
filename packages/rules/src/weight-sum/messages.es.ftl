title = Pesos que no suman
protects = Un peso equivocado hace falsas todas las cargas del plan.
differ = El peso vacío escrito de { $vehicle } es { $stated }. Sus ejes y demás apoyos llevan { $sum } vacío ({ $parts }). Uno de los dos está mal. El plan usa el peso escrito.
less-than-axles = El peso vacío escrito de { $vehicle } es { $stated }. Solo sus ejes llevan { $sum } vacío ({ $parts }). Uno de los dos está mal. El plan usa el peso escrito.
fix-leave-out = Quitar el peso y usar las cargas en los ejes y demás apoyos de { $vehicle }
carried-here = Esto lleva { $load } vacío.
