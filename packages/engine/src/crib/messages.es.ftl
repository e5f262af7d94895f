### prefix: packing

fix-both = Usar { $courses } hiladas y { $shims } de calzas
fix-courses = Usar { $courses } hiladas sin calzas
use-both = Use { $courses } hiladas y { $shims } de calzas.
use-courses = Use { $courses } hiladas sin calzas.
measure = Mida el espacio. Use más hiladas, o una hilada de otro madero, en lugar de calzas.
