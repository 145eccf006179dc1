### Sentences. What to do next, why a number is asked about, cautions,
### help, what drawings say to those who cannot see them.

staircase-caption =
    Altura sobre la cara, jalón por jalón: baja con carga, regresa sin carga. Sombreado: bastante
    cerca para estar a fondo.
clearance-caption =
    Holgura en diámetro contra segundos en el barreno, hasta que agarra. Sombreado: la banda de 95
    %.
fit-caption =
    Sombreado: la banda. Barra: lo que los medidores dejan sin definir (95 %). Rayas: el apriete
    menor y el mayor según las lecturas.
enters-with = entra con
mean-diameter = diámetro promedio
round-anywhere = ovalamiento, peor nivel
depth-wanted = profundidad meta
chance-low = probabilidad de una camisa hundida
all-home = probabilidad de que todas estén a fondo
cut-too-deep = No corte: deja muy poca ceja.
proud-for-risk = proyección mínima para la probabilidad aceptada
chance-inside = probabilidad de que el apriete esté en su banda
loosest = apriete menor según lecturas
tightest = apriete mayor según lecturas
bore-round = ovalamiento del barreno
bore-taper = conicidad del barreno
predicted-height = altura prevista a fondo
climb-ceiling = el calentamiento explica a lo más
last-drop = el último jalón la movió
last-return = al soltar regresó
still = movimiento que no cuenta, hasta
chance-seated = probabilidad de que esté a fondo
gauges-show = mejor probabilidad que una camisa sola puede mostrar con estos medidores
better-depth = con la mitad de incertidumbre en el medidor de profundidad
chance-asked = probabilidad exigida
over-an-hour = más de una hora
drop-numbers = vea adentro
slider = deslizador
cut-kept = El corte capturado abajo se conserva. No cuenta hasta que el corte de la cara esté libre.
left-out-why =
    Un barreno que se dejó fuera tiene lecturas de una camisa. Si esa camisa sigue en el bloque,
    vuelva a incluir el barreno y no rectifique la cara sobre ella. Si ya salió, anótelo en su
    revisión del asiento.
open-why =
    Todas las camisas están a fondo, dentro de los límites que usted capturó o dejó en su valor
    usual.
cut-good = Deja limpios el punto más bajo y todas las camisas.
cut-too-small = Deja metal sin limpiar: corte más la cara, o suba primero la camisa hundida.

## What to do next.

next-measure-needs-a-number =
    Falta un número del motor: { $field }. Captúrelo en "{ $engine_and_limits }".
next-measure = Mida: { $missing }.
next-mend = No se puede usar: { $spot }. Corríjalo.
next-answer = En duda y sin respuesta: { $place }. Corríjalo o confirme que está bien.
next-first = Primero: { $step }. No está hecho ni marcado.
next-proved-wrong = "{ $step }" muestra otra cosa: este veredicto ya no vale.
next-assumed-deck-cut = Bien según el corte planeado: capture el corte que se hizo.
next-assumed-deck-here =
    Bien con la cara junto a cada barreno tomada de la medición por filas. Mídala ahí para
    confirmarlo.
next-assumed-sleeve-od = Bien con una camisa de medida nominal. Nadie ha medido la camisa: mídala.
next-assumed-indicator =
    Bien con la barra en el centro viejo. Nadie le ha pasado el indicador: páselo.
next-assumed-flange-od-here = Bien con una ceja de medida nominal. Mida esta.
next-assumed =
    Bien con el valor usual o planeado de: { $field }. Nadie lo ha medido ni capturado: hágalo.
next-released-by-hand =
    Liberado a mano sin comprobar que todas las cejas estén a fondo. La que baje después se lleva
    el empaque.
next-deep-cut =
    Más del doble del corte planeado: revise el número. Los pistones sobresalen más en la misma
    medida.
next-may-stay-low =
    La probabilidad de dejar hundida una camisa es mayor que la aceptada. Corte más la cara, o mida otra
    vez.
next-stops-at = Cilindro { $cylinder }: pare. No entregue nada hasta corregirlo.
next-not-all-done = Marcado, pero hay pasos abiertos. El registro muestra lo que no se hizo.
next-no-groove = Este motor no lleva anillo de fuego: no hay ranura que cortar.
next-refused = Estos números no dan respuesta; vea abajo por qué.
next-sleeve-round = Redonda arriba: póngale el número de su barreno.
next-sleeve-look =
    Ovalada arriba: gire la camisa un cuarto de vuelta y mida otra vez. Si sigue, pregunte al
    proveedor.
