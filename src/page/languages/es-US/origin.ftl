### Where a number comes from, in words, in symbols, and by whom.

where-from = De dónde sale
in-words = En palabras
in-symbols = En símbolos
source = Fuente
went-in = Lo que entró, primero lo que más pesa
also-in = También se usó, sin mover el número:
materials = Materiales
no-number-yet = Todavía no hay número que mostrar: faltan lecturas.
none-while-locked = No hay número que mostrar mientras la cara está bloqueada.
order-from = De dónde salen estas revisiones
order-source = Geometría. Límites: de memoria, sin fuente; usted los puede cambiar.

## A calculation: words, symbols, source.

formula-estimate-hours-times-the =
    Horas por el precio de la hora, una camisa por barreno, el nitrógeno y todo lo demás. Nitrógeno:
    lo que evaporan las camisas, lo que llena el baño, lo que se pierde en espera, y un cuarto más.
formula-estimate-price-h-job =
    price = (h_job + n h_hole) p_hour + n p_sleeve + 1.25 (n V_N2 + V_fill + loss h_stand) p_liter +
    other
formula-estimate-the-shop-s =
    Las tarifas del propio taller; el nitrógeno según el enfriado de esta camisa.
formula-heights-highest-less-lowest =
    El mayor menos el menor de los promedios de altura de todos los barrenos. Además: cada altura
    entre sus límites. Las alturas de un barreno, y los promedios de dos vecinos, no difieren más
    que sus límites.
formula-heights-max-h-mean = max H_mean - min H_mean
formula-heights-direct-readings-limits =
    Lecturas directas. Límites: la hoja del motor, como usted los capturó. Ninguno es usual.
formula-apart-temperature-of-the = Temperatura del bloque menos la de las camisas.
formula-apart-t-block-t = |t_block - t_sleeve|
formula-apart-direct-reading-limit =
    Lectura directa. Límite: de memoria, sin fuente; usted lo puede cambiar.
formula-pressure-drop-what-the-pressure = La presión perdida, dividida entre la del inicio.
formula-pressure-drop-p-start-p = (p_start - p_end) / p_start
formula-pressure-drop-direct-reading-limit =
    Lectura directa. Límite: de memoria, sin fuente; usted lo puede cambiar.
formula-datum-tilt-deck-height-at = Altura de la cara adelante menos la de atrás.
formula-datum-tilt-h-front-h = |H_front - H_rear|
formula-datum-tilt-direct-reading-limit =
    Lectura directa. Límite: de memoria, sin fuente; usted lo puede cambiar.
formula-wear-largest-less-smallest =
    El diámetro mayor menos el menor del barreno viejo. Ovalamiento: mayor menos menor en un nivel.
    Conicidad: el promedio de arriba, junto a la cara, menos el de abajo.
formula-wear-max-d-min = max D - min D
formula-wear-readings-the-terms = Lecturas; los términos son los de forma como en ISO 1101.
formula-wall-left-wall-by-gauge =
    Pared según el medidor, menos la mitad de lo que la barra abre en diámetro en ese nivel y en
    ese sentido, menos lo que la barra está desviada hacia esa pared. Cuenta el punto más delgado.
formula-wall-left-w-left-w = w_left = w - (D_new - D_old) / 2 - e
formula-wall-left-geometry-limits-from =
    Geometría. Límites: de memoria, sin fuente; usted los puede cambiar.
formula-choose-pitch-less-counterbore =
    Distancia entre centros menos el diámetro de la caja. Espacio abajo: de la cara al escalón de
    abajo, menos profundidad de la caja, menos largo. Material del bruñido final: barreno terminado
    menos el interior como lo cierra el apriete. Asiento y ceja junto a la ranura: la mitad de la
    diferencia de sus diámetros. Debajo de la ranura: ceja menos proyección, corte y ranura.
formula-choose-web-pitch-d =
    web = pitch - D_cb;  below = step - (T - P) - L;  stock = D_fin - (ID - fit);  ledge = (D_f -
    OD)/2;  lands = (D_gi - D_fin)/2, (D_f - D_go)/2;  floor = T - P - cut - depth
formula-choose-geometry-limits-from =
    Geometría. Límites: de memoria, sin fuente; usted los puede cambiar.
formula-offset-half-the-difference =
    La mitad de la diferencia de lecturas opuestas del indicador, los dos ejes juntos.
