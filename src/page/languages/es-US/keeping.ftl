### What is said about keeping jobs.

notices = Licencias
notices-what =
    Esta página está hecha con obras libres de otros. Sus licencias se guardan con ella, en este
    equipo.
show-notices = Mostrar las licencias
no-notices = Las licencias no están en este equipo, y no hay red.
not-offline =
    El navegador no pudo guardar esta página en el equipo. Sin red tal vez no abra. Lo que usted
    escribe se guarda de todos modos.
gone =
    Este trabajo se borró en otra pestaña, o el navegador lo perdió. Lo que usted ve solo está en la
    pantalla.
keep-anew = Guardarlo de todos modos
not-destroyed =
    La papelera no se vació. El segundo almacén de este navegador no lo permitió. No se borró nada.
brought-back =
    El navegador perdió los últimos cambios. Se usó la copia más nueva, del segundo almacén:
opening = Abriendo …
undo-job = Deshacer
redo-job = Rehacer
conflicts = Dos valores en un lugar
conflicts-what =
    Escritos en dos equipos que no sabían uno del otro. Los dos están guardados. Elija el que
    cuenta.
choose = Tomar
files = Respaldo, archivos, papelera
backup = Respaldo
backup-what =
    Un solo archivo con todos los trabajos y montajes en frío de este equipo, también los de la
    papelera. Guárdelo en otro lado.
last-backup = Último respaldo
no-backup = En este equipo todavía no se ha hecho un respaldo.
backup-now = Hacer un respaldo
save-all = Guardar todo en un archivo
save-csv = Lecturas en tabla (CSV)
import = Trabajos de un archivo
import-what =
    Primero usted ve qué cambiaría. Un trabajo que ya está aquí se une con su copia, lectura por
    lectura. No se borra lo que ya está.
import-file = Archivo con uno o varios trabajos
preview = Esto cambiaría:
take-all = Tomar estos cambios
not-taken = Dejar todo como está
partly-repaired = algo en él se tuvo que reparar
bin = Papelera
bin-what = Los trabajos y montajes en frío se quedan aquí hasta que usted vacíe la papelera.
into-bin = Mandar este trabajo a la papelera
in-bin = Este trabajo está en la papelera.
out-of-bin = Sacar de la papelera
empty-bin = Vaciar la papelera
empty-bin-sure = Todo lo de esta lista se pierde para siempre, con todas sus lecturas.
empty-bin-yes = Sí, borrarlos
empty-bin-no = No, conservarlos
search = Buscar: cliente, motor, fecha, estado
none-found = Ningún trabajo tiene todas estas palabras.
csv-no-unit = sin unidad
floor-sheet = Hoja de piso
floor-what = Camisa y bloque a la misma temperatura. Profundidad desde la cara junto al barreno.
hone-to = Bruñir el barreno a
cut-to = Cortar el asiento a una profundidad de
stands-proud = La camisa debe sobresalir
steps-not-done = Pasos sin hacer
new-deck-height = altura sobre la línea de bancada después de este corte
record-caution =
    Asentada y en la banda significan: dentro de los límites nombrados arriba, según las lecturas de
    este registro.
gasket-unknown = Empaque de cabeza por comprar: no se sabe, no se midió ningún pistón.
qr-label = Código con lo esencial de este registro
qr-caption = Lo esencial de este registro, para la cámara de un teléfono.
home-chance = A fondo, probabilidad
qr-opens-label = Código que abre este registro
qr-opens = Abre este registro en un equipo que tiene el trabajo.
qr-head = REGISTRO COLDSEAT
learnt = Lo que muestran sus trabajos
learnt-what =
    De trabajos en que todas las camisas están a fondo, terminados o no. Cuentan los últimos
    sesenta.
nothing-learnt = Nada todavía: un trabajo cuenta cuando todas sus camisas están a fondo.
few-data = Pocos valores: todavía no se confíe de esto.
offer-few = De unos cuantos barrenos: la dispersión apenas se conoce. Se muestra, no se recomienda.
offer = Para el siguiente trabajo
offer-take = Usar en trabajos nuevos
hone-take = Usar este ritmo en trabajos nuevos
offer-taken =
    Los motores nuevos empiezan con estos números. Los trabajos ya empezados conservan los suyos.

## How far what was typed last has come.

keeping-writing = guardando …
keeping-both = guardado
keeping-only-durable = guardado en uno de dos almacenes
keeping-only-quick = guardado, todavía no firme
keeping-held = solo en la pantalla
keeping-gone = borrado, solo en la pantalla

## What is in one of the two stores only: in which, why, what to do. Nothing
## where there is nothing to do.

kept-in-one-newer =
    Una versión posterior de esta página escribió aquí. Lo que usted escriba ahora no se guarda
    encima. Recargue la página.
kept-in-one-durable-full =
    El almacén rápido de este navegador está lleno. Lo que usted escribe está en el segundo almacén,
    en disco. No hay otra copia. Vacíe la papelera o guarde todo en un archivo.
kept-in-one-durable =
    Este navegador no tiene almacén rápido para la página. Lo que usted escribe está en el segundo
    almacén, en disco. No hay otra copia. De vez en cuando guarde todo en un archivo.
kept-in-one-quick-full =
    El segundo almacén de este navegador está lleno. Lo que usted escribe está en el almacén rápido.
    El navegador lo pasa a disco unos segundos después. Deje la página abierta un minuto, y guarde
    el trabajo en un archivo.
kept-in-one-quick-silent =
    El segundo almacén de este navegador no contesta. Otra página puede tenerlo ocupado. Lo que
    usted escribe está en el almacén rápido. El navegador lo pasa a disco unos segundos después.
    Cierre las otras pestañas de esta página.
