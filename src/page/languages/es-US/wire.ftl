### A gauge on a wire.

wire = Medidor con cable
wire-what =
    Para un medidor o adaptador que manda texto simple por un puerto serie, una lectura por línea.
    Mientras esta pantalla está abierta, sus líneas solo se muestran aquí. En un paso van a donde
    va una lectura capturada.
wire-speed = Velocidad del puerto
wire-frame = Bits por carácter
connect = Conectar un medidor
disconnect = Desconectar el medidor
wire-came =
    Lo último que llegó. Toque el número que es la lectura. Toque su unidad si la línea trae una.
wire-unit = Unidad, si la línea no la dice
wire-forget = Olvidar qué número es

## A speed of a port.

wire-speed-bits-per-second = { $speed } bits por segundo

## Data, parity, stop.

wire-frame-eight-none-one = 8 de datos, sin paridad, 1 de paro
wire-frame-seven-even-one = 7 de datos, paridad par, 1 de paro
wire-frame-seven-even-two = 7 de datos, paridad par, 2 de paro

## How the wire stands.

wire-status-off = Sin conexión.
wire-status-asking = Elija el puerto en la lista del navegador.
wire-status-on = Conectado: oprima la tecla de envío del medidor.
wire-status-not-opened =
    El puerto no abrió. Cierre el programa que lo usa. Vuelva a enchufar el medidor y conéctelo
    otra vez.
wire-status-lost = El medidor ya no está. Enchúfelo y conéctelo otra vez.

## A number of a line.

wire-is-reading = La lectura es { $text }

## What a line says.

wire-reads = Lee { $text }

## Which number of a line is the reading.

wire-number-some = La lectura: el número { $nth } de cada línea.
wire-number-none = La lectura: una línea que es un solo número, con o sin su unidad.

## What a number without a unit is in.

wire-unit-of-field = como en el trabajo
wire-unit-inch = pulgadas
wire-unit-millimetre = milímetros

## Why a line is no reading.

no-reading-too-long = La línea es demasiado larga. Revise la velocidad y los bits del puerto.
no-reading-no-number = La línea no trae número donde debe estar la lectura.
no-reading-untaught =
    Trae más que un número y su unidad. En Ajustes, toque el número que es la lectura.
no-reading-otherwise =
    La línea se ve distinta de la que usted configuró. Lea la pantalla del medidor.
no-reading-two-units = La línea trae otra unidad que la puesta en Ajustes.
