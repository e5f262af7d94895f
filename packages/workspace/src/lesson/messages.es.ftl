### What an exercise asks, and why one has no answer.
### prefix: lesson

exercise = Ejercicio { $number }
width = ancho
work-out = Calcule este valor de { $on }: { $figure }.
work-out-contact = Calcule este valor de { $on } en el contacto { $contact }: { $figure }.
find-all = Encuentre todas las faltas.
find-on = ¿Qué está mal en { $on }?
finish = Complete { $on }.
finish-line = Complete { $on }. Su línea “{ $line }” está en blanco.
asks-nothing = El ejercicio no pregunta nada. Agregue una línea: work out, find o finish.
plan-not-stated = No se indica el plan. Agregue la línea: plan NOMBRE.
plan-not-whole = No se pudo leer parte de su plan.
no-support = El plan no tiene ningún apoyo { $on }.
no-figure = No hay este valor que calcular en { $on }: { $figure }.
not-known = No se conoce este valor de { $on }: { $figure }.
no-fault = Ninguna comprobación encuentra ahí una falta.
no-line = { $on } no tiene una línea “{ $line }” que dejar en blanco.
