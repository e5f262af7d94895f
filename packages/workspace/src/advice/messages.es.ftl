### prefix: advice

effect = { $label }: de { $before } a { $after }
rule-on = { $rule } en { $on }
unsafe = inseguro o sin verificar: { $before } → { $after }
