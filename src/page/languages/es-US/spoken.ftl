### English, spoken: what is wanted next, what was read, what it means. Digits as a
### machinist says them; thousandths of an inch, hundredths of a millimetre.

# Says what is wanted and what the step means.
say-it = Dígalo
# When the page speaks.
speech = Voz
# Never.
speech-off = apagada
# With whose voice.
speech-what = Con las voces de este equipo. Primero van las que no necesitan red.
# There is none.
no-voice =
    Este navegador no tiene voz en español: la página no habla. Los tonos y las palabras sí
    funcionan.

## Its words.

spoken-asked-about = en duda
spoken-refused = rechazada
spoken-no-field = ningún campo espera

## digits

digits-oh = cero
digits-one = uno
digits-two = dos
digits-three = tres
digits-four = cuatro
digits-five = cinco
digits-six = seis
digits-seven = siete
digits-eight = ocho
digits-nine = nueve

## counted

counted-zero = cero
counted-one = uno
counted-two = dos
counted-three = tres
counted-four = cuatro
counted-five = cinco
counted-six = seis
counted-seven = siete
counted-eight = ocho
counted-nine = nueve
counted-ten = diez
counted-eleven = once
counted-twelve = doce
counted-thirteen = trece
counted-fourteen = catorce
counted-fifteen = quince
counted-sixteen = dieciséis

## Digits one by one, behind the point alone where nothing stands before it.

spoken-minus = menos
spoken-point = punto
spoken-comma = coma
read-unit-millimetre = milímetros
read-unit-inch = pulgadas
read-unit-thou = milésimas

## A length as it is said at the bench: thousandths, or hundredths of a millimetre.

small-inch = { $before } { $point } { $rest } milésimas
small-metric = { $before } { $point } { $rest } milímetros

## verdict

verdict-cut-deeper = corte { $by } más
verdict-too-deep = pare, { $by } de más en profundidad
verdict-hone-more = bruña { $by } más
verdict-fit-loose = pare, flojo por { $by }
verdict-stopped-high-not-seated = pare, quedó { $by } arriba
verdict-tilted = revise, inclinada { $by }
verdict-answer = en duda: { $at }
verdict-at-depth = a profundidad
verdict-seated = está a fondo

## Its choices.

speech-after-every-reading = después de cada lectura
speech-when-say-it = al tocar "Dígalo"
