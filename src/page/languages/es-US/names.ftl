### Names of steps, numbers and their places.

minutes = min:s

## step title

step-title-enquiry = Primera llamada y precio
step-title-intake = Recibir el bloque
step-title-rest = Desarmar, lavar, reposar
step-title-pressure = Prueba de grietas y presión
step-title-datum = Altura de la cara y puntos bajos
step-title-old-bore = Barrenos viejos
step-title-wall = Pared con medidor ultrasónico
step-title-choose = Elegir la camisa
step-title-sleeve = Recibir la camisa
step-title-caps = Tapas de bancada con su torque
step-title-centre = Centrar la barra
step-title-bore = Barrenar
step-title-counterbore-d = Diámetro de la caja
step-title-counterbore = Profundidad de la caja
step-title-step-depth = Profundidad del escalón
step-title-chamfer = Chaflán del asiento
step-title-fit = Bruñir y apriete
step-title-clean = Limpiar y dar azul
step-title-dry-run = Ensayo y aire del cuarto
step-title-chill = Enfriar
step-title-drop = Meter la camisa
step-title-hold = Sujetar mientras se le va el frío
step-title-warm-height = Altura ya sin frío
step-title-pull = Jalón
step-title-seat = Revisión del asiento
step-title-deck = Rectificar la cara
step-title-protrusion = Proyección del pistón
step-title-groove = Ranura del anillo de fuego
step-title-finish = Bruñido final
step-title-ring-gap = Abertura de los anillos
step-title-wash-again = Lavar, probar otra vez
step-title-report = Reporte y entrega

## Why a check of an order has nothing to check.

order-not-here-bottom = no se capturó escalón abajo: barrenado de lado a lado
order-not-here-ledge = la sostiene su apriete: no se para en nada
order-not-here-groove-outside-groove-floor = una camisa lisa no tiene ceja
order-not-here-other = no se capturó anillo de fuego

## order missing

order-missing = todavía falta: { $missing }

## least

least = al menos { $value }

## What an order is checked for.

order-item-bottom-to-cut-at = por cortar en el escalón
order-item-wall = pared que queda
order-item-web = pared entre barrenos
order-item-bottom-room-to-the = espacio hasta el escalón de abajo
order-item-ledge = ancho del asiento
order-item-finish-stock = material para bruñir con placa de torque
order-item-groove-inside = metal por dentro de la ranura
order-item-groove-outside = ceja por fuera de la ranura
order-item-groove-floor = ceja debajo de la ranura

## field

