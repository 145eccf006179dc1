### What is missing, what cannot be used and why, what is in dispute.

# Over the lines of a drop that cannot be worked out.
drop-mend = No se puede calcular: corrija lo que se indica abajo.
# The highest gauge pressure, where it is not known.
gauge-most-open = Presión más alta del manómetro: falta revisar algo
# Steps that are only marked.
steps-only-marked = Marcado como hecho a mano, sin medir
# Values in dispute, on the record.
in-dispute = Sin juzgar, porque dos equipos difieren:
# In a verdict's place while a reading is being typed.
typing = lectura
# What it waits for.
typing-what = El veredicto sale cuando la lectura está completa.
# Under a field of which this block has nothing.
none-of-it = Este bloque no tiene.
# The button that says so.
has-none = Este bloque no tiene
# The button that takes it.
home-time-take = Usar en trabajos nuevos: tiempo que necesita
# The button that takes it.
home-take = Usar en trabajos nuevos: parte a fondo
# Why two values stand in one place.
disputed = dos equipos difieren. Elija uno.
# A cold drop into which nobody has typed.
drop-example =
    Un ejemplo para ver. Capture su propia pieza, apriete, alojamiento y traslado. Entonces dice
    "siga" o "pare".

## A usual value in an empty field.

usual = usual { $value }

## A sleeve of a deck, spoken.

deck-seat-words =
    cilindro { $cylinder }: a { $gap } de su asiento, probabilidad de estar a fondo
    { $chance_short }

## The sleeves of a deck, for those who cannot see them.

deck-seats-label = Luz en cada asiento, menos el error de medidor que todas comparten. { $sleeves }.

## Under the same.

deck-seats-caption =
    Luz en cada asiento, y probabilidad de que la camisa esté a fondo. Línea cortada: límite
    { $limit }. Se restó de cada luz: { $bias }, el error de medidor que comparten.

## What the numbers of a deck point to.

deck-points-to-other =
    Una camisa sola: una lectura difícilmente comprueba que está a fondo. Mida las demás, o use un
    mejor medidor de profundidad.
deck-points-to-home = Todas las camisas medidas están a fondo.
deck-points-to-who =
    { $count ->
        [one] El cilindro { $names } lee distinto
        [many] Los cilindros { $names } leen distinto
       *[other] Los cilindros { $names } leen distinto
    }
deck-points-to-stands-out = { $who } que los demás: viruta, rebaba o camisa ladeada.
deck-points-to-all-alike =
    Todas iguales: ponga en cero el medidor de profundidad sobre un plano, y revise un radio.
deck-points-to-undecided =
    Los medidores no alcanzan a decir: mida otra vez altura, profundidad y camisa.

## What the shop's own sleeves offer.

home-offer =
    De { $n } camisas que ya no bajaban, y 20 usuales antes de ellas, parte a fondo: { $share }.

## What timed drops say.

home-time-said =
    { $n ->
        [one] Una camisa cronometrada desde que entró hasta estar a fondo: { $longest } s.
        [many] { $n } camisas cronometradas desde que entran hasta estar a fondo: promedio { $mean }
            s, la más larga { $longest } s.
       *[other] { $n } camisas cronometradas desde que entran hasta estar a fondo: promedio { $mean }
            s, la más larga { $longest } s.
    }
home-time-some =
    { $said } Usted necesita { $needed } s: el 95 % de sus metidas tarda menos (95 % de certeza).
home-time-none-from-on-the =
    { $said } A partir de { $few }, con ellas se calcula el tiempo que usted necesita.
home-time-none-they-are-too = { $said } Varían demasiado para decir el tiempo que usted necesita.

## Each by itself is home, all together not sure enough.

together =
    Cada camisa por sí sola está a fondo. La probabilidad de que todas lo estén es solo { $chance_short }.
    Mida otra vez profundidad y altura de las menos claras.

## What is missing: whose, which, how many.

missing-of-other = { $whose }{ $name } (faltan { $many } lecturas)

## owner words

owner-words-bank = cara { $bank },{" "}
owner-words-cylinder = cilindro { $cylinder },{" "}

## Where something stands.

where-words-engine = el motor (cilindros, disposición, unidades, materiales)
where-words-left-out = qué barrenos llevan camisa
where-words-unlock = la liberación de la cara { $bank }
where-words-step = { $owner }la marca de "{ $step }"

## Why something cannot be told.

lack-missing = Falta: { $missing }.

## A typed text that cannot be used, on the record.

cannot-be-used = "{ $text }" (no se puede usar)

## What a number does not count.

not-counted = Sin contar, porque no se capturó: { $names }.

## How much of a deck a plan covers.

plan-covers =
    Cubre solo { $there } de { $wanted } puntos de la cara y { $holes } de { $all } camisas.

## Why a drop is no go: numbers that are an example's in one line.

drop-doubts-questioned = { $place }: en duda y sin respuesta.
drop-doubts-cold-size = Mida otra vez: { $coldod }. Este hierro no hace eso.
drop-doubts-first = Primero: { $step }. No está hecho ni marcado.
drop-doubts = Supuesto, nadie lo capturó: { $examples }.

## Why a number cannot be used, with the allowed range in the person's unit.

refusal-not-read-empty = No se capturó nada. Permitido: { $allowed }.
refusal-not-read-not-anumber = No es un número. Permitido: { $allowed }.
refusal-not-read-unknown-unit-cannot-be-read =
    "{ $word }" no se puede leer: ¿una letra O o l en lugar de 0 o 1? Permitido: { $allowed }.
refusal-not-read-unknown-unit-is-not-a =
    "{ $word }" no es una unidad conocida aquí. Permitido: { $allowed }.
refusal-not-read-wrong-kind = { $unit } no mide esto; use { $wanted }. Permitido: { $allowed }.
refusal-not-read-two-marks =
    Dos puntos o comas decimales. Use uno, y ninguno en los miles. Permitido: { $allowed }.
refusal-not-read-too-long = Demasiado largo para un número. Permitido: { $allowed }.
refusal-out-of-range = Fuera de rango. Permitido: { $allowed }.
refusal-inner-not-below-outer = El interior debe ser menor que el exterior, { $outer }.
refusal-wall-too-thick =
    Dos paredes deben dejar un hueco en una camisa de { $outer }: menos de { $outer_too }.
refusal-low-not-below-high = Debe ser menor que el límite superior, { $high }.
refusal-torque-alone =
    Hay un torque para leer las alturas, pero no hay límites de altura: capture primero los
    límites.
refusal-pass-not-in-cut =
    Una pasada debe ser mayor que 0 y no mayor que lo máximo que se puede cortar, { $most }.

## Why a number is asked about.

question-ten-times = ¿Diez veces de más o de menos? Tal vez es { $likely }.
question-other-unit-units-temperature = °F en vez de °C, o al revés
question-other-unit-units-volume = Pies cúbicos en vez de metros cúbicos, o al revés
question-other-unit-units-other = Pulgadas en vez de milímetros, o al revés
question-other-unit = ¿{ $units }? Sería { $likely }.
question-radius-or-diameter = ¿Radio en vez de diámetro? Tal vez es { $likely }.
question-far-from-unusually-far-from = Demasiado lejos de cero. ¿Está bien como lo escribió?
question-far-from-the-others-read = Los otros leen { $others }. ¿Está bien como lo escribió?
question-unusual = Fuera de lo usual: casi siempre { $lo } a { $hi }. ¿Está bien como lo escribió?
question-sleeve-below-bore =
    La camisa ({ $sleeve }) es más chica que este barreno: se iría hasta abajo. Mida los dos otra
    vez.
