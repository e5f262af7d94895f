### prefix: rule

could-not-run =
    La comprobación { $rule } no se pudo hacer en este plan. No se comprobó aquello contra lo que protege: { $protects }

family-timber-and-cribs = Madera y cribs
family-struts-and-ties = Puntales y amarres
family-whole-system = Sistema de estabilización
family-order-and-crew = Orden y personal
family-stock = Material
family-plausibility = Datos del plan
family-policy-and-review = Norma y revisión
