### What an exercise asks, and why one has no answer.
### prefix: lesson

exercise = Ejercicio { $number }
work-out = Calcule { $figure } de { $on }.
find-all = Encuentre todas las faltas.
find-on = ¿Qué está mal en { $on }?
finish = Complete { $on }.
asks-nothing = El ejercicio no pregunta nada. Añada una línea: work out, find o finish.
plan-not-stated = No se ha dicho el plan. Añada la línea: plan NOMBRE.
plan-not-whole = Su plan no se pudo leer completo.
no-support = El plan no tiene ningún apoyo { $on }.
no-figure = No hay { $figure } que calcular en { $on }.
not-known = No se conoce { $figure } de { $on }.
no-fault = Ninguna comprobación encuentra ahí una falta.
no-line = { $on } no tiene una línea “{ $line }” que dejar en blanco.
