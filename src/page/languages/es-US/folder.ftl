### The shop's folder, that many devices write into.

folder = La carpeta del taller
folder-what =
    Esta página puede estar en el servidor del propio taller. Sus equipos comparten entonces
    trabajos, hojas del motor y ajustes por una carpeta junto a ella. Nada sale del taller.
    Nada espera a la carpeta: lo que usted escribe se guarda primero aquí.
folder-one-file =
    Esta página es un solo archivo, sin servidor. Use archivos para pasar datos entre equipos.
device-name = Nombre de este equipo
device-name-what = Como le dice la gente: tableta de la rectificadora, teléfono de la mesa.
device-nameless =
    Primero póngale nombre a este equipo. El nombre muestra a los demás quién escribió qué.
join = Unirse
rename = Cambiar el nombre
leave = Salir de la carpeta
leave-sure =
    ¿Salir? Los trabajos se quedan en este equipo y en la carpeta. Desde ahora los cambios no van ni
    vienen.
leave-yes = Salir
leave-no = Quedarse
other-devices = Otros equipos
no-other-devices = Todavía no se ha unido otro equipo.
strike = Dar de baja por perdido
strike-what =
    Los trabajos de un equipo dado de baja se pueden seguir leyendo. Para dejar fuera uno robado,
    cambie la contraseña de la carpeta.
struck = dado de baja
newer-device = tiene una versión posterior de esta página: recargue la página
folder-was-older =
    La carpeta tenía menos de lo que este equipo había mandado. La vaciaron, o un respaldo más viejo
    tomó su lugar. Lo que faltaba ya se mandó o se mandará otra vez.
new-from-others = Nuevo de otro equipo
to-be-sent = En espera de mandarse
in-other-tab = otra pestaña está mandando

## When and that a device wrote.

wrote-last = escribió por última vez { $at }

## On which device a reading was entered.

entered-on = Capturado en { $device }

## Why the folder does not do as it is asked, and what to do.

folder-fault-away = Nadie contesta: revise la red. La página vuelve a intentarlo sola.
folder-fault-locked = Pide nombre y contraseña: recargue la página y captúrelos.
folder-fault-read-only = No recibe nada de aquí: permita escribir en la carpeta.
folder-fault-full = Está llena: haga lugar en el servidor. Lo que se escribe se queda aquí.
folder-fault-broken = El servidor falla o daña lo que recibe. La página vuelve a intentarlo sola.
folder-fault-no-folder =
    No hay tal carpeta junto a esta página. Los archivos de la página para el servidor dicen cómo
    ponerla.

## The quiet line: how far what is typed has come.

in-folder-some = sin carpeta desde { $since }
in-folder-none-folder-does-not = la carpeta no lo recibe
in-folder-none-in-the-shop = en la carpeta del taller { $at }
in-folder-other = aquí

## What is said at length of how the folder stands.

standing-lines-to-be-sent = Por mandar: { $waiting }
standing-lines-not-complete-yet =
    Todavía incompletos en la carpeta: { $half }. Se espera al equipo que los escribió.
standing-lines-a-later-version =
    Una versión posterior de esta página escribe ahí: recargue la página.
