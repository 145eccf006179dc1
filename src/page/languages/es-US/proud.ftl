### Sleeves that are left proud and not decked.

# The step in the place of the deck.
heights = Alturas, sobresaliendo
# What is not done in such a job.
not-decked =
    Las camisas de este trabajo se dejan sobresaliendo: su cara no se corta. Lo que se mide desde
    la cara queda como está.
# On the engine's sheet, in the place of what a cut changes.
from-deck-stays =
    Se dejan sobresaliendo: la cara no se corta. Nada de lo que se mide desde ella cambia.
# On the record.
left-proud-not-decked = se dejan sobresaliendo, sin cortar.
# The limits.
proud-group = Sobresaliendo: límites de altura
# Where they come from. The order of magnitude is that of published engine manuals.
proud-what =
    Manda la hoja del propio motor: capture lo que dice. Use los números de abajo solo para
    distinguir un error de un límite. En manuales de motor publicados las camisas sobresalen cerca
    de 0.001 a 0.006 in (0.03 a 0.15 mm). Diferencia en un mismo barreno y entre vecinos: cerca de
    0.002 in (0.05 mm). Entre todos los barrenos: cerca de 0.004 in (0.10 mm).
# A sleeve without all of its heights.
not-all-measured = no medida en todas las posiciones de reloj
# A sleeve that keeps its own limits, where not everything else is known.
own-limits-kept = dentro de sus propios límites
# Spread of one sleeve's heights.
apart-here = Diferencia en el barreno
# Mean of one sleeve's heights.
mean-height = Promedio
# The plan.
plan-of-heights = Plan de las alturas
# While it is calculated.
plan-working = Calculando el plan…
# More holes than can be planned.
too-many-holes =
    Un plan cubre a lo más ocho barrenos de una cara. Esta cara tiene más. Arriba sus alturas se
    revisan de todos modos contra sus límites.
# Held by the fit.
nothing-to-plan =
    A estas camisas las sostiene su apriete. No hay asiento que cortar ni que calzar con laina, así
    que no hay nada que planear.
# What is missing.
plan-wants = Para el plan todavía falta:
# Nothing to do.
plan-nothing =
    Según estas lecturas, todas las alturas están dentro de los límites que usted capturó. No corte
    nada, no ponga lainas, no mueva nada.
# A plan that is kept and asks for nothing.
plan-no-task = En este plan ya no queda nada por hacer.
# Sleeves that change places.
plan-together =
    Las camisas que cambian de lugar se palomean juntas, cuando cada una lleva su número nuevo.
# Clears a tick.
plan-tick-back = Quitar la palomita
# The last shim of a size lies in another hole.
plan-none-left =
    Ya no queda ninguna de esta medida. Saque primero una de otro barreno, o capture cuántas
    quedan.
# Takes a plan.
plan-take = Trabajar con este plan
# What that does.
plan-take-what =
    Guarda estas líneas en el trabajo para que usted las palomee. Por ahora no cambia nada más.
    Palomear una línea captura la laina. Si una camisa se mueve o se gira, lleva sus lecturas a su
    barreno, giradas según el plan. Quite la palomita para regresarlo.
# Gives it up.
plan-give-up = Dejar este plan; lo palomeado se queda
# Sleeves that move.
plan-moves =
    Una camisa que se mueve tiene otro apriete en su barreno nuevo. Mida ese barreno contra ella
    antes de meterla.
# A sleeve is in.
plan-sleeve-in =
    Aquí se leyó la altura de una camisa, así que está adentro. Este plan obliga a sacarla.
# A tick.
done = Hecho
# Left in the drawing.
heights-now = como está
# Left in the drawing of a plan that is worked to.
heights-planned = como se planeó
# Mean height planned.
planned = Planeado, promedio
# Mean height measured.
measured-again-mean = Medido, promedio
# Difference of both.
off-plan = Diferencia con el plan, peor posición de reloj
# Shims of a shop.
shims-at-hand = Lainas disponibles
# What the list is.
shims-what =
    Capture cada medida y cuántas quedan. La lista del taller está en Ajustes. Cada trabajo
    tiene su propia copia, así que cambiar la lista del taller no cambia su plan.
# Takes the shop's list.
shims-from-shop = Copiar la lista de Ajustes
# Readings that few jobs need.
drop-more = Más datos de esta metida
# What few jobs need of a ledge.
ledge-more = Más datos del asiento de este barreno

## How the sleeves of a job end.

sleeve-ends-decked = rectificadas al ras con el bloque
sleeve-ends-proud = sobresaliendo, dentro de los límites

## Whether sleeves were held down while they were read.

held-down-held = sujetadas al torque indicado
held-down-free = libres

## A limit that a sleeve breaks, seen from that sleeve.

breach-of-low = sobresale { $by } de menos
breach-of-high = sobresale { $by } de más
breach-of-hole = sus alturas difieren { $by } de más
breach-of-neighbour = difiere { $by } de más de su vecino, el cilindro { $other }
breach-of-all = difiere { $by } de más respecto al cilindro { $other }

## What to do next, of heights that are left proud.

next-proud-out-low =
    Cilindro { $hole }: { $what }. Mida otra vez. Luego ponga una laina en su asiento, o monte una
    camisa de ceja más gruesa.
