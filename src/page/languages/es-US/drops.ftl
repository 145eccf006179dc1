### Cold drops that are kept under a name.

kept-drops = Montajes en frío guardados
no-kept-drops = Todavía ninguno. Guarde estos números con un nombre para hallarlos aquí.
no-kept-drop = Este montaje en frío no está en este equipo.
drop-name = Nombre
keep-drop = Guardar estos números
copy-drop = Copiar
drop-into-bin = Mandar a la papelera
drop-without-name = Números sin nombre
drop-in-bin = Este montaje en frío está en la papelera.
drop-gone =
    Este montaje en frío se borró en otra pestaña, o el navegador lo perdió. Lo que usted ve solo
    está en la pantalla.
drop-read-only =
    Una versión posterior de esta página escribió este montaje en frío. Aquí se puede leer, no
    cambiar.
drop-repaired = Una parte de este montaje en frío no se pudo leer. Revise estos números:

## The name of a copy.

copy-of = { $name } (copia)

## What a cold drop is of, by what was typed; nothing where nothing was.

drop-about-parts-od = DE
drop-about-parts-fit = apriete
