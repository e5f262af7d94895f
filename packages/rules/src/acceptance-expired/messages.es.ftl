title = Aceptación vencida
protects = Una aceptación con fecha de fin no vale después de esa fecha.
expired = { $by } aceptó { $rule } en { $on } hasta { $until }. Esa fecha ya pasó. Corrija el problema o acéptelo otra vez.
no-day = Fecha de hoy desconocida. La aceptación de { $rule } en { $on } por { $by } hasta { $until } no cuenta. Esta comprobación no se da por buena.
bad-date = La fecha { $until } no se puede leer. Escríbala como año-mes-día: 2027-03-01.
no-finding = { $by } aceptó { $rule } en { $on }, pero { $rule } no señala nada ahí. Quite esta línea.