next-proud-out-high =
    Cilindro { $hole }: { $what }. Mida otra vez y busque una viruta en su asiento. Luego corte su
    asiento, o use una laina más delgada.
next-proud-out-hole =
    Cilindro { $hole }: { $what }. Mida otra vez y busque una viruta en su asiento. Luego gire la
    camisa, o empareje el asiento.
next-proud-out-neighbour-all =
    Cilindro { $hole }: { $what }. Mida los dos otra vez. Luego ponga laina al que sobresale menos,
    o corte el asiento del que sobresale más.
next-proud-read-again = Aquí se trabajó después de la lectura. Lea otra vez: { $missing }.
next-proud-plan-open =
    Cilindro { $hole }: primero haga lo que dice el plan de las alturas para este cilindro. Palomee
    cada línea al terminarla. Luego mida otra vez.
next-proud-off-plan-way-prouder = más
next-proud-off-plan-way-less-proud = menos
next-proud-off-plan =
    Cilindro { $hole }: una posición de reloj sobresale { $by } { $way } de lo planeado. Es más de
    lo que explican los medidores. Mida otra vez. Busque una viruta, la laina equivocada o la
    camisa equivocada.
next-proud-in-limits-way-shallower = menos de profundidad
next-proud-in-limits-way-deeper = más de profundidad
next-proud-in-limits =
    Dentro de los límites, con { $by } { $way } que el punto medio. Haga el chaflán y limpie.
next-proud-apart-from =
    Dentro de sus propios límites. Pero con estas profundidades su altura diferirá { $by } de más
    respecto al cilindro { $hole }. Haga el plan de las alturas en esta cara antes de cortar o
    colocar.
next-proud-good =
    Todas las alturas están dentro de los límites que usted capturó. Deje la cara como está.
next-proud-read-free =
    Estas alturas se leyeron libres, pero la hoja indica un torque. Sujete las camisas a ese
    torque. Dígalo aquí y lea las alturas otra vez.

## A hole for those who cannot see the drawing.

height-spoken = cilindro { $cylinder }: { $low } a { $high }

## What the drawing shows.

heights-label = Cuánto sobresale cada camisa. { $holes }

## Under the drawing.

heights-caption =
    Cuánto sobresale cada camisa. Una barra por posición de reloj: 12, 3, 6, 9. Abajo: promedio y
    barreno. Línea cortada: los límites, { $low } y { $high }. Línea en 0: la cara.

## No plan is calculated; the reason in the calculation's own words.

plan-refused = No se puede calcular ningún plan. { $why }

## A cut, under a hole of the drawing.

cut-short = corte { $by }

## A shim, under a hole of the drawing.

shim-short = laina { $size }

## Another sleeve, under a hole of the drawing.

sleeve-short = camisa { $sleeve }

## A turn, under a hole of the drawing.

turn-short = gire { $quarters }°

## How a sleeve is turned: its 12 o'clock to which clock.

turned-other =
    , girada { $quarters }° en el sentido del reloj: sus 12 quedan a las { $quarters_too }

## What is done at a hole, as a sentence; nothing where it is not to be done.

line-cut =
    Cilindro { $hole }: corte { $cut } de su asiento, pasada por pasada. Luego mida otra vez su
    profundidad.
line-shim-hole-take-out = Cilindro { $hole }: saque la laina de { $before }.
line-shim-hole-take-out-2 =
    Cilindro { $hole }: saque la laina de { $before }, ponga en su lugar una laina de { $shim }.
line-shim-hole-lay-a = Cilindro { $hole }: ponga una laina de { $shim } en su asiento.
line-sleeve-hole-fit-the =
    Cilindro { $hole }: monte la camisa que era la número { $sleeve }{ $quarters }. Márquela con el
    { $hole }.
line-sleeve-hole-fit-its = Cilindro { $hole }: monte su propia camisa{ $quarters }.

## What a plan takes.

plan-counts =
    Entonces todas las alturas quedan dentro de los límites que usted capturó. Barrenos cortados:
    { $cuts }; lainas puestas o sacadas: { $shims }; camisas movidas: { $moved }; giradas:
    { $turned }. Ningún plan necesita menos cortes. Con tan pocos cortes, ninguno necesita menos
    lainas bajo las camisas. Con tan pocos de ambos, ninguno necesita menos cambios de lugar.

## No plan keeps the limits.

no-plan-which-proud = cuánto puede sobresalir cada altura
no-plan-which-hole = cuánto pueden diferir las alturas de un mismo barreno
no-plan-which-neighbour = cuánto pueden diferir dos vecinos
no-plan-which-all = cuánto pueden diferir todos los barrenos
no-plan =
    Ningún plan cumple todos los límites con lo que hay. Lo impide: { $which }, por al menos
    { $by }. Consiga otras lainas o camisas, o pregunte si se puede cortar más los asientos. Abajo:
    lo que más se acerca.

## A hole of the drawing, for those who cannot see it.

hole-before-after-done = no se hace nada
hole-before-after = cilindro { $hole }: { $before }, luego { $after }, { $done }

## The drawing of a plan.

heights-plan-label = Alturas de cada barreno, antes y después. { $holes }

## Under it.

heights-plan-caption =
    Cada barreno: { $before } a la izquierda, después a la derecha. Una barra por posición de
    reloj: 12, 3, 6, 9. Línea cortada: los límites, { $low } y { $high }. Línea en 0: la cara.
