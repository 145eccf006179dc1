### Names of steps, numbers and their places.

minutes = min:s

## step title

step-title-enquiry = First call and price
step-title-intake = Receive the block
step-title-rest = Strip, wash, rest
step-title-pressure = Crack and pressure test
step-title-datum = Deck height and low spots
step-title-old-bore = Old bores
step-title-wall = Wall by ultrasonic gauge
step-title-choose = Choose the sleeve
step-title-sleeve = Receive the sleeve
step-title-caps = Main caps on and torqued
step-title-centre = Center the bar
step-title-bore = Bore
step-title-counterbore-d = Counterbore diameter
step-title-counterbore = Counterbore depth
step-title-step-depth = Bore step depth
step-title-chamfer = Ledge chamfer
step-title-fit = Hone and fit
step-title-clean = Clean and blue
step-title-dry-run = Dry run and room air
step-title-chill = Chill
step-title-drop = Drop
step-title-hold = Hold down while warming
step-title-warm-height = Warm height
step-title-pull = Pull down
step-title-seat = Seat check
step-title-deck = Deck
step-title-protrusion = Piston protrusion
step-title-groove = Fire-ring groove
step-title-finish = Finish bore
step-title-ring-gap = Ring gaps
step-title-wash-again = Wash, test again
step-title-report = Record and hand over

## Why a check of an order has nothing to check.

order-not-here-bottom = no lower bore step entered: bored through
order-not-here-ledge = held by its fit: it stands on nothing
order-not-here-groove-outside-groove-floor = a plain sleeve has no flange
order-not-here-other = no fire ring entered

## order missing

order-missing = still needed: { $missing }

## least

least = at least { $value }

## What an order is checked for.

order-item-bottom-to-cut-at = to cut at the bore step
order-item-wall = wall left
order-item-web = web between the holes
order-item-bottom-room-to-the = room to the lower bore step
order-item-ledge = ledge width
order-item-finish-stock = stock for the torque-plate hone
order-item-groove-inside = metal inside the groove
order-item-groove-outside = flange outside the groove
order-item-groove-floor = flange under the groove

## field