next-sleeve-stop = Demasiado ovalada arriba: no la monte.
next-cut-deeper =
    Corte { $to_go } más de profundidad. Corte lo último ({ $what }) en pasadas chicas. Luego mida
    las cuatro posiciones de reloj.
next-cut-deeper-inch = 0.010 in
next-cut-deeper-metric = 0.25 mm
next-ledge-uneven =
    La profundidad no es igual alrededor del barreno. Limpie el asiento y mida otra vez antes de
    cortar o de asentarle una camisa.
next-at-depth =
    A profundidad, hasta donde el medidor alcanza a decir: deje de cortar, haga el chaflán y
    limpie.
next-too-deep =
    Demasiada profundidad, { $over } de más: no monte la camisa. Póngale una laina abajo, o repare
    donde se apoya.
next-step-lies =
    El escalón está { $over } más profundo de lo que esta camisa necesita. Un escalón solo se corta
    más profundo. Use una camisa más larga o una laina, o repare el escalón.
next-fit-good = El apriete está en su banda: limpie, dé azul al asiento, siga.
next-fit-undecided =
    Los medidores no alcanzan a decir si el apriete está en su banda. Ajuste el medidor de
    interiores con el micrómetro que midió la camisa. Mida camisa y barreno otra vez.
next-hone-more = Muy apretado: bruña el barreno { $stock } más, hasta la mitad de la banda.
next-fit-loose =
    Muy flojo por { $short }: mida camisa y barreno otra vez, a la misma temperatura. Luego use una
    camisa más grande en este barreno.
next-bore-form =
    El apriete está bien, pero el barreno está ovalado o cónico: bruña hasta dejarlo derecho.
next-drop-ready = Los números ya están: vea abajo la holgura y el tiempo hasta que agarra.
next-pulled-home =
    Arriba de su asiento antes del jalón, como la deja el calentamiento. La revisión del asiento ya
    mostró que está a fondo.
next-pull-home =
    Arriba de su asiento, y el puro calentamiento puede explicarlo. Una viruta en el asiento se
    leería igual: solo el jalón lo dice. Jálela a fondo.
next-above-ceiling =
    Más arriba de lo que explica el calentamiento: busque viruta, rebaba o una esquina que se monta
    en el asiento.
next-home-warm =
    Ya está en su asiento, hasta donde los medidores alcanzan a decir: jale una vez para
    comprobarlo. Luego haga la revisión del asiento.
next-pull-again =
    No está comprobado que se detuvo. Hacen falta al menos tres jalones, los dos últimos a la
    presión más alta. Ninguno de esos dos debe moverla más de lo que el medidor alcanza a decir.
    Jale otra vez a la misma presión y lea con carga y sin carga.
next-check-seat =
    Ya no se mueve. Por los jalones puede estar a fondo: solo la revisión del asiento lo comprueba.
    Mida la altura en las cuatro posiciones de reloj.
next-stopped-high =
    Ya no se mueve, pero quedó { $gap } arriba: no está a fondo. No rectifique la cara. Saque la
    camisa. Busque una viruta, una rebaba o una esquina que se monta.
next-stopped-unsure =
    Ya no se mueve. Los medidores no alcanzan a decir si está a fondo. Mida otra vez las cuatro
    posiciones de reloj, la profundidad y la camisa.
next-seated = Asentada, dentro de los límites que usted capturó o dejó en su valor usual.
next-set-too-low =
    DEMASIADO HUNDIDA por { $low }: abajo nada la detiene, y ningún jalón la sube. No rectifique la
    cara. Sáquela y vuelva a colocarla.
next-set-low-at =
    DEMASIADO HUNDIDA por { $low } en su posición de reloj más baja. Abajo nada la detiene, y
    ningún jalón la sube. No rectifique la cara. Sáquela y vuelva a colocarla.
next-set-high =
    Está { $high } demasiado arriba: jálela hacia abajo poco a poco. Mida después de cada jalón.
    Abajo nada la va a detener.
