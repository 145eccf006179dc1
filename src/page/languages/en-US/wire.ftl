### A gauge on a wire.

wire = Gauge on a wire
wire-what =
    For a gauge or an adapter that sends plain text over a serial port, one reading per line.
    While this screen is open, its lines are only shown here. On a step they go where a typed
    reading goes.
wire-speed = Port speed
wire-frame = Bits per character
connect = Connect a gauge
disconnect = Disconnect the gauge
wire-came = Came in last. Tap the number that is the reading. Tap its unit if the line has one.
wire-unit = Unit, if the line names none
wire-forget = Forget which number

## A speed of a port.

wire-speed-bits-per-second = { $speed } bits per second

## Data, parity, stop.

wire-frame-eight-none-one = 8 data, no parity, 1 stop
wire-frame-seven-even-one = 7 data, even parity, 1 stop
wire-frame-seven-even-two = 7 data, even parity, 2 stop

## How the wire stands.

wire-status-off = Not connected.
wire-status-asking = Choose the port in the browser's list.
wire-status-on = Connected: press the gauge's send key.
wire-status-not-opened =
    The port did not open. Close the program that uses it. Plug the gauge in again, then connect
    again.
wire-status-lost = The gauge is gone. Plug it in and connect again.

## A number of a line.

wire-is-reading = The reading is { $text }

## What a line says.

wire-reads = Reads { $text }

## Which number of a line is the reading.

wire-number-some = The reading: number { $nth } of each line.
wire-number-none = The reading: a line that is one number, with or without its unit.

## What a number without a unit is in.

wire-unit-of-field = as in the job
wire-unit-inch = inches
wire-unit-millimetre = millimeters

## Why a line is no reading.

no-reading-too-long = The line is too long. Check the port's speed and bits.
no-reading-no-number = The line has no number where the reading should be.
no-reading-untaught =
    More than a number and its unit. Under Settings, tap the number that is the reading.
no-reading-otherwise = The line looks different from the one you set up. Read the gauge's display.
no-reading-two-units = The line names a different unit from the one set under Settings.