formula-offset-e-sqrt-r12 = e = sqrt(((r12 - r6)/2)^2 + ((r3 - r9)/2)^2)
formula-offset-geometry = Geometría.
formula-hone-stock-target-bore-less =
    Barreno meta menos el barreno como lo dejó la barra. Barreno meta: la camisa menos el centro de
    la banda de apriete. Buril: la mitad de la suma de barreno y husillo.
formula-hone-stock-ds-fit = stock = Ds - fit - Db;  cutter = (D + spindle) / 2
formula-hone-stock-geometry-stock-for =
    Geometría. Material para el bruñido: práctica común, sin fuente.
formula-counterbore-clearance-counterbore-diameter-less = Diámetro de la caja menos DE de la ceja.
formula-counterbore-clearance-d-cb-d = D_cb - D_flange
formula-counterbore-clearance-geometry-limits-from =
    Geometría. Límites: de memoria, sin fuente; usted los puede cambiar.
formula-chamfer-of-the = Chaflán del asiento menos radio debajo de la ceja.
formula-chamfer-fillet = chamfer - fillet
formula-chamfer-geometry-limit-from =
    Geometría. Límite: de memoria, sin fuente; usted lo puede cambiar.
formula-oxygen-nitrogen-boils-to =
    El nitrógeno hierve y se vuelve unas 690 veces su volumen de gas, y toma el lugar del aire. Se
    mezcla por el cuarto, y la ventilación lo saca.
formula-oxygen-c-0-2095 =
    c = 0.2095 (1 - (R/Q)(1 - exp(-Q t/V))), sin ventilación 0.2095 exp(-Vg/V); todo de golpe 0.2095
    (V - Vg)/V
formula-oxygen-mass-balance-of =
    Balance de masa de un cuarto mezclado. Densidad del nitrógeno: CoolProp 8.0.0. Límite 19.5 %:
    carta de interpretación de OSHA del 2 de abril de 2007.
formula-chill-the-wall-of =
    La pared de la camisa pierde calor por ebullición de película, luego por ebullición nucleada.
    Eso sigue hasta que está a no más de 2 K del baño.
formula-chill-t-integral-of = t = integral de m cp(T) / (A q(T - T_bath)) dT
formula-chill-boiling-curve-of =
    Curva de ebullición del nitrógeno líquido y su banda: datos publicados de ebullición en baño,
    ajustados; calor latente y densidades: CoolProp 8.0.0. La banda es ancha porque las superficies
    difieren.
formula-warmed-temperature-of-the = Temperatura de la camisa metida menos la del taller.
formula-warmed-t-sleeve-t = |t_sleeve - t_room|
formula-warmed-direct-reading-limit =
    Lectura directa. Límite: de memoria, sin fuente; usted lo puede cambiar.
formula-protrusion-compressed-gasket-less =
    Empaque comprimido menos la proyección más grande. Relación de compresión: cilindrada y lo que
    queda del volumen de la cámara cuando la cara está más baja.
formula-protrusion-room-gasket-max =
    room = gasket - max protrusion;  ratio = (Vs + Vc) / Vc, Vc = Vs / (ratio_0 - 1) - A cut
formula-protrusion-geometry-the-least = Geometría; el espacio mínimo es el del fabricante del motor.
formula-groove-depth-less =
    Profundidad de la ranura menos su meta: altura del anillo menos su proyección. Ceja que queda:
    espesor menos corte de la cara menos ranura.
formula-groove-depth-target-h = depth_target = h_ring - P_ring
formula-groove-geometry-ring-and = Geometría; anillo y proyección son los del fabricante del motor.
formula-finish-finished-bore-less =
    Barreno terminado menos el promedio de las lecturas. Antes de que las haya, menos el interior
    como lo cierra el apriete. Ángulo incluido del rayado cruzado: de carrera, ciclos y vueltas, a
    la velocidad promedio de la carrera.
formula-finish-stock-d-final =
    stock = D_final - mean D;  angle = 2 atan(2 stroke cycles / (pi D turns))
formula-finish-geometry-profile-in =
    Geometría. Perfil del dibujo: elasticidad lineal axisimétrica por elementos finitos, para una
    junta que desliza libre. Comprobado contra un programa independiente. La línea junto a él:
    anillos de Lamé. A lo largo y a lo ancho de la fila: una regla ajustada a elementos finitos, a
    no más de 4 % de lo que se cierra.
