### What is measured from the deck, and what the cut makes of it.

after-cut = Lo que el corte hace a las medidas desde la cara
after-cut-planned = Según el corte planeado. Todavía no se corta nada.
after-cut-decided = Según el corte capturado (por hacer o hecho).
from-deck-group = Medido desde la cara, y cuánto se puede cortar
from-deck-what =
    Capture cada medida antes del corte, y su rango según la hoja del motor. Deje fuera lo que este
    motor no tiene. El paso de la cara muestra lo que el corte hace a cada una.
from-deck-none =
    En Motor no hay nada capturado que se mida desde la cara. Son las cajas de agua y de sello,
    pernos guía, agujeros de tornillo y rebajes de válvula. El corte los cambia todos.
deck-size = Medido desde la cara
size-before = Antes
size-after = Después del corte
size-range = Rango
size-state = Resultado
size-block = quitado al bloque, todos los cortes
size-finish = acabado de la cara
size-holds = en rango
size-recut = se cortó otra vez, en rango
size-brought-back = se regresó, en rango
recut-done = Ya se cortó otra vez
back-done = Ya se regresó a su medida
recut-why = Se deja así, porque
recut-why-needed = Diga por qué en pocas palabras.
# Words that do not fit their line.
one-line = Use un solo renglón, y más corto.
recut-leave = Dejarlo así
recut-again = Quitar eso
said-done = palomeado como hecho, sin medir
not-measured-again = sin medir
recuts-open = Sin regresar a su medida y sin motivo
# Without a limit on the cuts.
no-budget = No se capturó: cuánto se puede cortar en total a este bloque.
# Without a limit of the finish.
no-finish = No se capturó: el límite del acabado de la cara.

## What is measured from the deck.

deck-size-water-bore = cajas de los agujeros de agua, profundidad
deck-size-seal-bore = cajas de sello, profundidad
deck-size-bolt-chamfer = chaflanes de los agujeros de tornillo, profundidad
deck-size-dowel = pernos guía, altura sobre la cara
deck-size-valve-recess = rebajes de válvula, profundidad
deck-size-ring-groove = ranura de anillo en la cara, profundidad
deck-size-piston = pistones, sobresalen de la cara (menos: debajo de ella)
deck-size-bolt-hole = agujeros de tornillo de cabeza, profundidad hasta el último hilo completo

## The same in a line of names.

deck-size-short-water-bore = cajas de los agujeros de agua
deck-size-short-seal-bore = cajas de sello
deck-size-short-bolt-chamfer = chaflanes de los agujeros de tornillo
deck-size-short-dowel = pernos guía
deck-size-short-valve-recess = rebajes de válvula
deck-size-short-ring-groove = ranura de anillo en la cara
deck-size-short-piston = pistones
deck-size-short-bolt-hole = agujeros de tornillo de cabeza

## What brings a size back after a cut. Common practice, no source.

remedy-water-bore-seal-bore = cortar más profundo
remedy-bolt-chamfer = achaflanar otra vez
remedy-dowel = meterlos más a golpes, o acortarlos
remedy-piston = usar un empaque más grueso, o rebajar las coronas, según la hoja del fabricante
remedy-bolt-hole = pasar el machuelo más profundo, o los tornillos topan antes de apretar

## What is not on this engine.

not-on-this-engine = Sin capturar, así que se toma que este motor no lo tiene: { $names }.

## The target before the cut.

bears-what-block = el bloque no tiene más que dar
bears = No corte más de { $most }: { $what }.

## No cut at all keeps it.

bears-none-size = Fuera de rango antes de cualquier corte: { $item }. Todo corte lo cambia más.
bears-none-block = A este bloque ya no se le puede cortar nada.

## Where a size is to be brought back to.

recut-to-bring-back-to = regresar a { $to }
recut-to-recut-to = cortar otra vez a { $to }

## No cut is both deep enough and shallow enough.

bears-less = La cara queda limpia con { $least }. No se pueden las dos cosas: corrija una.

## What becomes of a size; `to` is where it is brought back to.

size-state-recut = { $to } (fuera por { $by }): { $item }
size-state-too-deep-too-low-by = demasiado abajo por { $by }
size-state-too-deep-too-deep-by = demasiado profundo por { $by }

## The same on paper.

size-state-short-recut = regresar a { $to }

## Measured again.

measured-again = medido { $value }

## What is left to cut, or that too much was.

budget-state-over-by = { $left } de más
budget-state-left-after-this = quedan { $left } después de este corte

## At least.

from-value = { $value } o más profundo

## Rough or good, by which roughness.

finish-state = más áspero de lo que permite el empaque ({ $kind }): dé un corte más fino

## What to do next, of a deck's cut and what it changes.

next-after-cut-block-cut-most =
    No corte tan profundo. Con los cortes anteriores, son { $over } más de lo que el bloque puede
    perder.
next-after-cut-deck-size-past =
    { $item }: la medida se pasa del rango por { $over }. Ningún corte la regresa. Mida otra vez.
    Repare, y luego capture lo que mida.
next-after-cut-deck-size-recut =
    { $item }: fuera de rango por { $short } después de este corte. Para corregir: { $item_too }.
    Luego mida abajo, palomee como hecho, o diga por qué se deja así.
next-after-cut-deck-size-will =
    { $item }: fuera de rango por { $short } después del corte planeado. Corte menos, o planee
    corregir: { $item_too }.
next-after-cut-deck-size-wants = { $item }: capture en Motor: { $field }.
next-after-cut-deck-rough =
    Cara más áspera de lo que permite el fabricante del empaque: va a fugar. Dé un corte más fino y
    mida otra vez.

## Words about a deck; of two it is named.

of-deck = Cara { $bank }: { $words }

## Over the table of a deck on the record.

after-cut-of-measured-from-deck = Medido desde la cara { $bank }, antes y después de su corte
after-cut-of-measured-from-the = Medido desde la cara, antes y después de su corte
