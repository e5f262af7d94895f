title = Evaluación incompleta
protects = El combustible, las baterías, la carga y la energía guardada en los frenos hieren a quien no los revisó.
fuel = Evaluación: combustible sin anotar. Busque fugas y escriba lo que encontró.
battery = Evaluación: baterías sin anotar. Busque alto voltaje y escriba lo que encontró.
cargo = Evaluación: carga sin anotar. Averigüe qué es y si puede moverse.
brakes = Evaluación: frenos sin anotar. Los frenos de aire y de resorte guardan energía. Escriba cómo están.
fix-add = Añadir la línea a la evaluación
