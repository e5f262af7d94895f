title = Límite de la norma hecho menos seguro
protects = Quienes confían en el plan esperan el límite de siempre y no ven que se aflojó.
with-reason = La norma { $policy } fija { $limit } en { $value }, menos seguro que { $shipped }. Razón: { $reason }
no-reason = La norma { $policy } fija { $limit } en { $value }, menos seguro que { $shipped }. Razón no indicada. Escríbala después de `because`.
number = { $value }
shipped-value = el valor que reemplaza
replaced-here = Este límite se reemplaza.