formula-ring-gap-the-least-gap =
    La abertura más chica de los anillos en este barreno. Una milésima en el barreno abre la
    abertura 3.14 milésimas.
formula-ring-gap-pi-dd = gap + pi dD
formula-ring-gap-geometry-limits-are = Geometría. Los límites son los de la hoja.
formula-sleeve-form-largest-less-smallest =
    El diámetro mayor menos el menor justo debajo de la ceja. Promedio y conicidad: en todos los
    niveles.
formula-sleeve-form-max-d-min = max D - min D en el primer nivel
formula-sleeve-form-readings-the-terms =
    Lecturas; los términos son los de forma como en ISO 1101. Límites: de memoria, sin fuente; usted
    los puede cambiar.
formula-counterbore-target-depth-less =
    Profundidad meta menos la profundidad ahora. Profundidad meta: el espesor mínimo de la ceja
    menos la proyección. Probabilidad de una ceja hundida: la dispersión del avance y el medidor de
    profundidad juntos, ley normal. Para todas las cejas: cada una por sí misma, con el error del
    corte de la cara común a todas.
formula-counterbore-c-t-p =
    C = T - P;  por cortar = C - depth;  p_low = Phi((clean_up - cut + low - P) / sqrt(feed^2 +
    gauge^2)), low: la cara debajo de su punto más alto
formula-counterbore-geometry-and-normal =
    Geometría y ley normal. Proyección: práctica común, sin fuente.
formula-step-depth-target-depth-less =
    Profundidad meta menos la profundidad ahora. Profundidad meta: el largo mínimo de la camisa
    menos la proyección. Probabilidad de una camisa hundida: la dispersión del avance y el medidor
    de profundidad juntos, ley normal.
formula-step-depth-d-l-p =
    D = L - P;  por cortar = D - depth;  p_low = Phi((clean_up - cut + low - P) / sqrt(feed^2 +
    gauge^2)), low: la cara debajo de su punto más alto
formula-step-depth-geometry-and-normal =
    Geometría y ley normal. Proyección: práctica común, sin fuente.
formula-fit-sleeve-less-bore =
    Camisa menos barreno, cada medida corregida a 20 C según la dilatación de su propio hierro. La
    probabilidad es según los dos medidores juntos, ley normal.
formula-fit-ds-1 = fit = Ds / (1 + e(ts)) - Db / (1 + e(tb));  u = sqrt(us^2 + ub^2)
formula-fit-reference-temperature-iso =
    Temperatura de referencia: ISO 1:2016. Dilatación: vea el material abajo. Incertidumbre: JCGM
    100 y 106. Banda: práctica común, sin fuente.
formula-cold-drop-heat-flows-into =
    El calor entra a la camisa fría desde el aire mientras se traslada, luego por el hueco que se va
    cerrando en el barreno. Agarra donde se acaba la holgura. A fondo en menos de: el punto de 2.5 %
    del primer contacto en cuatrocientas metidas. Van desde derechas hasta del todo ladeadas y
    llevan escarcha de hasta 15 um. Se contraen dentro de la banda del material (medido: de las
    lecturas). El traslado dura 30 % menos o más, si no se cronometró. El lado más frío arquea la
    camisa. El tiempo que usted necesita se compara con ese punto. También se toma 30 % más corto o
    más largo (una estimación), para ver si una metida lenta también llega a fondo. El dibujo es de
    una camisa que entra derecha y sin escarcha.
formula-cold-drop-h-k-air =
    h = k_air / (gap + 0.18 um); agarra: Db(T) - Ds(T) = 0; climb = L ((e(room) - e(at grip)) -
    (e_b(room) - e_b(block)))
formula-cold-drop-own-solution-checked =
    Solución propia, comprobada contra otras independientes. Aire: US Standard Atmosphere 1976;
    convección libre: Churchill y Chu 1975; contracción: vea el material abajo.
formula-height-as-measured =
    Altura medida menos la prevista, posición por posición. Prevista: espesor de la ceja (en una
    camisa lisa, su largo) y laina, menos profundidad. En una camisa sostenida por su apriete: la
    altura a que debía quedar. El tope: lo que crece una camisa que agarra a la temperatura del
    baño.
