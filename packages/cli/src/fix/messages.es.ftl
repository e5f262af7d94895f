nothing-to-do = No se encontró nada inseguro. No se cambió nada.
step = { $number }. { $title }
left = SIGUE INSEGURO
no-fix =
    { $count ->
        [one] Queda 1 hallazgo. Ningún arreglo de los que las verificaciones ofrecen ayuda, solo o con otro. Cambie el plan a mano.
       *[other] Quedan { $count } hallazgos. Ningún arreglo de los que las verificaciones ofrecen ayuda, solo o con otro. Cambie el plan a mano.
    }
all-safe =
    { $count ->
        [one] No queda nada inseguro después de 1 paso. Lea el plan otra vez antes de confiar en él.
       *[other] No queda nada inseguro después de { $count } pasos. Lea el plan otra vez antes de confiar en él.
    }
expectation = Cambie a mano esta línea expect:
