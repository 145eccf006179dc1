### The record's two papers.

for-the-customer = lo que se hizo
for-the-file = para el archivo
print-customer = Imprimir la hoja del cliente
print-file = Imprimir la hoja para el archivo
record-words = Taller, rectificador, bloque: para el registro
gauges-checked-group = Cuándo se revisó cada medidor
gauges-checked-what =
    Una fecha, o lo que dice su etiqueta. Va en el registro junto a la incertidumbre del medidor.
what-was-done = Lo que se hizo
all-steps-done = No se omitió ningún paso del bloque.
left-fit = apriete
left-proud = sobresale
left-chance = a fondo
left-bore = barreno
deck-not-marked = Cara (hay un corte capturado, pero no marcado como hecho)
sleeve-length = Largo de la camisa
off-mark = Desvío
# Columns of the floor sheet for the hand.
measured-bore = Barreno medido
measured-depth = Prof. medida
initials = Iniciales

## What the words at each hole of the plan mean.

deck-plan-what-off-flanged = Luz: a qué distancia de su asiento la encuentran los medidores
deck-plan-what-off-on-step = Luz: a qué distancia de su escalón la encuentran los medidores
deck-plan-what-off-by-fit =
    Desvío: cuánto quedó arriba de la altura que debía tener (abajo, con signo menos)
deck-plan-what-cut-decked = , antes de cualquier corte de la cara
deck-plan-what-bore = {" "}Barreno: ya terminado, diámetro.
deck-plan-what =
    La cara desde arriba, frente del motor a la izquierda. Apriete: cuánto mayor es la camisa que
    el barreno donde entró. Sobresale: cuánto quedó su parte de arriba sobre la cara después del
    último jalón{ $cut }. { $off }. A fondo: la probabilidad de que esté dentro de su
    límite.{ $bore }

## How far a sleeve stands off, in a word.

left-gap-flanged-on-step = luz
left-gap-by-fit = desvío

## Over the plan of a deck.

deck-plan-caption-how-as-left = como quedó
deck-plan-caption-how-as-measured-so = según lo medido hasta ahora
deck-plan-caption-deck = Cara { $bank }, { $how } ({ $unit })
deck-plan-caption-the-deck = La cara, { $how } ({ $unit })

## Shims under the sleeves, each with its hole.

shims-laid-each = cilindro { $cylinder }: { $size }
shims-laid = Lainas bajo las camisas: { $each }.

## The limits of sleeves that are left proud.

proud-limits =
    Sobresaliendo: cada altura { $low } a { $high }. Diferencia máxima: en un mismo barreno
    { $hole }, promedios de vecinos { $neighbors }, todos los promedios { $all } ({ $unit }).

## The record in one sentence.

record-cylinders =
    { $count ->
        [one] cilindro { $names }
        [many] cilindros { $names }
       *[other] cilindros { $names }
    }
record-sentence-other-no-sleeve-was = No se montó ninguna camisa.
record-sentence-other-new-sleeves-in =
    Camisas nuevas: { $home }. Medidas, y cada una está a fondo, dentro de los límites que capturó
    el taller.
record-sentence-other-no-sleeve-is =
    De ninguna camisa está comprobado que esté a fondo. Sigue pendiente: { $open }.
record-sentence-other-measured-and-home =
    Medido y a fondo, dentro de los límites que capturó el taller: { $home }. NO está comprobado
    que esté a fondo: { $open }.

## Sleeves of which nobody measured how tight they sit.

fit-not-measured =
    NO se midió qué tan apretadas quedaron: { $count ->
        [one] cilindro
        [many] cilindros
       *[other] cilindros
    } { $names }.

## Values that two devices set differently.

disputes-open =
    { $many ->
        [one] Un valor está en conflicto entre dos equipos. Vea la hoja para el archivo.
        [many] { $many } valores están en conflicto entre dos equipos. Vea la hoja para el
            archivo.
       *[other] { $many } valores están en conflicto entre dos equipos. Vea la hoja para el
            archivo.
    }

## A gauge on the record: what it measures, how sure, when it was checked.

record-gauge-some = { $name } { $sure } (revisado { $checked })
record-gauge-none = { $name } { $sure } (sin fecha de su última revisión)

## The gauges behind the record and how far a gap is known.

record-gauges-gap = {" "}Una luz se conoce con una incertidumbre de { $gap }.
record-gauges =
    Medidores (incertidumbre estándar, k = 1, { $unit }): { $known }.{ $gap } Probabilidad: de que
    la luz promedio esté dentro de su límite.

## How the deck came out, on the customer's page.

deck-finish-line-good-rougher-than = MÁS ÁSPERO QUE
deck-finish-line-good-within = dentro de
deck-finish-line =
    acabado de la cara medido { $measured } ({ $kind }), { $good } { $most }, lo más que permite el
    empaque

## The cut of a deck that nobody has made, for the record.

deck-not-cut-how-decided-on = por hacer
deck-not-cut-how-planned = planeado
deck-not-cut = sin cortar, o sin marcar como cortada; corte { $how }: { $cut }

## A deck that is marked as cut, without a word of how deep.

deck-cut-unread = marcada como cortada; no se capturó cuánto (planeado: { $planned })

## A deck that is marked as cut although a sleeve is not shown to be home.

deck-cut-locked =
    marcada como cortada (corte capturado: { $typed }), pero no está comprobado que todas las
    camisas estén a fondo

## The same, and what it leaves of each flange.

deck-cut = { $cut_too } { $cut }; de las cejas queda al menos { $left }

## A time of a drop among others, shorter than the name of its field.

time-kept-chill-time = baño
time-kept-carry = traslado
time-kept-home-timed = de entrar a estar a fondo
time-kept-hold-time = sujetada
