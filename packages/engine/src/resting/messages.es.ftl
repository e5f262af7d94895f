### prefix: range

lightest = con su menor peso
heaviest = con su mayor peso
center-front = el centro lo más hacia el frente
center-rear = el centro lo más hacia atrás
load-front = su carga corrida hacia el frente
load-rear = su carga corrida hacia atrás
driver-side = hacia el lado del conductor
passenger-side = hacia el lado del acompañante
tool-loads = con las cargas de las herramientas puestas
between = al { $share } del camino entre { $first } y { $other }
body = { $body } { $ends }