next-set-undecided = El medidor no alcanza a decir si está donde debe. Mida la altura otra vez.
next-not-seated =
    NO ASENTADA: se detuvo con una luz de { $gap } en el asiento. No rectifique la cara. Sáquela.
    Busque una viruta, una rebaba o una esquina que se monta.
next-tilted =
    NO ASENTADA: quedó inclinada { $tilt }. No rectifique la cara. Sáquela. Busque una viruta o una
    rebaba en el lado alto.
next-seat-undecided =
    Los medidores no alcanzan a decir si está a fondo. Mida otra vez altura, profundidad y camisa.
    Lo que más ayuda es un mejor medidor de profundidad.
next-below-ledge =
    Se lee más abajo que su asiento: hay una lectura mal. Mida otra vez altura, profundidad y
    camisa.

## cylinders

count-of-cylinders =
    { $count ->
        [one] 1 cilindro
        [many] { $count } cilindros
       *[other] { $count } cilindros
    }

## engine of sheet

engine-of-sheet = { $engine } (hoja del motor)

## How much of a folded group is there.

entered = { $there } de { $all } capturados

## How a try that failed stands in the record.

came-out-read = ninguna
came-out-verdict = {" "}Veredicto de entonces: { $words }
came-out-came-out-found =
    Salió: { $date }. Se encontró: { $found }. Lecturas hasta entonces: { $read }.{ $verdict }

## What was repaired in a document.

repair-checksum = su suma de verificación no coincide: se cambió fuera de esta página
repair-missing = faltaba "{ $part }"
repair-set-aside = "{ $part }" no se pudo usar; se conserva en el archivo

## Why stored data cannot be read.

unreadable-empty = no trae nada
unreadable-too-long = más largo que cualquier trabajo
unreadable-torn = cortado o dañado
unreadable-not-adocument = no es un trabajo

## Heading of a caution.

caution-title-lifting = Izaje y lavado
caution-title-pressure-test = Prueba de presión
caution-title-cutting = Corte
caution-title-nitrogen = Nitrógeno líquido
caution-title-cold-iron = Hierro frío
caution-title-cold-reading = Medir en frío
caution-title-ram = Gato hidráulico y varilla
caution-title-dry-ice = Hielo seco
caution-title-hot = Piezas calientes

## A caution.

caution-lifting =
    Eslingas con capacidad marcada, bloque asegurado. El lavado está caliente y es cáustico.
caution-pressure-test = Presión baja, placas aseguradas, manténgase lejos.
caution-cutting =
    Nada de guantes cerca de lo que gira. Protección para los ojos. Hay filos cortantes.
caution-nitrogen =
    Careta, guantes criogénicos holgados, pantalón sin valenciana por fuera de las botas. El
    nitrógeno asfixia sin avisar. Alarma de oxígeno, puertas abiertas, dos personas, nunca en una
    fosa ni en un cuarto chico. Si alguien cae: salga, llame a emergencias y no entre a sacarlo.
    Nunca selle el recipiente. Nada de aceite ni grasa cerca de un baño abierto. Baje la pieza
    despacio. Nada de piel descubierta.
caution-cold-iron =
    El hierro frío es quebradizo: nada de martillo. Punto de atrapamiento en la cara del bloque:
    machuca manos y dedos. Después seque el hierro y póngale aceite.
caution-dry-ice =
    Un kilogramo se vuelve 0.55 m3 (19 pies cúbicos) de dióxido de carbono. El límite en EE. UU.
    para una jornada de trabajo (OSHA) es 5000 partes por millón. Lo que sueltan 0.9 kg basta para
    llegar a ese límite en un cuarto de 100 m3 (3500 pies cúbicos). El gas se queda a ras del piso:
    puertas abiertas, nunca en una fosa, un sótano ni una camioneta cerrada. Nunca en un recipiente
    sellado: revienta. El alcohol arde, y su vapor también: ni flama ni chispa, recipiente chico y
    abierto. Guantes y careta.
caution-hot =
    Guantes secos que aguanten el calor: el agua se vuelve vapor. Nada de aceite cerca: echa humo y
    arde. Caliente parejo. Mida la temperatura en el barreno, por contacto. La hoja del fabricante
    dice hasta qué temperatura: el aluminio con tratamiento térmico y las piezas templadas pierden
    resistencia. Nunca meta al horno nada cerrado ni lleno.
