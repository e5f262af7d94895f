// Written by build/embed-pages.mjs. Do not edit.
/** Every rule's page as Markdown, by rule and language. */
export const rulePages = (): Readonly<Record<string, { readonly en: string; readonly es: string }>> => texts;

const texts = {
  'acceptance-expired': {
    en: `# acceptance-expired: acceptance expired

## What it protects against

A risk that an officer accepted for a limited time must not stay accepted after that time.

## Calculation

    today ≤ end date of the acceptance

If today's date is not known, the acceptance does not count. The check then reports that it could not run.

## Sources

- Common practice, no source.

## Unsafe

\`\`\`crib
use "library/vehicles.crib"
use "library/gear.crib"
use "library/ties.crib"

plan "Accepted long ago" {
  vehicle trailer : VanTrailer53 {
    cargo "freight" 20,000 lb from 4 ft to 48 ft
  }
  strut S1 : Strut4to8ft {
    head  trailer rail near 14 ft, driver side
    base  3 ft 4 in out
    lock  pinned
  }
  strap T1 : RatchetStrap2in { from S1 base to trailer rail 14 ft, passenger side }
  accept strut-one-sided on trailer because "wall on the other side" by "training captain" until 2020-01-31 // acceptance-expired
}
\`\`\`

## Safe

\`\`\`crib
use "library/vehicles.crib"
use "library/gear.crib"
use "library/ties.crib"

plan "Accepted for now" {
  vehicle trailer : VanTrailer53 {
    cargo "freight" 20,000 lb from 4 ft to 48 ft
  }
  strut S1 : Strut4to8ft {
    head  trailer rail near 14 ft, driver side
    base  3 ft 4 in out
    lock  pinned
  }
  strap T1 : RatchetStrap2in { from S1 base to trailer rail 14 ft, passenger side }
  accept strut-one-sided on trailer because "wall on the other side" by "training captain" until 2099-01-31
}
\`\`\`
`,
    es: `# acceptance-expired: aceptación vencida

## Contra qué protege

Un riesgo que un oficial aceptó por un tiempo limitado no debe seguir aceptado después de ese tiempo.

## Cálculo

    hoy ≤ fecha de fin de la aceptación

Si no se sabe la fecha de hoy, la aceptación no cuenta. La comprobación dice entonces que no se pudo hacer.

## Fuentes

- Práctica común, sin fuente.

## Inseguro

\`\`\`crib
use "library/vehicles.crib"
use "library/gear.crib"
use "library/ties.crib"

plan "Aceptado hace mucho" {
  vehicle trailer : VanTrailer53 {
    cargo "mercancía" 20,000 lb from 4 ft to 48 ft
  }
  strut S1 : Strut4to8ft {
    head  trailer rail near 14 ft, driver side
    base  3 ft 4 in out
    lock  pinned
  }
  strap T1 : RatchetStrap2in { from S1 base to trailer rail 14 ft, passenger side }
  accept strut-one-sided on trailer because "pared del otro lado" by "capitán de instrucción" until 2020-01-31 // acceptance-expired
}
\`\`\`

## Seguro

\`\`\`crib
use "library/vehicles.crib"
use "library/gear.crib"
use "library/ties.crib"

plan "Aceptado por ahora" {
  vehicle trailer : VanTrailer53 {
    cargo "mercancía" 20,000 lb from 4 ft to 48 ft
  }
  strut S1 : Strut4to8ft {
    head  trailer rail near 14 ft, driver side
    base  3 ft 4 in out
    lock  pinned
  }
  strap T1 : RatchetStrap2in { from S1 base to trailer rail 14 ft, passenger side }
  accept strut-one-sided on trailer because "pared del otro lado" by "capitán de instrucción" until 2099-01-31
}
\`\`\`
`,
  },
  'air-spring-free': {
    en: `# air-spring-free: cab left on its air springs

## What it protects against

A sleeper cab sits on rubber mounts in front and on air springs in the rear. It sways while tools work, and drops when an air line is cut or the air leaks out.

## Calculation

The cab is analyzed as a separate body. At least one crib or strut of the finished plan must reach the cab and support it. A crib that stops short of the cab does not count.

Build cribs between the cab and the frame, on both sides, or set side struts under the cab. Those struts carry the cab only, not the tractor.

## Sources

- Movement of a cab on air springs, and how to support it: common practice, no source.

## Unsafe

\`\`\`crib
use "library/vehicles.crib"

plan "Cab on air" {
  ground { surface asphalt; grade 0 % toward rear }
  vehicle tractor : SleeperTractor // air-spring-free
}
\`\`\`

## Safe

\`\`\`crib
use "library/vehicles.crib"

plan "Cab on cribs" {
  ground { surface asphalt; grade 0 % toward rear }
  vehicle tractor : SleeperTractor
  crib A {
    timber    Fir4x4 18 in long
    layout    2 by 2
    base      open
    courses   5
    wedges    4 pairs
    at        12 ft, driver side 17 in
    stands on tractor frame
    captures  floor
  }
  crib B {
    timber    Fir4x4 18 in long
    layout    2 by 2
    base      open
    courses   5
    wedges    4 pairs
    at        12 ft, passenger side 17 in
    stands on tractor frame
    captures  floor
  }
}
\`\`\`
`,
    es: `# air-spring-free: cabina dejada sobre sus resortes neumáticos

## Contra qué protege

Una cabina con dormitorio descansa sobre soportes de goma adelante y sobre resortes neumáticos atrás. Se mueve mientras trabajan las herramientas, y cae cuando se corta una manguera o se escapa el aire.

## Cálculo

La cabina se analiza como un cuerpo aparte. Al menos un crib o un puntal del plan terminado debe llegar a la cabina y sostenerla. Un crib que se queda corto no cuenta.

Arme cribs entre la cabina y el bastidor, en ambos lados, o ponga puntales laterales bajo la cabina. Esos puntales llevan solo la cabina, no el tractor.

## Fuentes

- Movimiento de una cabina sobre resortes neumáticos, y cómo sostenerla: práctica común, sin fuente.

## Inseguro

\`\`\`crib
use "library/vehicles.crib"

plan "Cabina sobre aire" {
  ground { surface asphalt; grade 0 % toward rear }
  vehicle tractor : SleeperTractor // air-spring-free
}
\`\`\`

## Seguro

\`\`\`crib
use "library/vehicles.crib"

plan "Cabina sobre cribs" {
  ground { surface asphalt; grade 0 % toward rear }
  vehicle tractor : SleeperTractor
  crib A {
    timber    Fir4x4 18 in long
    layout    2 by 2
    base      open
    courses   5
    wedges    4 pairs
    at        12 ft, driver side 17 in
    stands on tractor frame
    captures  floor
  }
  crib B {
    timber    Fir4x4 18 in long
    layout    2 by 2
    base      open
    courses   5
    wedges    4 pairs
    at        12 ft, passenger side 17 in
    stands on tractor frame
    captures  floor
  }
}
\`\`\`
`,
  },
  'axle-overweight': {
    en: `# axle-overweight: axle load over the legal limit

## What it protects against

A wrong weight or position in the plan makes every other figure wrong. An axle load over the legal limit is more often a typing error than an overweight truck. If the weights are right, the truck is overweight, and the crew must know that.

This rule checks the data in the plan, not the stabilization.

## Calculation

The lever rule divides the cargo between two groups of axles, or between a kingpin and one group. Every group of consecutive axles is then compared with its limit, including groups inside larger groups:

    one axle, or axles within 40 in       20,000 lb
    axles within 96 in                    34,000 lb
    more: 500 × (L × N ÷ (N − 1) + 12 × N + 36), to the nearest 500 lb, halves down
    two tandems, 36 ft first to last      34,000 lb each
    the whole truck                       80,000 lb

L is the distance between the outer axles in whole feet, N the number of axles.

## Sources

- Limits and formula: 23 CFR 658.17.
- Two tandems 36 ft apart: 23 U.S.C. 127(a).
- Values halfway between two steps of 500 lb: the table of California Vehicle Code 35551 rounds down, the table of 67 Pa. Code 185.3 rounds up. The rule uses the lower value.

A department's policy may set other limits for a single axle, a tandem and the whole truck.

## Unsafe

\`\`\`crib
use "library/vehicles.crib"

plan "One zero too many" {
  vehicle truck : StraightTruck {
    cargo "pallets" 90,000 lb from 9 ft to 29 ft // axle-overweight
  }
}
\`\`\`

## Safe

\`\`\`crib
use "library/vehicles.crib"

plan "A full truck" {
  vehicle truck : StraightTruck {
    cargo "pallets" 9,000 lb from 9 ft to 29 ft
  }
}
\`\`\`
`,
    es: `# axle-overweight: carga por eje sobre el límite legal

## Contra qué protege

Un peso o una posición equivocados en el plan hacen falsas todas las demás cifras. Una carga por eje sobre el límite legal es más veces un error al escribir que un camión con exceso de peso. Si los pesos son correctos, el camión lleva exceso de peso, y el equipo debe saberlo.

Esta regla revisa los datos del plan, no la estabilización.

## Cálculo

La ley de la palanca reparte la carga entre dos grupos de ejes, o entre un kingpin y un grupo. Después se compara cada grupo de ejes seguidos con su límite, también los grupos dentro de otros más grandes:

    un eje, o ejes a no más de 40 in           20,000 lb
    ejes a no más de 96 in                     34,000 lb
    más: 500 × (L × N ÷ (N − 1) + 12 × N + 36), a las 500 lb más cercanas, la mitad hacia abajo
    dos tándems, 36 ft del primero al último   34,000 lb cada uno
    el camión entero                           80,000 lb

L es la distancia entre los ejes exteriores en pies enteros, N el número de ejes.

## Fuentes

- Límites y fórmula: 23 CFR 658.17.
- Dos tándems a 36 ft: 23 U.S.C. 127(a).
- Valores a la mitad entre dos pasos de 500 lb: la tabla de _California Vehicle Code_ 35551 redondea hacia abajo, la de 67 _Pa. Code_ 185.3 hacia arriba. La regla usa el valor menor.

La norma de un departamento puede fijar otros límites para un eje simple, un tándem y el camión entero.

## Inseguro

\`\`\`crib
use "library/vehicles.crib"

plan "Un cero de más" {
  vehicle truck : StraightTruck {
    cargo "tarimas" 90,000 lb from 9 ft to 29 ft // axle-overweight
  }
}
\`\`\`

## Seguro

\`\`\`crib
use "library/vehicles.crib"

plan "Un camión lleno" {
  vehicle truck : StraightTruck {
    cargo "tarimas" 9,000 lb from 9 ft to 29 ft
  }
}
\`\`\`
`,
  },
  'cache-short': {
    en: `# cache-short: not enough equipment on the responding units

## What it protects against

A crew that is short four timbers builds the crib lower, or with whatever is at hand.

## Calculation

    timbers = courses × timbers in a course      11 × 2 = 22
    short   = needed at peak − carried

The peak is the moment in the plan when the most pieces are in use. When a step removes a support, its pieces can be used again.

## Sources

- Common practice, no source.

## Unsafe

\`\`\`crib
use "library/vehicles.crib"

cache Pine2 "Pine 2" {
  staffing 4
  12 Fir4x4 24 in long
  8 wedge pairs
}

plan "Ten timbers short" {
  vehicle trailer : VanTrailer53 {
    cargo "freight" 20,000 lb from 4 ft to 48 ft
  }
  responding Pine2
  crib A { // cache-short
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   11
    wedges    1 pair, 0.5 to 2 in
    at        19 ft 6 in, driver side 3 ft 6.75 in
    captures  rail, joists
  }
}
\`\`\`

## Safe

\`\`\`crib
use "library/vehicles.crib"

cache Pine2 "Pine 2" {
  staffing 4
  40 Fir4x4 24 in long
  8 wedge pairs
}

plan "Enough" {
  vehicle trailer : VanTrailer53 {
    cargo "freight" 20,000 lb from 4 ft to 48 ft
  }
  responding Pine2
  crib A {
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   11
    wedges    1 pair, 0.5 to 2 in
    at        19 ft 6 in, driver side 3 ft 6.75 in
    captures  rail, joists
  }
}
\`\`\`
`,
    es: `# cache-short: material insuficiente en las unidades que responden

## Contra qué protege

Un equipo al que le faltan cuatro maderos arma el crib más bajo, o con lo que haya a mano.

## Cálculo

    maderos = hiladas × maderos por hilada       11 × 2 = 22
    faltan  = necesarios en el momento de más uso − traídos

El momento de más uso es cuando el plan tiene más piezas puestas a la vez. Cuando un paso quita un apoyo, sus piezas se pueden usar otra vez.

## Fuentes

- Práctica común, sin fuente.

## Inseguro

\`\`\`crib
use "library/vehicles.crib"

cache Pine2 "Pine 2" {
  staffing 4
  12 Fir4x4 24 in long
  8 wedge pairs
}

plan "Faltan diez maderos" {
  vehicle trailer : VanTrailer53 {
    cargo "mercancía" 20,000 lb from 4 ft to 48 ft
  }
  responding Pine2
  crib A { // cache-short
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   11
    wedges    1 pair, 0.5 to 2 in
    at        19 ft 6 in, driver side 3 ft 6.75 in
    captures  rail, joists
  }
}
\`\`\`

## Seguro

\`\`\`crib
use "library/vehicles.crib"

cache Pine2 "Pine 2" {
  staffing 4
  40 Fir4x4 24 in long
  8 wedge pairs
}

plan "Suficiente" {
  vehicle trailer : VanTrailer53 {
    cargo "mercancía" 20,000 lb from 4 ft to 48 ft
  }
  responding Pine2
  crib A {
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   11
    wedges    1 pair, 0.5 to 2 in
    at        19 ft 6 in, driver side 3 ft 6.75 in
    captures  rail, joists
  }
}
\`\`\`
`,
  },
  'cache-unknown': {
    en: `# cache-unknown: equipment of the units not known

## What it protects against

A plan fails on scene if no unit carries the equipment for it.

## Calculation

None. The plan must name the responding units. The cache of each unit must list its equipment.

## Sources

- Common practice, no source.

## Unsafe

\`\`\`crib
use "library/vehicles.crib"

plan "Units not stated" { // cache-unknown
  vehicle trailer : VanTrailer53 {
    cargo "freight" 20,000 lb from 4 ft to 48 ft
  }
  crib A {
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   11
    wedges    1 pair, 0.5 to 2 in
    at        19 ft 6 in, driver side 3 ft 6.75 in
    captures  rail, joists
  }
}
\`\`\`

## Safe

\`\`\`crib
use "library/vehicles.crib"

cache Pine2 "Pine 2" {
  staffing 4
  40 Fir4x4 24 in long
  8 wedge pairs
}

plan "Pine 2 responds" {
  vehicle trailer : VanTrailer53 {
    cargo "freight" 20,000 lb from 4 ft to 48 ft
  }
  responding Pine2
  crib A {
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   11
    wedges    1 pair, 0.5 to 2 in
    at        19 ft 6 in, driver side 3 ft 6.75 in
    captures  rail, joists
  }
}
\`\`\`
`,
    es: `# cache-unknown: material de las unidades desconocido

## Contra qué protege

Un plan fracasa en el lugar si ninguna unidad trae el material para armarlo.

## Cálculo

Ninguno. El plan debe nombrar las unidades que responden. La lista de material de cada unidad debe decir qué trae.

## Fuentes

- Práctica común, sin fuente.

## Inseguro

\`\`\`crib
use "library/vehicles.crib"

plan "Unidades no indicadas" { // cache-unknown
  vehicle trailer : VanTrailer53 {
    cargo "mercancía" 20,000 lb from 4 ft to 48 ft
  }
  crib A {
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   11
    wedges    1 pair, 0.5 to 2 in
    at        19 ft 6 in, driver side 3 ft 6.75 in
    captures  rail, joists
  }
}
\`\`\`

## Seguro

\`\`\`crib
use "library/vehicles.crib"

cache Pine2 "Pine 2" {
  staffing 4
  40 Fir4x4 24 in long
  8 wedge pairs
}

plan "Responde Pine 2" {
  vehicle trailer : VanTrailer53 {
    cargo "mercancía" 20,000 lb from 4 ft to 48 ft
  }
  responding Pine2
  crib A {
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   11
    wedges    1 pair, 0.5 to 2 in
    at        19 ft 6 in, driver side 3 ft 6.75 in
    captures  rail, joists
  }
}
\`\`\`
`,
  },
  'count-mismatch': {
    en: `# count-mismatch: listed twice or built twice

## What it protects against

A timber that is counted twice is on scene only once.

## Calculation

None. A cache must list each item once. Only one step may build each support.

## Sources

- Common practice, no source.

## Unsafe

\`\`\`crib
use "library/vehicles.crib"

plan "Built twice" {
  vehicle trailer : VanTrailer53 {
    cargo "freight" 20,000 lb from 4 ft to 48 ft
  }
  crib A {
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   11
    wedges    1 pair, 0.5 to 2 in
    at        19 ft 6 in, driver side 3 ft 6.75 in
    captures  rail, joists
  }
  steps {
    1 build A
    2 build A // count-mismatch
  }
}
\`\`\`

## Safe

\`\`\`crib
use "library/vehicles.crib"

plan "Built once" {
  vehicle trailer : VanTrailer53 {
    cargo "freight" 20,000 lb from 4 ft to 48 ft
  }
  crib A {
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   11
    wedges    1 pair, 0.5 to 2 in
    at        19 ft 6 in, driver side 3 ft 6.75 in
    captures  rail, joists
  }
  steps {
    1 build A
    2 check A
  }
}
\`\`\`
`,
    es: `# count-mismatch: anotado o armado dos veces

## Contra qué protege

Un madero que se cuenta dos veces está en el lugar una sola vez.

## Cálculo

Ninguno. Una lista de material debe anotar cada cosa una vez. Solo un paso puede armar cada apoyo.

## Fuentes

- Práctica común, sin fuente.

## Inseguro

\`\`\`crib
use "library/vehicles.crib"

plan "Armado dos veces" {
  vehicle trailer : VanTrailer53 {
    cargo "mercancía" 20,000 lb from 4 ft to 48 ft
  }
  crib A {
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   11
    wedges    1 pair, 0.5 to 2 in
    at        19 ft 6 in, driver side 3 ft 6.75 in
    captures  rail, joists
  }
  steps {
    1 build A
    2 build A // count-mismatch
  }
}
\`\`\`

## Seguro

\`\`\`crib
use "library/vehicles.crib"

plan "Armado una vez" {
  vehicle trailer : VanTrailer53 {
    cargo "mercancía" 20,000 lb from 4 ft to 48 ft
  }
  crib A {
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   11
    wedges    1 pair, 0.5 to 2 in
    at        19 ft 6 in, driver side 3 ft 6.75 in
    captures  rail, joists
  }
  steps {
    1 build A
    2 check A
  }
}
\`\`\`
`,
  },
  'coupling-missing': {
    en: `# coupling-missing: coupling without its other half

## What it protects against

A trailer that is not coupled rests on nothing at its kingpin.

## Calculation

A kingpin carries load only where the plan has the vehicle that it is coupled to. Else the front of the trailer must rest on cribs, struts or landing gear that the plan names. Where it does not, nothing holds it, and the checks for sliding, rolling, tipping and loss of supports do not run.

## Sources

- A coupling has two halves: common practice, no source.

## Unsafe

\`\`\`crib
use "library/vehicles.crib"

plan "No tractor" {
  ground { surface asphalt; grade 0 % toward rear }
  vehicle trailer : VanTrailer53 { // coupling-missing
    cargo "freight" 20,000 lb from 4 ft to 48 ft height 6 ft
  }
  chock K1 { under trailer; holds both directions }
}
\`\`\`

## Safe

\`\`\`crib
use "library/vehicles.crib"

plan "Coupled" {
  ground { surface asphalt; grade 0 % toward rear }
  vehicle trailer : VanTrailer53 {
    cargo "freight" 20,000 lb from 4 ft to 48 ft height 6 ft
    coupled to tractor
  }
  vehicle tractor : DayCabTractor { at -16 ft, center }
  chock K1 { under trailer; holds both directions }
}
\`\`\`
`,
    es: `# coupling-missing: enganche sin su otra mitad

## Contra qué protege

Un remolque que no está enganchado no descansa sobre nada en su kingpin.

## Cálculo

Un kingpin lleva carga solo si el plan tiene el vehículo al que está enganchado. Si no, el frente del remolque debe descansar sobre cribs, puntales o patas de apoyo que el plan nombre. Si no descansa sobre ellos, nada lo sostiene, y no se hacen las comprobaciones de resbalar, rodar, volcar y perder apoyos.

## Fuentes

- Un enganche tiene dos mitades: práctica común, sin fuente.

## Inseguro

\`\`\`crib
use "library/vehicles.crib"

plan "Sin tractor" {
  ground { surface asphalt; grade 0 % toward rear }
  vehicle trailer : VanTrailer53 { // coupling-missing
    cargo "mercancía" 20,000 lb from 4 ft to 48 ft height 6 ft
  }
  chock K1 { under trailer; holds both directions }
}
\`\`\`

## Seguro

\`\`\`crib
use "library/vehicles.crib"

plan "Enganchado" {
  ground { surface asphalt; grade 0 % toward rear }
  vehicle trailer : VanTrailer53 {
    cargo "mercancía" 20,000 lb from 4 ft to 48 ft height 6 ft
    coupled to tractor
  }
  vehicle tractor : DayCabTractor { at -16 ft, center }
  chock K1 { under trailer; holds both directions }
}
\`\`\`
`,
  },
  'crew-short': {
    en: `# crew-short: not enough personnel

## What it protects against

If a plan needs more personnel than are on scene, the crew builds it in a hurry, or only in part.

## Calculation

    peak = sum of the crews of all steps that run at the same time
    peak ≤ staffing

## Sources

- Common practice, no source.

## Unsafe

\`\`\`crib
use "library/vehicles.crib"

plan "Six needed, four on scene" {
  vehicle trailer : VanTrailer53 {
    cargo "freight" 20,000 lb from 4 ft to 48 ft
  }
  crew 4 people
  crib A {
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   11
    wedges    1 pair, 0.5 to 2 in
    at        19 ft 6 in, driver side 3 ft 6.75 in
    captures  rail, joists
  }
  steps {
    1 build A  crew 6  takes 5 min // crew-short
  }
}
\`\`\`

## Safe

\`\`\`crib
use "library/vehicles.crib"

plan "Three needed, four on scene" {
  vehicle trailer : VanTrailer53 {
    cargo "freight" 20,000 lb from 4 ft to 48 ft
  }
  crew 4 people
  crib A {
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   11
    wedges    1 pair, 0.5 to 2 in
    at        19 ft 6 in, driver side 3 ft 6.75 in
    captures  rail, joists
  }
  steps {
    1 build A  crew 3  takes 5 min
  }
}
\`\`\`
`,
    es: `# crew-short: personal insuficiente

## Contra qué protege

Si un plan necesita más personal del que hay en el lugar, el equipo lo arma con prisa, o a medias.

## Cálculo

    máximo = suma de los equipos de todos los pasos que van al mismo tiempo
    máximo ≤ personal

## Fuentes

- Práctica común, sin fuente.

## Inseguro

\`\`\`crib
use "library/vehicles.crib"

plan "Hacen falta seis, hay cuatro" {
  vehicle trailer : VanTrailer53 {
    cargo "mercancía" 20,000 lb from 4 ft to 48 ft
  }
  crew 4 people
  crib A {
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   11
    wedges    1 pair, 0.5 to 2 in
    at        19 ft 6 in, driver side 3 ft 6.75 in
    captures  rail, joists
  }
  steps {
    1 build A  crew 6  takes 5 min // crew-short
  }
}
\`\`\`

## Seguro

\`\`\`crib
use "library/vehicles.crib"

plan "Hacen falta tres, hay cuatro" {
  vehicle trailer : VanTrailer53 {
    cargo "mercancía" 20,000 lb from 4 ft to 48 ft
  }
  crew 4 people
  crib A {
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   11
    wedges    1 pair, 0.5 to 2 in
    at        19 ft 6 in, driver side 3 ft 6.75 in
    captures  rail, joists
  }
  steps {
    1 build A  crew 3  takes 5 min
  }
}
\`\`\`
`,
  },
  'crib-alignment': {
    en: `# crib-alignment: contacts out of line, or captured part sloped

## What it protects against

A load that does not go straight down through the crib bends the timbers and pushes the crib over.

## Calculation

    distance from a contact to the part below it ≤ contact alignment (1 in)
    slope of the captured part                   ≤ steepest capture (10 deg)

## Sources

- Common practice, no source.

## Unsafe

\`\`\`crib
use "library/vehicles.crib"

plan "Beside the frame" {
  vehicle tractor : SleeperTractor
  crib A {
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   3
    wedges    1 pair, 0.5 to 2 in
    at        11 ft, driver side 3 ft
    captures  tractor floor
    stands on tractor frame // crib-alignment
  }
}
\`\`\`

## Safe

\`\`\`crib
use "library/vehicles.crib"

plan "On the ground" {
  vehicle trailer : VanTrailer53 {
    cargo "freight" 20,000 lb from 4 ft to 48 ft
  }
  crib A {
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   11
    wedges    1 pair, 0.5 to 2 in
    at        19 ft 6 in, driver side 3 ft 6.75 in
    captures  rail, joists
  }
}
\`\`\`
`,
    es: `# crib-alignment: contactos fuera de línea, o parte capturada inclinada

## Contra qué protege

Una carga que no baja derecha por el crib dobla los maderos y empuja el crib hasta volcarlo.

## Cálculo

    distancia de un contacto a la parte que tiene debajo ≤ alineación de los contactos (1 in)
    inclinación de la parte capturada                    ≤ captura más inclinada (10 deg)

## Fuentes

- Práctica común, sin fuente.

## Inseguro

\`\`\`crib
use "library/vehicles.crib"

plan "Al lado del bastidor" {
  vehicle tractor : SleeperTractor
  crib A {
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   3
    wedges    1 pair, 0.5 to 2 in
    at        11 ft, driver side 3 ft
    captures  tractor floor
    stands on tractor frame // crib-alignment
  }
}
\`\`\`

## Seguro

\`\`\`crib
use "library/vehicles.crib"

plan "En el suelo" {
  vehicle trailer : VanTrailer53 {
    cargo "mercancía" 20,000 lb from 4 ft to 48 ft
  }
  crib A {
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   11
    wedges    1 pair, 0.5 to 2 in
    at        19 ft 6 in, driver side 3 ft 6.75 in
    captures  rail, joists
  }
}
\`\`\`
`,
  },
  'crib-base': {
    en: `# crib-base: open base on soft ground, or pad too small

## What it protects against

On soft ground the two timbers of an open base sink unevenly and tip the crib.

## Calculation

None. On ground that is not paved, a crib needs a solid base, or a pad at least as long as its timbers.

## Sources

- Common practice, no source.

## Unsafe

\`\`\`crib
use "library/vehicles.crib"

plan "Open base on sand" {
  ground { surface sand }
  vehicle trailer : VanTrailer53 {
    cargo "freight" 20,000 lb from 4 ft to 48 ft
  }
  crib A {
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   11
    wedges    1 pair, 0.5 to 2 in
    at        19 ft 6 in, driver side 3 ft 6.75 in
    captures  rail, joists
    base      open // crib-base
  }
}
\`\`\`

\`\`\`crib fixed
    base      solid
\`\`\`

## Safe

\`\`\`crib
use "library/vehicles.crib"

plan "Solid base on sand" {
  ground { surface sand }
  vehicle trailer : VanTrailer53 {
    cargo "freight" 20,000 lb from 4 ft to 48 ft
  }
  crib A {
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   11
    wedges    1 pair, 0.5 to 2 in
    at        19 ft 6 in, driver side 3 ft 6.75 in
    captures  rail, joists
    base      solid
  }
}
\`\`\`
`,
    es: `# crib-base: base abierta en suelo blando, o placa demasiado pequeña

## Contra qué protege

En suelo blando los dos maderos de una base abierta se hunden de forma desigual y el crib se ladea.

## Cálculo

Ninguno. En suelo sin pavimentar, un crib necesita una base sólida, o una placa al menos igual de larga que sus maderos.

## Fuentes

- Práctica común, sin fuente.

## Inseguro

\`\`\`crib
use "library/vehicles.crib"

plan "Base abierta en arena" {
  ground { surface sand }
  vehicle trailer : VanTrailer53 {
    cargo "mercancía" 20,000 lb from 4 ft to 48 ft
  }
  crib A {
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   11
    wedges    1 pair, 0.5 to 2 in
    at        19 ft 6 in, driver side 3 ft 6.75 in
    captures  rail, joists
    base      open // crib-base
  }
}
\`\`\`

\`\`\`crib fixed
    base      solid
\`\`\`

## Seguro

\`\`\`crib
use "library/vehicles.crib"

plan "Base sólida en arena" {
  ground { surface sand }
  vehicle trailer : VanTrailer53 {
    cargo "mercancía" 20,000 lb from 4 ft to 48 ft
  }
  crib A {
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   11
    wedges    1 pair, 0.5 to 2 in
    at        19 ft 6 in, driver side 3 ft 6.75 in
    captures  rail, joists
    base      solid
  }
}
\`\`\`
`,
  },
  'crib-clash': {
    en: `# crib-clash: two things in the same place

## What it protects against

A support that cannot be built as planned is built another way, and that way is not checked.

## Calculation

These pairs must not overlap, seen from above and over their heights: two cribs, a crib and a vehicle body, a crib and a wheel, a strut and a crib. A crib takes up the full length of its timbers in both directions.

Two vehicles must not overlap either. If the plan states that one bears on the other, or is coupled to it, their bodies may meet, but their wheels must not. A car counts as solid at its roof and up to the top of its tires. The height of a hood or a trunk is not in the plan. An overlap there is a warning.

## Sources

- Common practice, no source.

## Unsafe

\`\`\`crib
use "library/vehicles.crib"

plan "One foot apart" {
  vehicle trailer : VanTrailer53 {
    cargo "freight" 20,000 lb from 4 ft to 48 ft
  }
  crib A {
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   11
    wedges    1 pair, 0.5 to 2 in
    at        19 ft 6 in, driver side 3 ft 6.75 in // crib-clash
    captures  rail, joists
  }
  crib B {
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   11
    wedges    1 pair, 0.5 to 2 in
    at        20 ft 6 in, driver side 3 ft 6.75 in
    captures  rail, joists
  }
}
\`\`\`

\`\`\`crib
use "library/vehicles.crib"

plan "A car in the floor of a trailer" {
  vehicle trailer : VanTrailer53 {
    cargo "freight" 20,000 lb from 4 ft to 48 ft
  }
  vehicle car : Sedan {
    at       25 ft, passenger side 1 ft // crib-clash
    heading  across to passenger side
  }
}
\`\`\`

## Safe

\`\`\`crib
use "library/vehicles.crib"

plan "Well apart" {
  vehicle trailer : VanTrailer53 {
    cargo "freight" 20,000 lb from 4 ft to 48 ft
  }
  crib A {
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   11
    wedges    1 pair, 0.5 to 2 in
    at        19 ft 6 in, driver side 3 ft 6.75 in
    captures  rail, joists
  }
  crib B {
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   11
    wedges    1 pair, 0.5 to 2 in
    at        25 ft 6 in, driver side 3 ft 6.75 in
    captures  rail, joists
  }
}
\`\`\`

\`\`\`crib
use "library/vehicles.crib"

plan "A car that the trailer rests on" {
  vehicle trailer : VanTrailer53 {
    cargo "freight" 20,000 lb from 4 ft to 48 ft
  }
  vehicle car : Sedan {
    at       25 ft, passenger side 1 ft
    heading  across to passenger side
    bears    trailer at rail from 23 ft 6 in to 26 ft 6 in
    area roof {
      height 40 in  source stated
    }
  }
}
\`\`\`
`,
    es: `# crib-clash: dos cosas en el mismo lugar

## Contra qué protege

Un apoyo que no se puede armar como se planeó se arma de otra manera, y esa manera no está comprobada.

## Cálculo

Estas parejas no se deben traslapar, vistas desde arriba y a lo largo de sus alturas: dos cribs, un crib y la carrocería de un vehículo, un crib y una rueda, un puntal y un crib. Un crib ocupa todo el largo de sus maderos en las dos direcciones.

Dos vehículos tampoco se deben traslapar. Si el plan indica que uno descansa sobre el otro, o está enganchado a él, sus carrocerías se pueden tocar, pero sus ruedas no. Un auto cuenta como sólido en su techo y hasta lo alto de sus neumáticos. La altura de un capó o de una cajuela no está en el plan. Un traslape ahí es una advertencia.

## Fuentes

- Práctica común, sin fuente.

## Inseguro

\`\`\`crib
use "library/vehicles.crib"

plan "A un pie de distancia" {
  vehicle trailer : VanTrailer53 {
    cargo "mercancía" 20,000 lb from 4 ft to 48 ft
  }
  crib A {
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   11
    wedges    1 pair, 0.5 to 2 in
    at        19 ft 6 in, driver side 3 ft 6.75 in // crib-clash
    captures  rail, joists
  }
  crib B {
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   11
    wedges    1 pair, 0.5 to 2 in
    at        20 ft 6 in, driver side 3 ft 6.75 in
    captures  rail, joists
  }
}
\`\`\`

\`\`\`crib
use "library/vehicles.crib"

plan "Un auto en el piso de un remolque" {
  vehicle trailer : VanTrailer53 {
    cargo "mercancía" 20,000 lb from 4 ft to 48 ft
  }
  vehicle car : Sedan {
    at       25 ft, passenger side 1 ft // crib-clash
    heading  across to passenger side
  }
}
\`\`\`

## Seguro

\`\`\`crib
use "library/vehicles.crib"

plan "Bien separados" {
  vehicle trailer : VanTrailer53 {
    cargo "mercancía" 20,000 lb from 4 ft to 48 ft
  }
  crib A {
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   11
    wedges    1 pair, 0.5 to 2 in
    at        19 ft 6 in, driver side 3 ft 6.75 in
    captures  rail, joists
  }
  crib B {
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   11
    wedges    1 pair, 0.5 to 2 in
    at        25 ft 6 in, driver side 3 ft 6.75 in
    captures  rail, joists
  }
}
\`\`\`

\`\`\`crib
use "library/vehicles.crib"

plan "Un auto sobre el que descansa el remolque" {
  vehicle trailer : VanTrailer53 {
    cargo "mercancía" 20,000 lb from 4 ft to 48 ft
  }
  vehicle car : Sedan {
    at       25 ft, passenger side 1 ft
    heading  across to passenger side
    bears    trailer at rail from 23 ft 6 in to 26 ft 6 in
    area roof {
      height 40 in  source stated
    }
  }
}
\`\`\`
`,
  },
  'crib-eccentric': {
    en: `# crib-eccentric: crib loaded off center

## What it protects against

A crib loaded off center leans to that side, and only the loaded contacts carry.

## Calculation

    distance from the center of the crib to the center of the loaded contacts ≤ width ÷ 6

## Sources

- Middle-third rule (no side of the base lifts while the load is within width ÷ 6 of the center): from memory.

## Unsafe

\`\`\`crib
use "library/vehicles.crib"

plan "Rail alone" {
  vehicle trailer : VanTrailer53 {
    cargo "freight" 20,000 lb from 4 ft to 48 ft
  }
  crib A {
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   6
    wedges    1 pair, 0.5 to 2 in
    at        19 ft 6 in, driver side 3 ft 6.75 in
    captures  rail // crib-eccentric
  }
}
\`\`\`

## Safe

\`\`\`crib
use "library/vehicles.crib"

plan "Rail and joists" {
  vehicle trailer : VanTrailer53 {
    cargo "freight" 20,000 lb from 4 ft to 48 ft
  }
  crib A {
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   11
    wedges    1 pair, 0.5 to 2 in
    at        19 ft 6 in, driver side 3 ft 6.75 in
    captures  rail, joists
  }
}
\`\`\`
`,
    es: `# crib-eccentric: crib cargado fuera de su centro

## Contra qué protege

Un crib cargado fuera de su centro se inclina hacia ese lado, y solo llevan los contactos cargados.

## Cálculo

    distancia del centro del crib al centro de los contactos cargados ≤ ancho ÷ 6

## Fuentes

- Regla del tercio medio (ningún lado de la base se levanta mientras la carga esté a no más de ancho ÷ 6 del centro): de memoria.

## Inseguro

\`\`\`crib
use "library/vehicles.crib"

plan "Solo el larguero" {
  vehicle trailer : VanTrailer53 {
    cargo "mercancía" 20,000 lb from 4 ft to 48 ft
  }
  crib A {
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   6
    wedges    1 pair, 0.5 to 2 in
    at        19 ft 6 in, driver side 3 ft 6.75 in
    captures  rail // crib-eccentric
  }
}
\`\`\`

## Seguro

\`\`\`crib
use "library/vehicles.crib"

plan "Larguero y viguetas" {
  vehicle trailer : VanTrailer53 {
    cargo "mercancía" 20,000 lb from 4 ft to 48 ft
  }
  crib A {
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   11
    wedges    1 pair, 0.5 to 2 in
    at        19 ft 6 in, driver side 3 ft 6.75 in
    captures  rail, joists
  }
}
\`\`\`
`,
  },
  'crib-height': {
    en: `# crib-height: crib too tall for its width

## What it protects against

A crib that is tall and narrow sways under load and tips over without warning. It sways sooner when only one side is loaded.

## Calculation

The width is measured from outside to outside of the contacts, not over the full timber:

    width = timber length − 2 × overhang            24 in − 2 × 4 in = 16 in
    limit = ratio × width

The policy sets the ratio: 3 with all contacts loaded, 1.5 with some, 1 with one. The height is courses × dressed depth. Wedges and shims do not count.

## Sources

- 3 and 1.5: common practice, no source.
- 1 on one contact: from memory, US Army Corps of Engineers Shoring Operations Guide, section 2.

A department's policy may set other ratios, with its own source.

## Unsafe

\`\`\`crib
use "library/vehicles.crib"

plan "Too tall on two contacts" {
  vehicle trailer : VanTrailer53 {
    cargo "freight" 20,000 lb from 4 ft to 48 ft
  }
  crib A {
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   14 // crib-height
    wedges    1 pair, 0.5 to 2 in
    at        19 ft 6 in, driver side 3 ft 6.75 in
    captures  rail
  }
}
\`\`\`

\`\`\`crib fixed
    courses   6
\`\`\`

## Safe

\`\`\`crib
use "library/vehicles.crib"

plan "All four contacts captured" {
  vehicle trailer : VanTrailer53 {
    cargo "freight" 20,000 lb from 4 ft to 48 ft
  }
  crib A {
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   11
    wedges    1 pair, 0.5 to 2 in
    at        19 ft 6 in, driver side 3 ft 6.75 in
    captures  rail, joists
  }
}
\`\`\`
`,
    es: `# crib-height: crib demasiado alto para su ancho

## Contra qué protege

Un crib alto y estrecho se mece bajo carga y vuelca sin aviso. Se mece antes cuando solo un lado está cargado.

## Cálculo

El ancho se mide de fuera a fuera de los contactos, no sobre el madero completo:

    ancho  = largo del madero − 2 × saliente        24 in − 2 × 4 in = 16 in
    límite = proporción × ancho

La norma fija la proporción: 3 con todos los contactos cargados, 1.5 con parte de ellos, 1 con uno. La altura es hiladas × canto cepillado. Las cuñas y las calzas finas no cuentan.

## Fuentes

- 3 y 1.5: práctica común, sin fuente.
- 1 con un contacto: de memoria, _US Army Corps of Engineers Shoring Operations Guide_, sección 2.

La norma de un departamento puede fijar otras proporciones, con su propia fuente.

## Inseguro

\`\`\`crib
use "library/vehicles.crib"

plan "Demasiado alto con dos contactos" {
  vehicle trailer : VanTrailer53 {
    cargo "mercancía" 20,000 lb from 4 ft to 48 ft
  }
  crib A {
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   14 // crib-height
    wedges    1 pair, 0.5 to 2 in
    at        19 ft 6 in, driver side 3 ft 6.75 in
    captures  rail
  }
}
\`\`\`

\`\`\`crib fixed
    courses   6
\`\`\`

## Seguro

\`\`\`crib
use "library/vehicles.crib"

plan "Los cuatro contactos capturados" {
  vehicle trailer : VanTrailer53 {
    cargo "mercancía" 20,000 lb from 4 ft to 48 ft
  }
  crib A {
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   11
    wedges    1 pair, 0.5 to 2 in
    at        19 ft 6 in, driver side 3 ft 6.75 in
    captures  rail, joists
  }
}
\`\`\`
`,
  },
  'crib-layout': {
    en: `# crib-layout: courses that cannot be built

## What it protects against

A crib with one timber in a course rolls over. A crib with more timbers than fit cannot be built as drawn.

## Calculation

    timbers × dressed width ≤ width outside to outside of the contacts      4 × 3.5 in ≤ 16 in

The minimum is 2 timbers in every course.

## Sources

- Common practice, no source.

## Unsafe

\`\`\`crib
use "library/vehicles.crib"

plan "Five where four fit" {
  vehicle trailer : VanTrailer53 {
    cargo "freight" 20,000 lb from 4 ft to 48 ft
  }
  crib A {
    timber    Fir4x4 24 in long
    layout    5 by 2 // crib-layout
    overhang  4 in
    courses   11
    wedges    1 pair, 0.5 to 2 in
    at        19 ft 6 in, driver side 3 ft 6.75 in
    captures  rail, joists
  }
}
\`\`\`

\`\`\`crib fixed
    layout    4 by 2
\`\`\`

## Safe

\`\`\`crib
use "library/vehicles.crib"

plan "Two by two" {
  vehicle trailer : VanTrailer53 {
    cargo "freight" 20,000 lb from 4 ft to 48 ft
  }
  crib A {
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   11
    wedges    1 pair, 0.5 to 2 in
    at        19 ft 6 in, driver side 3 ft 6.75 in
    captures  rail, joists
  }
}
\`\`\`
`,
    es: `# crib-layout: hiladas que no se pueden armar

## Contra qué protege

Un crib con un solo madero en una hilada rueda. Un crib con más maderos de los que caben no se puede armar como está dibujado.

## Cálculo

    maderos × ancho cepillado ≤ ancho de fuera a fuera de los contactos      4 × 3.5 in ≤ 16 in

El mínimo es 2 maderos en cada hilada.

## Fuentes

- Práctica común, sin fuente.

## Inseguro

\`\`\`crib
use "library/vehicles.crib"

plan "Cinco donde caben cuatro" {
  vehicle trailer : VanTrailer53 {
    cargo "mercancía" 20,000 lb from 4 ft to 48 ft
  }
  crib A {
    timber    Fir4x4 24 in long
    layout    5 by 2 // crib-layout
    overhang  4 in
    courses   11
    wedges    1 pair, 0.5 to 2 in
    at        19 ft 6 in, driver side 3 ft 6.75 in
    captures  rail, joists
  }
}
\`\`\`

\`\`\`crib fixed
    layout    4 by 2
\`\`\`

## Seguro

\`\`\`crib
use "library/vehicles.crib"

plan "Dos por dos" {
  vehicle trailer : VanTrailer53 {
    cargo "mercancía" 20,000 lb from 4 ft to 48 ft
  }
  crib A {
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   11
    wedges    1 pair, 0.5 to 2 in
    at        19 ft 6 in, driver side 3 ft 6.75 in
    captures  rail, joists
  }
}
\`\`\`
`,
  },
  'crib-load': {
    en: `# crib-load: crib or contact overloaded

## What it protects against

Timber that is loaded beyond its capacity perpendicular to grain crushes. The load then leans and falls.

## Calculation

    contact     = stress perpendicular to grain × crossing, rounded down      500 psi × 3.5 in × 3.5 in → 6,000 lb
    crib        = loaded contacts × contact                                   4 × 6,000 lb = 24,000 lb
    utilization = load ÷ capacity

The load is the worst case over:

- every step of the plan
- the loss of each support that was there before the crew
- the full range of weights and positions

The finding names the worst case. The worst case can lie inside a range, where other contacts begin to carry. The rule also checks positions inside the range. The load between two checked positions can be slightly higher.

On a grade, and in a vehicle that is pitched, the line of the weight moves height × grade toward the low side of the center of gravity. A height that is not stated may be anything from the ground to the roof.

The loads of \`load\` lines count once everything is in place. The policy selects the stress: the flat rule, the value of the species, or the lesser of the two.

## Sources

- 24,000 lb on four contacts of 4×4: Rescue Systems 1 (California State Fire Training), chapter 30.
- Species, wet timber and bearing length: NDS 2018, 3.10.2 and 3.10.4; NDS Supplement 2018, Table 4A.

## Unsafe

\`\`\`crib
use "library/vehicles.crib"

plan "One crib for a heavy end" {
  vehicle trailer : VanTrailer53 {
    cargo "freight" 60,000 to 64,000 lb from 4 ft to 48 ft
  }
  crib A { // crib-load
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   11
    wedges    1 pair, 0.5 to 2 in
    at        12 ft 6 in, driver side 3 ft 6.75 in
    captures  rail, joists
  }
}
\`\`\`

## Safe

\`\`\`crib
use "library/vehicles.crib"

plan "A light trailer on the same crib" {
  vehicle trailer : VanTrailer53 {
    cargo "freight" 4,000 lb from 4 ft to 48 ft
    coupled to tractor
  }
  vehicle tractor : DayCabTractor { at -16 ft, center }
  crib A {
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   11
    wedges    1 pair, 0.5 to 2 in
    at        19 ft 6 in, driver side 3 ft 6.75 in
    captures  rail, joists
  }
}
\`\`\`
`,
    es: `# crib-load: crib o contacto sobrecargado

## Contra qué protege

La madera cargada más allá de su capacidad perpendicular a la fibra se aplasta. La carga entonces se inclina y cae.

## Cálculo

    contacto = esfuerzo perpendicular a la fibra × cruce, hacia abajo       500 psi × 3.5 in × 3.5 in → 6,000 lb
    crib     = contactos cargados × contacto                                4 × 6,000 lb = 24,000 lb
    uso      = carga ÷ capacidad

La carga es el peor caso de:

- cada paso del plan
- la pérdida de cada apoyo que estaba antes de llegar el equipo
- todo el intervalo de los pesos y posiciones

El hallazgo nombra el peor caso. El peor caso puede estar dentro de un intervalo, donde otros contactos empiezan a llevar. La regla comprueba también posiciones dentro del intervalo. Entre dos posiciones comprobadas la carga puede ser un poco mayor.

En una pendiente, y en un vehículo inclinado hacia adelante o hacia atrás, la línea del peso se corre altura × pendiente hacia el lado bajo del centro de gravedad. Una altura que no se indica puede ser cualquiera entre el suelo y el techo.

Las cargas de las líneas \`load\` cuentan cuando todo está en su lugar. La norma elige el esfuerzo: la regla fija, el valor de la especie, o el menor de los dos.

## Fuentes

- 24,000 lb sobre cuatro contactos de 4×4: _Rescue Systems 1 (California State Fire Training)_, capítulo 30.
- Especie, madera húmeda y longitud de apoyo: NDS 2018, 3.10.2 y 3.10.4; _NDS Supplement_ 2018, tabla 4A.

## Inseguro

\`\`\`crib
use "library/vehicles.crib"

plan "Un crib para un extremo pesado" {
  vehicle trailer : VanTrailer53 {
    cargo "mercancía" 60,000 to 64,000 lb from 4 ft to 48 ft
  }
  crib A { // crib-load
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   11
    wedges    1 pair, 0.5 to 2 in
    at        12 ft 6 in, driver side 3 ft 6.75 in
    captures  rail, joists
  }
}
\`\`\`

## Seguro

\`\`\`crib
use "library/vehicles.crib"

plan "Un remolque ligero en el mismo crib" {
  vehicle trailer : VanTrailer53 {
    cargo "mercancía" 4,000 lb from 4 ft to 48 ft
    coupled to tractor
  }
  vehicle tractor : DayCabTractor { at -16 ft, center }
  crib A {
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   11
    wedges    1 pair, 0.5 to 2 in
    at        19 ft 6 in, driver side 3 ft 6.75 in
    captures  rail, joists
  }
}
\`\`\`
`,
  },
  'crib-mixed-timber': {
    en: `# crib-mixed-timber: cribs of different timber under one vehicle

## What it protects against

The stiffer crib takes load that the softer crib should share.

## Calculation

    stiffness = modulus perpendicular to grain × crossing ÷ height

## Sources

- Common practice, no source.

## Unsafe

\`\`\`crib
use "library/vehicles.crib"

plan "Fir and oak" {
  vehicle trailer : VanTrailer53 {
    cargo "freight" 20,000 lb from 4 ft to 48 ft
  }
  crib A {
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   11
    wedges    1 pair, 0.5 to 2 in
    at        19 ft 6 in, driver side 3 ft 6.75 in
    captures  rail, joists
  }
  crib B {
    timber    Oak4x4 24 in long // crib-mixed-timber
    layout    2 by 2
    overhang  4 in
    courses   11
    wedges    1 pair, 0.5 to 2 in
    at        25 ft 6 in, driver side 3 ft 6.75 in
    captures  rail, joists
  }
}
\`\`\`

## Safe

\`\`\`crib
use "library/vehicles.crib"

plan "Fir and fir" {
  vehicle trailer : VanTrailer53 {
    cargo "freight" 20,000 lb from 4 ft to 48 ft
  }
  crib A {
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   11
    wedges    1 pair, 0.5 to 2 in
    at        19 ft 6 in, driver side 3 ft 6.75 in
    captures  rail, joists
  }
  crib B {
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   11
    wedges    1 pair, 0.5 to 2 in
    at        25 ft 6 in, driver side 3 ft 6.75 in
    captures  rail, joists
  }
}
\`\`\`
`,
    es: `# crib-mixed-timber: cribs de distinta madera bajo un vehículo

## Contra qué protege

El crib más rígido toma carga que debía compartir el más blando.

## Cálculo

    rigidez = módulo perpendicular a la fibra × cruce ÷ altura

## Fuentes

- Práctica común, sin fuente.

## Inseguro

\`\`\`crib
use "library/vehicles.crib"

plan "Abeto y roble" {
  vehicle trailer : VanTrailer53 {
    cargo "mercancía" 20,000 lb from 4 ft to 48 ft
  }
  crib A {
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   11
    wedges    1 pair, 0.5 to 2 in
    at        19 ft 6 in, driver side 3 ft 6.75 in
    captures  rail, joists
  }
  crib B {
    timber    Oak4x4 24 in long // crib-mixed-timber
    layout    2 by 2
    overhang  4 in
    courses   11
    wedges    1 pair, 0.5 to 2 in
    at        25 ft 6 in, driver side 3 ft 6.75 in
    captures  rail, joists
  }
}
\`\`\`

## Seguro

\`\`\`crib
use "library/vehicles.crib"

plan "Abeto y abeto" {
  vehicle trailer : VanTrailer53 {
    cargo "mercancía" 20,000 lb from 4 ft to 48 ft
  }
  crib A {
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   11
    wedges    1 pair, 0.5 to 2 in
    at        19 ft 6 in, driver side 3 ft 6.75 in
    captures  rail, joists
  }
  crib B {
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   11
    wedges    1 pair, 0.5 to 2 in
    at        25 ft 6 in, driver side 3 ft 6.75 in
    captures  rail, joists
  }
}
\`\`\`
`,
  },
  'crib-overhang': {
    en: `# crib-overhang: overhang too short or too long

## What it protects against

Timber ends that are too short split off, and the timbers walk out under load. Ends that are too long make the base narrower and lower the height limit.

## Calculation

    least overhang ≤ overhang ≤ most overhang

The policy sets both limits. Shipped policy: at least 4 in, at most 6 in.

## Sources

- 4 in on a 4×4: common practice, no source. Rescue Systems 1 (California State Fire Training), chapter 30, asks for about the size of the timber.
- 6 in: common practice, no source.

## Unsafe

\`\`\`crib
use "library/vehicles.crib"

plan "Ends too short" {
  vehicle trailer : VanTrailer53 {
    cargo "freight" 20,000 lb from 4 ft to 48 ft
  }
  crib A {
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  2 in // crib-overhang
    courses   11
    wedges    1 pair, 0.5 to 2 in
    at        19 ft 6 in, driver side 3 ft 6.75 in
    captures  rail, joists
  }
}
\`\`\`

\`\`\`crib fixed
    overhang  4 in
\`\`\`

## Safe

\`\`\`crib
use "library/vehicles.crib"

plan "Ends long enough" {
  vehicle trailer : VanTrailer53 {
    cargo "freight" 20,000 lb from 4 ft to 48 ft
  }
  crib A {
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   11
    wedges    1 pair, 0.5 to 2 in
    at        19 ft 6 in, driver side 3 ft 6.75 in
    captures  rail, joists
  }
}
\`\`\`
`,
    es: `# crib-overhang: saliente demasiado corto o demasiado largo

## Contra qué protege

Las puntas de madero demasiado cortas se rajan, y los maderos se salen bajo carga. Las demasiado largas estrechan la base y bajan el límite de altura.

## Cálculo

    saliente mínimo ≤ saliente ≤ saliente máximo

La norma fija los dos límites. Norma que viene con la herramienta: al menos 4 in, como mucho 6 in.

## Fuentes

- 4 in en un 4×4: práctica común, sin fuente. _Rescue Systems 1 (California State Fire Training)_, capítulo 30, pide más o menos la medida del madero.
- 6 in: práctica común, sin fuente.

## Inseguro

\`\`\`crib
use "library/vehicles.crib"

plan "Puntas demasiado cortas" {
  vehicle trailer : VanTrailer53 {
    cargo "mercancía" 20,000 lb from 4 ft to 48 ft
  }
  crib A {
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  2 in // crib-overhang
    courses   11
    wedges    1 pair, 0.5 to 2 in
    at        19 ft 6 in, driver side 3 ft 6.75 in
    captures  rail, joists
  }
}
\`\`\`

\`\`\`crib fixed
    overhang  4 in
\`\`\`

## Seguro

\`\`\`crib
use "library/vehicles.crib"

plan "Puntas bastante largas" {
  vehicle trailer : VanTrailer53 {
    cargo "mercancía" 20,000 lb from 4 ft to 48 ft
  }
  crib A {
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   11
    wedges    1 pair, 0.5 to 2 in
    at        19 ft 6 in, driver side 3 ft 6.75 in
    captures  rail, joists
  }
}
\`\`\`
`,
  },
  'crib-packing': {
    en: `# crib-packing: too much packing on a crib

## What it protects against

A pile of loose shims slides out or tips over when the load moves. Courses lock into each other; shims do not.

## Calculation

    shims ≤ most shims (2 in)
    shims + gap that the wedges close ≤ most packing (4 in)

The wedges close the gap left above the shims. If they do not reach that far, their full travel counts. If the gap needs more shims than the limit allows, the fix offers courses.

## Sources

- Both limits: common practice, no source. A department's policy may set its own.

## Unsafe

\`\`\`crib
use "library/vehicles.crib"

plan "A tower of shims" {
  vehicle trailer : VanTrailer53 {
    cargo "freight" 20,000 lb from 4 ft to 48 ft
  }
  crib A {
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   2
    shims     31.5 in // crib-packing
    wedges    4 pairs
    at        19 ft 6 in, driver side 3 ft 6.75 in
    captures  rail, joists
  }
}
\`\`\`

\`\`\`crib fixed
    courses   11
    shims     0 in
\`\`\`

## Safe

\`\`\`crib
use "library/vehicles.crib"

plan "Courses, and wedges on them" {
  vehicle trailer : VanTrailer53 {
    cargo "freight" 20,000 lb from 4 ft to 48 ft
  }
  crib A {
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   11
    wedges    4 pairs
    at        19 ft 6 in, driver side 3 ft 6.75 in
    captures  rail, joists
  }
}
\`\`\`
`,
    es: `# crib-packing: demasiado relleno en un crib

## Contra qué protege

Una pila de calzas finas sueltas se sale o vuelca cuando la carga se mueve. Las hiladas se traban entre sí; las calzas finas no.

## Cálculo

    calzas finas ≤ máximo de calzas finas (2 in)
    calzas finas + espacio que cierran las cuñas ≤ relleno máximo (4 in)

Las cuñas cierran el espacio que queda sobre las calzas finas. Si no llegan a cerrarlo, cuenta todo su recorrido. Si el espacio necesita más calzas finas de las que permite el límite, el arreglo ofrece hiladas.

## Fuentes

- Los dos límites: práctica común, sin fuente. La norma de un departamento puede fijar los suyos.

## Inseguro

\`\`\`crib
use "library/vehicles.crib"

plan "Una torre de calzas finas" {
  vehicle trailer : VanTrailer53 {
    cargo "mercancía" 20,000 lb from 4 ft to 48 ft
  }
  crib A {
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   2
    shims     31.5 in // crib-packing
    wedges    4 pairs
    at        19 ft 6 in, driver side 3 ft 6.75 in
    captures  rail, joists
  }
}
\`\`\`

\`\`\`crib fixed
    courses   11
    shims     0 in
\`\`\`

## Seguro

\`\`\`crib
use "library/vehicles.crib"

plan "Hiladas, y cuñas encima" {
  vehicle trailer : VanTrailer53 {
    cargo "mercancía" 20,000 lb from 4 ft to 48 ft
  }
  crib A {
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   11
    wedges    4 pairs
    at        19 ft 6 in, driver side 3 ft 6.75 in
    captures  rail, joists
  }
}
\`\`\`
`,
  },
  'crib-reach': {
    en: `# crib-reach: crib does not reach, or does not fit under, what it captures

## What it protects against

A crib that stops short of the load carries nothing until the load drops onto it. A crib that is too tall cannot be built.

## Calculation

    gap = underside of the part − top of what the crib stands on − courses × dressed depth − shims

The gap must be no more than the wedges can close, and no less than the wedges need to fit. If the height of the part is a range, both ends of the range must pass.

## Sources

- Common practice, no source.

## Unsafe

\`\`\`crib
use "library/vehicles.crib"

plan "Three courses short" {
  vehicle trailer : VanTrailer53 {
    cargo "freight" 20,000 lb from 4 ft to 48 ft
  }
  crib A {
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   8 // crib-reach
    wedges    1 pair, 0.5 to 2 in
    at        19 ft 6 in, driver side 3 ft 6.75 in
    captures  rail, joists
  }
}
\`\`\`

\`\`\`crib fixed
    courses   11
\`\`\`

## Safe

\`\`\`crib
use "library/vehicles.crib"

plan "Wedged up to the rail" {
  vehicle trailer : VanTrailer53 {
    cargo "freight" 20,000 lb from 4 ft to 48 ft
  }
  crib A {
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   11
    wedges    1 pair, 0.5 to 2 in
    at        19 ft 6 in, driver side 3 ft 6.75 in
    captures  rail, joists
  }
}
\`\`\`
`,
    es: `# crib-reach: crib que no llega, o no cabe, bajo lo que captura

## Contra qué protege

Un crib que no alcanza la carga no lleva nada hasta que la carga le cae encima. Un crib demasiado alto no se puede armar.

## Cálculo

    espacio = cara inferior de la parte − cara superior de aquello sobre lo que está el crib − hiladas × canto cepillado − calzas finas

El espacio no debe ser mayor que lo que cierran las cuñas, ni menor que lo que necesitan las cuñas para entrar. Si la altura de la parte es un intervalo, los dos extremos del intervalo deben cumplir.

## Fuentes

- Práctica común, sin fuente.

## Inseguro

\`\`\`crib
use "library/vehicles.crib"

plan "Faltan tres hiladas" {
  vehicle trailer : VanTrailer53 {
    cargo "mercancía" 20,000 lb from 4 ft to 48 ft
  }
  crib A {
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   8 // crib-reach
    wedges    1 pair, 0.5 to 2 in
    at        19 ft 6 in, driver side 3 ft 6.75 in
    captures  rail, joists
  }
}
\`\`\`

\`\`\`crib fixed
    courses   11
\`\`\`

## Seguro

\`\`\`crib
use "library/vehicles.crib"

plan "Acuñado hasta el larguero" {
  vehicle trailer : VanTrailer53 {
    cargo "mercancía" 20,000 lb from 4 ft to 48 ft
  }
  crib A {
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   11
    wedges    1 pair, 0.5 to 2 in
    at        19 ft 6 in, driver side 3 ft 6.75 in
    captures  rail, joists
  }
}
\`\`\`
`,
  },
  'crib-wedge': {
    en: `# crib-wedge: contact without wedges, or wedges opened too far

## What it protects against

A contact that is not snug carries nothing until the load has moved.

## Calculation

    pairs of wedges          ≥ loaded contacts
    gap that each pair closes ≤ wedge travel (2 in)

## Driven wedges

If the wedges of a crib have a stated preload, the crib shows two more figures:

    steepest wedge that stays by itself       = arctan(friction between the wedges) + arctan(least friction on their outer faces)
    least push on each end of a pair of wedges = preload ÷ pairs × (friction between the wedges + least friction on their outer faces)

With a friction of 0.45 between timbers and 0.3 against metal, the first figure is 40 degrees. A wedge cut 4 in high over 18 in has an angle of 12.5 degrees and stays in place. Ice, grease or vibration from traffic can make a driven wedge slip. Nail or block driven wedges. A plan does not state the angle of the wedges. No check compares it.

## Sources

- Common practice, no source.
- Driven wedges: Baker and Haynes, Engineering Statics: Open and Interactive, chapter 9, wedges.

## Unsafe

\`\`\`crib
use "library/vehicles.crib"

plan "One pair for four contacts" {
  vehicle trailer : VanTrailer53 {
    cargo "freight" 20,000 lb from 4 ft to 48 ft
  }
  crib A {
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   11
    wedges    1 pair, 0.5 to 2 in // crib-wedge
    at        19 ft 6 in, driver side 3 ft 6.75 in
    captures  rail, joists
  }
}
\`\`\`

\`\`\`crib fixed
    wedges    4 pairs
\`\`\`

## Safe

\`\`\`crib
use "library/vehicles.crib"

plan "A pair for each" {
  vehicle trailer : VanTrailer53 {
    cargo "freight" 20,000 lb from 4 ft to 48 ft
  }
  crib A {
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   11
    wedges    4 pairs
    at        19 ft 6 in, driver side 3 ft 6.75 in
    captures  rail, joists
  }
}
\`\`\`
`,
    es: `# crib-wedge: contacto sin cuñas, o cuñas abiertas demasiado

## Contra qué protege

Un contacto que no está apretado no lleva nada hasta que la carga se ha movido.

## Cálculo

    pares de cuñas              ≥ contactos cargados
    espacio que cierra cada par ≤ recorrido de las cuñas (2 in)

## Cuñas golpeadas

Si las cuñas de un crib tienen una precarga indicada, el crib muestra dos cifras más:

    cuña más inclinada que se sostiene sola           = arctan(rozamiento entre las cuñas) + arctan(rozamiento mínimo en sus caras exteriores)
    empuje mínimo en cada punta de un par de cuñas    = precarga ÷ pares × (rozamiento entre las cuñas + rozamiento mínimo en sus caras exteriores)

Con un rozamiento de 0.45 entre maderos y 0.3 contra metal, la primera cifra es de 40 grados. Una cuña cortada de 4 in de alto en 18 in tiene un ángulo de 12.5 grados y se queda en su lugar. El hielo, la grasa o la vibración del tráfico pueden soltar una cuña golpeada. Clave o bloquee las cuñas golpeadas. Un plan no indica el ángulo de las cuñas. Ninguna comprobación lo compara.

## Fuentes

- Práctica común, sin fuente.
- Cuñas golpeadas: Baker y Haynes, _Engineering Statics: Open and Interactive_, capítulo 9, cuñas.

## Inseguro

\`\`\`crib
use "library/vehicles.crib"

plan "Un par para cuatro contactos" {
  vehicle trailer : VanTrailer53 {
    cargo "mercancía" 20,000 lb from 4 ft to 48 ft
  }
  crib A {
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   11
    wedges    1 pair, 0.5 to 2 in // crib-wedge
    at        19 ft 6 in, driver side 3 ft 6.75 in
    captures  rail, joists
  }
}
\`\`\`

\`\`\`crib fixed
    wedges    4 pairs
\`\`\`

## Seguro

\`\`\`crib
use "library/vehicles.crib"

plan "Un par para cada uno" {
  vehicle trailer : VanTrailer53 {
    cargo "mercancía" 20,000 lb from 4 ft to 48 ft
  }
  crib A {
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   11
    wedges    4 pairs
    at        19 ft 6 in, driver side 3 ft 6.75 in
    captures  rail, joists
  }
}
\`\`\`
`,
  },
  'egress-blocked': {
    en: `# egress-blocked: egress blocked, narrow or missing

## What it protects against

A rescuer who kneels at the vehicle must be able to get out at once, without looking for a way.

## Calculation

The egress is a path of the stated width. It must be clear of everything that is higher than 6 in and lower than 6 ft, and no strap may cross it.

    width ≥ egress width (3 ft)

## Sources

- Common practice, no source.

## Unsafe

\`\`\`crib
use "library/vehicles.crib"

plan "Through the crib" {
  vehicle trailer : VanTrailer53 {
    cargo "freight" 20,000 lb from 4 ft to 48 ft
  }
  crib A {
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   11
    wedges    1 pair, 0.5 to 2 in
    at        19 ft 6 in, driver side 3 ft 6.75 in
    captures  rail, joists
  }
  egress Back { // egress-blocked
    from 19 ft 6 in, driver side 3 ft
    to   19 ft 6 in, driver side 20 ft
  }
}
\`\`\`

## Safe

\`\`\`crib
use "library/vehicles.crib"

plan "Beside the crib" {
  vehicle trailer : VanTrailer53 {
    cargo "freight" 20,000 lb from 4 ft to 48 ft
  }
  crib A {
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   11
    wedges    1 pair, 0.5 to 2 in
    at        19 ft 6 in, driver side 3 ft 6.75 in
    captures  rail, joists
  }
  egress Back {
    from 25 ft, driver side 6 ft
    to   25 ft, driver side 20 ft
  }
}
\`\`\`
`,
    es: `# egress-blocked: salida bloqueada, estrecha o ausente

## Contra qué protege

Un rescatista de rodillas junto al vehículo debe poder salir enseguida, sin buscar por dónde.

## Cálculo

La salida es un paso del ancho indicado. Debe estar libre de todo lo que sea más alto que 6 in y esté más bajo que 6 ft, y ninguna correa la puede cruzar.

    ancho ≥ ancho de salida (3 ft)

## Fuentes

- Práctica común, sin fuente.

## Inseguro

\`\`\`crib
use "library/vehicles.crib"

plan "A través del crib" {
  vehicle trailer : VanTrailer53 {
    cargo "mercancía" 20,000 lb from 4 ft to 48 ft
  }
  crib A {
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   11
    wedges    1 pair, 0.5 to 2 in
    at        19 ft 6 in, driver side 3 ft 6.75 in
    captures  rail, joists
  }
  egress Back { // egress-blocked
    from 19 ft 6 in, driver side 3 ft
    to   19 ft 6 in, driver side 20 ft
  }
}
\`\`\`

## Seguro

\`\`\`crib
use "library/vehicles.crib"

plan "Al lado del crib" {
  vehicle trailer : VanTrailer53 {
    cargo "mercancía" 20,000 lb from 4 ft to 48 ft
  }
  crib A {
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   11
    wedges    1 pair, 0.5 to 2 in
    at        19 ft 6 in, driver side 3 ft 6.75 in
    captures  rail, joists
  }
  egress Back {
    from 25 ft, driver side 6 ft
    to   25 ft, driver side 20 ft
  }
}
\`\`\`
`,
  },
  'expectation-unmet': {
    en: `# expectation-unmet: plan does not meet its expectations

## What it protects against

A plan that was right when it was written can be wrong after a change.

## Calculation

The rule compares each expectation with the results:

    expect safe                                no danger, and no check that could not run
    expect crib-height on A                    that rule reports a finding on A
    expect height on A 38.5 in                 that figure is 38.5 in, within the percentage after \`within\`

## Sources

- Common practice, no source.

## Unsafe

\`\`\`crib
use "library/vehicles.crib"

plan "Not as tall as expected" {
  vehicle trailer : VanTrailer53 {
    cargo "freight" 20,000 lb from 4 ft to 48 ft
  }
  crib A {
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   11
    wedges    1 pair, 0.5 to 2 in
    at        19 ft 6 in, driver side 3 ft 6.75 in
    captures  rail, joists
  }
  expect height on A 42 in // expectation-unmet
}
\`\`\`

## Safe

\`\`\`crib
use "library/vehicles.crib"

plan "As tall as expected" {
  vehicle trailer : VanTrailer53 {
    cargo "freight" 20,000 lb from 4 ft to 48 ft
  }
  crib A {
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   11
    wedges    1 pair, 0.5 to 2 in
    at        19 ft 6 in, driver side 3 ft 6.75 in
    captures  rail, joists
  }
  expect height on A 38.5 in
}
\`\`\`
`,
    es: `# expectation-unmet: plan que no cumple lo que espera

## Contra qué protege

Un plan que era correcto cuando se escribió puede estar mal después de un cambio.

## Cálculo

La regla compara cada línea \`expect\` con los resultados:

    expect safe                                ningún peligro, y ninguna comprobación sin hacer
    expect crib-height on A                    esa regla señala un hallazgo en A
    expect height on A 38.5 in                 esa cifra es 38.5 in, dentro del porcentaje que sigue a \`within\`

## Fuentes

- Práctica común, sin fuente.

## Inseguro

\`\`\`crib
use "library/vehicles.crib"

plan "Menos alto de lo que espera" {
  vehicle trailer : VanTrailer53 {
    cargo "mercancía" 20,000 lb from 4 ft to 48 ft
  }
  crib A {
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   11
    wedges    1 pair, 0.5 to 2 in
    at        19 ft 6 in, driver side 3 ft 6.75 in
    captures  rail, joists
  }
  expect height on A 42 in // expectation-unmet
}
\`\`\`

## Seguro

\`\`\`crib
use "library/vehicles.crib"

plan "Tan alto como espera" {
  vehicle trailer : VanTrailer53 {
    cargo "mercancía" 20,000 lb from 4 ft to 48 ft
  }
  crib A {
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   11
    wedges    1 pair, 0.5 to 2 in
    at        19 ft 6 in, driver side 3 ft 6.75 in
    captures  rail, joists
  }
  expect height on A 38.5 in
}
\`\`\`
`,
  },
  'geometry-impossible': {
    en: `# geometry-impossible: impossible sizes or positions

## What it protects against

A wrong number in the plan makes every later figure wrong.

## Calculation

None. Parts, axles and cargo must be inside their vehicle. A vehicle that rests on another must touch it at the stated place.

## Sources

- Common practice, no source.

## Unsafe

\`\`\`crib
use "library/vehicles.crib"

plan "Longer than the trailer" {
  vehicle trailer : VanTrailer53 {
    cargo "freight" 20,000 lb from 4 ft to 68 ft // geometry-impossible
  }
}
\`\`\`

## Safe

\`\`\`crib
use "library/vehicles.crib"

plan "Within the trailer" {
  vehicle trailer : VanTrailer53 {
    cargo "freight" 20,000 lb from 4 ft to 48 ft
  }
}
\`\`\`
`,
    es: `# geometry-impossible: medidas o posiciones imposibles

## Contra qué protege

Un número equivocado en el plan hace falsas todas las cifras que vienen después.

## Cálculo

Ninguno. Las partes, los ejes y la carga deben estar dentro de su vehículo. Un vehículo que descansa sobre otro debe tocarlo en el lugar indicado.

## Fuentes

- Práctica común, sin fuente.

## Inseguro

\`\`\`crib
use "library/vehicles.crib"

plan "Más largo que el remolque" {
  vehicle trailer : VanTrailer53 {
    cargo "mercancía" 20,000 lb from 4 ft to 68 ft // geometry-impossible
  }
}
\`\`\`

## Seguro

\`\`\`crib
use "library/vehicles.crib"

plan "Dentro del remolque" {
  vehicle trailer : VanTrailer53 {
    cargo "mercancía" 20,000 lb from 4 ft to 48 ft
  }
}
\`\`\`
`,
  },
  'grade-slide': {
    en: `# grade-slide: vehicle slides down the grade

## What it protects against

On a grade the weight pulls the vehicle downhill. If too few wheels are chocked, the chocked wheels slide with the vehicle.

## Calculation

    pull downhill = weight × sin(grade)             40,000 lb × sin(atan 3 %) = 1,199 lb
    hold          = friction × load on the wheels that cannot roll downhill
                  + 0.28 × load on the wheels that only a brake holds

The weight is the heavy end of its range. The load on the chocked wheels is the lowest that the ranges allow, in the finished plan. Cribs that are only snug carry nothing yet and do not count. Brakes count only where the plan states \`brakes set\`, at 0.28 of the load on their wheels or the friction of the tires if that is less, and never at the foremost axle. Brakes that are released, unknown or not stated hold nothing. The vehicle must be chocked in any case. A chock with no axle stated holds the last axle.

If no wheel is chocked, the rule wheels-unchocked reports it.

A grade that is not stated is not treated as level. The rule then reports that it could not run, and states what the other checks assume: level ground, or a slope down toward the rear.

## Sources

- The incline: OpenStax University Physics, volume 1, section 6.2.
- Friction of tires: the source given with the surface.
- Parking brakes: 49 CFR 571.121, S5.6.1, from memory. At each axle but a steerable front one they hold at least 0.28 of the rating of the axle.

## Unsafe

\`\`\`crib
use "library/vehicles.crib"

plan "Chocked on the wrong side" {
  ground { // grade-slide
    surface asphalt
    grade   4 % toward rear
  }
  vehicle trailer : VanTrailer53 {
    cargo "freight" 20,000 lb from 4 ft to 48 ft
  }
  chock K1 { under trailer; holds forward }
}
\`\`\`

## Safe

\`\`\`crib
use "library/vehicles.crib"

plan "Chocked in both directions" {
  ground {
    surface asphalt
    grade   4 % toward rear
  }
  vehicle trailer : VanTrailer53 {
    cargo "freight" 20,000 lb from 4 ft to 48 ft
  }
  chock K1 { under trailer; holds both directions }
}
\`\`\`
`,
    es: `# grade-slide: el vehículo resbala cuesta abajo

## Contra qué protege

En una pendiente el peso tira del vehículo cuesta abajo. Si se calzan muy pocas ruedas, las ruedas calzadas resbalan con el vehículo.

## Cálculo

    tiro cuesta abajo = peso × sin(pendiente)       40,000 lb × sin(atan 3 %) = 1,199 lb
    lo que aguanta    = rozamiento × carga en las ruedas que no pueden rodar cuesta abajo
                      + 0.28 × carga en las ruedas que solo sujeta un freno

El peso es el extremo de más peso de su intervalo. La carga en las ruedas calzadas es la menor que permiten los intervalos, en el plan terminado. Los cribs que solo están apretados no llevan nada todavía y no cuentan. Los frenos cuentan solo donde el plan indica \`brakes set\`, con 0.28 de la carga en sus ruedas, o con el rozamiento de los neumáticos si es menor, y nunca en el primer eje. Los frenos sueltos, desconocidos o sin indicar no sujetan nada. El vehículo debe calzarse en todo caso. Una calza sin eje indicado sujeta el último eje.

Si ninguna rueda está calzada, lo señala la regla wheels-unchocked.

Una pendiente que no se indica no se trata como terreno llano. La regla dice entonces que no se pudo hacer, y dice qué suponen las demás comprobaciones: terreno llano, o una bajada hacia atrás.

## Fuentes

- El plano inclinado: _OpenStax University Physics_, volumen 1, sección 6.2.
- Rozamiento de los neumáticos: la fuente que se da con la superficie.
- Frenos de estacionamiento: 49 CFR 571.121, S5.6.1, de memoria. En cada eje que no sea un eje delantero de dirección sujetan al menos 0.28 de la capacidad del eje.

## Inseguro

\`\`\`crib
use "library/vehicles.crib"

plan "Calzado del lado equivocado" {
  ground { // grade-slide
    surface asphalt
    grade   4 % toward rear
  }
  vehicle trailer : VanTrailer53 {
    cargo "mercancía" 20,000 lb from 4 ft to 48 ft
  }
  chock K1 { under trailer; holds forward }
}
\`\`\`

## Seguro

\`\`\`crib
use "library/vehicles.crib"

plan "Calzado en ambos sentidos" {
  ground {
    surface asphalt
    grade   4 % toward rear
  }
  vehicle trailer : VanTrailer53 {
    cargo "mercancía" 20,000 lb from 4 ft to 48 ft
  }
  chock K1 { under trailer; holds both directions }
}
\`\`\`
`,
  },
  'ground-bearing': {
    en: `# ground-bearing: ground bearing exceeded

## What it protects against

A base that sinks on one side tips the load that it holds.

## Calculation

    load            = load of the supports + weight of the crib's timber
    pressure        = load ÷ area that bears
    area that bears = (length − 2 × load off center) × (width − 2 × load off center)
    pressure        ≤ allowable bearing of the surface
    edge pressure   = load ÷ area × (1 + 6 × off ÷ side)
                    = load ÷ area × 4 ÷ (3 × (1 − 2 × off ÷ side))     if off > side ÷ 6
    pad             = load ÷ share of the base that bears ÷ allowable bearing

The weight of the timber is its volume × its weight per volume. It bears in the middle of the base. Each case is tried with it and without it, and the higher pressure counts. An open base bears on its timbers, a solid base on its outline, a pad as far as it spreads the load. The rule checks every case: each lost support and each stage, each at the point in the ranges where the crib carries the most. An edge pressure above the limit is a warning if the area that bears is not overloaded. Example: 1,533 psf over a whole base, load 0.26 of its side off center: 3,198 psf on the area that bears, 4,265 psf at the edge.

A pad spreads the load beyond what stands on it, as far as the pad can carry the allowable bearing q in bending and in shear:

    overhang = thickness × √(bending stress ÷ (3 × layers × q))
    overhang ≤ thickness × shear stress ÷ (1.5 × q)

Timbers side by side spread a load only parallel to their grain. Plywood bends in layers of 3/4 in. If the material of a pad is not stated, it is not known how far the pad spreads the load. The check has not passed if the area of what stands on the pad is too small and the whole pad would be large enough.

Not checked: points in the ranges where a smaller load is farther off center, uneven ground, and settling over hours.

## Sources

- International Building Code 2012, Table 1806.2; 24 CFR 3285.202. The two differ for gravel: the policy or the surface states which one applies.
- Allowable bearing under a strut or a crib for about an hour: common practice, no source.
- Effective width B − 2e: Meyerhof (1953); NAVFAC DM-7.02, chapter 4 (from memory). Edge pressure: statics of a triangle of pressure.
- Overhang of a pad: D. Duerr, Effective Bearing Length of Crane Mats, equations 1 to 8.
- Stresses, all from memory: timber 500 and 125 psi (NDS Supplement 2018, Table 4D, the least of the common softwoods); plywood 160 and 40 psi on the whole section (APA D510, Table 4A, perpendicular to the strength axis); steel 27,000 and 14,400 psi (AISC 1989, A36).

## Unsafe

\`\`\`crib
use "library/vehicles.crib"

plan "Soft ground, open base" {
  ground { surface soft-clay }
  vehicle trailer : VanTrailer53 {
    cargo "freight" 40,000 lb from 4 ft to 48 ft
  }
  chock K1 {
    under trailer
    holds  both directions
  }
  crib A { // ground-bearing
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   11
    wedges    1 pair, 0.5 to 2 in
    at        19 ft 6 in, driver side 3 ft 6.75 in
    captures  rail, joists
  }
}
\`\`\`

\`\`\`crib
use "library/vehicles.crib"

plan "A large pad as thin as a sheet" {
  ground { surface soft-clay }
  vehicle trailer : VanTrailer53 {
    cargo "freight" 40,000 lb from 4 ft to 48 ft
  }
  chock K1 {
    under trailer
    holds both directions
  }
  crib A { // ground-bearing
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   11
    wedges    1 pair, 0.25 to 2 in
    at        19 ft 6 in, driver side 3 ft 6.75 in
    captures  rail, joists
    base      solid
  }
  pad P1 {
    size       20 ft by 20 ft
    thickness  0.1 in
    material   steel
    under      A
  }
}
\`\`\`

## Safe

\`\`\`crib
use "library/vehicles.crib"

plan "Concrete" {
  ground { surface concrete }
  vehicle trailer : VanTrailer53 {
    cargo "freight" 8,000 lb from 4 ft to 48 ft
  }
  crib A {
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   11
    wedges    1 pair, 0.5 to 2 in
    at        19 ft 6 in, driver side 3 ft 6.75 in
    captures  rail, joists
    base      solid
  }
}
\`\`\`
`,
    es: `# ground-bearing: capacidad portante del suelo excedida

## Contra qué protege

Una base que se hunde de un lado inclina la carga que sostiene.

## Cálculo

    carga               = carga de los apoyos + peso de los maderos del crib
    presión             = carga ÷ área que apoya
    área que apoya      = (largo − 2 × carga fuera del centro) × (ancho − 2 × carga fuera del centro)
    presión             ≤ capacidad admisible del suelo
    presión en el borde = carga ÷ área × (1 + 6 × desvío ÷ lado)
                        = carga ÷ área × 4 ÷ (3 × (1 − 2 × desvío ÷ lado))     si desvío > lado ÷ 6
    placa               = carga ÷ parte de la base que apoya ÷ capacidad admisible

El peso de los maderos es su volumen × su peso por volumen. Se apoya en el centro de la base. Cada caso se prueba con él y sin él, y cuenta la presión mayor. Una base abierta se apoya en sus maderos, una base sólida en su contorno, una placa hasta donde reparte la carga. La regla comprueba cada caso: cada apoyo perdido y cada etapa, cada uno en el punto de los intervalos donde el crib lleva más. Una presión en el borde sobre el límite es una advertencia si el área que apoya no está sobrecargada. Ejemplo: 1,533 psf sobre una base entera, carga a 0.26 de su lado fuera del centro: 3,198 psf en el área que apoya, 4,265 psf en el borde.

Una placa reparte la carga más allá de lo que está encima hasta donde resiste en flexión y en corte la capacidad admisible q:

    vuelo = espesor × √(esfuerzo de flexión ÷ (3 × capas × q))
    vuelo ≤ espesor × esfuerzo de corte ÷ (1.5 × q)

Los maderos lado a lado reparten una carga solo a lo largo de su fibra. El contrachapado se dobla en capas de 3/4 in. Si no se indica el material de una placa, no se sabe hasta dónde reparte la carga. La comprobación no se da por buena si el área de lo que está sobre la placa no basta y la placa entera bastaría.

Sin comprobar: puntos de los intervalos donde una carga menor está más fuera del centro, suelo disparejo, y asiento durante horas.

## Fuentes

- _International Building Code_ 2012, tabla 1806.2; 24 CFR 3285.202. Las dos difieren en la grava: la norma o la superficie indica cuál rige.
- Capacidad admisible bajo un puntal o un crib durante más o menos una hora: práctica común, sin fuente.
- Ancho efectivo B − 2e: Meyerhof (1953); NAVFAC DM-7.02, capítulo 4 (de memoria). Presión en el borde: estática de un triángulo de presión.
- Vuelo de una placa: D. Duerr, _Effective Bearing Length of Crane Mats_, ecuaciones 1 a 8.
- Esfuerzos, todos de memoria: madera 500 y 125 psi (_NDS Supplement_ 2018, tabla 4D, el menor de las maderas blandas comunes); contrachapado 160 y 40 psi en toda la sección (APA D510, tabla 4A, perpendicular al eje fuerte); acero 27,000 y 14,400 psi (AISC 1989, A36).

## Inseguro

\`\`\`crib
use "library/vehicles.crib"

plan "Suelo blando, base abierta" {
  ground { surface soft-clay }
  vehicle trailer : VanTrailer53 {
    cargo "mercancía" 40,000 lb from 4 ft to 48 ft
  }
  chock K1 {
    under trailer
    holds  both directions
  }
  crib A { // ground-bearing
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   11
    wedges    1 pair, 0.5 to 2 in
    at        19 ft 6 in, driver side 3 ft 6.75 in
    captures  rail, joists
  }
}
\`\`\`

\`\`\`crib
use "library/vehicles.crib"

plan "Una placa grande y delgada como una hoja" {
  ground { surface soft-clay }
  vehicle trailer : VanTrailer53 {
    cargo "mercancía" 40,000 lb from 4 ft to 48 ft
  }
  chock K1 {
    under trailer
    holds both directions
  }
  crib A { // ground-bearing
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   11
    wedges    1 pair, 0.25 to 2 in
    at        19 ft 6 in, driver side 3 ft 6.75 in
    captures  rail, joists
    base      solid
  }
  pad P1 {
    size       20 ft by 20 ft
    thickness  0.1 in
    material   steel
    under      A
  }
}
\`\`\`

## Seguro

\`\`\`crib
use "library/vehicles.crib"

plan "Concreto" {
  ground { surface concrete }
  vehicle trailer : VanTrailer53 {
    cargo "mercancía" 8,000 lb from 4 ft to 48 ft
  }
  crib A {
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   11
    wedges    1 pair, 0.5 to 2 in
    at        19 ft 6 in, driver side 3 ft 6.75 in
    captures  rail, joists
    base      solid
  }
}
\`\`\`
`,
  },
  'joist-miss': {
    en: `# joist-miss: contact misses the captured part

## What it protects against

A contact between two joists meets only sheet metal or flooring. It carries no load.

## Calculation

The part must be above the top timber. The distance from the contact to the part, along the timber, has a limit:

    distance from the contact to the edge of the joist ≤ joist reach (2 in)

## Sources

- Common practice, no source.

## Unsafe

\`\`\`crib
use "library/vehicles.crib"

plan "Between two joists" {
  vehicle trailer : VanTrailer53 {
    cargo "freight" 20,000 lb from 4 ft to 48 ft
  }
  crib A {
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   11
    wedges    1 pair, 0.5 to 2 in
    at        20 ft, driver side 3 ft 6.75 in // joist-miss
    captures  rail, joists
  }
}
\`\`\`

## Safe

\`\`\`crib
use "library/vehicles.crib"

plan "Under the joists" {
  vehicle trailer : VanTrailer53 {
    cargo "freight" 20,000 lb from 4 ft to 48 ft
  }
  crib A {
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   11
    wedges    1 pair, 0.5 to 2 in
    at        19 ft 6 in, driver side 3 ft 6.75 in
    captures  rail, joists
  }
}
\`\`\`
`,
    es: `# joist-miss: contacto fuera de la parte capturada

## Contra qué protege

Un contacto entre dos viguetas toca solo chapa o piso. No lleva carga.

## Cálculo

La parte debe estar encima del madero de arriba. La distancia del contacto a la parte, a lo largo del madero, tiene un límite:

    distancia del contacto al borde de la vigueta ≤ alcance hasta la vigueta (2 in)

## Fuentes

- Práctica común, sin fuente.

## Inseguro

\`\`\`crib
use "library/vehicles.crib"

plan "Entre dos viguetas" {
  vehicle trailer : VanTrailer53 {
    cargo "mercancía" 20,000 lb from 4 ft to 48 ft
  }
  crib A {
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   11
    wedges    1 pair, 0.5 to 2 in
    at        20 ft, driver side 3 ft 6.75 in // joist-miss
    captures  rail, joists
  }
}
\`\`\`

## Seguro

\`\`\`crib
use "library/vehicles.crib"

plan "Bajo las viguetas" {
  vehicle trailer : VanTrailer53 {
    cargo "mercancía" 20,000 lb from 4 ft to 48 ft
  }
  crib A {
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   11
    wedges    1 pair, 0.5 to 2 in
    at        19 ft 6 in, driver side 3 ft 6.75 in
    captures  rail, joists
  }
}
\`\`\`
`,
  },
  'lifting-intent': {
    en: `# lifting-intent: lift not stated

## What it protects against

Stabilizing is not lifting. A lifted vehicle shifts its load and can slide off its supports.

## Calculation

    upward force = sum of the preloads (of a strut: its upward part)
    share        = upward force ÷ weight

A share of more than 5 % of the weight is a lift. State the lift in the plan, or set the supports snug.

## Sources

- Common practice, no source.

## Unsafe

\`\`\`crib
use "library/vehicles.crib"

plan "Preloaded to lift" {
  vehicle trailer : VanTrailer53 {
    cargo "freight" 20,000 lb from 4 ft to 48 ft
  }
  crib A {
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   11
    wedges    4 pairs preload 12,000 lb // lifting-intent
    at        19 ft 6 in, driver side 3 ft 6.75 in
    captures  rail, joists
  }
}
\`\`\`

## Safe

\`\`\`crib
use "library/vehicles.crib"

plan "Snug" {
  vehicle trailer : VanTrailer53 {
    cargo "freight" 20,000 lb from 4 ft to 48 ft
  }
  crib A {
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   11
    wedges    4 pairs
    at        19 ft 6 in, driver side 3 ft 6.75 in
    captures  rail, joists
  }
}
\`\`\`
`,
    es: `# lifting-intent: levantamiento no declarado

## Contra qué protege

Estabilizar no es levantar. Un vehículo levantado mueve su carga y puede resbalar de sus apoyos.

## Cálculo

    fuerza hacia arriba = suma de las precargas (de un puntal: su parte hacia arriba)
    proporción          = fuerza hacia arriba ÷ peso

Una proporción de más del 5 % del peso es un levantamiento. Declare el levantamiento en el plan, o deje los apoyos solo apretados.

## Fuentes

- Práctica común, sin fuente.

## Inseguro

\`\`\`crib
use "library/vehicles.crib"

plan "Precargado hasta levantar" {
  vehicle trailer : VanTrailer53 {
    cargo "mercancía" 20,000 lb from 4 ft to 48 ft
  }
  crib A {
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   11
    wedges    4 pairs preload 12,000 lb // lifting-intent
    at        19 ft 6 in, driver side 3 ft 6.75 in
    captures  rail, joists
  }
}
\`\`\`

## Seguro

\`\`\`crib
use "library/vehicles.crib"

plan "Apretado" {
  vehicle trailer : VanTrailer53 {
    cargo "mercancía" 20,000 lb from 4 ft to 48 ft
  }
  crib A {
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   11
    wedges    4 pairs
    at        19 ft 6 in, driver side 3 ft 6.75 in
    captures  rail, joists
  }
}
\`\`\`
`,
  },
  'loss-moves': {
    en: `# loss-moves: moves if a support gives way

## What it protects against

When a tire, a vehicle beneath or the ground under a strut gives way, thrust, straps and friction must still be in balance.

## Calculation

Each support that was there before the crew, and the ground under each strut base, is taken away in turn. A strap that is tied to a lost base goes with it. Then all forces and moments must balance again:

    at a strut base   load × cos(angle) ≤ strap + friction × load × sin(angle)

What carries nothing is not missed. A closed coupling is taken away too; it seldom lets go, so that is a warning. Of a half-built stage, a loss is reported where the stage before it held the same loss: tried all lightest, all heaviest, and at each end of the ranges where what is lost carries more than in those tried before.

Where vertical forces alone already show that nothing holds the vehicle, loss-of-support says so.

## Sources

- Thrust at a strut base, and supports that go together: common practice, no source.

## Unsafe

\`\`\`crib
use "library/vehicles.crib"
use "library/gear.crib"
use "library/ties.crib"

plan "A strap that ends at the other base" {
  ground { surface asphalt; grade 0 % toward rear }
  vehicle truck : StraightTruck { // loss-moves
    cargo   "freight" 8,000 lb from 10 ft to 28 ft height 6 ft
    brakes  released
    no tire at  axle 2, driver side
  }
  chock K1 { under truck axle 1; holds both directions }
  strut S1 : Strut4to8ft {
    head  truck rail near 22 ft, driver side
    base  3 ft out
    lock  pinned
  }
  strut S2 : Strut4to8ft {
    head  truck rail near 22 ft, passenger side
    base  3 ft out
    lock  pinned
  }
  strap T1 : RatchetStrap4in { from S1 base to S2 base }
}
\`\`\`

## Safe

\`\`\`crib
use "library/vehicles.crib"

plan "On all of its wheels" {
  ground { surface asphalt; grade 0 % toward rear }
  vehicle truck : StraightTruck {
    cargo   "freight" 8,000 lb from 10 ft to 28 ft height 6 ft
    brakes  released
  }
  chock K1 { under truck; holds both directions }
}
\`\`\`
`,
    es: `# loss-moves: se mueve si un apoyo cede

## Contra qué protege

Cuando cede un neumático, un vehículo de abajo o el suelo bajo un puntal, el empuje, las correas y el rozamiento deben seguir en equilibrio.

## Cálculo

Se quita, uno por uno, cada apoyo que estaba antes de llegar el equipo, y el suelo bajo cada base de puntal. Una correa amarrada a una base perdida se va con ella. Después todas las fuerzas y momentos se deben equilibrar otra vez:

    en una base de puntal   carga × cos(ángulo) ≤ correa + rozamiento × carga × sin(ángulo)

Lo que no lleva nada no hace falta. Si las fuerzas verticales solas ya muestran que nada sostiene el vehículo, lo señala loss-of-support.

## Fuentes

- Empuje en una base de puntal, y apoyos que se pierden juntos: práctica común, sin fuente.

## Inseguro

\`\`\`crib
use "library/vehicles.crib"
use "library/gear.crib"
use "library/ties.crib"

plan "Una correa que termina en la otra base" {
  ground { surface asphalt; grade 0 % toward rear }
  vehicle truck : StraightTruck { // loss-moves
    cargo   "mercancía" 8,000 lb from 10 ft to 28 ft height 6 ft
    brakes  released
    no tire at  axle 2, driver side
  }
  chock K1 { under truck axle 1; holds both directions }
  strut S1 : Strut4to8ft {
    head  truck rail near 22 ft, driver side
    base  3 ft out
    lock  pinned
  }
  strut S2 : Strut4to8ft {
    head  truck rail near 22 ft, passenger side
    base  3 ft out
    lock  pinned
  }
  strap T1 : RatchetStrap4in { from S1 base to S2 base }
}
\`\`\`

## Seguro

\`\`\`crib
use "library/vehicles.crib"

plan "Sobre todas sus ruedas" {
  ground { surface asphalt; grade 0 % toward rear }
  vehicle truck : StraightTruck {
    cargo   "mercancía" 8,000 lb from 10 ft to 28 ft height 6 ft
    brakes  released
  }
  chock K1 { under truck; holds both directions }
}
\`\`\`
`,
  },
  'loss-of-support': {
    en: `# loss-of-support: vehicle not held if a support fails

## What it protects against

A support that held the vehicle before the crew arrived can fail while the crew works: a tire, an air spring, a landing gear leg, the car below. The supports that the crew set must then hold the vehicle.

## Calculation

The complete stabilization system is calculated again with one support removed at a time:

- each vehicle below that is not coupled;
- the wheels at each end of each axle;
- the air springs of an axle, or of a cab;
- each landing gear leg that is down;
- each corner of a vehicle that lies on its side or its roof;
- the ground under the base of each strut;
- with the policy \`ground under cribs may give way\`: the ground under each crib and each step chock.

After each loss every vehicle must still rest on its supports, at every end of the ranges of weight and position. The load that each crib then carries is checked by crib-load.

Some losses are a warning, because the vehicle drops only a short way: a flat tire lets it down onto the rim, air springs let it down onto their stops, and a corner that folds lets it down onto the body beside it. Every other loss is a danger.

The check does not remove couplings.

The check removes the ground under cribs only if the policy says so. A crib stands on a broad base on ground that the crew inspected. The rule ground-bearing compares its pressure with the allowable bearing of that ground, and the crew inspects it again while they work. A strut stands on one small base that is also pushed outward. The check therefore always removes the ground under each strut in turn. On ground that can thaw, wash out or cave in (a trench, a bank, a filled lot), set \`ground under cribs may give way\`. The plan must then not depend on any single crib.

## Sources

- Which losses to check, and that the ground under cribs is judged by its pressure: common practice, no source.

## Unsafe

\`\`\`crib
use "library/vehicles.crib"

plan "The car alone holds that corner" {
  ground { surface asphalt; grade 0 % toward rear }
  vehicle truck : StraightTruck { // loss-of-support
    cargo "freight" 9,000 lb from 12 ft to 24 ft
    no tire at axle 2, driver side
  }
  vehicle car : Sedan { // loss-of-support
    at     22 ft, driver side 1 ft
    bears  truck at rail
  }
}
\`\`\`

### On ground that may wash out

\`\`\`crib
use "library/vehicles.crib"

policy OurPolicy : Shipped {
  ground under cribs  may give way  source stated
}

plan "One crib holds that corner" {
  policy OurPolicy
  ground { surface asphalt; grade 0 % toward rear }
  vehicle truck : StraightTruck { // loss-of-support
    cargo "freight" 9,000 lb from 12 ft to 24 ft
    no tire at axle 2, driver side
  }
  crib A {
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   11
    wedges    1 pair, 0.5 to 2 in
    at        20 ft 6 in, driver side 39.75 in
    captures  rail, joists
  }
}
\`\`\`

## Safe

\`\`\`crib
use "library/vehicles.crib"

plan "On all its wheels" {
  ground { surface asphalt; grade 0 % toward rear }
  vehicle trailer : VanTrailer53 {
    cargo "freight" 20,000 lb from 4 ft to 48 ft
  }
}
\`\`\`
`,
    es: `# loss-of-support: vehículo no sostenido si falla un apoyo

## Contra qué protege

Un apoyo que sostenía el vehículo antes de llegar el equipo puede fallar mientras el equipo trabaja: un neumático, un resorte neumático, una pata de apoyo, el auto de abajo. Los apoyos que puso el equipo deben sostener entonces el vehículo.

## Cálculo

El sistema de estabilización completo se calcula otra vez, quitando un apoyo a la vez:

- cada vehículo de abajo que no está acoplado;
- las ruedas en cada extremo de cada eje;
- los resortes neumáticos de un eje, o de una cabina;
- cada pata de apoyo que está bajada;
- cada esquina de un vehículo que está sobre su costado o su techo;
- el suelo bajo la base de cada puntal;
- con la norma \`ground under cribs may give way\`: el suelo bajo cada crib y cada calza escalonada.

Después de cada pérdida todo vehículo debe seguir descansando en sus apoyos, en cada extremo de los intervalos de peso y posición. La carga que entonces lleva cada crib la comprueba crib-load.

Algunas pérdidas son una advertencia, porque el vehículo baja poco: un neumático perdido lo baja hasta el rin, los resortes neumáticos hasta sus topes, y una esquina que se dobla hasta la carrocería que tiene al lado. Toda otra pérdida es un peligro.

La comprobación no quita los acoples.

La comprobación quita el suelo bajo los cribs solo si la norma lo dice. Un crib está sobre una base ancha en un suelo que el equipo revisó. La regla ground-bearing compara su presión con la capacidad admisible de ese suelo, y el equipo lo revisa otra vez mientras trabaja. Un puntal está sobre una base pequeña que además recibe un empuje hacia afuera. Por eso la comprobación quita siempre, uno por uno, el suelo bajo cada puntal. En un suelo que se puede deshelar, deslavar o derrumbar (una zanja, un talud, un terreno de relleno), escriba \`ground under cribs may give way\`. El plan no debe depender entonces de ningún crib solo.

## Fuentes

- Qué pérdidas se comprueban, y que el suelo bajo los cribs se juzga por su presión: práctica común, sin fuente.

## Inseguro

\`\`\`crib
use "library/vehicles.crib"

plan "Solo el auto sostiene esa esquina" {
  ground { surface asphalt; grade 0 % toward rear }
  vehicle truck : StraightTruck { // loss-of-support
    cargo "mercancía" 9,000 lb from 12 ft to 24 ft
    no tire at axle 2, driver side
  }
  vehicle car : Sedan { // loss-of-support
    at     22 ft, driver side 1 ft
    bears  truck at rail
  }
}
\`\`\`

### En un suelo que se puede deslavar

\`\`\`crib
use "library/vehicles.crib"

policy OurPolicy : Shipped {
  ground under cribs  may give way  source stated
}

plan "Un crib sostiene esa esquina" {
  policy OurPolicy
  ground { surface asphalt; grade 0 % toward rear }
  vehicle truck : StraightTruck { // loss-of-support
    cargo "mercancía" 9,000 lb from 12 ft to 24 ft
    no tire at axle 2, driver side
  }
  crib A {
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   11
    wedges    1 pair, 0.5 to 2 in
    at        20 ft 6 in, driver side 39.75 in
    captures  rail, joists
  }
}
\`\`\`

## Seguro

\`\`\`crib
use "library/vehicles.crib"

plan "Sobre todas sus ruedas" {
  ground { surface asphalt; grade 0 % toward rear }
  vehicle trailer : VanTrailer53 {
    cargo "mercancía" 20,000 lb from 4 ft to 48 ft
  }
}
\`\`\`
`,
  },
  'order-ground-up': {
    en: `# order-ground-up: upper vehicle stabilized before the lower one

## What it protects against

A support built on something loose moves with it. Stabilize the lower vehicle first, and place a pad before the support that stands on it.

## Calculation

None. Every step that stabilizes the upper vehicle must wait for a step that stabilizes the lower one. A step waits by its place in the list, or by \`after\`.

## Sources

- Common practice, no source.

## Unsafe

\`\`\`crib
use "library/vehicles.crib"

plan "The trailer first" {
  vehicle trailer : VanTrailer53 {
    cargo "freight" 20,000 lb from 4 ft to 48 ft
  }
  vehicle car : Sedan {
    at      25 ft, passenger side 1 ft
    heading across to passenger side
    bears   trailer at rail from 23 ft 6 in to 26 ft 6 in
  }
  crib C1 {
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   2
    wedges    1 pair, 0.5 to 2 in
    at        22 ft, driver side 6 ft 6 in
    captures  car rocker
  }
  crib A {
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   11
    wedges    1 pair, 0.5 to 2 in
    at        19 ft 6 in, driver side 3 ft 6.75 in
    captures  rail, joists
  }
  steps {
    1 build   A // order-ground-up
    2 capture car  with cribs C1
  }
}
\`\`\`

## Safe

\`\`\`crib
use "library/vehicles.crib"

plan "The car first" {
  vehicle trailer : VanTrailer53 {
    cargo "freight" 20,000 lb from 4 ft to 48 ft
  }
  vehicle car : Sedan {
    at      25 ft, passenger side 1 ft
    heading across to passenger side
    bears   trailer at rail from 23 ft 6 in to 26 ft 6 in
  }
  crib C1 {
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   2
    wedges    1 pair, 0.5 to 2 in
    at        22 ft, driver side 6 ft 6 in
    captures  car rocker
  }
  crib A {
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   11
    wedges    1 pair, 0.5 to 2 in
    at        19 ft 6 in, driver side 3 ft 6.75 in
    captures  rail, joists
  }
  steps {
    1 capture car  with cribs C1
    2 build   A
  }
}
\`\`\`
`,
    es: `# order-ground-up: vehículo de arriba estabilizado antes que el de abajo

## Contra qué protege

Un apoyo armado sobre algo suelto se mueve con ello. Estabilice primero el vehículo de abajo, y ponga una placa antes del apoyo que va encima.

## Cálculo

Ninguno. Todo paso que estabiliza el vehículo de arriba debe esperar a un paso que estabiliza el de abajo. Un paso espera por su lugar en la lista, o por \`after\`.

## Fuentes

- Práctica común, sin fuente.

## Inseguro

\`\`\`crib
use "library/vehicles.crib"

plan "Primero el remolque" {
  vehicle trailer : VanTrailer53 {
    cargo "mercancía" 20,000 lb from 4 ft to 48 ft
  }
  vehicle car : Sedan {
    at      25 ft, passenger side 1 ft
    heading across to passenger side
    bears   trailer at rail from 23 ft 6 in to 26 ft 6 in
  }
  crib C1 {
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   2
    wedges    1 pair, 0.5 to 2 in
    at        22 ft, driver side 6 ft 6 in
    captures  car rocker
  }
  crib A {
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   11
    wedges    1 pair, 0.5 to 2 in
    at        19 ft 6 in, driver side 3 ft 6.75 in
    captures  rail, joists
  }
  steps {
    1 build   A // order-ground-up
    2 capture car  with cribs C1
  }
}
\`\`\`

## Seguro

\`\`\`crib
use "library/vehicles.crib"

plan "Primero el auto" {
  vehicle trailer : VanTrailer53 {
    cargo "mercancía" 20,000 lb from 4 ft to 48 ft
  }
  vehicle car : Sedan {
    at      25 ft, passenger side 1 ft
    heading across to passenger side
    bears   trailer at rail from 23 ft 6 in to 26 ft 6 in
  }
  crib C1 {
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   2
    wedges    1 pair, 0.5 to 2 in
    at        22 ft, driver side 6 ft 6 in
    captures  car rocker
  }
  crib A {
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   11
    wedges    1 pair, 0.5 to 2 in
    at        19 ft 6 in, driver side 3 ft 6.75 in
    captures  rail, joists
  }
  steps {
    1 capture car  with cribs C1
    2 build   A
  }
}
\`\`\`
`,
  },
  'order-missing': {
    en: `# order-missing: steps missing or out of order

## What it protects against

A support that no step puts in is not there when it is needed. A support that is put in too early has nothing to rest on.

## Calculation

None. The check requires that:

- a step puts in every support;
- chocks come before cribs and struts;
- a strap is tightened when both of its ends are in place;
- a strut is locked before it is checked;
- steps do not wait for each other in a circle.

## Sources

- Common practice, no source.

## Unsafe

\`\`\`crib
use "library/vehicles.crib"

plan "No step builds B" {
  vehicle trailer : VanTrailer53 {
    cargo "freight" 20,000 lb from 4 ft to 48 ft
  }
  crib A {
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   11
    wedges    1 pair, 0.5 to 2 in
    at        19 ft 6 in, driver side 3 ft 6.75 in
    captures  rail, joists
  }
  crib B { // order-missing
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   11
    wedges    1 pair, 0.5 to 2 in
    at        19 ft 6 in, passenger side 3 ft 6.75 in
    captures  rail, joists
  }
  steps {
    1 build A
  }
}
\`\`\`

## Safe

\`\`\`crib
use "library/vehicles.crib"

plan "Both are built" {
  vehicle trailer : VanTrailer53 {
    cargo "freight" 20,000 lb from 4 ft to 48 ft
  }
  crib A {
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   11
    wedges    1 pair, 0.5 to 2 in
    at        19 ft 6 in, driver side 3 ft 6.75 in
    captures  rail, joists
  }
  crib B {
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   11
    wedges    1 pair, 0.5 to 2 in
    at        19 ft 6 in, passenger side 3 ft 6.75 in
    captures  rail, joists
  }
  steps {
    1 build A
    2 build B
  }
}
\`\`\`
`,
    es: `# order-missing: pasos que faltan o están en mal orden

## Contra qué protege

Un apoyo que ningún paso pone no está cuando hace falta. Un apoyo puesto demasiado pronto no tiene sobre qué descansar.

## Cálculo

Ninguno. La comprobación exige que:

- un paso ponga cada apoyo;
- las calzas vayan antes que los cribs y los puntales;
- una correa se tense cuando estén puestos sus dos extremos;
- un puntal se asegure antes de revisarlo;
- los pasos no se esperen unos a otros en círculo.

## Fuentes

- Práctica común, sin fuente.

## Inseguro

\`\`\`crib
use "library/vehicles.crib"

plan "Ningún paso arma B" {
  vehicle trailer : VanTrailer53 {
    cargo "mercancía" 20,000 lb from 4 ft to 48 ft
  }
  crib A {
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   11
    wedges    1 pair, 0.5 to 2 in
    at        19 ft 6 in, driver side 3 ft 6.75 in
    captures  rail, joists
  }
  crib B { // order-missing
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   11
    wedges    1 pair, 0.5 to 2 in
    at        19 ft 6 in, passenger side 3 ft 6.75 in
    captures  rail, joists
  }
  steps {
    1 build A
  }
}
\`\`\`

## Seguro

\`\`\`crib
use "library/vehicles.crib"

plan "Se arman los dos" {
  vehicle trailer : VanTrailer53 {
    cargo "mercancía" 20,000 lb from 4 ft to 48 ft
  }
  crib A {
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   11
    wedges    1 pair, 0.5 to 2 in
    at        19 ft 6 in, driver side 3 ft 6.75 in
    captures  rail, joists
  }
  crib B {
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   11
    wedges    1 pair, 0.5 to 2 in
    at        19 ft 6 in, passenger side 3 ft 6.75 in
    captures  rail, joists
  }
  steps {
    1 build A
    2 build B
  }
}
\`\`\`
`,
  },
  'part-cannot-bear': {
    en: `# part-cannot-bear: support under a part that cannot bear

## What it protects against

Sheet metal, tanks, moving parts and brackets fold or turn under a load that the frame would carry.

## Calculation

None. The vehicle states for each part whether it can bear, and if not, why. The rule checks the part that a crib or step chock captures, and the part that it stands on.

## Sources

- Common practice, no source.

## Unsafe

\`\`\`crib
use "library/vehicles.crib"

plan "Under a part that folds" {
  vehicle trailer : VanTrailer53 {
    cargo "freight" 20,000 lb from 4 ft to 48 ft
  }
  crib A {
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   12
    wedges    1 pair, 0.5 to 2 in
    at        3 ft, center
    captures  kingpin // part-cannot-bear
  }
}
\`\`\`

\`\`\`crib
use "library/vehicles.crib"

plan "A crib on a car's roof" {
  vehicle trailer : VanTrailer53 {
    cargo "freight" 20,000 lb from 4 ft to 48 ft
  }
  vehicle car : Sedan {
    at       25 ft, passenger side 1 ft
    heading  across to passenger side
    area roof {
      height 30 in
    }
  }
  crib A {
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   2
    wedges    4 pairs, 0.5 to 2 in
    at        25 ft 6 in, driver side 3 ft 6.75 in
    stands on car roof // part-cannot-bear
    captures  rail, joists
  }
}
\`\`\`

## Safe

\`\`\`crib
use "library/vehicles.crib"

plan "Under rail and joists" {
  vehicle trailer : VanTrailer53 {
    cargo "freight" 20,000 lb from 4 ft to 48 ft
  }
  crib A {
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   11
    wedges    1 pair, 0.5 to 2 in
    at        19 ft 6 in, driver side 3 ft 6.75 in
    captures  rail, joists
  }
}
\`\`\`
`,
    es: `# part-cannot-bear: apoyo bajo una parte que no puede llevar carga

## Contra qué protege

La chapa, los tanques, las partes móviles y los soportes se doblan o giran con una carga que el bastidor llevaría.

## Cálculo

Ninguno. El vehículo indica de cada parte si puede llevar carga, y si no, por qué. La regla comprueba la parte que captura un crib o una calza escalonada, y la parte sobre la que está.

## Fuentes

- Práctica común, sin fuente.

## Inseguro

\`\`\`crib
use "library/vehicles.crib"

plan "Bajo una parte que se dobla" {
  vehicle trailer : VanTrailer53 {
    cargo "mercancía" 20,000 lb from 4 ft to 48 ft
  }
  crib A {
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   12
    wedges    1 pair, 0.5 to 2 in
    at        3 ft, center
    captures  kingpin // part-cannot-bear
  }
}
\`\`\`

\`\`\`crib
use "library/vehicles.crib"

plan "Un crib sobre el techo de un auto" {
  vehicle trailer : VanTrailer53 {
    cargo "mercancía" 20,000 lb from 4 ft to 48 ft
  }
  vehicle car : Sedan {
    at       25 ft, passenger side 1 ft
    heading  across to passenger side
    area roof {
      height 30 in
    }
  }
  crib A {
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   2
    wedges    4 pairs, 0.5 to 2 in
    at        25 ft 6 in, driver side 3 ft 6.75 in
    stands on car roof // part-cannot-bear
    captures  rail, joists
  }
}
\`\`\`

## Seguro

\`\`\`crib
use "library/vehicles.crib"

plan "Bajo larguero y viguetas" {
  vehicle trailer : VanTrailer53 {
    cargo "mercancía" 20,000 lb from 4 ft to 48 ft
  }
  crib A {
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   11
    wedges    1 pair, 0.5 to 2 in
    at        19 ft 6 in, driver side 3 ft 6.75 in
    captures  rail, joists
  }
}
\`\`\`
`,
  },
  'part-load': {
    en: `# part-load: part overloaded, or too narrow on its timber

## What it protects against

A part that carries more than its rating bends or tears. A part narrower than the timber cuts into it.

## Calculation

    load of each support on the part          ≤ rating of the part
    loads of all supports on it, as built     ≤ rating of the part
    load of a contact                         ≤ stress perpendicular to grain × overlap
    overlap = width of the part × dressed width of the timber          0.25 in × 3.5 in × 500 psi = 437 lb

The load of each support is the worst case over every step, the loss of each support and the full range of weights and positions. If the loads together pass as built, but not each at its worst, that is a warning: the worst of each may not come at once. The rating is that of the part as a whole, of both rails or all joists together. A load counts from what captures the part, stands on it or has its head on it, and from vehicles that rest there.

A part that lies along its timber counts only over the crossing. A single point counts with its width both ways. A part as wide as the timber is checked by crib-load alone.

A car under a truck: its strength is not known. The finding says so and gives the load. The plan is checked with the car lost (loss-of-support). A part that a crib stands on without a rating is a note.

Not checked: strength of a captured part without a rating; bending of a part between its supports.

## Sources

- Bearing perpendicular to grain on the area in contact: NDS 2018, 3.10.2 and 3.10.4. The bearing length factor is that of the whole crossing, which is lower than that of a shorter bearing.
- Ratings: as stated in the plan.

## Unsafe

\`\`\`crib
use "library/vehicles.crib"

plan "A rail rated 500 lb" {
  vehicle trailer : VanTrailer53 {
    cargo "freight" 20,000 lb from 4 ft to 48 ft
    rails rail {
      rating 500 lb
    }
  }
  crib A {
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   11
    wedges    4 pairs
    at        19 ft 6 in, driver side 3 ft 6.75 in
    captures  rail, joists // part-load
  }
}
\`\`\`

\`\`\`crib
use "library/vehicles.crib"

plan "Thin joists" {
  vehicle trailer : VanTrailer53 {
    cargo "freight" 40,000 lb from 4 ft to 48 ft
    joists joists {
      width 0.25 in
    }
  }
  crib A {
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   11
    wedges    4 pairs
    at        19 ft 6 in, driver side 3 ft 6.75 in
    captures  rail, joists // part-load
  }
}
\`\`\`

## Safe

\`\`\`crib
use "library/vehicles.crib"

plan "A rail that carries it" {
  vehicle trailer : VanTrailer53 {
    cargo "freight" 4,000 lb from 28 ft to 48 ft
    rails rail {
      rating 25,000 lb
    }
    coupled to tractor
  }
  vehicle tractor : DayCabTractor { at -16 ft, center }
  crib A {
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   11
    wedges    4 pairs
    at        19 ft 6 in, driver side 3 ft 6.75 in
    captures  rail, joists
  }
  crib B {
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   11
    wedges    4 pairs
    at        19 ft 6 in, passenger side 3 ft 6.75 in
    captures  rail, joists
  }
}
\`\`\`
`,
    es: `# part-load: parte sobrecargada, o demasiado angosta sobre su madero

## Contra qué protege

Una parte que lleva más que su capacidad nominal se dobla o se rasga. Una parte más angosta que el madero se clava en él.

## Cálculo

    carga de cada apoyo sobre la parte                ≤ capacidad nominal de la parte
    carga de todos sus apoyos juntos, ya armado       ≤ capacidad nominal de la parte
    carga de un contacto                              ≤ esfuerzo perpendicular a la fibra × traslape
    traslape = ancho de la parte × ancho real del madero          0.25 in × 3.5 in × 500 psi = 437 lb

La carga de cada apoyo es el peor caso de cada paso, de la pérdida de cada apoyo y de todo el rango de pesos y posiciones. Si las cargas juntas pasan ya armado, pero no cada una en su peor caso, es una advertencia: los peores casos pueden no llegar a la vez. La capacidad nominal es la de la parte entera, de los dos largueros o de todas las viguetas juntas. Cuenta lo que captura la parte, lo que se apoya en ella o tiene su cabeza en ella, y los vehículos que descansan allí.

Una parte tendida a lo largo de su madero cuenta solo sobre el cruce. Un solo punto cuenta con su ancho en los dos sentidos. Una parte tan ancha como el madero la comprueba solo crib-load.

Un auto debajo de un camión: su resistencia no se conoce. El aviso lo dice y da la carga. El plan se comprueba sin el auto (loss-of-support). Una parte sin capacidad nominal en la que se apoya un crib da una nota.

No se comprueba: la resistencia de una parte capturada sin capacidad nominal; la flexión de una parte entre sus apoyos.

## Fuentes

- Aplastamiento perpendicular a la fibra en el área de contacto: NDS 2018, 3.10.2 y 3.10.4. Se usa el factor de longitud de apoyo de todo el cruce, que es menor que el de un apoyo más corto.
- Capacidades nominales: las que indica el plan.

## Inseguro

\`\`\`crib
use "library/vehicles.crib"

plan "Un larguero de 500 lb" {
  vehicle trailer : VanTrailer53 {
    cargo "mercancía" 20,000 lb from 4 ft to 48 ft
    rails rail {
      rating 500 lb
    }
  }
  crib A {
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   11
    wedges    4 pairs
    at        19 ft 6 in, driver side 3 ft 6.75 in
    captures  rail, joists // part-load
  }
}
\`\`\`

\`\`\`crib
use "library/vehicles.crib"

plan "Viguetas angostas" {
  vehicle trailer : VanTrailer53 {
    cargo "mercancía" 40,000 lb from 4 ft to 48 ft
    joists joists {
      width 0.25 in
    }
  }
  crib A {
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   11
    wedges    4 pairs
    at        19 ft 6 in, driver side 3 ft 6.75 in
    captures  rail, joists // part-load
  }
}
\`\`\`

## Seguro

\`\`\`crib
use "library/vehicles.crib"

plan "Un larguero que lo lleva" {
  vehicle trailer : VanTrailer53 {
    cargo "mercancía" 4,000 lb from 28 ft to 48 ft
    rails rail {
      rating 25,000 lb
    }
    coupled to tractor
  }
  vehicle tractor : DayCabTractor { at -16 ft, center }
  crib A {
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   11
    wedges    4 pairs
    at        19 ft 6 in, driver side 3 ft 6.75 in
    captures  rail, joists
  }
  crib B {
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   11
    wedges    4 pairs
    at        19 ft 6 in, passenger side 3 ft 6.75 in
    captures  rail, joists
  }
}
\`\`\`
`,
  },
  'policy-loosened': {
    en: `# policy-loosened: policy limit made less safe

## What it protects against

People who rely on the plan expect the usual limit and do not see that it was loosened.

## Calculation

None. The rule compares each limit of a policy with the limit that it replaces. It does not report a tighter limit. A looser limit needs a reason, and every sheet shows it.

## Sources

- Common practice, no source.

## Unsafe

\`\`\`crib
use "library/vehicles.crib"

policy OurPolicy : Shipped {
  height ratio all contacts 4 source stated because "trial with longer wedges" // policy-loosened
}

plan "Looser than shipped" {
  policy OurPolicy
  vehicle trailer : VanTrailer53 {
    cargo "freight" 20,000 lb from 4 ft to 48 ft
  }
}
\`\`\`

## Safe

\`\`\`crib
use "library/vehicles.crib"

policy OurPolicy : Shipped {
  height ratio all contacts 2 source stated
}

plan "Tighter than shipped" {
  policy OurPolicy
  vehicle trailer : VanTrailer53 {
    cargo "freight" 20,000 lb from 4 ft to 48 ft
  }
}
\`\`\`
`,
    es: `# policy-loosened: límite de la norma hecho menos seguro

## Contra qué protege

Quienes confían en el plan esperan el límite de siempre y no ven que se aflojó.

## Cálculo

Ninguno. La regla compara cada límite de una norma con el límite que reemplaza. No señala un límite más estricto. Un límite menos estricto necesita una razón, y todas las hojas lo muestran.

## Fuentes

- Práctica común, sin fuente.

## Inseguro

\`\`\`crib
use "library/vehicles.crib"

policy OurPolicy : Shipped {
  height ratio all contacts 4 source stated because "prueba con cuñas más largas" // policy-loosened
}

plan "Menos estricta que la de la herramienta" {
  policy OurPolicy
  vehicle trailer : VanTrailer53 {
    cargo "mercancía" 20,000 lb from 4 ft to 48 ft
  }
}
\`\`\`

## Seguro

\`\`\`crib
use "library/vehicles.crib"

policy OurPolicy : Shipped {
  height ratio all contacts 2 source stated
}

plan "Más estricta que la de la herramienta" {
  policy OurPolicy
  vehicle trailer : VanTrailer53 {
    cargo "mercancía" 20,000 lb from 4 ft to 48 ft
  }
}
\`\`\`
`,
  },
  'post-slender': {
    en: `# post-slender: post too slender

## What it protects against

A long, thin post buckles long before the wood crushes. It gives little warning.

## Calculation

    slenderness = length ÷ least depth          180 in ÷ 3.5 in = 51.43
    limit       = 50

The length is measured from base to head. Plies that are nailed together count with their full depth. The capacity of the post includes the reduction for nailed plies.

## Sources

- 50 in service, 75 while erecting: from memory, NDS 2018, 3.7.1.4. A post that holds a load over people is in service.

A department's policy may set another limit, with its own source.

## Unsafe

\`\`\`crib
use "library/vehicles.crib"
use "library/ties.crib"

timber Fir2x4 {
  size     2x4
  dressed  1.5 in by 3.5 in
  species  DouglasFir
}
strut type ThinPost {
  post Fir2x4
}

plan "A 2x4 on edge" {
  vehicle trailer : VanTrailer53 {
    cargo "freight" 20,000 lb from 4 ft to 48 ft
  }
  strut S1 : ThinPost {
    head  trailer rail near 14 ft, driver side
    base  6 ft out // post-slender, strut-angle
    lock  pinned
  }
}
\`\`\`

## Safe

\`\`\`crib
use "library/vehicles.crib"
use "library/gear.crib"
use "library/ties.crib"

plan "Two 4x4 posts, strapped" {
  vehicle trailer : VanTrailer53 {
    cargo "freight" 20,000 lb from 4 ft to 48 ft
  }
  strut S1 : Post4x4 {
    head  trailer rail near 14 ft, driver side
    base  3 ft 4 in out
    lock  pinned
  }
  strut S2 : Post4x4 {
    head  trailer rail near 14 ft, passenger side
    base  3 ft 4 in out
    lock  pinned
  }
  strap T1 : RatchetStrap2in { from S1 base to S2 base }
}
\`\`\`
`,
    es: `# post-slender: poste demasiado esbelto

## Contra qué protege

Un poste largo y delgado se pandea mucho antes de que la madera se aplaste. Da poco aviso.

## Cálculo

    esbeltez = largo ÷ canto menor              180 in ÷ 3.5 in = 51.43
    límite   = 50

El largo se mide de la base a la cabeza. Las capas clavadas entre sí cuentan con todo su canto. La capacidad del poste incluye la reducción por capas clavadas.

## Fuentes

- 50 en servicio, 75 al levantarlo: de memoria, NDS 2018, 3.7.1.4. Un poste que sostiene una carga sobre personas está en servicio.

La norma de un departamento puede fijar otro límite, con su propia fuente.

## Inseguro

\`\`\`crib
use "library/vehicles.crib"
use "library/ties.crib"

timber Fir2x4 {
  size     2x4
  dressed  1.5 in by 3.5 in
  species  DouglasFir
}
strut type ThinPost {
  post Fir2x4
}

plan "Un 2x4 de canto" {
  vehicle trailer : VanTrailer53 {
    cargo "mercancía" 20,000 lb from 4 ft to 48 ft
  }
  strut S1 : ThinPost {
    head  trailer rail near 14 ft, driver side
    base  6 ft out // post-slender, strut-angle
    lock  pinned
  }
}
\`\`\`

## Seguro

\`\`\`crib
use "library/vehicles.crib"
use "library/gear.crib"
use "library/ties.crib"

plan "Dos postes 4x4, amarrados" {
  vehicle trailer : VanTrailer53 {
    cargo "mercancía" 20,000 lb from 4 ft to 48 ft
  }
  strut S1 : Post4x4 {
    head  trailer rail near 14 ft, driver side
    base  3 ft 4 in out
    lock  pinned
  }
  strut S2 : Post4x4 {
    head  trailer rail near 14 ft, passenger side
    base  3 ft 4 in out
    lock  pinned
  }
  strap T1 : RatchetStrap2in { from S1 base to S2 base }
}
\`\`\`
`,
  },
  'push-margin': {
    en: `# push-margin: holds too small a side push

## What it protects against

A tool, a shifting load or a second vehicle pushes the vehicle sideways, and it slides or tips over.

## Calculation

The complete stabilization system is pushed at the height that the policy sets, from 24 directions. In each direction the check finds the largest push for which the forces can still balance:

- a contact pushes and never pulls; its friction is at most friction × load;
- a crib contact carries at most its capacity, and a crib tips over when the force on its top points outside its base;
- a strut only pushes, up to its rated load; its base slides unless friction or a strap holds it;
- a strap or chain only pulls, up to its rating;
- a wheel resists rolling only if its axle is chocked. Brakes are not counted;
- a vehicle that lies on its side or its roof is held by the body friction of the ground, at the corners of its outline. Supports set beside it hold no better, because no load is certain to move to them. If that friction is not known, the check reports that it could not run;
- grade and tool loads act all the time.

By hand, for a block with no other support: it slides at friction × weight, or tips at weight × half its width ÷ height of the push, whichever comes first.

    friction 0.6, half width 3 ft, pushed at 7 ft 6 in: 60 % to slide, 3 ft ÷ 7 ft 6 in = 40 % to tip

Two limits of the method:

1. The method adds no preload. A strut that would push the vehicle in the direction of the push counts as nothing. Otherwise two struts could squeeze each other in the calculation, for friction that nobody applied.
2. The result is the push that the system _can_ hold: one way to share the forces was found. Dry friction does not guarantee that they are shared in that way. The margin in the policy covers this.

A strut without a strap whose base slides adds nothing until its base is strapped.

Each vehicle is pushed, in any order of the text. The linear program gives the most that any balance of forces allows. The model in space pushes slowly and counts friction only for the load that is there: a snug crib that carries nothing adds none. The smaller of the two is shown. Of a capacity the share counts that the policy lets be used. Brakes are not counted. A kingpin with no tractor in the plan holds nothing.

## Sources

- 10 % of the vertical load, sideways: FEMA Rescue Specialist course, Module 1A.
- A distribution that balances and exceeds no limit is a lower bound: from memory, limit analysis.
- Friction: the lines of the surface and the policy. Under a vehicle that lies on its side or roof: the \`body friction\` of the surface, at its low end.

## Unsafe

\`\`\`crib
use "library/vehicles.crib"

policy Careful : Shipped {
  push margin 60 %
}

plan "On its wheels alone" {
  ground { surface asphalt; grade 0 % toward rear }
  policy Careful
  vehicle trailer : VanTrailer53 { // push-margin
    cargo "freight" 40,000 lb from 4 ft to 48 ft height 8 ft
  }
}
\`\`\`

\`\`\`crib
use "library/vehicles.crib"

plan "On its side, pulled by the grade" {
  ground { surface concrete; grade 4 % toward front }
  vehicle truck : StraightTruck { // push-margin
    position on its driver side
    cargo   "freight" 8,000 lb from 10 ft to 28 ft height 60 in
  }
}
\`\`\`

## Safe

\`\`\`crib
use "library/vehicles.crib"

plan "Chocked, and low" {
  ground { surface asphalt; grade 0 % toward rear }
  vehicle trailer : VanTrailer53 {
    cargo "steel plate" 20,000 lb from 4 ft to 48 ft height 5 ft
    coupled to tractor
  }
  vehicle tractor : DayCabTractor { at -16 ft, center }
  chock K9 { under tractor; holds both directions }
  chock K1 { under trailer; holds both directions }
}
\`\`\`
`,
    es: `# push-margin: aguanta un empuje lateral demasiado pequeño

## Contra qué protege

Una herramienta, una carga que se mueve o un segundo vehículo empuja el vehículo de lado, y resbala o vuelca.

## Cálculo

El sistema de estabilización completo se empuja a la altura que fija la norma, desde 24 direcciones. En cada dirección la comprobación busca el mayor empuje con el que las fuerzas todavía se pueden equilibrar:

- un contacto empuja y nunca tira; su rozamiento es como mucho rozamiento × carga;
- un contacto de crib lleva como mucho su capacidad, y un crib vuelca cuando la fuerza sobre su cara superior apunta fuera de su base;
- un puntal solo empuja, hasta su carga nominal; su base resbala si no la sujeta el rozamiento o una correa;
- una correa o cadena solo tira, hasta su valor nominal;
- una rueda no resiste rodar si su eje no está calzado. Los frenos no se cuentan;
- a un vehículo que está sobre su costado o su techo lo sujeta el rozamiento de su carrocería con el suelo, en las esquinas de su contorno. Los apoyos puestos a su lado no sujetan mejor, porque no es seguro que la carga pase a ellos. Si no se conoce ese rozamiento, la comprobación dice que no se pudo hacer;
- la pendiente y las cargas de las herramientas actúan todo el tiempo.

A mano, para un bloque sin otro apoyo: resbala a rozamiento × peso, o vuelca a peso × la mitad de su ancho ÷ altura del empuje, lo que ocurra primero.

    rozamiento 0.6, medio ancho 3 ft, empuje a 7 ft 6 in: 60 % para resbalar, 3 ft ÷ 7 ft 6 in = 40 % para volcar

Dos límites del método:

1. El método no añade precarga. Un puntal que empujaría el vehículo en la dirección del empuje no cuenta. De otro modo, en el cálculo dos puntales se podrían apretar uno contra otro y dar un rozamiento que nadie aplicó.
2. El resultado es el empuje que el sistema _puede_ aguantar: se halló una manera de repartir las fuerzas. El rozamiento seco no garantiza que se repartan así. El margen de la norma cubre esto.

Un puntal sin correa cuya base resbala no añade nada hasta que se amarre su base.

Se empuja cada vehículo, en cualquier orden del texto. El programa lineal da lo más que permite cualquier equilibrio de fuerzas. El modelo en el espacio empuja despacio y cuenta el rozamiento solo de la carga presente: un crib apretado que no lleva nada no añade rozamiento. Se muestra el menor de los dos. De una capacidad cuenta la parte que la norma deja usar. Los frenos no se cuentan. Un kingpin sin tractor en el plan no sostiene nada.

## Fuentes

- 10 % de la carga vertical, de lado: _FEMA Rescue Specialist course_, módulo 1A.
- Un reparto que se equilibra y no pasa ningún límite es una cota inferior: de memoria, análisis límite.
- Rozamiento: las líneas de la superficie y de la norma. Bajo un vehículo que está sobre su costado o su techo: el \`body friction\` de la superficie, en su extremo bajo.

## Inseguro

\`\`\`crib
use "library/vehicles.crib"

policy Careful : Shipped {
  push margin 60 %
}

plan "Solo sobre sus ruedas" {
  ground { surface asphalt; grade 0 % toward rear }
  policy Careful
  vehicle trailer : VanTrailer53 { // push-margin
    cargo "mercancía" 40,000 lb from 4 ft to 48 ft height 8 ft
  }
}
\`\`\`

\`\`\`crib
use "library/vehicles.crib"

plan "Sobre su costado, en pendiente" {
  ground { surface concrete; grade 4 % toward front }
  vehicle truck : StraightTruck { // push-margin
    position on its driver side
    cargo   "mercancía" 8,000 lb from 10 ft to 28 ft height 60 in
  }
}
\`\`\`

## Seguro

\`\`\`crib
use "library/vehicles.crib"

plan "Calzado, y bajo" {
  ground { surface asphalt; grade 0 % toward rear }
  vehicle trailer : VanTrailer53 {
    cargo "placa de acero" 20,000 lb from 4 ft to 48 ft height 5 ft
    coupled to tractor
  }
  vehicle tractor : DayCabTractor { at -16 ft, center }
  chock K9 { under tractor; holds both directions }
  chock K1 { under trailer; holds both directions }
}
\`\`\`
`,
  },
  'size-up-missing': {
    en: `# size-up-missing: size-up incomplete

## What it protects against

Fuel, batteries, cargo and the energy stored in brakes injure crews who did not check for them.

## Calculation

None. The plan must state what was found for fuel, battery, cargo and brakes.

## Sources

- Common practice, no source.

## Unsafe

\`\`\`crib
use "library/vehicles.crib"

plan "Brakes not stated" {
  vehicle trailer : VanTrailer53
  size up { // size-up-missing
    fuel    "none on the trailer"
    battery "none"
    cargo   "paper on pallets"
  }
}
\`\`\`

## Safe

\`\`\`crib
use "library/vehicles.crib"

plan "All four stated" {
  vehicle trailer : VanTrailer53
  size up {
    fuel    "none on the trailer"
    battery "none"
    cargo   "paper on pallets"
    brakes  "spring brakes set"
  }
}
\`\`\`
`,
    es: `# size-up-missing: evaluación incompleta

## Contra qué protege

El combustible, las baterías, la carga y la energía guardada en los frenos hieren a los equipos que no los revisaron.

## Cálculo

Ninguno. El plan debe indicar qué se encontró del combustible, la batería, la carga y los frenos.

## Fuentes

- Práctica común, sin fuente.

## Inseguro

\`\`\`crib
use "library/vehicles.crib"

plan "Frenos no indicados" {
  vehicle trailer : VanTrailer53
  size up { // size-up-missing
    fuel    "ninguno en el remolque"
    battery "ninguna"
    cargo   "papel en tarimas"
  }
}
\`\`\`

## Seguro

\`\`\`crib
use "library/vehicles.crib"

plan "Los cuatro indicados" {
  vehicle trailer : VanTrailer53
  size up {
    fuel    "ninguno en el remolque"
    battery "ninguna"
    cargo   "papel en tarimas"
    brakes  "frenos de resorte puestos"
  }
}
\`\`\`
`,
  },
  'slid-in-unchecked': {
    en: `# slid-in-unchecked: slid-in crib not checked

## What it protects against

The far contacts of a crib that was slid in are out of sight. They may not meet the part that they are meant to carry.

## Calculation

No calculation. The check requires that, for each crib that is marked \`slid in\` or that a \`slide\` step moves into place, a later step checks the crib.

## Sources

- Common practice, no source.

## Unsafe

\`\`\`crib
use "library/vehicles.crib"

plan "Nobody looks at the far side" {
  vehicle trailer : VanTrailer53 {
    cargo "freight" 20,000 lb from 4 ft to 48 ft
  }
  crib A {
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   11
    wedges    1 pair, 0.5 to 2 in
    at        19 ft 6 in, driver side 3 ft 6.75 in
    captures  rail, joists
    slid in // slid-in-unchecked
  }
  steps {
    1 build A
  }
}
\`\`\`

## Safe

\`\`\`crib
use "library/vehicles.crib"

plan "The far side is checked" {
  vehicle trailer : VanTrailer53 {
    cargo "freight" 20,000 lb from 4 ft to 48 ft
  }
  crib A {
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   11
    wedges    1 pair, 0.5 to 2 in
    at        19 ft 6 in, driver side 3 ft 6.75 in
    captures  rail, joists
    slid in
  }
  steps {
    1 build A
    2 check A
  }
}
\`\`\`
`,
    es: `# slid-in-unchecked: crib deslizado sin revisar

## Contra qué protege

Los contactos del lado lejano de un crib que se deslizó a su lugar no se ven. Puede que no toquen la parte que deben cargar.

## Cálculo

No hay cálculo. La verificación exige que un paso posterior revise cada crib marcado \`slid in\` o que un paso \`slide\` mueve a su lugar.

## Fuentes

- Práctica común, sin fuente.

## Inseguro

\`\`\`crib
use "library/vehicles.crib"

plan "Nadie mira el lado lejano" {
  vehicle trailer : VanTrailer53 {
    cargo "mercancía" 20,000 lb from 4 ft to 48 ft
  }
  crib A {
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   11
    wedges    1 pair, 0.5 to 2 in
    at        19 ft 6 in, driver side 3 ft 6.75 in
    captures  rail, joists
    slid in // slid-in-unchecked
  }
  steps {
    1 build A
  }
}
\`\`\`

## Seguro

\`\`\`crib
use "library/vehicles.crib"

plan "Se revisa el lado lejano" {
  vehicle trailer : VanTrailer53 {
    cargo "mercancía" 20,000 lb from 4 ft to 48 ft
  }
  crib A {
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   11
    wedges    1 pair, 0.5 to 2 in
    at        19 ft 6 in, driver side 3 ft 6.75 in
    captures  rail, joists
    slid in
  }
  steps {
    1 build A
    2 check A
  }
}
\`\`\`
`,
  },
  'stage-moves': {
    en: `# stage-moves: rolls, slides or tips at a stage

## What it protects against

A vehicle may roll, slide or tip while supports and chocks are put in or taken out.

## Calculation

Each step that puts something in or takes something out makes a stage. At each stage all forces and moments on every vehicle, every crib and every strut base must balance, with friction no greater than the load that is there allows:

    pull downhill = weight × sin(grade)
    what holds    = friction × load on the wheels that cannot roll, plus cribs, struts and straps that carry load

A wheel rolls unless a chock stops it that way, or the plan states that the brakes are set. An axle in the front third of a vehicle has no parking brake. A new support starts at zero load, or at its preload. A vehicle that is stated as pitched stands on ground that slopes as much.

The ranges are tried all lightest, all heaviest, and at each end of each vehicle with the others at their heaviest. Bodies are rigid. The forces are exact where statics decides them; how cribs share load follows their stiffness, which is known roughly. What is lost at a stage is checked by loss-moves.

## Sources

- The incline: OpenStax University Physics, volume 1, section 6.2.
- Brakes by axle, and each stage as a system of its own: common practice, no source.

## Unsafe

\`\`\`crib
use "library/vehicles.crib"

plan "Chocks taken out on a grade" {
  ground { surface asphalt; grade 8 % toward rear }
  vehicle truck : StraightTruck {
    cargo   "freight" 8,000 lb from 10 ft to 28 ft height 6 ft
    brakes  released
  }
  chock K1 { under truck; holds both directions }
  steps {
    1 chock truck
    2 remove K1 // stage-moves
    3 chock K1
  }
}
\`\`\`

## Safe

\`\`\`crib
use "library/vehicles.crib"

plan "Chocks left in" {
  ground { surface asphalt; grade 8 % toward rear }
  vehicle truck : StraightTruck {
    cargo   "freight" 8,000 lb from 10 ft to 28 ft height 6 ft
    brakes  released
  }
  chock K1 { under truck; holds both directions }
  steps {
    1 chock K1
  }
}
\`\`\`
`,
    es: `# stage-moves: rueda, resbala o vuelca en una etapa

## Contra qué protege

Un vehículo puede rodar, resbalar o volcar mientras se ponen o se quitan apoyos y calzas.

## Cálculo

Cada paso que pone o quita algo forma una etapa. En cada etapa se deben equilibrar todas las fuerzas y momentos sobre cada vehículo, cada crib y cada base de puntal, con un rozamiento no mayor que el que permite la carga presente:

    tiro cuesta abajo = peso × sin(pendiente)
    lo que aguanta    = rozamiento × carga en las ruedas que no pueden rodar, más los cribs, puntales y correas que llevan carga

Una rueda rueda si ninguna calza la detiene en ese sentido, a no ser que el plan indique que los frenos están puestos. Un eje en el tercio delantero de un vehículo no tiene freno de estacionamiento. Un apoyo nuevo empieza sin carga, o con su precarga. Un vehículo que se indica inclinado hacia adelante o hacia atrás está sobre un suelo con esa misma pendiente.

Los intervalos se prueban todos en su menor peso, todos en su mayor peso, y en cada extremo de cada vehículo con los demás en su mayor peso. Los cuerpos son rígidos. Las fuerzas son exactas donde la estática las decide; cómo se reparten la carga los cribs depende de su rigidez, que se conoce solo de forma aproximada. Lo que se pierde en una etapa que no es la última se comprueba solo con fuerzas verticales (stage-unsafe).

## Fuentes

- El plano inclinado: _OpenStax University Physics_, volumen 1, sección 6.2.
- Frenos por eje, y cada etapa como un sistema aparte: práctica común, sin fuente.

## Inseguro

\`\`\`crib
use "library/vehicles.crib"

plan "Calzas quitadas en una pendiente" {
  ground { surface asphalt; grade 8 % toward rear }
  vehicle truck : StraightTruck {
    cargo   "mercancía" 8,000 lb from 10 ft to 28 ft height 6 ft
    brakes  released
  }
  chock K1 { under truck; holds both directions }
  steps {
    1 chock truck
    2 remove K1 // stage-moves
    3 chock K1
  }
}
\`\`\`

## Seguro

\`\`\`crib
use "library/vehicles.crib"

plan "Calzas que se quedan" {
  ground { surface asphalt; grade 8 % toward rear }
  vehicle truck : StraightTruck {
    cargo   "mercancía" 8,000 lb from 10 ft to 28 ft height 6 ft
    brakes  released
  }
  chock K1 { under truck; holds both directions }
  steps {
    1 chock K1
  }
}
\`\`\`
`,
  },
  'stage-unsafe': {
    en: `# stage-unsafe: plan unsafe while partly built

## What it protects against

A stabilization system that holds when complete can fail while it is built or taken down.

## Calculation

Each step that puts something in or takes something out makes a stage. Every vehicle must rest on its supports at each stage. If a vehicle is held after the loss of a support at one stage, it must also be held after that loss at the next stage.

    step 1 builds cribs A and B: the front of the trailer is held
    step 2 takes crib B away: the front corner on that side is no longer held

A support that carried the load before a new one was placed keeps carrying it. A new support starts at zero load, or at the preload of its wedges, and shares only later changes.

## Sources

- Each stage is checked as a system of its own: common practice, no source.

## Unsafe

\`\`\`crib
use "library/vehicles.crib"

vehicle type DroppedTrailer : VanTrailer53 {
  points kingpin {
    carries 5,000 to 6,400 lb empty stiffness 20,000 lb per in raised
  }
}

plan "A crib taken out and put back" {
  ground { surface asphalt; grade 0 % toward rear }
  vehicle trailer : DroppedTrailer {
    cargo "freight" 20,000 lb from 4 ft to 48 ft height 5 ft
  }
  crib A {
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   11
    wedges    4 pairs
    at        19 ft 6 in, driver side 3 ft 6.75 in
    captures  rail, joists
  }
  crib B {
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   11
    wedges    4 pairs
    at        19 ft 6 in, passenger side 3 ft 6.75 in
    captures  rail, joists
  }
  steps {
    1 build A, B
    2 remove B // stage-unsafe
    3 build B
  }
}
\`\`\`

## Safe

\`\`\`crib
use "library/vehicles.crib"

vehicle type DroppedTrailer : VanTrailer53 {
  points kingpin {
    carries 5,000 to 6,400 lb empty stiffness 20,000 lb per in raised
  }
}

plan "Built without removal" {
  ground { surface asphalt; grade 0 % toward rear }
  vehicle trailer : DroppedTrailer {
    cargo "freight" 20,000 lb from 4 ft to 48 ft height 5 ft
  }
  crib A {
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   11
    wedges    4 pairs
    at        19 ft 6 in, driver side 3 ft 6.75 in
    captures  rail, joists
  }
  crib B {
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   11
    wedges    4 pairs
    at        19 ft 6 in, passenger side 3 ft 6.75 in
    captures  rail, joists
  }
  steps {
    1 build A
    2 build B
  }
}
\`\`\`
`,
    es: `# stage-unsafe: plan inseguro a medio armar

## Contra qué protege

Un sistema de estabilización que aguanta completo puede fallar mientras se arma o se desmonta.

## Cálculo

Cada paso que pone o quita algo forma una etapa. En cada etapa todo vehículo debe descansar en sus apoyos. Si un vehículo queda sostenido después de perder un apoyo en una etapa, también debe quedar sostenido después de esa pérdida en la etapa siguiente.

    el paso 1 arma los cribs A y B: el frente del remolque está sostenido
    el paso 2 quita el crib B: la esquina delantera de ese lado ya no está sostenida

Un apoyo que llevaba la carga antes de poner uno nuevo la sigue llevando. Un apoyo nuevo empieza sin carga, o con la precarga de sus cuñas, y comparte solo los cambios que vienen después.

## Fuentes

- Cada etapa se comprueba como un sistema aparte: práctica común, sin fuente.

## Inseguro

\`\`\`crib
use "library/vehicles.crib"

vehicle type DroppedTrailer : VanTrailer53 {
  points kingpin {
    carries 5,000 to 6,400 lb empty stiffness 20,000 lb per in raised
  }
}

plan "Un crib quitado y puesto otra vez" {
  ground { surface asphalt; grade 0 % toward rear }
  vehicle trailer : DroppedTrailer {
    cargo "mercancía" 20,000 lb from 4 ft to 48 ft height 5 ft
  }
  crib A {
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   11
    wedges    4 pairs
    at        19 ft 6 in, driver side 3 ft 6.75 in
    captures  rail, joists
  }
  crib B {
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   11
    wedges    4 pairs
    at        19 ft 6 in, passenger side 3 ft 6.75 in
    captures  rail, joists
  }
  steps {
    1 build A, B
    2 remove B // stage-unsafe
    3 build B
  }
}
\`\`\`

## Seguro

\`\`\`crib
use "library/vehicles.crib"

vehicle type DroppedTrailer : VanTrailer53 {
  points kingpin {
    carries 5,000 to 6,400 lb empty stiffness 20,000 lb per in raised
  }
}

plan "Armado sin quitar nada" {
  ground { surface asphalt; grade 0 % toward rear }
  vehicle trailer : DroppedTrailer {
    cargo "mercancía" 20,000 lb from 4 ft to 48 ft height 5 ft
  }
  crib A {
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   11
    wedges    4 pairs
    at        19 ft 6 in, driver side 3 ft 6.75 in
    captures  rail, joists
  }
  crib B {
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   11
    wedges    4 pairs
    at        19 ft 6 in, passenger side 3 ft 6.75 in
    captures  rail, joists
  }
  steps {
    1 build A
    2 build B
  }
}
\`\`\`
`,
  },
  'strut-angle': {
    en: `# strut-angle: strut too flat, too steep, or not at its stated angle

## What it protects against

A flat strut pushes its base out more than it pushes up. A steep strut holds nothing sideways.

## Calculation

    angle = arctan(rise ÷ run)

The rise is from base to head, the run is along the ground. The rule always calculates the angle from head and base. It never relies on the stated angle alone. Limits of the shipped policy: at least 45 deg, at most 75 deg.

## Sources

- About 45 deg and not flatter: common practice, no source.
- 45 deg usual, 60 deg maximum for rakers: from memory, US Army Corps of Engineers Shoring Operations Guide, section 2.

## Unsafe

\`\`\`crib
use "library/vehicles.crib"
use "library/gear.crib"
use "library/ties.crib"

plan "Base too far out" {
  vehicle trailer : VanTrailer53 {
    cargo "freight" 20,000 lb from 4 ft to 48 ft
  }
  strut S1 : Strut4to8ft {
    head  trailer rail near 14 ft, driver side
    base  6 ft out // strut-angle
    lock  pinned
  }
  strut S2 : Strut4to8ft {
    head  trailer rail near 14 ft, passenger side
    base  3 ft 4 in out
    lock  pinned
  }
  strap T1 : RatchetStrap2in { from S1 base to S2 base }
}
\`\`\`

\`\`\`crib fixed
    base  3 ft 4 in out
\`\`\`

## Safe

\`\`\`crib
use "library/vehicles.crib"
use "library/gear.crib"
use "library/ties.crib"

plan "At 45 degrees" {
  vehicle trailer : VanTrailer53 {
    cargo "freight" 20,000 lb from 4 ft to 48 ft
  }
  strut S1 : Strut4to8ft {
    head  trailer rail near 14 ft, driver side
    base  3 ft 4 in out
    lock  pinned
  }
  strut S2 : Strut4to8ft {
    head  trailer rail near 14 ft, passenger side
    base  3 ft 4 in out
    lock  pinned
  }
  strap T1 : RatchetStrap2in { from S1 base to S2 base }
}
\`\`\`
`,
    es: `# strut-angle: puntal demasiado tendido, demasiado empinado, o distinto de su ángulo indicado

## Contra qué protege

Un puntal tendido empuja su base más hacia afuera que hacia arriba. Un puntal empinado no sostiene nada de lado.

## Cálculo

    ángulo = arctan(subida ÷ recorrido)

La subida va de la base a la cabeza, el recorrido va por el suelo. La regla calcula siempre el ángulo con la cabeza y la base. Nunca se fía solo del ángulo indicado. Límites de la norma que viene con la herramienta: al menos 45 deg, como mucho 75 deg.

## Fuentes

- Unos 45 deg y no más tendido: práctica común, sin fuente.
- 45 deg usual, 60 deg máximo para puntales inclinados de apuntalamiento: de memoria, _US Army Corps of Engineers Shoring Operations Guide_, sección 2.

## Inseguro

\`\`\`crib
use "library/vehicles.crib"
use "library/gear.crib"
use "library/ties.crib"

plan "Base demasiado afuera" {
  vehicle trailer : VanTrailer53 {
    cargo "mercancía" 20,000 lb from 4 ft to 48 ft
  }
  strut S1 : Strut4to8ft {
    head  trailer rail near 14 ft, driver side
    base  6 ft out // strut-angle
    lock  pinned
  }
  strut S2 : Strut4to8ft {
    head  trailer rail near 14 ft, passenger side
    base  3 ft 4 in out
    lock  pinned
  }
  strap T1 : RatchetStrap2in { from S1 base to S2 base }
}
\`\`\`

\`\`\`crib fixed
    base  3 ft 4 in out
\`\`\`

## Seguro

\`\`\`crib
use "library/vehicles.crib"
use "library/gear.crib"
use "library/ties.crib"

plan "A 45 grados" {
  vehicle trailer : VanTrailer53 {
    cargo "mercancía" 20,000 lb from 4 ft to 48 ft
  }
  strut S1 : Strut4to8ft {
    head  trailer rail near 14 ft, driver side
    base  3 ft 4 in out
    lock  pinned
  }
  strut S2 : Strut4to8ft {
    head  trailer rail near 14 ft, passenger side
    base  3 ft 4 in out
    lock  pinned
  }
  strap T1 : RatchetStrap2in { from S1 base to S2 base }
}
\`\`\`
`,
  },
  'strut-head': {
    en: `# strut-head: strut head on a part that moves or cannot bear

## What it protects against

A strut head on a door, a hood, a sprung cab or sheet metal slips or tears out under load.

## Calculation

The head must lie under the part:

    distance from the head to the edge of the part ≤ joist reach (2 in)

## Sources

- Common practice, no source.

## Unsafe

\`\`\`crib
use "library/vehicles.crib"
use "library/gear.crib"
use "library/ties.crib"

plan "Head on the raised legs" {
  vehicle trailer : VanTrailer53 {
    cargo "freight" 20,000 lb from 4 ft to 48 ft
  }
  strut S1 : Strut4to8ft {
    head  trailer legs near 9 ft, driver side // strut-head
    base  3 ft 4 in out
    lock  pinned
  }
  strut S2 : Strut4to8ft {
    head  trailer rail near 14 ft, passenger side
    base  3 ft 4 in out
    lock  pinned
  }
  strap T1 : RatchetStrap2in { from S1 base to S2 base }
}
\`\`\`

## Safe

\`\`\`crib
use "library/vehicles.crib"
use "library/gear.crib"
use "library/ties.crib"

plan "Heads under the rails" {
  vehicle trailer : VanTrailer53 {
    cargo "freight" 20,000 lb from 4 ft to 48 ft
  }
  strut S1 : Strut4to8ft {
    head  trailer rail near 14 ft, driver side
    base  3 ft 4 in out
    lock  pinned
  }
  strut S2 : Strut4to8ft {
    head  trailer rail near 14 ft, passenger side
    base  3 ft 4 in out
    lock  pinned
  }
  strap T1 : RatchetStrap2in { from S1 base to S2 base }
}
\`\`\`
`,
    es: `# strut-head: cabeza de puntal en una parte que se mueve o no puede llevar carga

## Contra qué protege

Una cabeza de puntal en una puerta, un capó, una cabina con resortes o una chapa resbala o se desgarra con la carga.

## Cálculo

La cabeza debe estar bajo la parte:

    distancia de la cabeza al borde de la parte ≤ alcance hasta la vigueta (2 in)

## Fuentes

- Práctica común, sin fuente.

## Inseguro

\`\`\`crib
use "library/vehicles.crib"
use "library/gear.crib"
use "library/ties.crib"

plan "Cabeza en las patas subidas" {
  vehicle trailer : VanTrailer53 {
    cargo "mercancía" 20,000 lb from 4 ft to 48 ft
  }
  strut S1 : Strut4to8ft {
    head  trailer legs near 9 ft, driver side // strut-head
    base  3 ft 4 in out
    lock  pinned
  }
  strut S2 : Strut4to8ft {
    head  trailer rail near 14 ft, passenger side
    base  3 ft 4 in out
    lock  pinned
  }
  strap T1 : RatchetStrap2in { from S1 base to S2 base }
}
\`\`\`

## Seguro

\`\`\`crib
use "library/vehicles.crib"
use "library/gear.crib"
use "library/ties.crib"

plan "Cabezas bajo los largueros" {
  vehicle trailer : VanTrailer53 {
    cargo "mercancía" 20,000 lb from 4 ft to 48 ft
  }
  strut S1 : Strut4to8ft {
    head  trailer rail near 14 ft, driver side
    base  3 ft 4 in out
    lock  pinned
  }
  strut S2 : Strut4to8ft {
    head  trailer rail near 14 ft, passenger side
    base  3 ft 4 in out
    lock  pinned
  }
  strap T1 : RatchetStrap2in { from S1 base to S2 base }
}
\`\`\`
`,
  },
  'strut-length': {
    en: `# strut-length: strut too short or too long

## What it protects against

A crew extends a strut that does not reach past its last hole, or sets it on something loose.

## Calculation

    length = √(run² + rise²)
    shortest ≤ length ≤ longest

## Sources

- Common practice, no source.

## Unsafe

\`\`\`crib
use "library/vehicles.crib"
use "library/gear.crib"
use "library/ties.crib"

plan "Strut too short" {
  vehicle trailer : VanTrailer53 {
    cargo "freight" 20,000 lb from 4 ft to 48 ft
  }
  strut S1 : Strut4to8ft {
    head  trailer rail near 14 ft, driver side
    base  9 ft out // strut-length
    lock  pinned
  }
  strut S2 : Strut4to8ft {
    head  trailer rail near 14 ft, passenger side
    base  3 ft 4 in out
    lock  pinned
  }
  strap T1 : RatchetStrap2in { from S1 base to S2 base }
}
\`\`\`

## Safe

\`\`\`crib
use "library/vehicles.crib"
use "library/gear.crib"
use "library/ties.crib"

plan "Within its range" {
  vehicle trailer : VanTrailer53 {
    cargo "freight" 20,000 lb from 4 ft to 48 ft
  }
  strut S1 : Strut4to8ft {
    head  trailer rail near 14 ft, driver side
    base  3 ft 4 in out
    lock  pinned
  }
  strut S2 : Strut4to8ft {
    head  trailer rail near 14 ft, passenger side
    base  3 ft 4 in out
    lock  pinned
  }
  strap T1 : RatchetStrap2in { from S1 base to S2 base }
}
\`\`\`
`,
    es: `# strut-length: puntal demasiado corto o demasiado largo

## Contra qué protege

Un equipo extiende el puntal que no llega más allá de su último agujero, o lo pone sobre algo suelto.

## Cálculo

    largo = √(recorrido² + subida²)
    largo mínimo ≤ largo ≤ largo máximo

## Fuentes

- Práctica común, sin fuente.

## Inseguro

\`\`\`crib
use "library/vehicles.crib"
use "library/gear.crib"
use "library/ties.crib"

plan "Puntal demasiado corto" {
  vehicle trailer : VanTrailer53 {
    cargo "mercancía" 20,000 lb from 4 ft to 48 ft
  }
  strut S1 : Strut4to8ft {
    head  trailer rail near 14 ft, driver side
    base  9 ft out // strut-length
    lock  pinned
  }
  strut S2 : Strut4to8ft {
    head  trailer rail near 14 ft, passenger side
    base  3 ft 4 in out
    lock  pinned
  }
  strap T1 : RatchetStrap2in { from S1 base to S2 base }
}
\`\`\`

## Seguro

\`\`\`crib
use "library/vehicles.crib"
use "library/gear.crib"
use "library/ties.crib"

plan "Dentro de su alcance" {
  vehicle trailer : VanTrailer53 {
    cargo "mercancía" 20,000 lb from 4 ft to 48 ft
  }
  strut S1 : Strut4to8ft {
    head  trailer rail near 14 ft, driver side
    base  3 ft 4 in out
    lock  pinned
  }
  strut S2 : Strut4to8ft {
    head  trailer rail near 14 ft, passenger side
    base  3 ft 4 in out
    lock  pinned
  }
  strap T1 : RatchetStrap2in { from S1 base to S2 base }
}
\`\`\`
`,
  },
  'strut-load': {
    en: `# strut-load: strut overloaded

## What it protects against

A strut loaded beyond its rating buckles without warning. The longer the strut, the lower its rating.

## Calculation

    load along the strut = upward part ÷ sin(angle)
    load ≤ rating at that length

The rating is the row of the manufacturer's table for that length. Between two rows, the rating of the longer length counts. Beyond the table there is no rating. A timber post is calculated by the NDS column formula.

## Sources

- Ratings: the type of the strut, with its source.
- Timber posts: NDS 2018, 3.7.1.

## Unsafe

\`\`\`crib
use "library/vehicles.crib"
use "library/gear.crib"
use "library/ties.crib"

plan "Strut without a rating" {
  vehicle trailer : VanTrailer53 {
    cargo "freight" 40,000 lb from 4 ft to 48 ft
  }
  strut S1 : UnratedStrut { // strut-load
    head  trailer rail near 14 ft, driver side
    base  3 ft 4 in out
    lock  pinned
  }
  strut S2 : UnratedStrut { // strut-load
    head  trailer rail near 14 ft, passenger side
    base  3 ft 4 in out
    lock  pinned
  }
  strap T1 : RatchetStrap2in { from S1 base to S2 base }
}
\`\`\`

## Safe

\`\`\`crib
use "library/vehicles.crib"
use "library/gear.crib"
use "library/ties.crib"

plan "Rated struts" {
  vehicle trailer : VanTrailer53 {
    cargo "freight" 4,000 lb from 4 ft to 48 ft
    coupled to tractor
  }
  vehicle tractor : DayCabTractor { at -16 ft, center }
  strut S1 : Strut4to8ft {
    head  trailer rail near 14 ft, driver side
    base  3 ft 4 in out
    lock  pinned
  }
  strut S2 : Strut4to8ft {
    head  trailer rail near 14 ft, passenger side
    base  3 ft 4 in out
    lock  pinned
  }
  strap T1 : RatchetStrap2in { from S1 base to S2 base }
}
\`\`\`
`,
    es: `# strut-load: puntal sobrecargado

## Contra qué protege

Un puntal cargado más allá de su valor nominal se pandea sin aviso. Cuanto más largo el puntal, menor su valor nominal.

## Cálculo

    carga a lo largo del puntal = parte hacia arriba ÷ sin(ángulo)
    carga ≤ valor nominal a ese largo

El valor nominal es la fila de la tabla del fabricante para ese largo. Entre dos filas cuenta el valor del largo mayor. Más allá de la tabla no hay valor. Un poste de madera se calcula con la fórmula de columnas de la NDS.

## Fuentes

- Valores nominales: el tipo del puntal, con su fuente.
- Postes de madera: NDS 2018, 3.7.1.

## Inseguro

\`\`\`crib
use "library/vehicles.crib"
use "library/gear.crib"
use "library/ties.crib"

plan "Puntal sin valor nominal" {
  vehicle trailer : VanTrailer53 {
    cargo "mercancía" 40,000 lb from 4 ft to 48 ft
  }
  strut S1 : UnratedStrut { // strut-load
    head  trailer rail near 14 ft, driver side
    base  3 ft 4 in out
    lock  pinned
  }
  strut S2 : UnratedStrut { // strut-load
    head  trailer rail near 14 ft, passenger side
    base  3 ft 4 in out
    lock  pinned
  }
  strap T1 : RatchetStrap2in { from S1 base to S2 base }
}
\`\`\`

## Seguro

\`\`\`crib
use "library/vehicles.crib"
use "library/gear.crib"
use "library/ties.crib"

plan "Puntales con valor nominal" {
  vehicle trailer : VanTrailer53 {
    cargo "mercancía" 4,000 lb from 4 ft to 48 ft
    coupled to tractor
  }
  vehicle tractor : DayCabTractor { at -16 ft, center }
  strut S1 : Strut4to8ft {
    head  trailer rail near 14 ft, driver side
    base  3 ft 4 in out
    lock  pinned
  }
  strut S2 : Strut4to8ft {
    head  trailer rail near 14 ft, passenger side
    base  3 ft 4 in out
    lock  pinned
  }
  strap T1 : RatchetStrap2in { from S1 base to S2 base }
}
\`\`\`
`,
  },
  'strut-lock': {
    en: `# strut-lock: strut without a mechanical lock

## What it protects against

A strut held only by oil or air comes down when a seal or a hose fails.

## Calculation

None. Pin the strut or set its lock collar before anyone relies on it.

## Sources

- Common practice, no source.

## Unsafe

\`\`\`crib
use "library/vehicles.crib"
use "library/gear.crib"
use "library/ties.crib"

plan "On its pump" {
  vehicle trailer : VanTrailer53 {
    cargo "freight" 20,000 lb from 4 ft to 48 ft
  }
  strut S1 : Strut4to8ft {
    head  trailer rail near 14 ft, driver side
    base  3 ft 4 in out
    lock  pump only // strut-lock
  }
  strut S2 : Strut4to8ft {
    head  trailer rail near 14 ft, passenger side
    base  3 ft 4 in out
    lock  pinned
  }
  strap T1 : RatchetStrap2in { from S1 base to S2 base }
}
\`\`\`

\`\`\`crib fixed
    lock  pinned
\`\`\`

## Safe

\`\`\`crib
use "library/vehicles.crib"
use "library/gear.crib"
use "library/ties.crib"

plan "Pinned" {
  vehicle trailer : VanTrailer53 {
    cargo "freight" 20,000 lb from 4 ft to 48 ft
  }
  strut S1 : Strut4to8ft {
    head  trailer rail near 14 ft, driver side
    base  3 ft 4 in out
    lock  pinned
  }
  strut S2 : Strut4to8ft {
    head  trailer rail near 14 ft, passenger side
    base  3 ft 4 in out
    lock  pinned
  }
  strap T1 : RatchetStrap2in { from S1 base to S2 base }
}
\`\`\`
`,
    es: `# strut-lock: puntal sin seguro mecánico

## Contra qué protege

Un puntal sostenido solo por aceite o aire baja cuando falla un sello o una manguera.

## Cálculo

Ninguno. Ponga el pasador al puntal, o apriete su collar de seguro, antes de que alguien confíe en él.

## Fuentes

- Práctica común, sin fuente.

## Inseguro

\`\`\`crib
use "library/vehicles.crib"
use "library/gear.crib"
use "library/ties.crib"

plan "Sobre su bomba" {
  vehicle trailer : VanTrailer53 {
    cargo "mercancía" 20,000 lb from 4 ft to 48 ft
  }
  strut S1 : Strut4to8ft {
    head  trailer rail near 14 ft, driver side
    base  3 ft 4 in out
    lock  pump only // strut-lock
  }
  strut S2 : Strut4to8ft {
    head  trailer rail near 14 ft, passenger side
    base  3 ft 4 in out
    lock  pinned
  }
  strap T1 : RatchetStrap2in { from S1 base to S2 base }
}
\`\`\`

\`\`\`crib fixed
    lock  pinned
\`\`\`

## Seguro

\`\`\`crib
use "library/vehicles.crib"
use "library/gear.crib"
use "library/ties.crib"

plan "Con pasador" {
  vehicle trailer : VanTrailer53 {
    cargo "mercancía" 20,000 lb from 4 ft to 48 ft
  }
  strut S1 : Strut4to8ft {
    head  trailer rail near 14 ft, driver side
    base  3 ft 4 in out
    lock  pinned
  }
  strut S2 : Strut4to8ft {
    head  trailer rail near 14 ft, passenger side
    base  3 ft 4 in out
    lock  pinned
  }
  strap T1 : RatchetStrap2in { from S1 base to S2 base }
}
\`\`\`
`,
  },
  'strut-one-sided': {
    en: `# strut-one-sided: struts on one side only

## What it protects against

Struts on one side only can push a vehicle over to the other side.

## Calculation

None. A vehicle with struts on one side needs struts on the other side too.

## Sources

- Common practice, no source.

## Unsafe

\`\`\`crib
use "library/vehicles.crib"
use "library/gear.crib"
use "library/ties.crib"

plan "Driver side only" {
  vehicle trailer : VanTrailer53 {
    cargo "freight" 20,000 lb from 4 ft to 48 ft
  }
  strut S1 : Strut4to8ft { // strut-one-sided
    head  trailer rail near 14 ft, driver side
    base  3 ft 4 in out
    lock  pinned
  }
}
\`\`\`

## Safe

\`\`\`crib
use "library/vehicles.crib"
use "library/gear.crib"
use "library/ties.crib"

plan "Both sides" {
  vehicle trailer : VanTrailer53 {
    cargo "freight" 20,000 lb from 4 ft to 48 ft
  }
  strut S1 : Strut4to8ft {
    head  trailer rail near 14 ft, driver side
    base  3 ft 4 in out
    lock  pinned
  }
  strut S2 : Strut4to8ft {
    head  trailer rail near 14 ft, passenger side
    base  3 ft 4 in out
    lock  pinned
  }
  strap T1 : RatchetStrap2in { from S1 base to S2 base }
}
\`\`\`
`,
    es: `# strut-one-sided: puntales de un solo lado

## Contra qué protege

Los puntales de un solo lado pueden empujar el vehículo hasta volcarlo hacia el otro.

## Cálculo

Ninguno. Un vehículo con puntales en un lado necesita puntales también en el otro.

## Fuentes

- Práctica común, sin fuente.

## Inseguro

\`\`\`crib
use "library/vehicles.crib"
use "library/gear.crib"
use "library/ties.crib"

plan "Solo el lado del conductor" {
  vehicle trailer : VanTrailer53 {
    cargo "mercancía" 20,000 lb from 4 ft to 48 ft
  }
  strut S1 : Strut4to8ft { // strut-one-sided
    head  trailer rail near 14 ft, driver side
    base  3 ft 4 in out
    lock  pinned
  }
}
\`\`\`

## Seguro

\`\`\`crib
use "library/vehicles.crib"
use "library/gear.crib"
use "library/ties.crib"

plan "Ambos lados" {
  vehicle trailer : VanTrailer53 {
    cargo "mercancía" 20,000 lb from 4 ft to 48 ft
  }
  strut S1 : Strut4to8ft {
    head  trailer rail near 14 ft, driver side
    base  3 ft 4 in out
    lock  pinned
  }
  strut S2 : Strut4to8ft {
    head  trailer rail near 14 ft, passenger side
    base  3 ft 4 in out
    lock  pinned
  }
  strap T1 : RatchetStrap2in { from S1 base to S2 base }
}
\`\`\`
`,
  },
  'strut-slip': {
    en: `# strut-slip: strut base slides

## What it protects against

A base that slides takes the strut away as soon as the load comes on. Without a strap such a strut holds nothing.

## Calculation

    friction needed = 1 ÷ tan(angle)          at 45 deg: 1

Friction alone holds a base only if cos(angle) ≤ friction × sin(angle). Otherwise a strap must pull back against the thrust.

The friction that counts is the lowest of three: base plate (policy), pad and surface. Under a post, and under a pad of timber or plywood, the friction of the surface with timber counts. Under anything else, the lowest friction of the surface counts.

## Sources

- The incline: OpenStax University Physics, volume 1, section 6.2.
- 0.3 under a base: OpenStax University Physics, volume 1, Table 6.1, metal on wood, moving.
- Timber and metal on each surface: the source given with the surface.

## Unsafe

\`\`\`crib
use "library/vehicles.crib"
use "library/gear.crib"
use "library/ties.crib"

plan "Untied" {
  vehicle trailer : VanTrailer53 {
    cargo "freight" 20,000 lb from 4 ft to 48 ft
  }
  strut S1 : Strut4to8ft {
    head  trailer rail near 14 ft, driver side
    base  3 ft 4 in out // strut-slip
    lock  pinned
  }
  strut S2 : Strut4to8ft {
    head  trailer rail near 14 ft, passenger side
    base  3 ft 4 in out // strut-slip
    lock  pinned
  }
}
\`\`\`

## Safe

\`\`\`crib
use "library/vehicles.crib"
use "library/gear.crib"
use "library/ties.crib"

plan "Tied base to base" {
  vehicle trailer : VanTrailer53 {
    cargo "freight" 20,000 lb from 4 ft to 48 ft
  }
  strut S1 : Strut4to8ft {
    head  trailer rail near 14 ft, driver side
    base  3 ft 4 in out
    lock  pinned
  }
  strut S2 : Strut4to8ft {
    head  trailer rail near 14 ft, passenger side
    base  3 ft 4 in out
    lock  pinned
  }
  strap T1 : RatchetStrap2in { from S1 base to S2 base }
}
\`\`\`
`,
    es: `# strut-slip: la base del puntal resbala

## Contra qué protege

Una base que resbala se lleva el puntal en cuanto llega la carga. Sin correa, ese puntal no sostiene nada.

## Cálculo

    rozamiento necesario = 1 ÷ tan(ángulo)          a 45 deg: 1

El rozamiento por sí solo sujeta una base únicamente si cos(ángulo) ≤ rozamiento × sin(ángulo). Si no, una correa debe tirar en contra del empuje.

El rozamiento que cuenta es el menor de tres: placa base (norma), placa y superficie. Bajo un poste, y bajo una placa de madera o contrachapado, cuenta el rozamiento de la superficie con madera. Bajo cualquier otra cosa, cuenta el menor rozamiento de la superficie.

## Fuentes

- El plano inclinado: _OpenStax University Physics_, volumen 1, sección 6.2.
- 0.3 bajo una base: _OpenStax University Physics_, volumen 1, tabla 6.1, metal sobre madera, en movimiento.
- Madera y metal en cada superficie: la fuente que se da con la superficie.

## Inseguro

\`\`\`crib
use "library/vehicles.crib"
use "library/gear.crib"
use "library/ties.crib"

plan "Sin amarrar" {
  vehicle trailer : VanTrailer53 {
    cargo "mercancía" 20,000 lb from 4 ft to 48 ft
  }
  strut S1 : Strut4to8ft {
    head  trailer rail near 14 ft, driver side
    base  3 ft 4 in out // strut-slip
    lock  pinned
  }
  strut S2 : Strut4to8ft {
    head  trailer rail near 14 ft, passenger side
    base  3 ft 4 in out // strut-slip
    lock  pinned
  }
}
\`\`\`

## Seguro

\`\`\`crib
use "library/vehicles.crib"
use "library/gear.crib"
use "library/ties.crib"

plan "Amarrados base con base" {
  vehicle trailer : VanTrailer53 {
    cargo "mercancía" 20,000 lb from 4 ft to 48 ft
  }
  strut S1 : Strut4to8ft {
    head  trailer rail near 14 ft, driver side
    base  3 ft 4 in out
    lock  pinned
  }
  strut S2 : Strut4to8ft {
    head  trailer rail near 14 ft, passenger side
    base  3 ft 4 in out
    lock  pinned
  }
  strap T1 : RatchetStrap2in { from S1 base to S2 base }
}
\`\`\`
`,
  },
  'tie-anchor': {
    en: `# tie-anchor: strap or chain on an anchor that may not hold

## What it protects against

A strap holds no more than its anchor holds.

## Calculation

    pull ≤ capacity of the anchor

State the capacity of an anchor in the ground. An unknown capacity never counts as enough.

## Sources

- Common practice, no source.

## Unsafe

\`\`\`crib
use "library/vehicles.crib"
use "library/gear.crib"
use "library/ties.crib"

plan "Anchor capacity not known" {
  vehicle trailer : VanTrailer53 {
    cargo "freight" 20,000 lb from 4 ft to 48 ft
  }
  strut S1 : Strut4to8ft {
    head  trailer rail near 14 ft, driver side
    base  3 ft 4 in out
    lock  pinned
  }
  strut S2 : Strut4to8ft {
    head  trailer rail near 14 ft, passenger side
    base  3 ft 4 in out
    lock  pinned
  }
  strap T1 : RatchetStrap2in { from S1 base to S2 base }
  anchor Tree {
    at    14 ft, driver side 30 ft
    holds unknown
  }
  strap T2 : RatchetStrap2in {
    from S1 base
    to   Tree // tie-anchor
  }
}
\`\`\`

## Safe

\`\`\`crib
use "library/vehicles.crib"
use "library/gear.crib"
use "library/ties.crib"

plan "Base to base" {
  vehicle trailer : VanTrailer53 {
    cargo "freight" 20,000 lb from 4 ft to 48 ft
  }
  strut S1 : Strut4to8ft {
    head  trailer rail near 14 ft, driver side
    base  3 ft 4 in out
    lock  pinned
  }
  strut S2 : Strut4to8ft {
    head  trailer rail near 14 ft, passenger side
    base  3 ft 4 in out
    lock  pinned
  }
  strap T1 : RatchetStrap2in { from S1 base to S2 base }
}
\`\`\`
`,
    es: `# tie-anchor: correa o cadena en un anclaje que quizá no aguante

## Contra qué protege

Una correa no aguanta más de lo que aguanta su anclaje.

## Cálculo

    tiro ≤ capacidad del anclaje

Indique la capacidad de un anclaje en el suelo. Una capacidad desconocida nunca cuenta como suficiente.

## Fuentes

- Práctica común, sin fuente.

## Inseguro

\`\`\`crib
use "library/vehicles.crib"
use "library/gear.crib"
use "library/ties.crib"

plan "Capacidad del anclaje desconocida" {
  vehicle trailer : VanTrailer53 {
    cargo "mercancía" 20,000 lb from 4 ft to 48 ft
  }
  strut S1 : Strut4to8ft {
    head  trailer rail near 14 ft, driver side
    base  3 ft 4 in out
    lock  pinned
  }
  strut S2 : Strut4to8ft {
    head  trailer rail near 14 ft, passenger side
    base  3 ft 4 in out
    lock  pinned
  }
  strap T1 : RatchetStrap2in { from S1 base to S2 base }
  anchor Tree {
    at    14 ft, driver side 30 ft
    holds unknown
  }
  strap T2 : RatchetStrap2in {
    from S1 base
    to   Tree // tie-anchor
  }
}
\`\`\`

## Seguro

\`\`\`crib
use "library/vehicles.crib"
use "library/gear.crib"
use "library/ties.crib"

plan "Base con base" {
  vehicle trailer : VanTrailer53 {
    cargo "mercancía" 20,000 lb from 4 ft to 48 ft
  }
  strut S1 : Strut4to8ft {
    head  trailer rail near 14 ft, driver side
    base  3 ft 4 in out
    lock  pinned
  }
  strut S2 : Strut4to8ft {
    head  trailer rail near 14 ft, passenger side
    base  3 ft 4 in out
    lock  pinned
  }
  strap T1 : RatchetStrap2in { from S1 base to S2 base }
}
\`\`\`
`,
  },
  'tie-load': {
    en: `# tie-load: strap or chain overloaded

## What it protects against

A strap that breaks lets both strut bases go at once.

## Calculation

    pull = load along the strut × (cos(angle) − friction × sin(angle)) ÷ share of the pull along the thrust
    pull ≤ working load limit

The share is the part of the pull in the direction in which the base would slide. A strap that rises from the base also lifts it. The share is then reduced by friction × rise ÷ length of the strap.

The pull is the larger of the pretension set by hand and the pull from the base.

## Sources

- Working load limits of unmarked straps and chains: 49 CFR 393.108.

## Unsafe

\`\`\`crib
use "library/vehicles.crib"
use "library/gear.crib"
use "library/ties.crib"

strap type NoTag {
  rating unknown
}

plan "Strap without a rating" {
  vehicle trailer : VanTrailer53 {
    cargo "freight" 40,000 lb from 4 ft to 48 ft
  }
  strut S1 : Strut4to8ft {
    head  trailer rail near 14 ft, driver side
    base  3 ft 4 in out
    lock  pinned
  }
  strut S2 : Strut4to8ft {
    head  trailer rail near 14 ft, passenger side
    base  3 ft 4 in out
    lock  pinned
  }
  strap T1 : NoTag { from S1 base to S2 base } // tie-load
}
\`\`\`

## Safe

\`\`\`crib
use "library/vehicles.crib"
use "library/gear.crib"
use "library/ties.crib"

plan "A chain" {
  vehicle trailer : VanTrailer53 {
    cargo "freight" 4,000 lb from 4 ft to 48 ft
    coupled to tractor
  }
  vehicle tractor : DayCabTractor { at -16 ft, center }
  strut S1 : Strut4to8ft {
    head  trailer rail near 14 ft, driver side
    base  3 ft 4 in out
    lock  pinned
  }
  strut S2 : Strut4to8ft {
    head  trailer rail near 14 ft, passenger side
    base  3 ft 4 in out
    lock  pinned
  }
  chain T1 : Chain70_3_8in { from S1 base to S2 base }
}
\`\`\`
`,
    es: `# tie-load: correa o cadena sobrecargada

## Contra qué protege

Una correa que se corta suelta las dos bases de puntal a la vez.

## Cálculo

    tiro = carga a lo largo del puntal × (cos(ángulo) − rozamiento × sin(ángulo)) ÷ parte del tiro en la dirección del empuje
    tiro ≤ carga límite de trabajo

Esa parte es la del tiro en la dirección en que resbalaría la base. Una correa que sube desde la base además la levanta. La parte se reduce entonces en rozamiento × subida ÷ largo de la correa.

El tiro es el mayor de dos: la pretensión puesta a mano y el tiro de la base.

## Fuentes

- Cargas límite de trabajo de correas y cadenas sin marca: 49 CFR 393.108.

## Inseguro

\`\`\`crib
use "library/vehicles.crib"
use "library/gear.crib"
use "library/ties.crib"

strap type NoTag {
  rating unknown
}

plan "Correa sin valor nominal" {
  vehicle trailer : VanTrailer53 {
    cargo "mercancía" 40,000 lb from 4 ft to 48 ft
  }
  strut S1 : Strut4to8ft {
    head  trailer rail near 14 ft, driver side
    base  3 ft 4 in out
    lock  pinned
  }
  strut S2 : Strut4to8ft {
    head  trailer rail near 14 ft, passenger side
    base  3 ft 4 in out
    lock  pinned
  }
  strap T1 : NoTag { from S1 base to S2 base } // tie-load
}
\`\`\`

## Seguro

\`\`\`crib
use "library/vehicles.crib"
use "library/gear.crib"
use "library/ties.crib"

plan "Una cadena" {
  vehicle trailer : VanTrailer53 {
    cargo "mercancía" 4,000 lb from 4 ft to 48 ft
    coupled to tractor
  }
  vehicle tractor : DayCabTractor { at -16 ft, center }
  strut S1 : Strut4to8ft {
    head  trailer rail near 14 ft, driver side
    base  3 ft 4 in out
    lock  pinned
  }
  strut S2 : Strut4to8ft {
    head  trailer rail near 14 ft, passenger side
    base  3 ft 4 in out
    lock  pinned
  }
  chain T1 : Chain70_3_8in { from S1 base to S2 base }
}
\`\`\`
`,
  },
  'tie-missing': {
    en: `# tie-missing: strut base not strapped

## What it protects against

A leaning strut pushes its own base out. Without a strap the base slides away and the load comes down.

## Calculation

    thrust at the base = force along the strut × cos(angle)

Do not rely on friction alone. Run a strap between the bases of two opposite struts, or from the base to an anchor.

## Sources

- Common practice, no source.

## Unsafe

\`\`\`crib
use "library/vehicles.crib"
use "library/gear.crib"
use "library/ties.crib"

plan "No strap" {
  vehicle trailer : VanTrailer53 {
    cargo "freight" 20,000 lb from 4 ft to 48 ft
  }
  strut S1 : Strut4to8ft { // tie-missing
    head  trailer rail near 14 ft, driver side
    base  3 ft 4 in out
    lock  pinned
  }
  strut S2 : Strut4to8ft { // tie-missing
    head  trailer rail near 14 ft, passenger side
    base  3 ft 4 in out
    lock  pinned
  }
}
\`\`\`

## Safe

\`\`\`crib
use "library/vehicles.crib"
use "library/gear.crib"
use "library/ties.crib"

plan "Strapped base to base" {
  vehicle trailer : VanTrailer53 {
    cargo "freight" 20,000 lb from 4 ft to 48 ft
  }
  strut S1 : Strut4to8ft {
    head  trailer rail near 14 ft, driver side
    base  3 ft 4 in out
    lock  pinned
  }
  strut S2 : Strut4to8ft {
    head  trailer rail near 14 ft, passenger side
    base  3 ft 4 in out
    lock  pinned
  }
  strap T1 : RatchetStrap2in { from S1 base to S2 base }
}
\`\`\`
`,
    es: `# tie-missing: base de puntal sin amarrar

## Contra qué protege

Un puntal inclinado empuja su propia base hacia afuera. Sin correa la base resbala y la carga baja.

## Cálculo

    empuje en la base = fuerza a lo largo del puntal × cos(ángulo)

No se fíe solo del rozamiento. Tienda una correa entre las bases de dos puntales opuestos, o de la base a un anclaje.

## Fuentes

- Práctica común, sin fuente.

## Inseguro

\`\`\`crib
use "library/vehicles.crib"
use "library/gear.crib"
use "library/ties.crib"

plan "Sin correa" {
  vehicle trailer : VanTrailer53 {
    cargo "mercancía" 20,000 lb from 4 ft to 48 ft
  }
  strut S1 : Strut4to8ft { // tie-missing
    head  trailer rail near 14 ft, driver side
    base  3 ft 4 in out
    lock  pinned
  }
  strut S2 : Strut4to8ft { // tie-missing
    head  trailer rail near 14 ft, passenger side
    base  3 ft 4 in out
    lock  pinned
  }
}
\`\`\`

## Seguro

\`\`\`crib
use "library/vehicles.crib"
use "library/gear.crib"
use "library/ties.crib"

plan "Amarrados base con base, con correa" {
  vehicle trailer : VanTrailer53 {
    cargo "mercancía" 20,000 lb from 4 ft to 48 ft
  }
  strut S1 : Strut4to8ft {
    head  trailer rail near 14 ft, driver side
    base  3 ft 4 in out
    lock  pinned
  }
  strut S2 : Strut4to8ft {
    head  trailer rail near 14 ft, passenger side
    base  3 ft 4 in out
    lock  pinned
  }
  strap T1 : RatchetStrap2in { from S1 base to S2 base }
}
\`\`\`
`,
  },
  'tipping': {
    en: `# tipping: vehicle tips over under a small push

## What it protects against

A vehicle with a high center of gravity near the edge of its supports tips over under a push or when its load shifts.

## Calculation

Moments about the line over which it would tip, with a push at the height of the center of gravity:

    push × height = weight × distance of the center of gravity inside that line
    push ÷ weight = distance ÷ height              36 in ÷ 90 in = 40 %

The distance is to the nearest line between the places that hold the vehicle up. On a grade it is measured from where the weight acts, height × grade downhill of the center of gravity. The height is the high end of its range. The worst combination of the ends of all ranges counts.

The policy sets the push that the vehicle must hold. This check is for vehicles without struts and ties. For vehicles with them, the rule push-margin checks the push from all sides.

## Sources

- Slip or tip: Baker & Haynes, Engineering Statics, chapter 9.
- Half the track over the height of the center of gravity: NHTSA rollover rulemaking, chapter V.
- The push that it must hold: the line of the policy.

## Unsafe

\`\`\`crib
use "library/vehicles.crib"

vehicle type TallTrailer : VanTrailer53 {
  center 60 to 70 in high
}

policy Careful : Shipped {
  push margin 40 %
}

plan "Stacked high" {
  ground { surface asphalt; grade 0 % toward rear }
  policy Careful
  vehicle trailer : TallTrailer { // tipping
    cargo "rolls of paper" 40,000 lb from 4 ft to 48 ft height 9 ft
  }
}
\`\`\`

## Safe

\`\`\`crib
use "library/vehicles.crib"

plan "Stacked low" {
  ground { surface asphalt; grade 0 % toward rear }
  vehicle trailer : VanTrailer53 {
    cargo "steel plate" 20,000 lb from 4 ft to 48 ft height 5 ft
  }
}
\`\`\`
`,
    es: `# tipping: el vehículo vuelca con un empuje pequeño

## Contra qué protege

Un vehículo con un centro de gravedad alto y cerca del borde de sus apoyos vuelca con un empujón, o cuando su carga se mueve.

## Cálculo

Momentos respecto a la línea sobre la que volcaría, con un empuje a la altura del centro de gravedad:

    empuje × altura = peso × distancia del centro de gravedad hacia dentro de esa línea
    empuje ÷ peso = distancia ÷ altura             36 in ÷ 90 in = 40 %

La distancia es a la línea más cercana entre los lugares que sostienen el vehículo. En una pendiente se mide desde donde actúa el peso, altura × pendiente cuesta abajo del centro de gravedad. La altura es el extremo alto de su intervalo. Cuenta la peor combinación de los extremos de todos los intervalos.

La norma fija el empuje que el vehículo debe aguantar. Esta comprobación es para vehículos sin puntales ni ataduras. Para los que los tienen, la regla push-margin comprueba el empuje desde todos los lados.

## Fuentes

- Resbalar o volcar: Baker y Haynes, _Engineering Statics_, capítulo 9.
- La mitad de la trocha sobre la altura del centro de gravedad: NHTSA, _rollover rulemaking_, capítulo V.
- El empuje que debe aguantar: la línea de la norma.

## Inseguro

\`\`\`crib
use "library/vehicles.crib"

vehicle type TallTrailer : VanTrailer53 {
  center 60 to 70 in high
}

policy Careful : Shipped {
  push margin 40 %
}

plan "Apilado alto" {
  ground { surface asphalt; grade 0 % toward rear }
  policy Careful
  vehicle trailer : TallTrailer { // tipping
    cargo "rollos de papel" 40,000 lb from 4 ft to 48 ft height 9 ft
  }
}
\`\`\`

## Seguro

\`\`\`crib
use "library/vehicles.crib"

plan "Apilado bajo" {
  ground { surface asphalt; grade 0 % toward rear }
  vehicle trailer : VanTrailer53 {
    cargo "placa de acero" 20,000 lb from 4 ft to 48 ft height 5 ft
  }
}
\`\`\`
`,
  },
  'unsupported-end': {
    en: `# unsupported-end: end not supported

## What it protects against

A vehicle whose supports do not surround its center of gravity falls toward the open side. Rust or friction can hold it for a while.

## Calculation

Draw a line around all places that hold the vehicle up. The vehicle rests only if its center of gravity is inside that line, at every end of the ranges of weight and place.

    trailer with no tractor and its landing gear up: only the tandem holds it
    tandem at 46 ft 6 in and 50 ft 6 in; center of gravity at about 27 ft
    27 ft is in front of 46 ft 6 in: the front falls

If several vehicles rest on each other and their weights are ranges, the check tries every combination of the ends, up to 256. If there are more, it does not try them all, and reports that it has not passed.

A vehicle on two supports only balances. That counts as not held.

The check calculates how every vehicle rests, also when one rests on another. It reports a fall only with proof: a motion in which the weight sinks and no support is pressed. If the check can prove neither, it says so, and the plan has not passed.

## Sources

- A body rests if its center of gravity is over its supports: from memory, any text on statics.
- What counts as a support: common practice, no source.

## Unsafe

\`\`\`crib
use "library/vehicles.crib"

vehicle type DroppedTrailer : VanTrailer53 {
  points kingpin {
    carries 5,000 to 6,400 lb empty stiffness 20,000 lb per in raised
  }
}

plan "No tractor, legs up" {
  ground { surface asphalt; grade 0 % toward rear }
  vehicle trailer : DroppedTrailer { // unsupported-end
    cargo "freight" 20,000 lb from 4 ft to 48 ft
  }
}
\`\`\`

## Safe

\`\`\`crib
use "library/vehicles.crib"

plan "On its kingpin and its tandem" {
  ground { surface asphalt; grade 0 % toward rear }
  vehicle trailer : VanTrailer53 {
    cargo "freight" 20,000 lb from 4 ft to 48 ft
  }
}
\`\`\`
`,
    es: `# unsupported-end: extremo sin apoyo

## Contra qué protege

Un vehículo cuyos apoyos no rodean su centro de gravedad cae hacia el lado abierto. El óxido o el rozamiento lo pueden sostener un rato.

## Cálculo

Trace una línea alrededor de todos los lugares que sostienen el vehículo. El vehículo descansa solo si su centro de gravedad está dentro de esa línea, en cada extremo de los intervalos de peso y posición.

    remolque sin tractor y con las patas de apoyo subidas: solo lo sostiene el tándem
    tándem a 46 ft 6 in y 50 ft 6 in; centro de gravedad a unos 27 ft
    27 ft está delante de 46 ft 6 in: el frente cae

Si varios vehículos descansan unos sobre otros y sus pesos son intervalos, la comprobación prueba todas las combinaciones de los extremos, hasta 256. Si hay más, no las prueba todas, y no se da por buena.

Un vehículo sobre dos apoyos apenas queda en equilibrio. Eso cuenta como no sostenido.

La comprobación calcula cómo descansa cada vehículo, también cuando uno descansa sobre otro. Señala una caída solo con prueba: un movimiento en que el peso baja y ningún apoyo queda apretado. Si no puede probar ni lo uno ni lo otro, lo dice, y el plan no se da por bueno.

## Fuentes

- Un cuerpo descansa si su centro de gravedad está sobre sus apoyos: de memoria, cualquier texto de estática.
- Qué cuenta como apoyo: práctica común, sin fuente.

## Inseguro

\`\`\`crib
use "library/vehicles.crib"

vehicle type DroppedTrailer : VanTrailer53 {
  points kingpin {
    carries 5,000 to 6,400 lb empty stiffness 20,000 lb per in raised
  }
}

plan "Sin tractor, patas subidas" {
  ground { surface asphalt; grade 0 % toward rear }
  vehicle trailer : DroppedTrailer { // unsupported-end
    cargo "mercancía" 20,000 lb from 4 ft to 48 ft
  }
}
\`\`\`

## Seguro

\`\`\`crib
use "library/vehicles.crib"

plan "Sobre su kingpin y su tándem" {
  ground { surface asphalt; grade 0 % toward rear }
  vehicle trailer : VanTrailer53 {
    cargo "mercancía" 20,000 lb from 4 ft to 48 ft
  }
}
\`\`\`
`,
  },
  'upper-on-unstable-lower': {
    en: `# upper-on-unstable-lower: lower vehicle not stabilized

## What it protects against

A car on its own springs and tires rocks and sinks under the truck that rests on it.

## Calculation

None. A vehicle with another vehicle resting on it needs cribs or step chocks of its own.

## Sources

- Common practice, no source.

## Unsafe

\`\`\`crib
use "library/vehicles.crib"

plan "The car is not held" {
  vehicle trailer : VanTrailer53 {
    cargo "freight" 20,000 lb from 4 ft to 48 ft
  }
  vehicle car : Sedan { // upper-on-unstable-lower
    at      25 ft, passenger side 1 ft
    heading across to passenger side
    bears   trailer at rail from 23 ft 6 in to 26 ft 6 in
  }
  crib A {
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   11
    wedges    1 pair, 0.5 to 2 in
    at        19 ft 6 in, driver side 3 ft 6.75 in
    captures  rail, joists
  }
}
\`\`\`

## Safe

\`\`\`crib
use "library/vehicles.crib"

plan "The car is held" {
  vehicle trailer : VanTrailer53 {
    cargo "freight" 20,000 lb from 4 ft to 48 ft
  }
  vehicle car : Sedan {
    at      25 ft, passenger side 1 ft
    heading across to passenger side
    bears   trailer at rail from 23 ft 6 in to 26 ft 6 in
  }
  crib C1 {
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   2
    wedges    1 pair, 0.5 to 2 in
    at        22 ft, driver side 6 ft 6 in
    captures  car rocker
  }
  crib A {
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   11
    wedges    1 pair, 0.5 to 2 in
    at        19 ft 6 in, driver side 3 ft 6.75 in
    captures  rail, joists
  }
}
\`\`\`
`,
    es: `# upper-on-unstable-lower: vehículo de abajo sin estabilizar

## Contra qué protege

Un auto sobre sus propios resortes y neumáticos se mece y se hunde bajo el camión que descansa sobre él.

## Cálculo

Ninguno. Un vehículo con otro encima necesita cribs o calzas escalonadas propias.

## Fuentes

- Práctica común, sin fuente.

## Inseguro

\`\`\`crib
use "library/vehicles.crib"

plan "El auto no está sostenido" {
  vehicle trailer : VanTrailer53 {
    cargo "mercancía" 20,000 lb from 4 ft to 48 ft
  }
  vehicle car : Sedan { // upper-on-unstable-lower
    at      25 ft, passenger side 1 ft
    heading across to passenger side
    bears   trailer at rail from 23 ft 6 in to 26 ft 6 in
  }
  crib A {
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   11
    wedges    1 pair, 0.5 to 2 in
    at        19 ft 6 in, driver side 3 ft 6.75 in
    captures  rail, joists
  }
}
\`\`\`

## Seguro

\`\`\`crib
use "library/vehicles.crib"

plan "El auto está sostenido" {
  vehicle trailer : VanTrailer53 {
    cargo "mercancía" 20,000 lb from 4 ft to 48 ft
  }
  vehicle car : Sedan {
    at      25 ft, passenger side 1 ft
    heading across to passenger side
    bears   trailer at rail from 23 ft 6 in to 26 ft 6 in
  }
  crib C1 {
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   2
    wedges    1 pair, 0.5 to 2 in
    at        22 ft, driver side 6 ft 6 in
    captures  car rocker
  }
  crib A {
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   11
    wedges    1 pair, 0.5 to 2 in
    at        19 ft 6 in, driver side 3 ft 6.75 in
    captures  rail, joists
  }
}
\`\`\`
`,
  },
  'weight-sum': {
    en: `# weight-sum: weights do not add up

## What it protects against

A wrong weight makes every load in the plan wrong.

## Calculation

    stated empty weight = sum of the empty loads on the axles and the kingpin

The rule accepts a difference of 2 % either way: scales and manufacturers' sheets differ by that much. If the load on the kingpin is not stated, the axles alone must not carry more than the whole weight.

## Sources

- The addition: statics. The 2 %: common practice, no source.

## Unsafe

\`\`\`crib
use "library/vehicles.crib"

plan "Two weights for one truck" {
  vehicle truck : StraightTruck {
    weight  31,500 lb // weight-sum
  }
}
\`\`\`

## Safe

\`\`\`crib
use "library/vehicles.crib"

plan "One weight" {
  vehicle truck : StraightTruck {
    weight  12,500 to 14,500 lb
  }
}
\`\`\`
`,
    es: `# weight-sum: pesos que no suman

## Contra qué protege

Un peso equivocado hace falsas todas las cargas del plan.

## Cálculo

    peso en vacío indicado = suma de las cargas en vacío sobre los ejes y el kingpin

La regla acepta una diferencia del 2 % en cualquier sentido: las básculas y las hojas de los fabricantes difieren en eso. Si no se indica la carga en el kingpin, los ejes solos no deben llevar más que el peso entero.

## Fuentes

- La suma: estática. El 2 %: práctica común, sin fuente.

## Inseguro

\`\`\`crib
use "library/vehicles.crib"

plan "Dos pesos para un camión" {
  vehicle truck : StraightTruck {
    weight  31,500 lb // weight-sum
  }
}
\`\`\`

## Seguro

\`\`\`crib
use "library/vehicles.crib"

plan "Un peso" {
  vehicle truck : StraightTruck {
    weight  12,500 to 14,500 lb
  }
}
\`\`\`
`,
  },
  'wheels-unchocked': {
    en: `# wheels-unchocked: wheels not chocked

## What it protects against

A vehicle that rolls an inch moves every crib and strut out of line.

## Calculation

None. Every vehicle on its wheels must be chocked in both directions. On a grade steeper than the limit of the policy, missing chocks are a danger instead of a warning.

## Sources

- Common practice, no source.

## Unsafe

\`\`\`crib
use "library/vehicles.crib"

plan "Nothing under the wheels" {
  vehicle trailer : VanTrailer53 { // wheels-unchocked
    cargo "freight" 20,000 lb from 4 ft to 48 ft
  }
}
\`\`\`

## Safe

\`\`\`crib
use "library/vehicles.crib"

plan "Chocked in both directions" {
  vehicle trailer : VanTrailer53 {
    cargo "freight" 20,000 lb from 4 ft to 48 ft
  }
  chock K1 {
    under trailer
    holds  both directions
  }
}
\`\`\`
`,
    es: `# wheels-unchocked: ruedas sin calzar

## Contra qué protege

Un vehículo que rueda una pulgada saca de línea todos los cribs y puntales.

## Cálculo

Ninguno. Todo vehículo sobre sus ruedas debe estar calzado en ambos sentidos. En una pendiente mayor que el límite de la norma, la falta de calzas es un peligro en vez de una advertencia.

## Fuentes

- Práctica común, sin fuente.

## Inseguro

\`\`\`crib
use "library/vehicles.crib"

plan "Nada bajo las ruedas" {
  vehicle trailer : VanTrailer53 { // wheels-unchocked
    cargo "mercancía" 20,000 lb from 4 ft to 48 ft
  }
}
\`\`\`

## Seguro

\`\`\`crib
use "library/vehicles.crib"

plan "Calzado en ambos sentidos" {
  vehicle trailer : VanTrailer53 {
    cargo "mercancía" 20,000 lb from 4 ft to 48 ft
  }
  chock K1 {
    under trailer
    holds  both directions
  }
}
\`\`\`
`,
  },
};
