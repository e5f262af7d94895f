title = El vehículo resbala cuesta abajo
protects = En una pendiente el peso tira del vehículo cuesta abajo. Si se calzan muy pocas ruedas, las ruedas calzadas resbalan con el vehículo.
slides = En una pendiente de { $grade }, { $vehicle } tira { $demand } cuesta abajo ({ $sum }). Sus ruedas calzadas aguantan { $capacity } ({ $hold }). Calce más ejes, o tienda un cable cuesta arriba.
grade-here = La pendiente se fija aquí: { $grade }.
grade-unsaid = Pendiente no indicada. No se comprobó si algo resbala, y todo lo demás se calculó como si el terreno fuera llano. Mida la pendiente y escríbala: `grade 0 %` o `grade 2 % toward rear`. Esta comprobación no se da por buena.
direction-unsaid = No se indica hacia dónde baja la pendiente de { $grade }. Todo se calculó como si bajara hacia atrás. Las otras direcciones no se comprobaron. Escríbalo: `grade { $grade } toward rear`. Esta comprobación no se da por buena.
