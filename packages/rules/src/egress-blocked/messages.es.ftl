title = Salida bloqueada, estrecha o ausente
protects = Un rescatista de rodillas junto al vehículo debe poder salir enseguida, sin buscar por dónde.
blocked = La salida { $way } está bloqueada por { $what }. Muévalo, o prevea otra salida.
across = Salida { $way }: { $what } la cruza cerca del suelo y puede hacer tropezar. Sáquelo de la salida.
narrow = La salida { $way } mide { $width } de ancho. El mínimo es { $least }.
none = Salida no indicada. Diga dónde se arrodilla el rescatista y por dónde sale.
in-the-way = Esto estorba.
