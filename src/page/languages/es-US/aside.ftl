### What a step has beside its one number.

grip = Lo que sostiene el apriete, en frío y en marcha
fit-left = apriete que queda con los picos alisados
contact-pressure = a la mitad del largo presiona con
slips-pushed = se desliza si la empujan con
slips-pulled = se desliza si la jalan con (se adelgaza)
heat-path = paso del calor por la junta
not-smoothed = No se descuenta nada por picos alisados: capture en Motor el Rz de camisa y barreno.
running-wanted =
    Para el motor en marcha, capture en Motor las temperaturas de camisa y bloque. Un bloque de
    aluminio júzguelo ahí, no en frío.
fit-running = apriete que queda, en marcha
pressure-running = presiona, en marcha, con los gases
sleeve-margin = camisa: resistencia mínima contra esfuerzo de aro
block-margin = bloque: resistencia mínima contra esfuerzo de aro
lets-go = suelta cuando camisa y bloque están los dos a
no-tension = sin tensión
grip-source =
    Anillos de Lamé a la mitad del largo, deslizamiento con lo que la propia camisa se ensancha.
    Fricción 0.10 a 0.16, hierro fundido aceitado y desengrasado (DIN 7190-1, por una fuente
    secundaria). Picos alisados: DIN 7190:2001, 0.8 de ambos Rz. En la edición de 2017 0.4, según
    referencia de segunda mano. Paso del calor: Yovanovich. Los ejemplos de manual quedan entre 0.8
    y 8 veces ese valor: úselo para comparar acabados, no como número de fiar. La rugosidad Rms es
    un quinto de Rz, de memoria. Resistencias: la mínima del grado, vea el material. En marcha: cada
    uno a una temperatura promedio. Las hojas de los fabricantes mandan.
passes = Pasadas de la barra
micrometer = Micrómetro sobre husillo y buril, pasada por pasada:
passes-what =
    De la lectura más chica del barreno viejo a la camisa, menos el centro de su banda de apriete y
    el material del bruñido. Pasadas iguales, luego la última. Micrómetro: la mitad de la suma de
    barreno y husillo.
pairs = Qué camisa en qué barreno
spare = de repuesto
# Numbers of the engine, asked at the step that wants them.
of-engine = Números del motor para este paso
nothing-to-pair =
    Las parejas se eligen cuando hay dos camisas medidas y un barreno barrenado. Elija antes de
    cortar la caja o bruñir esos barrenos.
keep-numbers = Como están numeradas necesitan el menor bruñido: deje los números.
number-sleeves = Numerar las camisas así
number-what =
    Lo que se midió en cada camisa pasa a su nuevo barreno. Vuelva a marcar las camisas de
    inmediato. Con Deshacer se regresa.

## pair columns

pair-columns-sleeve = Camisa
pair-columns-hole = Barreno
pair-columns-hone-takes-diameter = Quita el bruñido (diámetro)

## A pass: the bore after it, its cut on diameter and on radius.

pass = { $count }: a { $bore } (diámetro), quita { $diameter } en diámetro, { $radius } en radio

## The warmest that is looked at.

not-below = arriba de { $warmest }, si suelta

## The highest pressure of a pull, and what it is that bears no more.

gauge-most-what-ram = gato hidráulico
gauge-most-what-rod = varilla
gauge-most-what-ledge = asiento
gauge-most-what-flange = ceja
gauge-most = no bombee a más de (límite: { $what })

## wanted

wanted-still-needed = Todavía falta: { $names }.

## times

times = { $times } veces

## A conductance, and that of a joint twice as rough.

heat-path-kw-m-k = { $now } kW/m²K; con el doble de rugosidad: { $rough }

## paired

paired =
    Lo más en un barreno { $worst }, en total { $total }, hasta el centro de la banda de apriete.

## as numbered

as-numbered = Como están numeradas: de { $least } a { $most }, en total { $all }.
