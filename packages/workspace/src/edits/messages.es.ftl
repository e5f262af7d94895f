### Why a change of the plan cannot be made in its text.
### prefix: edit

not-here = { $element } no está en el texto de este plan. Cámbielo donde está escrito.
no-body = { $element } no tiene líneas propias que cambiar.
from-pattern = { $element } viene de un patrón. Cambie el patrón, o escriba el apoyo en el plan.
calculated = { $value } se calcula a partir de otros valores, así que no se puede arrastrar. Cámbielo en el texto.
by-part = Su lugar se da por una pieza ({ $place }). Escriba una distancia para arrastrarlo.
range = { $value } es un intervalo, así que no se puede arrastrar. Cámbielo en el texto.
no-place = { $element } no tiene una línea que diga dónde está. Escríbala para arrastrarlo.
unreadable = No se puede leer la línea que dice dónde está { $element }. Corríjala primero.
cannot-move = { $element } no se puede arrastrar así.
no-step = { $element } no es un paso del texto de este plan. Cambie a mano el orden de los pasos.
