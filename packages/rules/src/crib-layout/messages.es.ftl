title = Hiladas que no se pueden armar
protects = Un crib con un solo madero en una hilada rueda. Uno con más maderos de los que caben no se puede armar como está dibujado.
one-timber = El crib { $crib } tiene { $timbers ->
        [one] 1 madero
       *[other] { $timbers } maderos
    } en una hilada. El mínimo es 2 en cada hilada. Use un arreglo de 2 por 2.
no-room = Crib { $crib }: { $timbers } maderos de { $width } no caben lado a lado en { $room }. El límite es { $most }.
no-width = Crib { $crib }: maderos de { $length } con un saliente de { $overhang } no dejan ancho entre los contactos. Use maderos más largos o menos saliente.
no-courses = El crib { $crib } tiene { $courses } hiladas. El mínimo es 1.
part-course = El crib { $crib } tiene { $courses } hiladas. El número de hiladas debe ser entero. Use { $whole }.
fix-layout = Usar un arreglo de { $layout }
