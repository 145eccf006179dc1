### What the steps say: help, what to do next, findings.

## How to take the readings of a step.

help-enquiry =
    Anote el motor, qué le pasa, las camisas montadas y los cortes de la cara de antes. Pida los
    pistones y los datos del empaque junto con el bloque. El precio cuenta las horas, una camisa
    por barreno y el nitrógeno. El nitrógeno es lo que evaporan las camisas, lo que llena el baño y
    lo que se pierde en espera.
help-intake =
    Anote quién trajo qué, y en qué estado. Numere las tapas de bancada. Marque en el bloque el
    lado del cilindro 1. Contar los barrenos desde el lado equivocado cambia las camisas de lugar.
help-rest =
    Desarme, lave y seque. Luego deje reposar juntos bloque y camisas. Inicie el reloj cuando el
    bloque salga del lavado. Anote su temperatura. Una segunda lectura más tarde muestra, por su
    propio enfriamiento, cuánto le falta. Un bloque caliente le esconde el apriete completo.
help-pressure =
    Presión baja, placas aseguradas, manténgase lejos. Anote por dónde fuga. Una camisa arregla la
    pared de un barreno y nada más.
help-datum =
    Mida en ambos extremos la altura de la cara sobre la línea de bancada. Luego mida los puntos
    bajos en filas a lo ancho de la cara, desde el frente. Tome una fila antes de cada barreno y una
    después del último. Izquierda y derecha son como usted las ve parado al frente, viendo a lo
    largo del motor. El punto más alto es 0. Si la cara está desnivelada, rectifíquela antes de
    medir nada desde ella.
help-old-bore =
    Mida a lo ancho y a lo largo del motor, a tres niveles. La barra se centra en la zona sin
    desgaste, casi siempre cerca del fondo.
help-wall =
    Mida en las cuatro posiciones de reloj, a tres niveles, con las 12 hacia el frente del motor.
    Pared que queda: la de ahora, menos la mitad de lo que la barra abre ahí en diámetro. Reste
    también lo que la barra está desviada hacia esa pared.
help-choose =
    Revise antes de pedir. Deben alcanzar la pared, la pared entre barrenos, el espacio abajo y el
    material para el bruñido final. También el asiento bajo la ceja, y la ceja que deja la ranura
    del anillo de fuego. Donde las cejas no caben en la distancia entre centros, llevan cortes
    planos.
help-sleeve =
    Mida el diámetro a lo ancho y a lo largo del motor, arriba, en medio y abajo. Arriba es justo
    debajo de la ceja. Más abajo la camisa se acomoda y queda redonda. Arriba debe ser redonda por
    sí sola. Mida el espesor de la ceja, o el largo de una camisa lisa, a las 12, 3, 6 y 9. Las 12
    van hacia el frente del motor. Póngale a la camisa el número de su barreno.
help-caps =
    Ponga las tapas de bancada y apriételas al torque de la hoja antes de meter la barra. Si se
    barrena con las tapas quitadas o flojas, los barrenos se mueven al apretarlas.
help-centre =
    Pase un indicador montado en la barra alrededor de la zona sin desgaste. Una lectura mayor
    quiere decir que esa pared está más cerca. La barra está desviada la mitad de la diferencia
    entre lecturas opuestas. Si la desvió a propósito, está bien: anote por qué.
help-bore =
    Mida el diámetro después de la última pasada. La barra deja más o menos una milésima en
    diámetro para el bruñido. Con micrómetro sobre husillo y buril: sume barreno y husillo, y
    divida entre dos.
help-counterbore-d = Mida el diámetro de la caja. Nunca debe apretar la ceja.
help-counterbore =
    Mida de la cara al asiento en las cuatro posiciones de reloj, con cero en la cara junto a este
    barreno. Si no captura la cara en este barreno, cuenta la medición por filas a su alrededor.
    Profundidad meta: el espesor mínimo de la ceja menos la proyección. Si falta profundidad tiene
    arreglo; si sobra, no. Donde el asiento pueda tener forma de copa, léalo en dos radios. Esta
    profundidad es la de la esquina exterior. La de junto a la orilla del barreno va en "Más datos
    del asiento de este barreno". Un asiento que cae hacia el barreno rompe la ceja.
help-step-depth =
    Mida de la cara al escalón donde se apoya la camisa. Lea las cuatro posiciones de reloj, con
    cero en la cara junto a este barreno. Profundidad meta: el largo mínimo de la camisa menos la
    proyección. Un escalón se corta más profundo, nunca más alto: si falta tiene arreglo; si sobra,
    no.
help-chamfer =
    El chaflán en la orilla del asiento debe librar el radio bajo la ceja. Si no, la ceja se monta
    en él y baja después.
help-fit =
    Deje reposar juntos bloque y camisa hasta que se enfríen. Mida el barreno a lo ancho y a lo
    largo, a tres niveles. Ajuste el medidor de interiores con el micrómetro que midió la camisa.
    Las dos temperaturas cuentan: un bloque caliente le esconde el apriete completo. Una camisa
    montada mueve los barrenos vecinos. Mida todos los barrenos antes de meter la primera camisa.
help-clean =
    Lave barreno y caja. Dé azul al asiento. Revise la esquina con una luz: ni viruta ni rebaba.
help-dry-run =
    Recorra el camino con la camisa: equipo de izaje, paso libre, ayudante, medidor de oxígeno,
    puertas. Capture el volumen del cuarto y los litros en el termo.
help-chill =
    Inicie el reloj cuando la camisa entre al baño. Sáquela cuando deje de burbujear, no antes. El
    tiempo que se muestra es una guía con su banda. Si mide su exterior en frío, captúrelo.
    Entonces cuenta para esta camisa en lugar de la tabla de su hierro.
help-drop =
    Sáquela cuando deje de burbujear. "Del baño al barreno en menos de" es el traslado más largo
    que aún deja la holgura pedida. "A fondo en menos de" es su tiempo desde que entra al barreno.
    Métala derecha y de un solo movimiento. Sujétela mientras se le va el frío. Luego diga cómo
    entró: el taller aprende de eso.
help-hold =
    Sujete la camisa mientras se le va el frío. El tiempo mostrado es hasta que la camisa y el
    hierro que la rodea quedan a la misma temperatura. El termómetro decide. Una camisa que agarra
    fría crece a lo largo y levanta su parte de arriba. No mida antes de que esté a la temperatura
    del taller.
help-warm-height =
    Mida solo cuando la camisa esté a la temperatura del taller. Lea las cuatro posiciones de
    reloj, con cero en la cara, nunca en la camisa vecina.
help-pull =
    En cada jalón lea la presión del manómetro. Luego lea la altura con carga y sin carga, siempre
    en el mismo punto. Haga al menos tres jalones, los dos últimos a la presión más alta. Si saca la
    camisa y la vuelve a meter, dígalo abajo. Lo que se leyó queda en el registro. Las lecturas
    quedan libres para el siguiente intento.
help-seat =
    Mida la altura en las cuatro posiciones de reloj después del último jalón, con cero en la
    cara. Se compara, posición por posición, con el espesor de la ceja y la laina, menos la
    profundidad de la caja. Una camisa lisa en un escalón: largo y laina, menos la profundidad del
    escalón. Una camisa sostenida por su apriete se compara con la altura a la que debía quedar.
help-deck =
    Mida la cara en filas a lo ancho, desde el frente. Tome una fila antes de cada barreno y una
    después del último. Izquierda y derecha son como usted las ve parado al frente, viendo a lo
    largo del motor. El punto más alto es 0. Donde la cara junto a un barreno no se midió en su
    caja, cuentan los cuatro puntos a su alrededor. Lo que se capturó en "Altura de la cara y puntos bajos" ya está aquí: es
    la misma medición. El corte debe dejar limpios el punto más bajo y todas las camisas.
help-heights =
    Mida la altura de cada camisa en las cuatro posiciones de reloj, con cero en la cara junto a
    ella. Hágalo después del último jalón. Capture las alturas en la revisión del asiento. Si la
    hoja del motor da un torque, sujete las camisas a ese torque y dígalo primero. Luego lea. En un
    mismo barreno, entre vecinos y entre todos, respetan los límites de la hoja. La cara no se
    corta.
help-protrusion =
    Mida cada pistón en el punto muerto superior, adelante y atrás sobre el perno, con cero en la
    cara terminada. Eso decide el empaque.
help-groove =
    Mida la profundidad desde la superficie terminada de arriba, en las cuatro posiciones de reloj.
    Meta: la altura del anillo menos su proyección.
help-finish =
    Ponga la placa de torque. Con la carrera, las vueltas y los ciclos del bruñido en Motor se
    calcula el rayado cruzado. Se muestra el ángulo entre las rayas, y el de una raya con la
    horizontal. Mida a lo ancho y a lo largo, a tres niveles. Deténgase en el barreno terminado. El
    apriete cierra la camisa por dentro, en unos lugares más que en otros. El dibujo muestra dónde
    hay que bruñir más.
help-ring-gap =
    Ponga cada anillo a escuadra en su barreno terminado. Muy cerrado: límelo. Cada milésima en el
    barreno son tres en la abertura.
help-wash-again =
    Lave hasta que una toalla blanca salga blanca. Cepille las galerías. Luego haga otra vez la
    prueba de presión.
help-report =
    Lea el registro, fírmelo, péguelo al bloque. Muestra el empaque que hay que comprar, la nueva
    altura de la cara y lo que no se hizo.

## What a step says at a signal, where it says one thing only.

says-enquiry-go = El precio con estas tarifas. Tome el trabajo, o diga de una vez que no.
says-rest-go = A la misma temperatura: mida.
says-rest-wait = Temperaturas muy distintas: deje reposar los dos juntos, luego mida otra vez.
says-pressure-go = Aguanta, dentro de la pérdida permitida.
says-pressure-stop =
    Pierde presión: busque la fuga. Una camisa arregla la pared de un barreno y nada más.
says-wash-again-go = Aguanta, dentro de la pérdida permitida.
says-wash-again-stop = Pierde presión: busque la fuga antes de que salga del taller.
says-datum-go = La cara está lo bastante nivelada, de punta a punta.
says-datum-look = La cara está desnivelada: rectifíquela primero, o mida otra vez los dos extremos.
says-old-bore-go = Centre la barra en la parte sin desgaste del barreno, casi siempre el fondo.
says-wall-go =
    Hay pared suficiente, dentro de los límites que usted capturó o dejó en su valor usual.
says-wall-look = Delgada: aleje de ella el centro, o use una camisa más chica.
says-wall-stop = Demasiado delgada para barrenar: mueva el centro, o use una camisa más chica.
says-choose-go =
    Esta camisa le queda a este bloque, dentro de los límites que usted capturó o dejó en su valor
    usual.
says-choose-look = Poca pared, o cejas encimadas: revise las líneas de abajo antes de pedir.
says-choose-stop = No la pida: lo que abajo marca "pare" es demasiado chico para este bloque.
says-choose-wait = Todavía no está todo revisado: capture abajo lo que falta, luego pida.
says-pull-stop =
    Un jalón carga más de lo permitido: vea las barras del dibujo. Suelte la presión. Busque grietas
    en el asiento y en la camisa. Si están sanos, dígalo en la nota. Quite ese jalón de la lista, y
    jale dentro del límite.
says-deck-wait = Bloqueado: no está comprobado que todas sus camisas estén a fondo.
says-heights-wait =
    No está comprobado que todas las camisas de esta cara estén a fondo: vea sus revisiones del
    asiento.
says-deck-none = Libre: corte la cara y luego toque "La cara ya está cortada".
says-centre-go = Centrada.
says-centre-look = Descentrada: muévala, o anote por qué va así a propósito.
says-bore-go = Queda material para el bruñido.
says-bore-look = Queda poco o nada para el bruñido: mida otra vez antes de bruñir.
says-counterbore-d-go = La ceja entra libre.
says-counterbore-d-look = Holgada: la ceja no va guiada. Cuide dónde queda la camisa.
says-chamfer-go = El chaflán libra el radio.
says-chamfer-wait = Falta espacio sobre el radio, y puede montarse en el asiento: haga más chaflán.
says-dry-run-go =
    El oxígeno en aire mezclado queda arriba de 19.5 %, según los números capturados. Cerca del
    termo y a ras del piso es mucho peor.
says-dry-run-look =
    Si se evapora todo de golpe, el oxígeno baja a menos de 19.5 %: menos nitrógeno, puertas
    abiertas, alarma de oxígeno encendida.
