### What drawings say to those who cannot see them, and the lines
### below them.

load-caption =
    El jalón más fuerte. Marcas: 80 % de lo nominal del gato y la mitad del límite elástico de la
    varilla. Además, presión en el asiento y esfuerzo cortante de la ceja, como se capturaron.
chill-caption =
    Tiempo en el baño hasta que deja de burbujear. Sombreado: de lo más pronto a lo más tarde.
    Barra: el tiempo en el baño.
oxygen-caption =
    Oxígeno en este cuarto, de 15 a 21 %, ya mezclado. Cerca del termo y al ras del piso es mucho
    peor. Marca: 19.5 %.
deck-map-caption =
    La cara vista desde arriba, el frente a la izquierda. Entre más grande la marca, más abajo está
    del punto más alto. Rellena: sigue baja después del corte planeado.
deck-survey-caption =
    La cara vista desde arriba, el frente a la izquierda. Entre más grande la marca, más abajo está
    del punto más alto.
at-once = todo de golpe
with-air = con el aire capturado
# Parts named in a section.
part-block = bloque
# What the flange sits on.
part-ledge = asiento
# What was fitted.
part-sleeve = camisa
# What stands proud.
part-flange = ceja
shallow = de menos
deep = de más
own-cuts-one =
    Sus cajas en este trabajo contra la profundidad meta de cada una. Una sola todavía no dice nada
    de la dispersión.

## A level of readings.

level-name-0 = arriba
level-name-1 = en medio
level-name-other = abajo

## round level

round-level = { $level }: a lo ancho { $across }, a lo largo { $along }

## round label

round-label = Forma en cada nivel y hacia abajo. { $levels }.

## round caption

round-caption-limit = ; el límite es { $limit }
round-caption =
    Ovalamiento dibujado ×{ $times } contra el diámetro{ $limit }. Abajo: línea continua a lo ancho,
    línea cortada a lo largo. Más ancho es hacia la derecha.

## wall label

wall-label = Pared que queda después de barrenar: { $walls }.

## wall caption

wall-caption =
    Pared que queda alrededor del barreno, una línea suave por las cuatro posiciones de reloj. El
    número es la pared más delgada de los niveles. Línea cortada: { $stop }, el límite para "pare".

## plan wall

plan-wall = cilindro { $cylinder } pared más delgada { $wall }

## plan label

plan-label =
    Plano del bloque. Distancia entre centros { $pitch }, pared entre cajas { $web }. { $walls }

## plan caption

plan-caption =
    Desde arriba, el frente a la izquierda. Pared entre barrenos { $web }. Cruz: donde está la
    barra, dibujada ×{ $times }. Abajo: la pared más delgada que queda.

## load words

load-words-what-ram = gato hidráulico
load-words-what-rod = varilla
load-words-what-ledge = asiento
load-words-what-flange = cortante en la ceja
load-words = { $what } { $now }, a lo más { $most }

## load label

load-label = Cargas del jalón más fuerte: { $loads }.

## chill label

chill-label-some =
    En el baño { $elapsed }. Deja de burbujear como a los { $quiet }, entre { $low } y { $high }.
chill-label-none = Deja de burbujear como a los { $quiet }, entre { $low } y { $high }.

## oxygen label

oxygen-label =
    Oxígeno en el cuarto: todo de golpe { $sudden }, con el aire capturado { $least }; límite
    19.5 %.

## deck map label

deck-map-label-some = La cara debajo de su punto más alto: { $spots }. Corte planeado { $plane }.
deck-map-label-none = La cara debajo de su punto más alto: { $spots }.

## Which way an error of depth goes.

way-deep = de más
way-shallow = de menos

## own cut words

own-cut-words = cilindro { $cylinder } { $by } { $error_m }

## own cuts label

own-cuts-label = Cajas de este trabajo contra su profundidad meta: { $cuts }.

## own cuts caption

own-cuts-caption-few = {" "}Pocos cortes: el siguiente puede quedar muy lejos de ahí.
own-cuts-caption =
    Sus { $n } cajas en este trabajo contra la profundidad meta de cada una. Línea cortada: su
    promedio, { $mean } { $mean_m }. Sombreado: una desviación estándar, { $sd }.{ $few }