field-pitch = Distancia entre centros de barrenos
field-flange-od = Exterior de la ceja, nominal (diámetro)
field-final-bore = Barreno terminado (diámetro)
field-step-below = De la cara al escalón de abajo
field-spindle = Husillo de la barra (diámetro)
field-gasket = Empaque de cabeza, comprimido
field-head-least = Espacio entre pistón y cabeza, mínimo (hoja)
field-ring-height = Altura del anillo de fuego (hoja)
field-ring-proud = Proyección del anillo de fuego (hoja)
field-ring-gap-low = Abertura del anillo, mínima (hoja)
field-ring-gap-high = Abertura del anillo, máxima (hoja)
field-apart-most = Diferencia entre bloque y camisas, máxima (grados)
field-test-loss = Presión perdida en la prueba, máxima (0.05 = 5 %)
field-datum-tilt = Desnivel de la cara de punta a punta, máximo
field-wall-calm = Pared que queda: "revise" si es menor de
field-wall-look = Pared que queda: "pare" si es menor de
field-web-calm = Pared entre barrenos: "revise" si es menor de
field-web-look = Pared entre barrenos: "pare" si es menor de
field-bottom-least = Espacio hasta un escalón de abajo, mínimo
field-finish-least = Material para bruñir con placa de torque, mínimo
field-clear-low = Espacio alrededor de la ceja, mínimo (diámetro)
field-clear-high = Espacio alrededor de la ceja, máximo (diámetro)
field-offset-look = Barra desviada del centro viejo: "revise" si es mayor de
field-hone-leave = Material que se deja al bruñido (diámetro)
field-fillet-spare = Chaflán menos radio, mínimo
field-ledge-least = Ancho del asiento, mínimo
field-groove-inner = Ranura del anillo de fuego, por dentro (diámetro)
field-groove-outer = Ranura del anillo de fuego, por fuera (diámetro)
field-groove-land = Ceja a los lados y debajo de la ranura, mínimo
field-gasket-grades = Espesores de empaque a la venta, comprimidos
field-hone-strokes = Carreras de bruñido, total desde la barra
field-groove-near = Ranura fuera de su profundidad, máximo
field-ram-bore = Interior del gato hidráulico (diámetro)
field-ram-hole = Hueco o vástago del gato hidráulico (diámetro)
field-ram-rated = Gato hidráulico, presión nominal
field-rod-d = Rosca de la varilla de jalar (diámetro)
field-rod-pitch = Rosca de la varilla de jalar, paso
field-rod-yield = Varilla de jalar, límite elástico
field-ledge-most = Presión en el asiento, máxima
field-flange-most = Esfuerzo cortante de la ceja en su raíz, máximo
field-stroke = Carrera del motor
field-compression = Relación de compresión antes del corte (hoja)
field-piston-d = Pistón, como lo mide la hoja (diámetro)
field-piston-least = Espacio alrededor del pistón, mínimo (hoja, diámetro)
field-hone-stroke = Bruñido: carrera
field-hone-turns = Bruñido: vueltas por minuto
field-hone-cycles = Bruñido: ciclos completos por minuto, subir y bajar
field-block-out = Temperatura del bloque al salir del lavado
field-drop-outcome = Cómo entró
field-hours-job = Horas del trabajo, una vez
field-hours-hole = Horas por barreno
field-hour-price = Precio por hora
field-sleeve-price = Precio por camisa
field-litre-price = Precio por litro de nitrógeno
field-other-price = Todo lo demás
field-bath-fill = Nitrógeno para llenar el baño (litros)
field-standing-loss = Nitrógeno que se pierde en espera (litros por hora)
field-standing-hours = Horas de espera
field-rz-sleeve = Exterior de la camisa, Rz
field-rz-bore = Barreno del bloque bruñido, Rz
field-smoothing = Parte de ambos Rz que se alisa (0.8 = 80 %)
field-run-sleeve = Temperatura de la camisa, en marcha
field-run-block = Temperatura del bloque, en marcha
field-gas-pressure = Presión de los gases, la más alta (hoja)
field-passes = Pasadas de la barra
field-common-height = Medidor de altura: parte de su varianza común a una cara (0.5 = 50 %)
field-common-thickness = Espesor: parte de su varianza común a una cara (0.5 = 50 %)
field-common-depth = Medidor de profundidad: parte de su varianza común a una cara (0.5 = 50 %)
field-prior-home = De las camisas que ya no bajan, qué parte está a fondo (0.95 = 95 %)
field-hone-rate = Bruñido: diez carreras quitan (diámetro)
field-last-cut = Última pasada de la barra (en diámetro)
field-chill-shrink = Contracción en el baño, medida (diámetro)
field-rest-time = Tiempo que reposó
field-block-now = Temperatura del bloque ahora
field-sleeves-now = Temperatura de las camisas ahora
field-test-start = Presión de prueba
field-test-end = Presión al final
field-test-time = Tiempo que se sostuvo
field-retest-start = Segunda prueba: presión
field-retest-end = Segunda prueba: presión al final
field-room-volume = Volumen del cuarto
field-room-litres = Nitrógeno en el cuarto (litros)
field-air-changes = Cambios de aire por hora
field-release = Se evapora en
field-deck-height = Altura de la cara sobre la línea de bancada
field-old-bore = Barreno viejo (diámetro)
field-wall-reading = Pared ahora
field-flange-od-here = Exterior de la ceja (diámetro)
field-fillet = Radio debajo de la ceja
field-indicator = Indicador alrededor del barreno
field-bored-d = Barreno al salir de la barra (diámetro)
field-counterbore-d = Caja (diámetro)
field-chamfer-here = Chaflán del asiento
field-chill-time = Tiempo en el baño
field-cold-od = Exterior de la camisa medido en frío, si lo tiene (diámetro)
field-hold-time = Tiempo sujetada
field-sleeve-warm = Temperatura de la camisa, ya metida
field-piston-proud = Pistón arriba de la cara
field-groove-depth = Profundidad de la ranura
field-finish-d = Barreno terminado, medido (diámetro)
field-ring-gap-now = Abertura del anillo
field-nominal-od = Exterior de la camisa, nominal (diámetro)
field-sleeve-id = Interior de la camisa, como llega (diámetro)
field-sleeve-length = Largo (sin contar la ceja)
field-nominal-flange = Espesor de la ceja, nominal
field-block-wall =
    Pared del bloque que queda alrededor del barreno ya cortado (con cámara de agua: pared original)
