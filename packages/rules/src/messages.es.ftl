### prefix: rule

could-not-run =
    La comprobación { $rule } no se pudo hacer en este plan. No se comprobó aquello contra lo que protege: { $protects }
