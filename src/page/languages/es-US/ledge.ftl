### How a ledge lies toward the bore, its ink, its repair.

# Over what would repair a ledge.
ledge-repair = Para reparar este asiento
# No shim is at hand.
no-shim-at-hand = no hay lainas disponibles en la lista
# It needs no shim.
no-shim = Así no queda más profundo de lo que necesita la camisa: sin laina.

## What the ink says.

inked-full = anillo completo
inked-broken = anillo cortado
inked-not-done = sin hacer

## What to do next, of a ledge.

next-ledge-shape-cupped =
    EN FORMA DE COPA: el asiento baja { $by } hacia el barreno todo alrededor. La ceja apoya solo en
    su orilla y ahí se rompe: no ponga camisa en él. Límpielo, mida otra vez, emparéjelo.
next-ledge-shape-sloped =
    INCLINADO: el asiento baja { $by } hacia el barreno de un lado. La ceja se rompe ahí: no ponga
    camisa en él. Límpielo, mida otra vez, emparéjelo.
next-ledge-shape-rises =
    El asiento sube { $by } hacia el barreno: la ceja apoya en su raíz. Busque una rebaba, mida otra
    vez, emparéjelo.
next-ledge-ink-broken =
    La marca de azul está cortada: la ceja no apoya todo alrededor. Limpie las dos caras y dé azul
    otra vez. Luego empareje el asiento.

## The least cut.

true-it =
    Emparéjelo con el menor corte: a { $depth } en todo alrededor, quitando { $cut } donde está más
    alto. Luego mida otra vez su profundidad, en los dos radios.

## The shim that makes up for it.

then-shim =
    La camisa queda entonces { $shim } demasiado hundida. Una laina de { $shim } lo compensa
    ({ $at_hand }).

## Of the shims at hand the nearest.

nearest-shim = la más cercana disponible: { $size }
