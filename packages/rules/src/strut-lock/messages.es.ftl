title = Puntal sin seguro mecánico
protects = Un puntal sostenido solo por aceite o aire baja cuando falla un sello o una manguera.
no-lock = Puntal { $strut }: seguro sin anotar. Póngale el pasador, o apriete su collar de seguro, antes de que alguien confíe en él.
pump-only = Al puntal { $strut } lo sostiene solo su bomba. Una fuga lo baja. Póngale el pasador, o apriete su collar de seguro.
fix-pin = Poner el pasador al puntal { $strut }
