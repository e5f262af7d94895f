### prefix: panel

waiting = Esperando el plan.
views = Vistas
plan = Plan
what-if = Supuesto
nothing-lost = nada perdido
stages = Etapas de la obra
stage = Etapa
stage-before = Etapa anterior
stage-next = Etapa siguiente
stage-of = { $number } de { $total }: { $title }
finished = obra terminada
play = Reproducir
stop = Detener
choose = elegir
crib = crib
strut = puntal
either = { $first } o { $second }
zoom = Zoom
zoom-in = Acercar
zoom-out = Alejar
fit = Ajustar
fit-all = Ajustar el dibujo entero
rotate = Girar
rotate-tools = Punto de vista
no-perspective = Sin perspectiva
from-corner = Desde una esquina
from-above = Desde arriba
from-side = Desde el lado
from-behind = Desde atrás
three-d = La disposición en 3D. El dibujo plano y el texto de abajo dicen lo mismo.
three-d-failed = La vista 3D no se pudo abrir aquí ({ $reason }). El dibujo plano muestra lo mismo.
more = Más
key-tab = Tab, flechas
key-tab-does = ir de una figura a otra
key-page = Av Pág, Re Pág
key-page-does = todas las figuras, una tras otra
key-enter = Intro
key-enter-does = ir a su línea en el texto
key-alt = Alt+↑  Alt+↓
key-alt-does = una hilada más o menos en un crib
key-stage = ,  .
key-stage-does = etapa anterior o siguiente
key-zoom = +  -  0
key-zoom-does = acercar, alejar, ajustar
key-drag = Arrastrar
key-drag-does = un crib, la base de un puntal o un vehículo: el texto cambia
key-escape = Esc
key-escape-does = cancelar lo que se arrastra
export = Guardar o copiar el dibujo
save-as = Guardar como { $format }
copy = Copiar
copy-picture = Copiar como imagen
copied = El dibujo está en el portapapeles como imagen.
no-clipboard = La imagen no está en el portapapeles: esta ventana no lo permite ({ $reason }). Guárdela como archivo PNG.
no-picture = No se pudo hacer la imagen: { $reason }. Guárdela como SVG.
close-notice = Cerrar este aviso
in-words = En palabras
not-checked = Aún sin comprobar. Se están calculando cargas y límites.
push-pending = El empuje lateral se sigue comprobando.
nothing-found = Las comprobaciones no encontraron nada. No ven la escena.
unsafe =
    { $count ->
        [one] 1 inseguro
       *[other] { $count } inseguros
    }
not-run =
    { $count ->
        [one] 1 comprobación no se pudo hacer
       *[other] { $count } comprobaciones no se pudieron hacer
    }
warnings =
    { $count ->
        [one] 1 advertencia
       *[other] { $count } advertencias
    }
notes =
    { $count ->
        [one] 1 nota
       *[other] { $count } notas
    }
accepted = { $count } aceptados
