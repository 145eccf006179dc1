### Names of the one number of a step and of the further ones.

## The word before the one number; `si` with the sign it goes by (`OneNumber::sense`).

figure-price = precio
figure-apart = diferencia entre bloque y camisas
figure-pressure-lost = presión perdida
figure-datum-lean = desnivel de la cara, de punta a punta
figure-wear = el barreno viejo varía
figure-wall-left-breaks-through-by = se rompe la pared por
figure-wall-left-thinnest-wall-left = pared más delgada que queda
figure-web-left-flanges-overlap-by = las cejas se enciman por
figure-web-left-web-left-between = pared que queda entre barrenos
figure-offset = barra desviada del centro viejo
figure-hone-stock-past-the-target = pasado del barreno meta por
figure-hone-stock-left-for-the = queda para el bruñido (diámetro)
figure-flange-room-flange-larger-than = la ceja es más grande que su caja por
figure-flange-room-around-the = espacio alrededor de la ceja (diámetro)
figure-fillet-room-fillet-over-chamfer = el radio se pasa del chaflán por
figure-fillet-room-chamfer-over-fillet = el chaflán libra el radio por
figure-oxygen-left = oxígeno mínimo en el cuarto
figure-quiet = deja de burbujear como a los
figure-warm-apart = diferencia entre camisa y taller
figure-head-room = espacio entre pistón y cabeza
figure-piston-proud-piston-low-by = pistón hundido por
figure-piston-proud-piston-proud-at = el pistón sobresale a lo más
figure-groove-off-groove-still-to = ranura por cortar
figure-groove-off-groove-deeper-than = ranura más profunda que la meta por
figure-finish-stock-past-the-size = pasado de la medida por
figure-finish-stock-left-diameter = material que queda (diámetro)
figure-least-gap = abertura de anillo más chica
figure-out-of-round = ovalamiento de arriba
figure-still-to-cut-past-the-depth = pasada de profundidad por
figure-still-to-cut-still-to-cut = falta por cortar
figure-fit-loose-by = flojo por
figure-fit = apriete
figure-above-predicted-below-its-ledge = debajo de su asiento por
figure-above-predicted-above-its-seat = arriba de su asiento
figure-above-target-too-low-by = demasiado hundida por
figure-above-target-above-its-mark = arriba de su marca
figure-gap-after-pull-gap = debajo de su asiento por
figure-gap-after-pull = luz después del último jalón
figure-gap = luz en su asiento
figure-proud-spread = diferencia entre promedios de todos los barrenos

## What a further number of a step is.

detail-hours = horas de trabajo
detail-sleeves = camisas por comprar
detail-sleeves-nitrogen = nitrógeno que evaporan las camisas (litros)
detail-bath-fill = nitrógeno para llenar el baño (litros)
detail-stood-away = nitrógeno perdido en espera (litros)
detail-strokes = carreras de bruñido para eso, a su ritmo
detail-nitrogen = nitrógeno por comprar (litros, con un cuarto de sobra)
detail-thinnest = lo más delgado en
detail-sleeve-wall = pared de la camisa
detail-flat-depth = plano en cada ceja
detail-cutter-setting = micrómetro sobre husillo y buril
detail-bore-wanted = barrenar a (diámetro)
detail-offset-up = hacia las 12
detail-offset-right = hacia las 3
detail-sudden = todo de golpe (%)
detail-litres-at-limit = litros que de golpe lo bajan a 19.5 %
detail-quiet-low = lo más pronto
detail-quiet-high = lo más tarde
detail-bath-litres = se evaporan (litros)
detail-largest = mayor
detail-smallest = menor
detail-round = ovalamiento, peor nivel
detail-taper = conicidad
detail-groove-wanted = profundidad meta
detail-floor-left = ceja que queda debajo de la ranura
detail-gasket-taken = con el empaque de
detail-compression = relación de compresión después del corte
detail-close-in = el apriete cierra el interior (diámetro)
detail-bore-to = barrenar la camisa metida a (diámetro)
detail-grip-left = agarre que queda después de barrenar (%)
detail-piston-room = espacio alrededor del pistón (diámetro)
detail-hatch-included = rayado cruzado, ángulo incluido (grados)
detail-hatch-horizontal = cada raya con la horizontal (grados)

## The unit of a one number that is no length.

figure-unit-apart-warm-apart-inch = °F
figure-unit-apart-warm-apart-metric = °C

## A range of numbers, its unit behind it.

range = { $from } a { $to }
