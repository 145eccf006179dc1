### The bore of a fitted sleeve down its length.

bore-down = El barreno a lo largo de su profundidad, antes de bruñirlo
straight = recto
head-on = con cabeza
along = a lo largo
across = a lo ancho
ledge = asiento
lame = Lamé
hone-takes = quita el bruñido
takes-all = todo
takes-bored = ya barrenada
profile-caption =
    El barreno de la camisa metida, de la cara hacia abajo, exagerado, junto a la recta meta. Hacia
    la derecha se cierra. Gruesa: como queda al meterla. Línea marcada "con cabeza": con cabeza o
    placa de torque. Delgadas: a lo largo y a lo ancho de la fila. Línea cortada: un solo número por
    los anillos de Lamé. Números: lo que el bruñido debe quitar ahí en diámetro. Es todo, o lo que
    queda ya barrenada la camisa, donde la barra la dejó recta.
pressure-caption =
    Cómo presiona la camisa en su barreno, de la cara hacia abajo. No se dibuja nada a menos de un
    espesor de pared del asiento y del pie. Ahí no se puede confiar en el modelo.
bore-numbers = Lo mismo en números
try-others = Probar otro apriete, pared o ceja
only-tried = Solo es una prueba: el trabajo conserva sus números. De puntos: el barreno con esos.
back-to-job = Volver a los números del trabajo
flange-stress = Esfuerzo en la ceja y el asiento
stress-fillet = debajo de la ceja, en el radio
stress-counterbore = en el bloque, a la misma distancia de la esquina de la caja
stress-ledge = asiento, presión promedio

## bore columns

bore-columns-below-deck = Debajo de la cara
bore-columns-closes = Cierra
bore-columns-hone-takes = Quita el bruñido
bore-columns-after-bar = Ya barrenada

## A dimension to try.

dial-fit = Apriete
dial-wall = Pared de la camisa
dial-flange = Espesor de la ceja

## on diameter

on-diameter = En { $unit }, en diámetro. Menos significa que abre.

## pressure head

pressure-head = presión, { $unit }

## pressure label

pressure-label =
    Presión de la camisa en su barreno a lo largo de su profundidad: de { $least } a { $most }.

## push home

push-home =
    Se necesitan de { $least } a { $most } para empujarla a fondo contra su apriete, con fricción de
    { $low } a { $high }.

## head sinks

head-sinks = La cabeza o la placa de torque hunde { $down } la parte de arriba de la ceja.

## pull sinks

pull-sinks = El jalón más fuerte la hunde { $down }. Eso regresa al soltar.

## closes oval

closes-oval =
    En su fila cierra ovalado: { $along } a lo largo de la fila, { $across } a lo ancho, a la mitad
    del largo.

## order of sleeves

order-of-sleeves-why-0 = Así ninguna tiene una vecina ya metida.
order-of-sleeves-why-1 = Así ninguna tiene más de una vecina ya metida que le ovale su barreno.
order-of-sleeves-why-other =
    Una entra entre dos vecinas ya metidas: mida otra vez su barreno antes de meterla.
order-of-sleeves = Orden con menos deformación para las que faltan: { $list }. { $why }

## profile label

profile-label-closes =
    El apriete cierra el barreno hasta { $most }. Un solo número por los anillos de Lamé { $lame }.
profile-label-some = { $closes } El bruñido quita de { $least } a { $greatest } hacia abajo.

## A bore that cannot be drawn, with the dimension that is in the way.

no-profile = Sin dibujo del barreno hacia abajo. { $field }: { $why }

## A stress on two meshes: where they differ, the mesh speaks.

two-meshes = { $half } (malla más gruesa { $usual })

## no stress

no-stress-the-fillet-under =
    El radio debajo de la ceja no está medido, o es demasiado grande para esta ceja. Captúrelo en el
    chaflán del asiento.
