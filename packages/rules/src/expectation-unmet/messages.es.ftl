title = Plan que no cumple lo que espera
protects = Un plan que era correcto cuando se escribió puede estar mal después de un cambio.
unmet = El plan espera { $text }. No se cumple: { $why }.
partial = El plan no se leyó completo. Lo que espera no se comprobó. Esta comprobación no se da por buena.
