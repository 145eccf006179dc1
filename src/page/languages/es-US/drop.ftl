### What is said of the time that a sleeve has to go home.

# No press fit.
no-press = Sin apriete: nunca agarra. Nada sostiene esta pieza. No la meta.
# Before the time from the bath to the bore.
at-bore-within = del baño al barreno en menos de
# Before how much a part without a flange grows in length once it grips.
grows = crece de largo ya que agarra
warmer-block = Si el bloque está más caliente
warmer-what =
    Caliéntelo parejo alrededor del barreno, no más de lo que permite la hoja de su fabricante. Mida
    su temperatura en el barreno. Captúrela como temperatura del bloque solo con un barreno medido a
    esa temperatura.

## What the time to go home allows.

home-words-go-room-and-time =
    Hay holgura y tiempo, dentro de los números capturados. Límpiela. Un solo movimiento derecho, a
    fondo en menos de { $within } s. Usted necesita { $needed } s.
home-words-go-time-enough-by =
    Alcanza el tiempo según estos números: a fondo en menos de { $within } s, usted necesita
    { $needed } s. Pero primero resuelva lo que se nombra abajo.
home-words-look =
    Queda poco tiempo: a fondo en menos de { $within } s, y usted necesita { $needed } s ("Tiempo
    que usted necesita"). Manténgala derecha, límpiela junto al barreno, o caliente el { $housing }.
home-words-stop =
    No llega a fondo a tiempo: ladeada y con escarcha, puede tocar a los { $within } s. Usted
    necesita { $needed } s ("Tiempo que usted necesita"). No lo intente así. Caliente el
    { $housing }, limpie la pieza junto al barreno y manténgala más derecha. O cambie el tiempo que
    necesita, si de veras es así de rápido.

## What the numbers of a drop stand on, where not on the table of its iron.

shrinks-by-shop = Según la contracción del propio taller, no según la tabla de su hierro.
shrinks-by-sleeve = Según esta camisa medida en frío, no según la tabla de su hierro.

## Beside a time: the diameter measured cold.

cold-use-said-used = usado en el cálculo
cold-use-said-odd = usado en el cálculo, aunque no es lo que hace su hierro
cold-use-said-not-used = no usado: ningún hierro hace eso
cold-use = medido en frío { $diameter }, { $said }

## Below the time to go home: the middle, the late end, what rules it.

home-below-rules = ; lo que más pesa: { $cause } ({ $by } s)
home-below = la mitad ya agarró a los { $middle } s, casi todas a los { $late } s{ $rules }

## What a drop's time hangs on.

cause-fit = qué tan bien está medido el apriete
cause-contraction = cuánto se contrae
cause-lean = qué tan derecha entra
cause-frost = la escarcha que trae
cause-carry = cuánto dura el traslado
cause-block = cuánto metal participa alrededor del barreno
cause-insertion = qué tan rápido llega a fondo

## What the later end of that time means.

at-bore-late =
    de ahí en adelante la holgura puede quedar debajo de la meta; después de { $late } ya quedó

## How soon in a warmer block.

warmer = Bloque a { $at }: a fondo en menos de { $within }