field-jacket-from = La cámara de agua, si la hay, empieza debajo de la cara a
field-jacket-to = La cámara de agua termina debajo de la cara a
field-half-width = Del centro del barreno al costado del bloque
field-head-clamp = Carga de la cabeza o placa de torque sobre una camisa
field-shim = Laina debajo de la camisa
field-fit-low = Apriete, mínimo (en diámetro)
field-fit-high = Apriete, máximo (en diámetro)
field-round-look = Ovalamiento de la camisa: "revise" si es mayor de
field-round-stop = Ovalamiento de la camisa: "pare" si es mayor de
field-bore-form = Ovalamiento y conicidad del barreno, máximo
field-entry-least = Holgura en el barreno, mínima
field-target-proud = Proyección meta
field-planned-cut = Corte de la cara planeado
field-clean-up = Corte para que quede limpia
field-risk = Probabilidad aceptada de una camisa hundida (0.01 = 1 %)
field-gap-limit = Luz en el asiento, máxima
field-tilt-limit = Inclinación de una camisa asentada, máxima
field-confidence = Qué tan cierto debe ser "asentada" (0.95 = 95 %)
field-gauge-sleeve = Exterior de la camisa
field-gauge-bore = Diámetro del barreno
field-gauge-height = Altura sobre la cara
field-gauge-thickness = Espesor de la ceja (medidor)
field-gauge-depth = Profundidad de la caja (medidor)
field-feed-sd = Dispersión del avance a mano del buril del asiento
field-deck-sd = Corte de la cara, dispersión alrededor del corte puesto
field-room-temperature = Temperatura del taller y del bloque
field-drop-room = Temperatura del taller
field-low-spot = Cara debajo de su punto más alto
field-deck-cut = Corte de la cara (por hacer o hecho)
field-sleeve-od = Exterior de la camisa (diámetro)
field-sleeve-temperature = Temperatura de la camisa
field-flange-thickness = Espesor de la ceja
field-counterbore-depth = Profundidad de la caja
field-deck-here = Cara en este barreno, debajo de su punto más alto
field-bore-d = Barreno del bloque (diámetro)
field-block-temperature = Temperatura del bloque
field-carry = Tiempo de traslado, del baño al barreno
field-home-timed = Tiempo desde que entra hasta estar a fondo
field-drop-carry = Tiempo de traslado, del frío al barreno
field-home-needed-drop-home = Tiempo que usted necesita, desde que entra hasta estar a fondo
field-warm-height = Altura sobre la cara, ya sin frío
field-pull-gauge = Presión del manómetro
field-pull-loaded = Altura con carga
field-pull-released = Altura sin carga
field-seat-height = Altura sobre la cara, después del último jalón
field-drop-od = Exterior de la pieza (diámetro)
field-drop-wall = Pared de la pieza
field-drop-length = Largo de la pieza
field-drop-fit = Apriete (en diámetro)
field-drop-block-wall = Pared del alojamiento alrededor del barreno
field-drop-cold-at = Temperatura de enfriado
field-drop-heat-at = Alojamiento calentado a
field-drop-heat-most = Límite de calor del alojamiento (hoja del fabricante)
field-drop-heat-out = Desde que sale del calor hasta que entra la pieza
field-drop-least = Holgura meta en el barreno
field-drop-litre-price = Nitrógeno, precio por litro
field-sleeve-kind = Cómo se apoyan las camisas
field-plain-length = Largo de la camisa, de punta a punta
field-step-depth = Profundidad del escalón
field-step-bore = Barreno debajo del escalón (diámetro)
field-gauge-length = Largo de la camisa (medidor)
field-gauge-step = Profundidad del escalón (medidor)
field-drop-ice-price = Hielo seco, precio por kilogramo
field-from-deck-before = Antes del corte
field-from-deck-least = Mínimo (hoja)
field-from-deck-most = Máximo (hoja)
field-block-cut-so-far = Cortado del bloque hasta ahora
field-block-cut-most = Cortado del bloque, máximo permitido (hoja)
field-deck-finish-kind = Acabado de la cara expresado en (hoja del fabricante del empaque)
field-deck-finish-most =
    Acabado de la cara, lo más áspero permitido (hoja del fabricante del empaque)