caution-cold-reading =
    El metal congelado quema la piel y se le pega: guantes para tomar camisa y micrómetro. Se
    escarcha en segundos, y la escarcha se lee como diámetro: limpie donde mide, lea enseguida. El
    micrómetro también se enfría: tome una sola lectura rápida. Luego déjelo volver a la
    temperatura del taller y revise su cero.
caution-ram =
    Gato hidráulico y varilla con capacidad marcada, toda la rosca enroscada, en línea recta, nadie
    en línea con la varilla. Bombee despacio. Suelte la presión antes de tocar. Aceite bajo la
    piel: al hospital ya.

## A drop that a job cannot work out yet: what is missing.

drop-missing = Para la holgura y el tiempo hasta que agarra falta: { $names }.

## section label

section-label =
    Corte de la camisa en su asiento. Altura prevista { $predicted }, medida { $measured }, luz
    { $gap }.

## section label waiting

section-label-waiting =
    Corte de la camisa en su asiento. Altura prevista { $predicted }, sin medir todavía.

## section caption

section-caption-some =
    Altura y luz dibujadas ×{ $times } respecto a la ceja. Promedio de las posiciones de reloj.
section-caption-none =
    Altura y luz dibujadas mucho más grandes de lo que son, la camisa mucho más corta. Promedio de
    las posiciones de reloj.

## staircase label

staircase-label =
    Altura después de cada jalón, { $pulls } en total. Última { $last }, prevista a fondo
    { $predicted }: { $above } arriba de ella.

## clearance label

clearance-label-other-clearance-against-time =
    Holgura contra tiempo. Entra con { $entry }. Agarra a los { $nominal } segundos; el 95 %, entre
    { $early } y { $late }.
clearance-label-some =
    Holgura contra tiempo. Entra con { $entry }. Agarra a los { $nominal } segundos. La banda está
    abierta de un lado.
clearance-label-other-clearance-against-time-2 =
    Holgura contra tiempo. Entra con { $entry }. No agarra en una hora.

## fit label

fit-label = Apriete { $mean }. Su banda va de { $lo } a { $hi }.

## deck label

deck-label = Un corte de la cara de { $cut } les quita a las camisas: { $flanges }.

## deck caption

deck-caption =
    Lo que el corte le quita a cada camisa. Línea cortada: el corte para que quede limpia,
    { $clean_up }.

## What the clearance at the bore allows.

drop-words-free = Hay holgura suficiente en el barreno, según los números capturados.
drop-words-tight =
    Menos holgura que la pedida: enfríe la pieza por completo, traslade más rápido o caliente el
    { $housing }.
drop-words-may-not-enter =
    En el extremo angosto de la banda puede no entrar. No lo intente así. Caliente el { $housing }
    o bruña más.
drop-words-does-not-enter =
    No entra en el barreno: no lo intente. Caliente el { $housing } o bruña más.

## The chance over all flanges, and of how many.

chance-any-low =
    { $flanges ->
        [one] probabilidad de que el corte no la alcance
        [many] probabilidad de que el corte no alcance alguna de las { $flanges }
       *[other] probabilidad de que el corte no alcance alguna de las { $flanges }
    }

## A chance in per cent.

percent-over-99-9 = más de 99.9 %
percent-under-0-1 = menos de 0.1 %

## Readings that are still asked about.

questioned = Siguen en duda: { $places }.

## Holes that are left out and were read with a sleeve in them.

open-beside =
    Todas las demás camisas están a fondo, dentro de los límites capturados. Se dejaron fuera:
    { $holes }. { $left_out_why }

## The states of a job's cylinders, counted.

tally-text = asentadas: { $count } de { $total }
tally-stop = { $text }, pare: { $stops }
tally-look = { $text }, revise: { $looks }
tally-to-choose-two = { $text }, por elegir: { $disputed } (dos equipos difieren)

## The state of a cylinder in the record: plainer than the strip's word.

record-state-not-seated-tilted = NO ASENTADA

## The limits behind the record.

record-limits =
    Límites en { $unit }, como se capturaron o en su valor usual: apriete { $fit_low } a
    { $fit_high }. Luz máxima { $gap }, inclinación máxima { $tilt }.
