### The bore of a fitted sleeve down its length.

bore-down = The bore down its length, before it is honed
straight = straight
head-on = head on
along = along
across = across
ledge = ledge
lame = Lamé
hone-takes = hone takes
takes-all = all
takes-bored = after bar
profile-caption =
    The fitted bore from the deck down, exaggerated, beside the target straight line. To the right
    it closes. Thick: as fitted. Line marked "head on": with head or torque plate. Thin: along and
    across the row. Dashed: one number by Lamé's rings. Numbers: what the hone must take there on
    diameter, all of it, and after the bar has bored it straight.
pressure-caption =
    How the sleeve presses on its bore, from the deck down. Nothing is drawn within a wall's
    thickness of ledge and foot. The model cannot be trusted there.
bore-numbers = The same in numbers
try-others = Try another fit, wall or flange
only-tried = Only a try: the job keeps its own numbers. Dotted: the bore with those.
back-to-job = Back to the job's numbers
flange-stress = Stress at flange and ledge
stress-fillet = under the flange, at the fillet's radius
stress-counterbore = in the block, as far from the counterbore's corner
stress-ledge = ledge, mean pressure

## bore columns

bore-columns-below-deck = Below deck
bore-columns-closes = Closes
bore-columns-hone-takes = Hone takes
bore-columns-after-bar = After bar

## A dimension to try.

dial-fit = Fit
dial-wall = Sleeve wall
dial-flange = Flange thickness

## on diameter

on-diameter = Unit: { $unit }, on diameter. Minus means it opens.

## pressure head

pressure-head = pressure, { $unit }

## pressure label

pressure-label = Pressure of the sleeve on its bore down the length: { $least } to { $most }.

## push home

push-home =
    It takes { $least } to { $most } to push it home against its fit, at a friction of { $low } to
    { $high }.

## head sinks

head-sinks = Head or torque plate presses the flange's top down by { $down }.

## pull sinks

pull-sinks = The strongest pull presses it down by { $down }. That comes back on release.

## closes oval

closes-oval =
    In its row it closes oval: { $along } along the row, { $across } across, at mid length.

## order of sleeves

order-of-sleeves-why-0 = Then none has a fitted neighbor.
order-of-sleeves-why-1 = Then none has more than one fitted neighbor to make its hole oval.
order-of-sleeves-why-other =
    One goes between two fitted neighbors: measure its hole again before it goes in.
order-of-sleeves = Order with the least distortion for those still to go in: { $list }. { $why }

## profile label

profile-label-closes =
    The fit closes the bore by up to { $most }. One number by Lamé's rings { $lame }.
profile-label-some = { $closes } The hone takes { $least } to { $greatest } down the length.

## A bore that cannot be drawn, with the dimension that is in the way.

no-profile = No picture of the bore down its length. { $field }: { $why }

## A stress on two meshes: where they differ, the mesh speaks.

two-meshes = { $half } (coarser mesh { $usual })

## no stress

no-stress-the-fillet-under =
    The fillet under the flange is not measured, or is too large for this flange. Enter it at the
    ledge's chamfer.