field-deck-finish = Acabado de la cara, medido después del corte
field-from-deck-after = Medido otra vez
field-recut-said = Por qué se deja así
field-shop-name = Taller
field-machinist = Rectificador
field-block-serial = Número de serie del bloque
field-engine-hours = Horas del motor
field-gauge-checked = Última revisión del medidor
field-sleeve-ends = Cómo quedan las camisas
field-proud-low = Sobresale, mínimo (hoja)
field-proud-high = Sobresale, máximo (hoja)
field-spread-hole = Diferencia de alturas en un barreno, máxima (hoja)
field-spread-neighbour = Diferencia de promedios entre dos vecinos, máxima (hoja)
field-spread-all = Diferencia de promedios entre todos los barrenos, máxima (hoja)
field-held-torque = Sujetada mientras se lee, con un torque de (hoja, si lo dice)
field-ledge-cut-most = Asiento: corte máximo para igualar alturas (hoja; 0: ninguno)
field-ledge-cut-step = Asiento: corte por pasada (hoja)
field-shim-sizes = Medida
field-shims-left = Cuántas quedan
field-shim-here = Laina debajo de esta camisa, si no es la del motor
field-plan-sleeve = Plan: camisa
field-plan-turn = Plan: cuartos de vuelta
field-plan-shim = Plan: laina
field-plan-cut = Plan: corte
field-plan-height = Plan: altura
field-plan-done = Plan: hecho
field-ledge-inner = Profundidad cerca de la orilla del barreno
field-ink-check = Marca de azul de la ceja en el asiento
field-ledge-fall = El asiento baja o sube hacia el barreno, máximo
field-held-down = Al leer las alturas, las camisas estaban

## What stands over a list of a field's places.

list-title-low-spot = Cara debajo de su punto más alto: filas a lo ancho, de adelante hacia atrás

## levels

levels-top = arriba
levels-middle = en medio
levels-bottom = abajo

## Level and clock point of a place round the clock at three levels.

round-place = a las { $clock }

## The label of one of a field's places; empty where it has but one.

place-ends-front = adelante
place-ends-rear = atrás
place-clocks = a las { $clocks }
place-levels-axis-across = a lo ancho
place-levels-axis-along = a lo largo
place-list-side-left = izquierda
place-list-side-right = derecha
place-list-row = fila { $index }, { $side }
place-list-shim = laina número { $index }
place-list-cut = corte
place-list-shim-2 = laina
place-list-sleeve = camisa
place-list-grade = espesor número { $index }
place-list-ring = anillo número { $index }

## How the sleeves of a job stand.

sleeve-kind-flanged = con ceja, en el asiento de una caja
sleeve-kind-on-step = lisa, en un escalón del barreno
sleeve-kind-by-fit = lisa, la sostiene solo su apriete

## What heights that are there are judged by, beside the choice.

judged-as-by-flanged = la ceja y la profundidad de la caja
judged-as-by-on-step = el largo de la camisa y la profundidad del escalón
judged-as-by-fit = la proyección meta, y no por un asiento
judged-as = Ya hay alturas leídas. Se juzgan por { $by }.

## more than

more-than = más de { $value }

## less than

less-than = menos de { $value }

## How many cylinders have a step behind them.

cylinders-done = { $done } de { $all } cilindros

## How a drop went in.

drop-outcome-free = libre
drop-outcome-dragged = con roce
drop-outcome-stuck = atorada
