### A gauge that types, what is heard.

# The line that says what came and stands nowhere.
gauge-line = Medidor
# Lets a reading go.
drop-it = Desecharla
# No place of this screen waits.
no-place = Toque el campo donde va.
# Whether a gauge is used, and how the hand goes.
hand = Después de una lectura, seguir con
# What it is good for.
hand-what =
    Para un medidor que escribe sus lecturas (por cable o adaptador de radio, enviadas con Enter o
    Tab). Con la segunda o tercera opción entra todo un bloque sin tocar la pantalla. Page Down (Av
    Pág) salta un lugar. Page Up (Re Pág) regresa. Una lectura sin Enter ni Tab al final no se toma.
# A gauge in use.
gauge-in-use = Medidor que escribe
# The key that skips.
skip-key = Tecla que salta un lugar
# The key that goes back.
back-key = Tecla que regresa un lugar
# Waits for a key.
press-key = Presiónela ahora
# The usual keys.
page-down = Page Down (Av Pág)
# The usual keys.
page-up = Page Up (Re Pág)
# Waits for another key.
teach = Poner otra tecla
# Forgets that other key.
forget-key = Olvidar la tecla que puso
# The view for a tablet on the wall.
wall = Vista de muro
# Leaves it.
wall-close = Cerrar la vista de muro

## A place with whose it is.

whole-place-owner-cylinder = cilindro { $cylinder },{" "}

## A reading that came and stands nowhere yet.

caught-why-no-field = llegó sin un campo que la esperara. Todavía no está anotada.
caught-why-twice = llegó dos veces seguidas. La segunda no está anotada.
caught-why-cut-off = llegó sin final: ¿cortada? No está anotada.
caught-why-behind = llegó después de ella. Todavía no está anotada.
caught-more =
    {" "}{ $more ->
        [one] Hay 1 más en espera.
        [many] Hay { $more } más en espera.
       *[other] Hay { $more } más en espera.
    }

## Puts it into a place.

put-it-in = Ponerla en { $at }

## What came and was refused.

refused-of-field = Rechazada para { $of }: "{ $shown }". { $why }
refused-of-wire = Rechazada: "{ $shown }". { $why }
refused-read-only = Rechazada: "{ $shown }". Este trabajo aquí se puede leer, no cambiar.

## The orders, and none.

hand-none = el siguiente campo, luego la respuesta
hand-by-cylinder = todos los lugares de aquí, luego el siguiente cilindro
hand-by-place = este lugar en el siguiente cilindro

## A key beside Page Down or Page Up.

key-taught-some = { $usual }, y { $key }

## Where the reading that came last stands.

wall-came = llegó: { $at }