says-dry-run-stop = El oxígeno baja a menos de 19.5 %: no meta tanto nitrógeno en este cuarto.
says-chill-go = Pasó el extremo lento de la banda: ya debe haber dejado de burbujear.
says-chill-look = Dentro de la banda: sáquela solo si ya dejó de burbujear.
says-chill-wait = Muy poco: regrésela al baño hasta que deje de burbujear.
says-drop-go = Entró libre. Sujétela mientras se le va el frío.
says-drop-look =
    Rozó: busque una rebaba, una entrada ladeada o un barreno apretado ahí. Anote lo que encuentre.
    Sujétela mientras se le va el frío.
says-drop-stop =
    Atorada: nada de martillo, el hierro es quebradizo mientras está frío. Déjela llegar a la
    temperatura del taller, luego decida cómo sacarla.
says-hold-go = A la temperatura del taller: suéltela y mida la altura.
says-hold-wait = Todavía no está a la temperatura del taller: sujétela, no mida aún.
says-protrusion-none =
    Con el empaque y la hoja capturados en Motor se calcula el espacio a la cabeza.
says-protrusion-go = Hay espacio suficiente a la cabeza, según la hoja capturada.
says-protrusion-stop = Muy poco espacio a la cabeza: ponga un empaque más grueso, o deténgase.
says-groove-go = A profundidad.
says-finish-go = A medida, redondo y derecho.
says-finish-look = A medida, pero ovalado o cónico: bruña hasta dejarlo derecho.
says-ring-gap-go = Aberturas dentro de los límites de la hoja.
says-ring-gap-wait = Un anillo toparía punta con punta: límelo.
says-ring-gap-look = Una abertura es grande: pruebe otro anillo, o el barreno está demasiado grande.

## The same, by how much.

says-by-bore-wait = Quite { $by } más en diámetro con la barra. El resto es para el bruñido.
says-by-bore-stop =
    Barrenado { $by } de más, aun para el apriete más flojo de esta camisa: perdió su apriete. Mida
    otra vez. Si la lectura se repite, este barreno necesita una camisa más grande.
says-by-counterbore-d-wait = Muy chica: quite { $by } más en diámetro, o aprieta la ceja.
says-by-groove-stop = Demasiado profunda por { $by }: el anillo no sellaría. Deténgase.
says-by-groove-wait = Corte { $by } más de profundidad.
says-by-finish-wait = Bruña { $by } más en diámetro.
says-by-finish-stop =
    Pasado { $by } de la medida final, al menos en un lugar: bruñir ya no lo regresa. Deténgase.

## A finding in the person's words and units; what is not in this table says
## no number and stands as the calculation words it.

finding-apart-inch = 5 °F
finding-apart-metric = 3 °C
finding-uneven-inch = 0.001 in
finding-uneven-metric = 0.025 mm
finding-piston-tight =
    el pistón tiene menos espacio en su barreno que el que pide la hoja. Mida los dos otra vez,
    luego bruña o deténgase
finding-no-piston-clearance =
    el barreno terminado no es mayor que el pistón: ¿un radio entre los diámetros, o el pistón
    equivocado?
finding-cocked =
    una posición de reloj está lejos de las otras. Una lectura está mal por una vuelta del
    micrómetro, o la camisa está ladeada. Mida otra vez antes de jalar
finding-cold-not-smaller =
    la camisa medida fría no es más chica que antes de enfriarla: una lectura está mal. Límpiela y
    mida otra vez, o borre la lectura para usar la tabla de su hierro
finding-cold-shrinks-little =
    la camisa medida fría encogió mucho menos de lo que debe su hierro. Causas: escarcha, baño
    demasiado corto, material equivocado o lectura equivocada. Enfríela por completo, límpiela,
    mídala otra vez
finding-cold-shrinks-much =
    la camisa medida fría encogió mucho más de lo que puede su hierro. Causas: lectura equivocada,
    antes o después de enfriarla, o material equivocado. Mídala otra vez antes de confiar en la
    holgura
finding-little-flange-left =
    el corte deja menos ceja de la que pide el límite, contando su ranura. No corte tan profundo
finding-deep-cut =
    más del doble del corte planeado: los pistones sobresalen más en la misma medida. Revise
    primero el empaque y el espacio a la cabeza
finding-flange-may-stay-low =
    la probabilidad de dejar hundida una camisa es mayor que la aceptada. Corte más la cara, o mida otra
    vez las alturas y la cara
finding-ledge-not-flat =
    la profundidad varía más de { $uneven } alrededor del barreno. Limpie el asiento, mida otra vez
    y emparéjelo antes de asentarle una camisa
