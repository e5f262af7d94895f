### prefix: advice

nothing-to-do = No se encontró nada inseguro. No hay nada que cambiar.
no-fix =
    { $count ->
        [one] Ningún arreglo de los que las verificaciones ofrecen ayuda. Queda 1 hallazgo. Cambie el plan a mano.
       *[other] Ningún arreglo de los que las verificaciones ofrecen ayuda. Quedan { $count } hallazgos. Cambie el plan a mano.
    }
all-safe =
    { $count ->
        [one] 1 cambio no deja nada inseguro. Mírelo antes de aplicarlo.
       *[other] { $count } cambios no dejan nada inseguro. Mírelos antes de aplicarlos.
    }
some-left =
    { $count ->
        [one] 1 cambio ayuda.
       *[other] { $count } cambios ayudan.
    } { $left ->
        [one] Queda 1 hallazgo inseguro: cambie el plan a mano.
       *[other] Quedan { $left } hallazgos inseguros: cambie el plan a mano.
    }
effect = { $label }: de { $before } a { $after }
rule-on = { $rule } en { $on }
unsafe = inseguro o sin verificar: { $before } → { $after }
