### Labels, buttons, headings and short words.

jobs = Trabajos
cold-drop = Montaje en frío
new-job = Trabajo nuevo
settings = Ajustes
main-menu = Principal
# The button behind which the other screens and undo stand.
menu = Menú
working = Este trabajo
jobs-on-device = Trabajos en este equipo
mark-it = Aquí no hay nada que medir. Márquelo cuando esté hecho.
marked = Marcado como hecho.
passed-over = Omitido en este trabajo.
passed = omitido
whole-job = Todo el trabajo
steps-of-job = Pasos del trabajo
mark = Marcar este paso
mark-done = Hecho
deck-is-cut = La cara ya está cortada
mark-skip = Omitido
mark-not = No en este trabajo
mark-none = Quitar la marca
marked-done = marcado como hecho
skip-why = Por qué se omite; queda en el registro
skip-needs-why = Primero escriba por qué. El registro muestra el motivo.
step-note = Nota de este paso
for-this-step = Hecho, omitido, nota
none-here = ninguno
order-check = Antes de pedir: ¿le queda esta camisa a este bloque?
limits-fit = Límites: camisa, apriete y metida
limits-seat = Límites: altura, asiento y cara
limits-order = Límites: paredes y pedido
limits-bench = Límites: prueba, barra, caja, ranura
engines = Hojas del motor
engines-what =
    La geometría, los límites y el empaque de un motor, aparte de cualquier bloque. Revise la hoja
    antes de pedir camisas, compártala por enlace o código, o empiece un trabajo con ella.
no-sheets = Todavía no hay hojas del motor en este equipo.
new-sheet = Hoja nueva
make-sheet = Hacer la hoja
copy-sheet = Copiar esta hoja
keep-as-sheet = Guardar este motor como hoja
sheet-into-bin = Mandar esta hoja a la papelera
came-out = Se sacó la camisa
came-out-what =
    Lo leído desde el baño hasta el asiento pasa al registro, con lo que usted encontró. Los pasos
    desde la limpieza quedan libres para el siguiente intento. Camisa, caja y barreno conservan sus
    lecturas. Donde una viruta o el roce dejó marca, mida otra vez. Con Deshacer se regresa todo.
came-out-found = Qué se encontró: viruta, rebaba, radio
came-out-needs = Primero escriba qué se encontró. El registro lo muestra.
next-try = Guardarlo y empezar el siguiente intento
timer-start = Iniciar el reloj
timer-stop = Parar y guardar el tiempo
timer-home = Está a fondo: guardar el tiempo desde que entró
timer-drop = Desechar este tiempo
timer-runs = corriendo
timers = Relojes corriendo
timer-over = se acabó el tiempo
feedback = Sonar y vibrar cuando se acabe el tiempo
feedback-what = La pantalla queda encendida mientras corre un reloj, si el navegador lo permite.
no-jobs =
    Todavía no hay trabajos. Dé una vuelta por un trabajo de muestra, o empiece uno suyo. Todo se
    queda en este equipo.
cold-drop-what = Tiempo para llegar a fondo, holgura y cuánto sube, sin abrir un trabajo
new-job-what = De un motor que ya trabajó, o con sus propios números
open-demo = Abrir un trabajo de muestra
unnamed = Trabajo sin nombre
changed = cambiado el
damaged-head = Guardado, pero no se pudo leer
damaged-what = Aquí no se cambió ni se borró nada. Guárdelo en un archivo para examinarlo.
save-to-file = Guardar en un archivo
newer =
    escrito por una versión posterior de esta página: se muestra lo que se puede leer, no se cambia
repaired = Algo en este trabajo se tuvo que reparar:
understood = Entendido
store-blocked =
    Este navegador no deja que la página guarde nada (ventana privada, o almacenamiento apagado).
    Puede seguir trabajando, pero todo se pierde al cerrar la página. Guarde el trabajo en un
    archivo.
store-full =
    El espacio de este equipo está lleno. Lo que escriba ahora solo está en la pantalla. Guarde el
    trabajo en un archivo y luego libere espacio.
update-ready = Hay una versión nueva de esta página.
update-now = Tomar la versión nueva
update-later = Espera hasta que usted salga del trabajo.
block = Bloque
sleeve-material = Material de la camisa
block-material = Material del bloque
units = Unidades
entry-clearance = holgura en el barreno
bath-clearance = holgura al salir del baño
grip-time = tiempo hasta que agarra
grips-in = derecha y sin escarcha, agarra a los
home-within = desde que entra, a fondo en menos de
home-drawing = calculando cuatrocientas metidas como esta
home-none = sin tiempo: no entra
climb = la camisa puede subir
expected = esperado
at-most = a lo más
band-95 = banda de 95 %
never-grips = no agarra en una hora
cautions = Precauciones
standing-words =
    Solo es una guía. Siga al proveedor del gas, a los fabricantes de la herramienta, la camisa y el
    motor, las reglas de su empresa y la ley. Donde difieran, mandan ellos. Si tiene duda,
    deténgase. Los veredictos valen dentro de los límites que usted capturó o dejó en su valor
    usual.