finding-temperatures-apart =
    camisa y bloque se midieron con más de { $apart } de diferencia. Deje reposar los dos juntos y
    mida otra vez
finding-below-ledge =
    se lee más abajo que su asiento: altura, profundidad o camisa está mal leída. Mida otra vez
finding-does-not-enter =
    la camisa enfriada no es más chica que el barreno: no la meta. Enfríela por completo,
    trasládela más rápido, caliente el bloque o bruña el barreno a su apriete
finding-flats-needed =
    las cejas no caben en la distancia entre centros. Cada una necesita un corte plano de la
    profundidad mostrada, y las cajas se juntan
finding-gauges-eat-the-band =
    con estos medidores ninguna lectura puede comprobar que el apriete está en su banda. Use
    mejores medidores, o ajuste el medidor de interiores con el micrómetro que midió la camisa
finding-sharp-corner =
    Aquí las dos esquinas son vivas, y el esfuerzo en una esquina viva no tiene máximo. Este es el
    esfuerzo a una distancia igual al radio de la ceja. Compara una camisa, un apriete o una ceja
    con otra.
finding-mesh-speaks =
    Dos mallas difieren más de una décima en una esquina: confíe en el orden de los números, no en
    sus dígitos.
finding-height-moved =
    la altura en las posiciones de reloj no es la altura después del último jalón. Mida otra vez,
    con cero en la cara
finding-never-grips =
    la camisa no agarra en una hora. Revise el apriete y las temperaturas capturadas
finding-no-floor = la ranura atravesaría la ceja: no corte. Use otro anillo o una ceja más gruesa
finding-no-wall =
    la barra rompería esta pared: no barrene. Mueva el centro o use una camisa más chica
finding-odd-return =
    regresa distinto que los otros barrenos del trabajo, o se lee más alta con carga que sin carga.
    Léala otra vez, y busque una viruta o una rebaba en el asiento
finding-oxygen-low =
    evaporado todo de golpe, este nitrógeno baja el cuarto a menos de 19.5 % de oxígeno. Use menos,
    un cuarto más grande o el aire libre
finding-too-deep =
    más profundidad que la planeada: no corte. Use una laina, una ceja más gruesa o una camisa más
    larga. O acepte menos proyección con un corte mayor de la cara
finding-too-little =
    el corte planeado deja sin cortar un punto bajo o una camisa. Planee al menos el corte mínimo,
    o averigüe por qué está hundida
finding-unequal-pulls =
    los dos últimos jalones quedaron abajo del 95 % del más fuerte: no pueden mostrar que se
    detuvo. Jale dos veces más a la misma presión
finding-worse-at-the-floor =
    cerca del termo, en fosas y a ras del piso hay mucho menos oxígeno. Alarma de oxígeno, puertas
    abiertas, dos personas
finding-loose =
    no queda nada del apriete cuando se alisan los picos: quedaría floja. Bruña menos, o use una
    camisa más grande
finding-no-stock =
    la camisa montada deja menos de lo que necesita el bruñido. Use una camisa con el interior más
    chico

## Why a calculation refused, by the number it names; its own message is in
## metres and for the log.

fault-which-deck = los puntos bajos de la cara: mídalos, el punto más alto es 0
fault-which-clean-up = el corte para que quede limpia
fault-which-cut = el corte de la cara
fault-which-pulls = los jalones
fault-which-depth = la profundidad de la caja
fault-which-thickness = el espesor de la ceja y la laina
fault-which-heights = las alturas
fault-which-plan = el plan de las alturas: el plan ya no concuerda: haga uno nuevo
fault-which-wall = el interior de la camisa o su pared: debe ser menor que el exterior
fault-which-temperatures = las temperaturas
fault-which-cold = la temperatura de enfriado: debe ser menor que la del taller
fault-which-heat =
    la temperatura del alojamiento: mayor que la del taller, y en agua 212 °F (100 °C) como máximo
fault-which-times = los tiempos, primero el traslado
fault-which-diameters = los diámetros: camisa, barreno y bloque no concuerdan
fault-which-lengths = los largos de camisa y bloque
fault-which-gauges = la incertidumbre de los medidores
fault-which-limits = los límites y la certeza que usted quiere
fault-which-loads = gases, carga de la cabeza y gato hidráulico
fault-which-tools = bruñidora y barra
fault-which-materials = los materiales, las superficies y el cuarto
fault-which-costs = nitrógeno y precios
fault-which-other =
    los números de este paso y del motor: uno falta o está fuera de lo que se puede calcular