field-pitch = Bore pitch
field-flange-od = Flange OD, nominal (diameter)
field-final-bore = Finished bore (diameter)
field-step-below = Deck to the next lower bore step
field-spindle = Bar spindle (diameter)
field-gasket = Head gasket, compressed
field-head-least = Room between piston and head, min (sheet)
field-ring-height = Fire ring height (sheet)
field-ring-proud = Fire ring stand-proud (sheet)
field-ring-gap-low = Ring gap, min (sheet)
field-ring-gap-high = Ring gap, max (sheet)
field-apart-most = Block and sleeves differ by, max (degrees)
field-test-loss = Pressure lost in the test, max (0.05 = 5 %)
field-datum-tilt = Deck leans end to end, max
field-wall-calm = Wall left: look if under
field-wall-look = Wall left: stop if under
field-web-calm = Web left: look if under
field-web-look = Web left: stop if under
field-bottom-least = Room to a lower bore step, min
field-finish-least = Stock for the torque-plate hone, min
field-clear-low = Room around the flange, min (diameter)
field-clear-high = Room around the flange, max (diameter)
field-offset-look = Bar off the old center: look if over
field-hone-leave = Left for the hone (diameter)
field-fillet-spare = Chamfer larger than fillet by, min
field-ledge-least = Ledge width, min
field-groove-inner = Fire-ring groove, inside (diameter)
field-groove-outer = Fire-ring groove, outside (diameter)
field-groove-land = Flange beside and under the groove, min
field-gasket-grades = Gasket grades to buy, compressed
field-hone-strokes = Hone strokes, all since the bar
field-groove-near = Groove off its depth, max
field-ram-bore = Ram bore (diameter)
field-ram-hole = Hole or rod in the ram (diameter)
field-ram-rated = Ram, rated pressure
field-rod-d = Pulling rod thread (diameter)
field-rod-pitch = Pulling rod thread, pitch
field-rod-yield = Pulling rod, yield strength
field-ledge-most = Ledge pressure, max
field-flange-most = Flange shear at its root, max
field-stroke = Engine stroke
field-compression = Compression ratio before the cut (sheet)
field-piston-d = Piston, as the sheet measures it (diameter)
field-piston-least = Room around the piston, min (sheet, diameter)
field-hone-stroke = Hone: stroke
field-hone-turns = Hone: turns per minute
field-hone-cycles = Hone: full cycles per minute, up and down
field-block-out = Block temperature out of the wash
field-drop-outcome = How it went in
field-hours-job = Hours for the job, once
field-hours-hole = Hours for each hole
field-hour-price = Price per hour
field-sleeve-price = Price per sleeve
field-litre-price = Price per liter of nitrogen
field-other-price = Everything else
field-bath-fill = Nitrogen to fill the bath (liters)
field-standing-loss = Nitrogen lost by standing (liters per hour)
field-standing-hours = Hours the bath stands
field-rz-sleeve = Sleeve outside, Rz
field-rz-bore = Block bore honed, Rz
field-smoothing = Part of both Rz lost to smoothing (0.8 = 80 %)
field-run-sleeve = Sleeve temperature, running
field-run-block = Block temperature, running
field-gas-pressure = Gas pressure, highest (sheet)
field-passes = Bar passes
field-common-height = Height gauge: part of its variance common to a deck (0.5 = 50 %)
field-common-thickness = Thickness: part of its variance common to a deck (0.5 = 50 %)
field-common-depth = Depth gauge: part of its variance common to a deck (0.5 = 50 %)
field-prior-home = Of sleeves that have stopped, part that is home (0.95 = 95 %)
field-hone-rate = Hone: ten strokes take off (diameter)
field-last-cut = Last pass of the bar (on diameter)
field-chill-shrink = Shrink in the bath as measured (diameter)
field-rest-time = Time it rested
field-block-now = Block temperature now
field-sleeves-now = Sleeve temperature now
field-test-start = Test pressure
field-test-end = Pressure at the end
field-test-time = Time held
field-retest-start = Second test: pressure
field-retest-end = Second test: pressure at the end
field-room-volume = Room volume
field-room-litres = Nitrogen in the room (liters)
field-air-changes = Air changes per hour
field-release = Time it boils off over
field-deck-height = Deck height above the main line
field-old-bore = Old bore (diameter)
field-wall-reading = Wall now
field-flange-od-here = Flange OD (diameter)
field-fillet = Fillet under the flange
field-indicator = Indicator around the bore
field-bored-d = Bore off the bar (diameter)
field-counterbore-d = Counterbore (diameter)
field-chamfer-here = Ledge chamfer
field-chill-time = Time in the bath
field-cold-od = Sleeve OD measured cold, if you have it (diameter)
field-hold-time = Time held down
field-sleeve-warm = Sleeve temperature, fitted
field-piston-proud = Piston above the deck
field-groove-depth = Groove depth
field-finish-d = Finished bore, measured (diameter)
field-ring-gap-now = Ring gap
field-nominal-od = Sleeve OD, nominal (diameter)
field-sleeve-id = Sleeve ID, as delivered (diameter)
field-sleeve-length = Length (a flange not counted)
field-nominal-flange = Flange thickness, nominal
field-block-wall = Block wall left around the bored hole (with a jacket: parent wall)
field-jacket-from = Water jacket begins below the deck, if there is one
field-jacket-to = Water jacket ends below the deck
field-half-width = Bore center line to the side of the block
field-head-clamp = Head or torque-plate load on one sleeve
field-shim = Shim under the sleeve
field-fit-low = Fit, min (on diameter)
field-fit-high = Fit, max (on diameter)
field-round-look = Sleeve out of round: look if over
field-round-stop = Sleeve out of round: stop if over
field-bore-form = Bore out of round and taper, max
field-entry-least = Clearance at the bore, min
field-target-proud = Target stand-proud
field-planned-cut = Planned deck cut
field-clean-up = Clean-up cut
field-risk = Accepted chance of a low sleeve (0.01 = 1 %)
field-gap-limit = Gap at the ledge, max
field-tilt-limit = Tilt of a seated sleeve, max
field-confidence = How sure "seated" must be (0.95 = 95 %)
field-gauge-sleeve = Sleeve OD
field-gauge-bore = Bore diameter
field-gauge-height = Height above the deck
field-gauge-thickness = Flange thickness (gauge)
field-gauge-depth = Counterbore depth (gauge)
field-feed-sd = Hand feed of the ledge cutter, spread
field-deck-sd = Deck cut, spread about the cut set
field-room-temperature = Shop and block temperature
field-drop-room = Shop temperature
field-low-spot = Deck below its highest point
field-deck-cut = Deck cut (to take or taken)
field-sleeve-od = Sleeve OD (diameter)
field-sleeve-temperature = Sleeve temperature
field-flange-thickness = Flange thickness
field-counterbore-depth = Counterbore depth
field-deck-here = Deck at this hole, below its highest point
field-bore-d = Block bore (diameter)
field-block-temperature = Block temperature
field-carry = Carry time, bath to bore
field-home-timed = Time from entering to home
field-drop-carry = Carry time, cold to bore
field-home-needed-drop-home = Time you need, entering to home
field-warm-height = Height above the deck, warm
field-pull-gauge = Gauge pressure
field-pull-loaded = Height loaded
field-pull-released = Height released
field-seat-height = Height above the deck, after the last pull
field-drop-od = Part OD (diameter)
field-drop-wall = Part wall
field-drop-length = Part length
field-drop-fit = Fit (on diameter)
field-drop-block-wall = Housing wall around the bore
field-drop-cold-at = Cooling temperature
field-drop-heat-at = Housing warmed to
field-drop-heat-most = Heat limit of the housing (maker's sheet)
field-drop-heat-out = Out of the heat until it goes in
field-drop-least = Target clearance at the bore
field-drop-litre-price = Nitrogen, price per liter
field-sleeve-kind = What the sleeves sit on
field-plain-length = Sleeve length, end to end
field-step-depth = Bore step depth
field-step-bore = Bore below the step (diameter)
field-gauge-length = Sleeve length (gauge)
field-gauge-step = Bore step depth (gauge)
field-drop-ice-price = Dry ice, price per kilogram
field-from-deck-before = Before the cut
field-from-deck-least = Min (sheet)
field-from-deck-most = Max (sheet)
field-block-cut-so-far = Cut off the block so far
field-block-cut-most = Cut off the block, max allowed (sheet)
field-deck-finish-kind = Deck finish named by (gasket maker's sheet)
field-deck-finish-most = Deck finish, roughest allowed (gasket maker's sheet)
field-deck-finish = Deck finish, measured after the cut
field-from-deck-after = Measured again
field-recut-said = Why it is left so
field-shop-name = Shop
field-machinist = Machinist
field-block-serial = Block serial number
field-engine-hours = Engine hours run
field-gauge-checked = Gauge last checked
field-sleeve-ends = How the sleeves are left
field-proud-low = Stands proud, min (sheet)
field-proud-high = Stands proud, max (sheet)
field-spread-hole = Heights apart within one hole, max (sheet)
field-spread-neighbour = Means of two neighbors apart, max (sheet)
field-spread-all = Means of all holes apart, max (sheet)
field-held-torque = Held down while read, at a torque of (sheet, if it says so)
field-ledge-cut-most = Ledge: cut at most, to bring heights right (sheet; 0: none)
field-ledge-cut-step = Ledge: cut per pass (sheet)
field-shim-sizes = Size
field-shims-left = How many left
field-shim-here = Shim under this sleeve, if not the engine's
field-plan-sleeve = Plan: sleeve
field-plan-turn = Plan: quarter turns
field-plan-shim = Plan: shim
field-plan-cut = Plan: cut
field-plan-height = Plan: height
field-plan-done = Plan: done
field-ledge-inner = Depth near the bore's edge
field-ink-check = Bluing of the flange on the ledge
field-ledge-fall = Ledge falls or rises toward the bore, max
field-held-down = While the heights were read, the sleeves were

## What stands over a list of a field's places.

list-title-low-spot = Deck below its highest point: rows across it, front to rear

## levels

levels-top = top
levels-middle = middle
levels-bottom = bottom

## Level and clock point of a place round the clock at three levels.

round-place = { $clock } o'clock

## The label of one of a field's places; empty where it has but one.

place-ends-front = front
place-ends-rear = rear
place-clocks = { $clocks } o'clock
place-levels-axis-across = across
place-levels-axis-along = along
place-list-side-left = left
place-list-side-right = right
place-list-row = row { $index }, { $side }
place-list-shim = shim { $index }
place-list-cut = cut
place-list-shim-2 = shim
place-list-sleeve = sleeve
place-list-grade = grade { $index }
place-list-ring = ring { $index }

## How the sleeves of a job stand.

sleeve-kind-flanged = flanged, on a counterbore's ledge
sleeve-kind-on-step = plain, on a bore step
sleeve-kind-by-fit = plain, held by its fit alone

## What heights that are there are judged by, beside the choice.

judged-as-by-flanged = flange and counterbore depth
judged-as-by-on-step = sleeve length and bore step depth
judged-as-by-fit = the target stand-proud, and by no ledge
judged-as = Heights are read already. They are judged by { $by }.

## more than

more-than = more than { $value }

## less than

less-than = less than { $value }

## How many cylinders have a step behind them.

cylinders-done = { $done } of { $all } cylinders

## How a drop went in.

drop-outcome-free = free
drop-outcome-dragged = dragged
drop-outcome-stuck = stuck
