title = Contactos fuera de línea, o parte capturada inclinada
protects = Una carga que no baja derecha dobla los maderos y empuja el crib hasta volcarlo.
off-line = Crib { $crib }, contacto { $contact }: a { $off } de { $part } de { $vehicle } que tiene debajo. El límite es { $most }. Ponga el crib en línea.
no-part-below = El crib { $crib } se apoya en { $part } de { $vehicle }, pero { $vehicle } no tiene esa parte.
sloped = Crib { $crib }: { $part } de { $vehicle } tiene una inclinación de { $slope }. El límite es { $most }. Una parte más inclinada resbala de un crib plano. Llene el ángulo con cuñas o con una tapa inclinada, y amarre el crib.
