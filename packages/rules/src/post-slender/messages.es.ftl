title = Poste demasiado esbelto
protects = Un poste largo y delgado se pandea mucho antes de que la madera se aplaste.
too-slender = El puntal { $strut } ({ $post }) mide { $length }. Su esbeltez es { $slenderness } ({ $sum }). El límite es { $limit }. { $advice }
use-shorter = Use un poste más grueso, o uno de { $most } como mucho.
use-thicker = Use un poste más grueso o más corto.
limit-set-here = El límite se fija aquí: { $limit }.
