### Links, codes, what came by one.

share-engine = Compartir este motor: enlace y código
share-drop = Compartir este montaje en frío: enlace y código
share-floor = Compartir la hoja de piso: enlace y código
nothing-to-share = Todavía no hay nada que compartir.
link-qr = Código QR del enlace de abajo
qr-too-long = Muy largo para un código que un teléfono lea bien. Use el enlace.
no-link-from-file =
    Esta página se abrió como archivo. No tiene una dirección que otro teléfono pueda abrir: ni
    enlace ni código. Mande como texto la línea de abajo. Quien tenga Coldseat la pega en Trabajo
    nuevo, Un enlace que le mandaron. O guarde el trabajo en un archivo y páselo.
link-to-paste = Línea para pegar
one-file =
    Esto es Coldseat en un solo archivo. Este navegador guarda lo que usted captura para el archivo
    donde está ahora. Si lo mueve, le cambia el nombre o lo abre en otro equipo, puede empezar
    vacío. Guarde todos los trabajos en un archivo al terminar.
link = Enlace
link-what =
    Todo va en el propio enlace. No se manda nada a ningún lado. Quien abre el enlace primero lo
    ve, luego lo toma como copia propia.
copy-link = Copiar el enlace
copied = Copiado.
copy-by-hand = El navegador no deja que la página lo copie. Seleccione la línea y cópiela.
share-sheet = Mandarlo
by-link = Por enlace
link-preview =
    Esto llegó con un enlace. Todavía no se ha guardado nada. Nada de lo suyo va a cambiar. Compare
    los números con las hojas del fabricante antes de cortar con ellos.
link-taken = Ya no hay nada en este enlace. Se tomó o se cerró.
link-ask-again = No se guardó nada. Pida otra vez el enlace o el código, o pida el archivo.
take-profile = Empezar un trabajo con este motor
take-drop = Abrir este montaje en frío
take-floor = Agregarlo como trabajo aparte
not-now = Ahora no
engine = Motor, límites, medidores
paste-link = Un enlace que le mandaron
scan = Leer un código con la cámara
scan-outside =
    Un código en una pared o una pantalla: apúntele con la propia cámara del teléfono. Abra el
    enlace que muestra.
scan-asking = El navegador pregunta si se puede usar la cámara.
scan-looking = Tenga el código dentro de la imagen. No se graba ni se manda nada.
scan-video = Lo que ve la cámara
scan-stop = Apagar la cámara
scan-refused =
    No hay cámara, o el navegador no la puede usar. Permítala en los ajustes del navegador
    para esta página. O use la propia cámara del teléfono y abra el enlace que muestra.
scan-no-code = No se leyó ningún código en dos minutos. La cámara está apagada.
look-at-link = Verlo

## Why a link cannot be used, and what to do.

link-fault-empty = No hay nada en este enlace.
link-fault-too-long = Este enlace es más largo que cualquiera que hace este programa.
link-fault-foreign =
    Este enlace no es de este programa. Tiene caracteres que ningún enlace de este programa lleva.
link-fault-damaged =
    Este enlace se cortó o cambió en el camino. Su suma de verificación no coincide.
link-fault-later =
    Este enlace lo hizo una versión posterior ({ $version }). Abra esta página con red una vez y
    tome la versión nueva. Luego abra el enlace otra vez.
link-fault-out-of-range = Este enlace trae un número que no puede ser: { $which }.
link-fault-cylinders = Este enlace trae { $count } cilindros. Este programa acepta de 1 a 16.
