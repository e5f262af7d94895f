### prefix: figure

anywhere-in-its-bay = en cualquier lugar de su espacio: puede moverse
allowable-bending-stress = esfuerzo admisible a flexión
allowable-shear-stress = esfuerzo admisible a cortante
area-of-the-pad-that-bears = área de la placa que apoya
area-of-the-base-that-bears = área de la base que apoya
edge-pressure = presión en el borde
edge-over-mean-pressure = presión en el borde entre presión media
layers-that-bend-one-by-one = capas que se doblan una por una
load-off-the-middle = carga fuera del centro de la base
overhang-that-the-pad-carries = voladizo que aguanta la placa
pad-of-unknown-material = entre lo que se apoya encima y { $side }: material no indicado
pad-and-overhang = lo que se apoya encima y dos veces { $overhang }, como máximo { $side }
pad-across-the-grain = lo que se apoya encima, como máximo { $side }: maderos uno al lado del otro no reparten carga a lo ancho
pad-in-bending = el menor de { $thickness } × raíz({ $bending } ÷ (3 × { $layers } × { $pressure })) y { $thickness } × { $shear } ÷ (1.5 × { $pressure })
share-of-the-base = cada lado menos dos veces lo que la carga está fuera del centro: { $along } a lo largo, { $across } a lo ancho
share-of-the-base-that-bears = parte de la base que apoya
edge-of-the-base = una base rígida con la carga { $along } fuera del centro a lo largo y { $across } a lo ancho; nada tira del lado que se levanta
side-of-the-pad = lado de la placa
side-of-the-pad-that-bears = lado de la placa que apoya
thickness-of-the-pad = grueso de la placa
