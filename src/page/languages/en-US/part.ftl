### English of the cold drop without a job: parts, colds, heats and what stands
### beside the answer.

part = Part
part-material = Part material
housing = Housing
housing-material = Housing material
cold-by = Cooled in
heat-by = Housing heat
the-way = Cold, and the carry to the bore
prices = Prices
beside = Time in the cold, fit and temperature
in-cold = In the cold
in-heat = In the heat
plate-touch = how well the plate touches is not known: measure the housing at its bore
takes = Takes
fit-most = Tightest fit with that clearance
cold-enough = Part temperature for that clearance
hot-enough = Housing temperature for that clearance
closes-in = Its bore closes in
beside-what =
    By the target clearance at the bore, at the narrow end of the band. Whether there is time to
    get it home is shown above. Times count the inside and outside faces, not the ends. A whole
    casting takes longer than the wall entered: measure it.
side-by-side = Side by side: nitrogen, dry ice, freezer, heat
way = By
clearance-at-bore = Clearance at the bore
home-by = Home within
costs = Costs
mend-first = fix first
enough-as-it-is = room enough as it is
no-heat-limit =
    Nobody entered how hot this housing may get. Take it from its maker's sheet. Heat-treated
    aluminum and hardened parts lose strength long before they look hot.
# From the last step to the record.
see-record = Look at the record
finished = Before the sleeve, and finished
# In the cell of readings one of which cannot be used.
unusable-here = cannot be used
before-boring = Pressure test before boring
after-all = Pressure test after all work

## What goes in.

part-flanged-sleeve = Flanged sleeve
part-plain-sleeve = Plain sleeve
part-bushing = Bushing
part-seat-ring = Valve seat
part-bearing-ring = Bearing ring
part-pin = Pin or shaft

## What makes it cold.

cold-nitrogen = Liquid nitrogen
cold-dry-ice-alcohol = Dry ice + alcohol
cold-dry-ice-packed = Dry ice, packed
cold-freezer = Freezer
cold-outdoors = Cold air, outdoors
cold-as-it-is = Nothing

## What warms the housing.

heat-as-it-is = None
heat-oven = Oven
heat-hot-plate = Hot plate
heat-water = Hot water

## One of the ways side by side.

way-as-it-is = { $warmed } alone
way-other = { $by } and { $warmed }

## What the housing is called with this part.

housing-block = block
housing-2 = housing

## What the drawing of a part shows.

part-label =
    { $name } at { $cold } half in its bore at { $warm }, cut along the axis: { $clearance }
    clearance on diameter.

## Below that drawing.

part-caption =
    Cut along the axis, walls in proportion to the diameter. The clearance is drawn far wider than
    it is.

## A time and its ends.

time-span = { $usual } ({ $quick } to { $slow })

## Nitrogen that a part takes.

litres = { $amount } liters of nitrogen, plus the bath fill

## Dry ice that a part takes.

dry-ice = { $amount } kg of dry ice, plus what is lost by standing

## Not even at the end of the range.

never-enough = never by that alone: { $clearance } at the end of the range

## Which fit still goes.

up-to = up to { $fit }

## No fit goes.

only-loose = none: it needs a loose fit of { $clearance }

## How a bore closes.

closes = by { $by }: { $before } becomes { $after }

## A housing warmed beyond its limit.

too-hot = Hotter than its sheet allows ({ $most }): do not warm it that far.

## finished columns

finished-columns-cylinder = Cylinder
finished-columns-thinnest-wall = Thinnest wall
finished-columns-counterbore-dia = Counterbore dia.
finished-columns-groove-depth = Groove depth
finished-columns-finished-bore = Finished bore
finished-columns-out-of-round = Out of round
finished-columns-taper = Taper
finished-columns-ring-gaps = Ring gaps
finished-columns-piston-proud = Piston proud

## A pressure test as it was read.

pressure-test-some = { $which }: { $from } at the start, { $to } after { $time }.
pressure-test-none = { $which }: { $from } at the start, { $to } at the end.

## The cylinders that got no sleeve.

no-sleeve-in = No sleeve in: { $cylinders }.

## What parts and blocks are made of.

material-gray-iron = gray iron
material-ductile-iron-ferritic = ductile iron, ferritic
material-ductile-iron-pearlitic = ductile iron, pearlitic
material-compacted-iron = compacted-graphite iron
material-carbon-steel = carbon steel
material-stainless-304 = stainless steel 304
material-aluminium-a356 = cast aluminum A356
material-aluminium-6061 = wrought aluminum 6061
material-bronze-c93200 = leaded tin bronze C93200 (SAE 660)
material-bronze-c95400 = aluminum bronze C95400
material-bronze-c51000 = phosphor bronze C51000
material-brass-c36000 = free-cutting brass C36000
material-bearing-steel-52100 = bearing steel 52100 (100Cr6), hardened
material-tool-steel-h13 = tool steel H13 (X40CrMoV5-1), hardened
material-cobalt-r30006 = cobalt seat alloy R30006
material-nickel-n07718 = high-nickel seat alloy N07718
material-sintered-fc-0208 = sintered copper steel FC-0208, 6.7 g/cm3
material-aluminum-319 = cast aluminum 319
material-aluminum-a380 = die-cast aluminum A380
material-magnesium-az-91 = cast magnesium AZ91
