### English of the cold drop without a job: parts, colds, heats and what stands
### beside the answer.

part = Pieza
part-material = Material de la pieza
housing = Alojamiento
housing-material = Material del alojamiento
cold-by = Enfriada en
heat-by = Calor del alojamiento
the-way = Frío y traslado al barreno
prices = Precios
beside = Tiempo en frío, apriete y temperatura
in-cold = En frío
in-heat = En calor
plate-touch = no se sabe qué tan bien toca la placa: mida el alojamiento en su barreno
takes = Gasta
fit-most = Mayor apriete con esa holgura
cold-enough = Temperatura de la pieza para esa holgura
hot-enough = Temperatura del alojamiento para esa holgura
closes-in = Su barreno se cierra
beside-what =
    Con la holgura meta en el barreno, en el extremo angosto de la banda. Arriba se muestra si hay
    tiempo para llevarla a fondo. Los tiempos cuentan las caras interior y exterior, no los
    extremos. Una fundición entera tarda más que la pared capturada: mídala.
side-by-side = Lado a lado: nitrógeno, hielo seco, congelador, calor
way = Con
clearance-at-bore = Holgura en el barreno
home-by = A fondo en
costs = Cuesta
mend-first = corrija primero
enough-as-it-is = cabe bien tal como está
no-heat-limit =
    Nadie capturó hasta cuánto se puede calentar este alojamiento. Tómelo de la hoja del
    fabricante. El aluminio con tratamiento térmico y las piezas templadas pierden resistencia
    mucho antes de verse calientes.
# From the last step to the record.
see-record = Ver el registro
finished = Antes de la camisa, y terminado
# In the cell of readings one of which cannot be used.
unusable-here = no se puede usar
before-boring = Prueba de presión antes de barrenar
after-all = Prueba de presión después de todo el trabajo

## What goes in.

part-flanged-sleeve = Camisa con ceja
part-plain-sleeve = Camisa lisa
part-bushing = Buje
part-seat-ring = Asiento de válvula
part-bearing-ring = Pista de balero
part-pin = Perno o flecha

## What makes it cold.

cold-nitrogen = Nitrógeno líquido
cold-dry-ice-alcohol = Hielo seco + alcohol
cold-dry-ice-packed = Hielo seco, empacado
cold-freezer = Congelador
cold-outdoors = Aire frío, a la intemperie
cold-as-it-is = Nada

## What warms the housing.

heat-as-it-is = Ninguno
heat-oven = Horno
heat-hot-plate = Placa caliente
heat-water = Agua caliente

## One of the ways side by side.

way-as-it-is = { $warmed }, sin enfriar
way-other = { $by } y { $warmed }

## What the housing is called with this part.

housing-block = bloque
housing-2 = alojamiento

## What the drawing of a part shows.

part-label =
    { $name } a { $cold }, con la mitad dentro de su barreno a { $warm }, en corte a lo largo del
    eje: { $clearance } de holgura en diámetro.

## Below that drawing.

part-caption =
    En corte a lo largo del eje, paredes en proporción al diámetro. La holgura se dibuja mucho más
    ancha de lo que es.

## A time and its ends.

time-span = { $usual } ({ $quick } a { $slow })

## Nitrogen that a part takes.

litres = { $amount } litros de nitrógeno, más lo que llena el baño

## Dry ice that a part takes.

dry-ice = { $amount } kg de hielo seco, más lo que se pierde en espera

## Not even at the end of the range.

never-enough = nunca con eso solo: { $clearance } al final del rango

## Which fit still goes.

up-to = hasta { $fit }

## No fit goes.

only-loose = ninguno: tendría que quedar flojo, con { $clearance } de holgura

## How a bore closes.

closes = { $by }: de { $before } a { $after }

## A housing warmed beyond its limit.

too-hot = Más caliente de lo que permite su hoja ({ $most }): no lo caliente tanto.

## finished columns

finished-columns-cylinder = Cilindro
finished-columns-thinnest-wall = Pared más delgada
finished-columns-counterbore-dia = Diám. de la caja
finished-columns-groove-depth = Prof. de la ranura
finished-columns-finished-bore = Barreno terminado
finished-columns-out-of-round = Ovalamiento
finished-columns-taper = Conicidad
finished-columns-ring-gaps = Aberturas de anillos
finished-columns-piston-proud = Pistón sobresale

## A pressure test as it was read.

pressure-test-some = { $which }: { $from } al inicio, { $to } después de { $time }.
pressure-test-none = { $which }: { $from } al inicio, { $to } al final.

## The cylinders that got no sleeve.

no-sleeve-in = Sin camisa en: { $cylinders }.

## What parts and blocks are made of.

material-gray-iron = hierro gris
material-ductile-iron-ferritic = hierro nodular, ferrítico
material-ductile-iron-pearlitic = hierro nodular, perlítico
material-compacted-iron = hierro de grafito compacto
material-carbon-steel = acero al carbono
material-stainless-304 = acero inoxidable 304
material-aluminium-a356 = aluminio fundido A356
material-aluminium-6061 = aluminio forjado 6061
material-bronze-c93200 = bronce al estaño con plomo C93200 (SAE 660)
material-bronze-c95400 = bronce al aluminio C95400
material-bronze-c51000 = bronce fosforado C51000
material-brass-c36000 = latón de fácil maquinado C36000
material-bearing-steel-52100 = acero para baleros 52100 (100Cr6), templado
material-tool-steel-h13 = acero herramienta H13 (X40CrMoV5-1), templado
material-cobalt-r30006 = aleación de cobalto para asientos R30006
material-nickel-n07718 = aleación alta en níquel para asientos N07718
material-sintered-fc-0208 = acero sinterizado con cobre FC-0208, 6.7 g/cm3
material-aluminum-319 = aluminio fundido 319
material-aluminum-a380 = aluminio inyectado A380
material-magnesium-az-91 = magnesio fundido AZ91