fault = Así como está no se puede calcular. Revise { $which }.

## What a step's expected time is.

timer-expected-drop =
    del baño al barreno a lo más { $span }: después, la holgura en el barreno es menor que la
    pedida
timer-expected-hold = la camisa y el hierro que la rodea quedan a la misma temperatura en { $span }
timer-expected-rest = según cómo se va enfriando el bloque, casi iguales en { $span }
timer-expected-other = esperado: { $span }

## timer left

timer-left = faltan de { $low } a { $high }

## timer at most

timer-at-most = quedan { $low }

## What a calculation found, where it says no number of its own.

finding-all-alike =
    Todas las camisas leen altas por igual. Ponga en cero el medidor de profundidad sobre un
    plano. Revise un radio: la ceja puede montarse en él.
finding-bore-too-big =
    Un barreno ya quedó demasiado grande para el apriete con cualquiera de estas camisas. Elija
    una camisa mayor, o busque una lectura equivocada.
finding-butts =
    Las puntas del anillo se tocarían: no lo use. Lime el anillo hasta su abertura, o elija uno de
    la medida del cilindro.
finding-deck-not-surveyed =
    La cara junto a este barreno no está medida. Cuenta como su punto más alto. La probabilidad de
    una ceja hundida es por lo menos la que se muestra.
finding-joint-spread =
    Los ejemplos publicados van de 0.8 a 8 veces esta conductancia. Úsela para comparar un acabado
    con otro.
finding-little-margin =
    Un esfuerzo de aro pasa de la mitad de la resistencia a la tensión capturada. Baje el apriete
    o la presión, y pregunte al fabricante.
finding-load-not-checked =
    Gato hidráulico, varilla, asiento y ceja no están todos revisados. Capture lo que falta, o
    respete los límites de sus fabricantes.
finding-loose-in-service =
    A estas temperaturas de trabajo no queda nada del apriete. Planee más apriete, o mantenga el
    bloque más frío.
finding-neighbours-move =
    Al meter una camisa, los barrenos vecinos se ovalan. Mida todos los barrenos antes de meter la
    primera, y los vecinos otra vez después.
finding-no-flange =
    No queda nada de una ceja después de este corte: no corte. Asiente esa camisa más
    honda, corte menos la cara, o elija una ceja más gruesa.
finding-no-plan =
    Ningún plan respeta todos los límites. Consiga otras lainas o camisas, o pregunte si se pueden
    cortar los asientos.
finding-one-reading =
    Una camisa sola prueba poco: un error del medidor no se distingue de una luz. Mida otra vez
    con otro medidor, o póngalo en cero de nuevo.
finding-outside-sizes =
    Fuera de las medidas para las que se comprobaron estos segundos. Comprobado: exterior 30 a 150
    mm (un perno 5 a 66), pared 1.5 a 8 mm. Pared alrededor del barreno: 4 a 60 mm. Tómelos sólo
    como guía. Pruebe primero con una pieza de sobra.
finding-outside-the-rule =
    La distancia entre centros o el medio ancho cae fuera de lo que abarca esta regla (1.15 a 1.45
    barrenos, 1.2 a 2.5 radios). Tome sus números como una estimación.
finding-returns-not-compared =
    No se puede leer un jalón de otro barreno. No se sabe si este regresa como los demás.
finding-samples-refused = Algunos de los cálculos no dieron respuesta. La banda es la de los demás.
finding-slope-from-roughness =
    La pendiente se tomó de la rugosidad. Ahí las reglas publicadas difieren por un factor de 2.
finding-stands-out =
    Una camisa lee distinto que las demás. Jálela hacia abajo otra vez. Luego sáquela y busque
    viruta o rebaba bajo la ceja.
finding-swept-oval =
    12 y 6 juntos no leen lo mismo que 3 y 9. El barreno está ovalado donde se pasó el indicador, o
    una se leyó mal.
finding-tighter-below-the-deck =
    En un bloque con cámara de agua la placa de la cara es rígida. A media pulgada bajo el asiento
    la camisa cierra de 11 a 20 % más que a la mitad del largo.