from-engine = Motor
own-numbers = Sus propios números
engine-name = Nombre del motor
job-name = Nombre o número del trabajo
customer = Cliente
note = Nota
cylinders = Cilindros
layout = Disposición
begin-job = Empezar el trabajo
numbers-later = Siguen sus números y barrenos. Cámbielos cuando quiera en "Motor".
engine-and-limits = Motor
steps = Pasos de este cilindro
geometry = Geometría
engine-first =
    Lo demás puede esperar hasta que un paso lo pida. Cambie cualquier valor usual que encuentre en
    un campo.
pistons-and-head = Pistones, cabeza y anillos, según la hoja
tools = Barra, bruñido, gato hidráulico y varilla
shop-limits = Límites y tarifas del taller
service = Superficies, baño y motor en marcha
gauges = Medidores (incertidumbre estándar, k = 1)
limits-what =
    Valores usuales de la práctica común. Las hojas de los fabricantes del motor y de la camisa
    mandan sobre ellos. Cámbielos aquí para este trabajo.
this-engine-from = como en el trabajo
shop-what = Para trabajos nuevos. Los ya empezados conservan los suyos.
cylinder = Cilindro
bank = Banco
deck = Cara
record = Registro
strip = Cilindros
next-step = Siguiente paso
next-cylinder = Siguiente cilindro, este paso
help = Cómo medir esto
leave-out = Sin camisa en este cilindro
take-in = Este cilindro sí lleva camisa
pull = Jalón
no-job = Este trabajo no está en este equipo.
back-to-jobs = Volver a los trabajos
read-only = Escrito por una versión posterior de esta página. Lo puede ver, pero no cambiar.
locked = Corte de la cara bloqueado
open = Corte de la cara libre
open-by-hand = Corte de la cara liberado a mano
not-seated-yet = No está comprobado que esté a fondo:
lock-why =
    Una camisa sin asentar, cortada al ras de la cara, baja después y se lleva el empaque de cabeza.
release = Liberar a mano
release-reason = Motivo; queda en el registro
release-needs-reason = Primero escriba por qué. El registro muestra el motivo.
lock-again = Bloquear otra vez
reason = Motivo
no-sleeves = Ningún cilindro de esta cara lleva camisa.
cut = corte
cut-least = al menos
flange-loses = se le quita (posición más baja a más alta)
flange-left = queda al menos
without-height = No está en el plan; falta la altura o aquello con que se juzga:
print = Imprimir
taper = Conicidad
fit = Apriete
mean = promedio
gap = Luz
tilt = Inclinación
state = Estado
pulls = Jalones
sleeve-od = DE de la camisa
bore = Barreno
flange = Ceja
depth = Profundidad
height-left = Altura
height = Altura antes del corte
not-done = Sin hacer, sin comprobar:
remarks = Marcas, notas y tiempos (min:s):
nothing-open = Todas las camisas están a fondo.
signed = Firma
date = Fecha
printed = impreso el
as-left = Como quedó
pad = Teclado numérico
pad-delete = Borrar
pad-next = Sigue
pad-done = Cerrar
pad-undo = Deshacer
pad-was = era
pad-change = cambio
pad-plus = subir
pad-minus = bajar
pad-point = Punto decimal
pad-comma = Coma decimal
pad-sign = Cambiar el signo
proud = sobresale
low = hundida
pad-setting = Teclado numérico de esta página
pad-setting-what = Apagado: se usa el teclado del equipo.
on = encendido
off = apagado
it-is-right = Está bien como lo escribí
use-value = Usar
predicted = prevista
wanted = meta
measured = medida
loaded = carga

language = Idioma
language-what =
    Para este equipo. Los trabajos, enlaces y archivos llevan números y sus propias palabras: abren
    en cualquier idioma.
no-language = No se pudo cargar ese idioma. No se cambió nada. Vuelva a cargar la página con red.
decimal = Decimales
decimal-what =
    Cómo escribe los números la página en este equipo. Usted puede capturar punto o coma: se leen
    los dos.
record-language = Idioma de este registro

## units

units-inch = pulgadas
units-metric = mm

## family

family-iron = hierros
family-steel = aceros
family-bronze = bronces y latones
family-light = aluminio y magnesio
family-seat = aleaciones para asientos

## layout

layout-in-line = en línea
layout-vhalves = V, primera mitad de los números en el banco A
layout-vodd-even = V, números nones en el banco A

## bank

bank-a = A
bank-b = B

## signal

signal-none = pendiente
signal-marked = marcado
signal-go = siga
signal-wait = espere
signal-look = revise
signal-stop = pare

## state

state-left-out = sin camisa
state-not-begun = pendiente
state-in-work = empezado
state-marked = marcado
state-seated = asentada
state-look = revise
state-stop = pare

## How much a finding weighs.

level-note = nota
