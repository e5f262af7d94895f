title = Apoyo bajo una parte que no puede llevar carga
protects = Chapa, tanques, partes móviles y soportes se doblan o giran con una carga que el bastidor llevaría.
may-not-bear = { $part } de { $vehicle } no puede llevar carga, y { $support } lo captura. { $advice } { $remark }
no-part = { $vehicle } no tiene { $part }, y { $support } lo captura. { $advice }
no-vehicle = El vehículo { $vehicle } no está en este plan, y { $support } lo captura.
use-instead = Partes que pueden llevar carga: { $parts }.
none-bears = De ninguna parte se sabe que pueda llevar carga.
fix-part = Capturar { $part } en su lugar

stands-on = { $part } de { $vehicle } no puede llevar carga, y { $support } se apoya encima. Apóyelo en el suelo o en una parte que pueda llevar carga. { $remark }
part-here = Aquí se describe { $part }.
