title = Correa o cadena sobrecargada
protects = Una correa que se corta suelta las dos bases de puntal a la vez.
over = Tiro en { $tie }: hasta { $load } ({ $governs }; { $sum }). Su carga límite de trabajo es { $capacity }. Use una más fuerte, use dos, o ponga los puntales más empinados.
over-limit = Tiro en { $tie }: hasta { $load } ({ $governs }), { $use } de su carga límite de trabajo de { $capacity }. La norma permite { $limit }.
no-rating = Tiro en { $tie }: hasta { $load }, carga límite de trabajo desconocida. Lea su etiqueta. Esta comprobación no se da por buena.
