### prefix: figure

width-of-part = ancho de { $part }
rating-of-part = capacidad nominal de { $part }
overlap-of-part-and-timber = traslape de parte y madero
bearing-of-part-on-timber = apoyo de la parte sobre el madero
