### What a step has beside its one number.

grip = What the fit holds, cold and running
fit-left = left of the fit once the peaks are smoothed
contact-pressure = contact pressure at mid length
slips-pushed = slips when pushed with
slips-pulled = slips when pulled with (it thins)
heat-path = heat path through the joint
not-smoothed = Nothing is taken off for smoothing: enter Rz of sleeve and bore under Engine.
running-wanted =
    For the running engine, enter the temperatures of sleeve and block under Engine. Judge an
    aluminum block there, not cold.
fit-running = left of the fit, running
pressure-running = contact pressure, running, with the gas
sleeve-margin = sleeve: least strength over hoop stress
block-margin = block: least strength over hoop stress
lets-go = lets go when sleeve and block are both at
no-tension = no tension
grip-source =
    Lamé's rings at mid length, slip with the sleeve's own swelling. Friction 0.10 to 0.16, cast
    iron oiled and degreased (DIN 7190-1, by a secondary source). Smoothing: DIN 7190:2001, 0.8 of
    both Rz. In the 2017 edition 0.4, as reported second-hand. Heat path: Yovanovich. Handbook
    examples lie between 0.8 and 8 times it: use it to compare finishes, not as a number to trust.
    Rms roughness is a fifth of Rz, from memory. Strengths: least of the grade, see the material.
    Running: both at one mean temperature each. The makers' sheets win.
passes = Bar passes
micrometer = Micrometer over spindle and cutter, pass by pass:
passes-what =
    From the smallest reading of the old bore to the sleeve, less the middle of its fit and hone
    stock. Equal passes, then the last. Micrometer: half of bore and spindle together.
pairs = Which sleeve in which hole
spare = spare
# Numbers of the engine, asked at the step that wants them.
of-engine = Engine numbers for this step
nothing-to-pair =
    Pairs are chosen once two sleeves are measured and a hole is bored. Choose before those holes
    are counterbored or honed.
keep-numbers = As numbered now they need the least honing: keep the numbers.
number-sleeves = Number the sleeves this way
number-what =
    What was measured on each sleeve moves to its new hole. Mark the sleeves again at once. Undo
    takes it back.

## pair columns

pair-columns-sleeve = Sleeve
pair-columns-hole = Cylinder
pair-columns-hone-takes-diameter = Hone takes (diameter)

## A pass: the bore after it, its cut on diameter and on radius.

pass = { $count }: to { $bore } (diameter), takes { $diameter } on diameter, { $radius } on radius

## The warmest that is looked at.

not-below = not below { $warmest }

## The highest pressure of a pull, and what it is that bears no more.

gauge-most-what-ram = ram
gauge-most-what-rod = rod
gauge-most-what-ledge = ledge
gauge-most-what-flange = flange
gauge-most = pump no higher than (limit of the { $what })

## wanted

wanted-still-needed = Still needed: { $names }.

## times

times = { $times } times

## A conductance, and that of a joint twice as rough.

heat-path-kw-m-k = { $now } kW/m²K; twice as rough: { $rough }

## paired

paired = Most in one hole { $worst }, all together { $total }, to the middle of the fit.

## as numbered

as-numbered = As numbered now: { $least } to { $most }, all together { $all }.