formula-height-h-t-shim = H - (T + shim - C);  ceiling = L (e(room) - e(bath))
formula-height-geometry-contraction-see = Geometría; contracción: vea el material abajo.
formula-pulls-height-after-the =
    Altura después del último jalón menos la prevista. Ya no baja cuando dos pérdidas de altura
    están dentro del ruido del medidor y lo que regresa al soltar es parejo.
formula-pulls-gap-h-t =
    gap = H - (T + shim - C);  u = sqrt(uH^2 + uT^2 + uC^2);  p = Phi((limit - gap) / u)
formula-pulls-geometry-and-normal =
    Geometría y ley normal (JCGM 106). Límites: de memoria, sin fuente; usted los puede cambiar.
formula-seat-height-at-the =
    Altura en las posiciones de reloj menos la prevista. Inclinación: la luz mayor menos la menor.
    Los tres medidores juntos dicen qué tan cierto es.
formula-seat-gap-h-t =
    gap = H - (T + shim - C);  u = sqrt(uH^2 + uT^2 + uC^2);  p = Phi((limit - gap) / u)
formula-seat-geometry-and-normal =
    Geometría y ley normal (JCGM 106). Límites: de memoria, sin fuente; usted los puede cambiar.
formula-deck-the-deepest-low =
    El punto bajo más profundo, o lo que necesita la ceja más baja, y el corte para que quede limpia. O
    el corte planeado. Cada ceja pierde el corte y lo que sobresalía de su cara.
formula-deck-r-low-clean =
    r >= low + clean_up;  flange cut = deck + least height + r;  flange left = least T - flange
    cut
formula-deck-geometry-usual-cut =
    Geometría. Corte usual: práctica común, sin fuente. Probabilidad de una ceja hundida: ley
    normal, medidor de altura dos veces, el error del corte común a todas las cejas.

## A value that stands for several places.

mean-of-mean = { $value }, promedio de { $places }
mean-of-least = { $value }, el menor de { $places }
mean-of-largest = { $value }, el mayor de { $places }

## A limit that stands as a new engine has it.

as-usual = { $value } (el valor usual, aquí sin cambio)

## How a check before ordering is calculated.

order-formula-web-on-step = distancia entre centros - DE de la camisa
order-formula-bottom-on-step = largo - proyección - de la cara al escalón de abajo
order-formula-bottom-by-fit = de la cara al escalón de abajo - (largo - proyección)
order-formula-ledge-on-step =
    (DE de la camisa - el mayor de DI de la camisa y barreno debajo del escalón) / 2
order-formula-wall =
    la pared más delgada medida, menos lo que quita barrenar; antes de eso, la pared capturada
order-formula-web = distancia entre centros - (DE de la ceja + centro de la banda de su holgura)
order-formula-bottom = de la cara al escalón de abajo - (ceja - proyección) - largo
order-formula-ledge = (DE de la ceja - DE de la camisa) / 2
order-formula-finish-stock = barreno terminado - (DI de la camisa - centro de la banda de apriete)
order-formula-groove-inside = (interior de la ranura - barreno terminado) / 2
order-formula-groove-outside = (DE de la ceja - exterior de la ranura) / 2
order-formula-groove-floor =
    ceja - proyección - corte planeado - (altura del anillo - su proyección)

## What an input was moved by, and what that step is.

step-by-gauge = { $by } (su medidor, k = 1)
step-by-reckoned = { $by } (medidor, escarcha y su calentamiento, k = 1, estimado)
step-by = { $by }, una sola lectura

## What an input does to the answer.

moves-some = con un error de { $by }, la respuesta cambia { $effect }
moves-none = con un error de { $by }, ya no hay respuesta

## A difference in the person's unit, with one digit more than a reading.

moved-time = { $si } s

## What a sleeve's shrink is taken from, where not from the table below.

shrink-by-shop =
    Contracción: como se midió en este taller, capturada con el motor, en lugar de la contracción de
    abajo. Su banda es la de las dos lecturas.
shrink-by-sleeve =
    Contracción: de esta camisa, DE sin frío menos DE medido en frío, en lugar de la contracción de
    abajo. Su banda es la de las dos lecturas (medidor, escarcha, lo que se calienta mientras se
    lee: estimado).

## A material: how far its contraction is known, and by whom.

material = { $name }: contracción { $band } % (95 %), { $flag }. { $source }

## How a number of a material is known.

flag-read = leído
flag-memory = de memoria
flag-computed = calculado
flag-estimate = estimado