kept-in-one-quick-blocked =
    Este navegador no tiene segundo almacén para la página. Lo que usted escribe está en el almacén
    rápido. El navegador lo pasa a disco unos segundos después. Deje la página abierta un minuto, y
    guarde el trabajo en un archivo.

## The clock of the device was moved while a timer ran.

clock-moved = El reloj de este equipo se movió { $by }. ¿Qué tiempo es el bueno?

## Heads of the table of readings; units are added.

csv-heads-job-name-text = Trabajo: nombre (texto)
csv-heads-reading-whose-text = Lectura: de quién (texto)
csv-heads-reading-what-text = Lectura: qué (texto)
csv-heads-number-length = Número: longitud
csv-heads-number-temperature = Número: temperatura
csv-heads-number-pressure = Número: presión
csv-heads-number-force = Número: fuerza
csv-heads-number-time = Número: tiempo
csv-heads-number-plain = Número: sin unidad
csv-heads-number-roughness = Número: rugosidad
csv-heads-number-volume = Número: volumen
csv-heads-number-torque = Número: torque
csv-heads-as-typed-value = Como se escribió: valor (texto)
csv-heads-as-typed-unit = Como se escribió: unidad (texto)
csv-heads-as-typed-when = Como se escribió: cuándo (fecha y hora de aquí)
csv-heads-as-typed-kept = Como se escribió: conservado aunque se preguntó (x)

## What a file is that cannot be used.

file-fault-too-long = Este archivo pasa de 32 MB. No es un archivo de trabajos. No se cambió nada.
file-fault-unreadable =
    De este archivo no se puede leer ningún trabajo: { $why }. No se cambió nada.
file-fault-newer =
    Este archivo lo escribió una versión posterior de esta página (formato { $version }). Primero
    tome la versión nueva de la página. No se cambió nada.

## What would come of a job in a file.

outcome-new = todavía no está aquí y se agregaría
outcome-same = ya está aquí, nada cambiaría
outcome-joins-0 = se une con el de aquí, cambian { $values } valores
outcome-joins =
    se une con el de aquí, cambian { $values } valores; { $both } lugares quedan entonces con dos
    valores para elegir
outcome-newer =
    escrito por una versión posterior de esta página (formato { $version }), no se puede tomar
outcome-unreadable = no se puede tomar, { $why }

## How many jobs were taken.

taken =
    { $count ->
        [one] Se tomó un trabajo.
        [many] Se tomaron { $count } trabajos.
       *[other] Se tomaron { $count } trabajos.
    }

## The button under a long list.

more-jobs = { $shown } de { $all } a la vista: mostrar más

## A calm word on the last backup.

reminder-jobs =
    { $jobs ->
        [one] un trabajo
        [many] { $jobs } trabajos
       *[other] { $jobs } trabajos
    }
reminder-some =
    Último respaldo hace { $days ->
        [one] 1 día
        [many] { $days } de días
       *[other] { $days } días
    }; con cambios desde entonces: { $jobs }.
reminder-none = Todavía no hay respaldo de { $jobs } en este equipo.

## The gasket to buy.

gasket-head-gasket-to =
    Empaque de cabeza por comprar: proyección más grande { $most }; el espacio mínimo a la cabeza no
    se capturó.
gasket-entered-true = ; el capturado de { $entered } tiene espesor suficiente
gasket-entered-some = ; EL CAPTURADO DE { $entered } ES DEMASIADO DELGADO
gasket-grade-other = el espesor de { $grade }:{" "}
gasket-grade-none = NINGUNO de los espesores capturados alcanza:{" "}
gasket-head-gasket-to-2 =
    Empaque de cabeza por comprar: { $grade }al menos { $least } comprimido (proyección más grande
    { $most }){ $entered }.

## A step that was not done, with the cylinders or decks where not all need it.

step-not-done-cylinder = { $title } (cilindro { $holes })
step-not-done-deck = { $title } (cara { $decks })

## What jobs show.

lesson-feed = Profundidad de la caja contra la profundidad meta (más: demasiado profunda)
lesson-fit = Apriete contra el centro de su banda (más: demasiado apretado)
lesson-drop-free = Holgura prevista de camisas que entraron libres
lesson-drop-dragged = Holgura prevista de camisas que entraron con roce
lesson-drop-stuck = Holgura prevista de camisas que se atoraron
lesson-settling = Altura perdida del primer jalón al último
lesson-hone = Lo que quitan diez carreras de bruñido (diámetro)

## Number, mean, spread and interval of a lesson.

lesson-numbers-some = Un valor: { $only }
lesson-numbers =
    { $n } valores, promedio { $mean }, dispersión (1 desv. est.) { $sd }; el 95 % de los siguientes
    queda entre { $low } y { $high } (con 95 % de certeza)

## From how many jobs.

learnt-from =
    { $jobs ->
        [one] De un trabajo.
        [many] De { $jobs } trabajos.
       *[other] De { $jobs } trabajos.
    }

## What the shop's feeds offer.

offer-by-your-last =
    Según sus últimas { $n } cajas, el avance se dispersa { $feed_sd }. Con su corte para que quede
    limpia, corte planeado y riesgo, una ceja debe sobresalir al menos { $least }. Apunte a
    { $target }. La hoja del fabricante manda.

## What the shop's own holes offer for its hone.

hone-offer =
    Según sus últimos { $n } barrenos, diez carreras de bruñido quitan { $rate } del diámetro. Con
    eso se pueden calcular las carreras que faltan.

## Whether a cylinder gets a sleeve, as the name of a value.

spot-left-out = Camisa en este cilindro
