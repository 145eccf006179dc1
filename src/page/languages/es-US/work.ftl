### Phases of the shop, the number to work to.

# The name of the page.
name = Coldseat
# What it is for, in one sentence.
what-it-is = Monte camisas secas con números, desde la primera llamada hasta el registro firmado.
# The numbers that every step hangs on.
first-numbers = Primeros números
# What is asked for first, and what is not.
first-numbers-what = De las hojas de la camisa y del motor. Cada paso pide lo demás que necesita.
# Which holes get sleeves.
holes = Toque los barrenos que llevan camisa
# All of them.
holes-all = Todos los barrenos
# None of them, to tap a few.
holes-none = Ningún barreno
# From the engine to the bench.
to-the-bench = Ir al banco de trabajo
# From the engine to the price.
to-the-price = Cotizar el trabajo
# A step that is done and good.
done-tick = hecho

## Under an empty field for which no usual value stands.

by-sheet = De la hoja del fabricante. Arriba de { $most } se le pide revisarlo.

## A hole that gets a sleeve or does not.

hole-name = Camisa en el cilindro { $cylinder }

## The temperature that was read last, and when, to be taken over.

as-read-at = { $text } { $unit }, lectura del { $when }

## How the pad takes digits.

pad-count-from-right = Desde la derecha
pad-count-last = Últimos dígitos
pad-count-as-typed = Como se teclea

## What a job in the list needs next.

next-in-job = Sigue: cilindro { $cylinder }, { $step }

## Steps of a phase that are done.

steps-done = { $done } de { $of }

## A phase of the shop.

phase-take-in = Recepción
phase-measure = Medir
phase-bore = Barrenar
phase-counterbore = Cortar y bruñir
phase-drop = Enfriar y meter
phase-seat = Jalar y asentar
phase-deck = Cara
phase-finish = Acabado

## The word before it.

work-bore = barrene a (diámetro)
work-widen = ábrala a (diámetro)
work-depth = corte a una profundidad de
work-step-depth = corte el escalón a una profundidad de
work-chamfer = chaflán mínimo
work-hone = bruña a (diámetro)
work-groove = ranura a una profundidad de
work-finish = bruñido final a (diámetro)
work-gap = abertura mínima del anillo
work-home-warm-home = a fondo debe sobresalir

## Its limits. Near them the gauges may not be able to tell: no word of good.

limits-between = límites { $low } a { $high }

## What stands in for a reading that is not there yet.

work-taken-sleeve-od = Con la medida nominal: mida primero la camisa.
work-taken-flange-od-here = Con la ceja del motor: mida primero esta ceja.
work-taken-deck-cut = Con el corte planeado.
work-taken-other = Camisa y bloque a la misma temperatura.

## The number to work to has to wait.

work-waits = Para dar la meta falta: { $field }.
