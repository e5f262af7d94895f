title = Capacidad portante del suelo excedida
protects = Una base que se hunde de un lado inclina la carga que sostiene.
too-much = Suelo bajo { $support }: presión { $pressure } ({ $sum }). La capacidad admisible de { $surface } es { $allowable }. { $advice }
surface-unknown = Suelo bajo { $support }: capacidad admisible de { $surface } desconocida. Escriba la capacidad del suelo, o use una placa y vigile si se hunde. Esta comprobación no se da por buena.
foot-unknown = Suelo bajo { $support }: tamaño de la placa base desconocido, presión sobre { $surface } sin comprobar. { $advice } Esta comprobación no se da por buena.
use-pad = Use una placa de al menos { $pad }.
state-size = Escriba el tamaño de la placa base.
state-size-or-use-pad = Escriba el tamaño de la placa base, o use una placa de al menos { $pad }.
fix-pad = Usar una placa de { $material } de { $size }
timber = madera
steel = acero
surface-here = La capacidad admisible se fija aquí.

edge = Suelo bajo { $support }: la carga está fuera del centro de la base. Presión en el borde { $edge }, { $pressure } en el área que apoya. La capacidad admisible de { $surface } es { $allowable }. Centre la carga o use una base más ancha.
pad-material = Placa { $pad } bajo { $support }: material no indicado. No se sabe cuánto reparte la carga. Escriba `material timber`, `plywood` o `steel`. Esta comprobación no se da por buena.
