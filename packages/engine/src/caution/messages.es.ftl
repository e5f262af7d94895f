heading = Límites de esta herramienta
text = Esta es una ayuda para planificar y enseñar. No ve la escena y puede equivocarse. No sustituye a la autoridad competente, los procedimientos locales, un ingeniero con licencia ni su propia evaluación de la escena. Si lo que ve difiere del plan, créale a lo que ve.
