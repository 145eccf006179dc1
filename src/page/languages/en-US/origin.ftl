### Where a number comes from, in words, in symbols, and by whom.

where-from = Where from
in-words = In words
in-symbols = In symbols
source = Source
went-in = What went in, what matters most first
also-in = Also used, without moving the number:
materials = Materials
no-number-yet = No number to show yet: readings are missing.
none-while-locked = No number to show while the deck is locked.
order-from = Where from: these checks
order-source = Geometry. Limits: from memory, no source; yours to change.

## A calculation: words, symbols, source.

formula-estimate-hours-times-the =
    Hours times the price of an hour, a sleeve for each hole, the nitrogen, and everything else.
    Nitrogen: what the sleeves boil off, the bath fill, what is lost by standing, and a quarter
    more.
formula-estimate-price-h-job =
    price = (h_job + n h_hole) p_hour + n p_sleeve + 1.25 (n V_N2 + V_fill + loss h_stand) p_liter
    + other
formula-estimate-the-shop-s = The shop's own rates; nitrogen by the chill of this sleeve.
formula-heights-highest-less-lowest =
    Highest less lowest of the mean heights of all holes. Beside it: every height between its
    limits. The heights of one hole, and the means of two neighbors, no farther apart than their
    limits.
formula-heights-max-h-mean = max H_mean - min H_mean
formula-heights-direct-readings-limits =
    Direct readings. Limits: the engine's sheet, as you entered them. None is usual.
formula-apart-temperature-of-the = Temperature of the block less that of the sleeves.
formula-apart-t-block-t = |t_block - t_sleeve|
formula-apart-direct-reading-limit = Direct reading. Limit: from memory, no source; yours to change.
formula-pressure-drop-what-the-pressure = What the pressure lost, in % of what it was.
formula-pressure-drop-p-start-p = (p_start - p_end) / p_start
formula-pressure-drop-direct-reading-limit =
    Direct reading. Limit: from memory, no source; yours to change.
formula-datum-tilt-deck-height-at = Deck height at the front less that at the rear.
formula-datum-tilt-h-front-h = |H_front - H_rear|
formula-datum-tilt-direct-reading-limit =
    Direct reading. Limit: from memory, no source; yours to change.
formula-wear-largest-less-smallest =
    Largest less smallest diameter of the old bore. Out of round: largest less smallest at one
    level. Taper: mean under the deck less mean at the bottom.
formula-wear-max-d-min = max D - min D
formula-wear-readings-the-terms = Readings; the terms are those of form as in ISO 1101.
formula-wall-left-wall-by-gauge =
    Wall by gauge, less half of what the bar opens on diameter at that level and that way, less
    the bar's offset toward that wall. The thinnest point counts.
formula-wall-left-w-left-w = w_left = w - (D_new - D_old) / 2 - e
formula-wall-left-geometry-limits-from = Geometry. Limits: from memory, no source; yours to change.
formula-choose-pitch-less-counterbore =
    Pitch less counterbore diameter. Room below: deck to lower step, less counterbore depth, less
    length. Finish stock: finished bore less the inside as the fit closes it. Ledge and lands:
    half the difference of their diameters. Under the groove: flange less stand-proud, cut and
    groove.
formula-choose-web-pitch-d =
    web = pitch - D_cb;  below = step - (T - P) - L;  stock = D_fin - (ID - fit);  ledge = (D_f -
    OD)/2;  lands = (D_gi - D_fin)/2, (D_f - D_go)/2;  floor = T - P - cut - depth
formula-choose-geometry-limits-from = Geometry. Limits: from memory, no source; yours to change.
formula-offset-half-the-difference =
    Half the difference of opposite indicator readings, both axes together.
formula-offset-e-sqrt-r12 = e = sqrt(((r12 - r6)/2)^2 + ((r3 - r9)/2)^2)
formula-offset-geometry = Geometry.
formula-hone-stock-target-bore-less =
    Target bore less the bore as the bar left it. Target bore: the sleeve less the middle of the
    fit. Cutter: half of bore and spindle together.
formula-hone-stock-ds-fit = stock = Ds - fit - Db;  cutter = (D + spindle) / 2
formula-hone-stock-geometry-stock-for = Geometry. Stock for the hone: common practice, no source.
formula-counterbore-clearance-counterbore-diameter-less = Counterbore diameter less flange OD.
formula-counterbore-clearance-d-cb-d = D_cb - D_flange
formula-counterbore-clearance-geometry-limits-from =
    Geometry. Limits: from memory, no source; yours to change.
formula-chamfer-of-the = Chamfer of the ledge less fillet under the flange.
formula-chamfer-fillet = chamfer - fillet
formula-chamfer-geometry-limit-from = Geometry. Limit: from memory, no source; yours to change.
formula-oxygen-nitrogen-boils-to =
    Nitrogen boils to about 690 times its volume of gas and takes the air's place. It mixes
    through the room, and the ventilation lets it out.
formula-oxygen-c-0-2095 =
    c = 0.2095 (1 - (R/Q)(1 - exp(-Q t/V))), without ventilation 0.2095 exp(-Vg/V); at once 0.2095
    (V - Vg)/V
formula-oxygen-mass-balance-of =
    Mass balance of a mixed room. Density of nitrogen: CoolProp 8.0.0. Limit 19.5 %: OSHA
    interpretation letter of 2 April 2007.
formula-chill-the-wall-of =
    The wall of the sleeve loses heat by film boiling, then by nucleate boiling. That goes on
    until it is within 2 K of the bath.
formula-chill-t-integral-of = t = integral of m cp(T) / (A q(T - T_bath)) dT
formula-chill-boiling-curve-of =
    Boiling curve of liquid nitrogen and its band: published pool-boiling data, fitted; latent
    heat and densities: CoolProp 8.0.0. The band is wide because surfaces differ.
formula-warmed-temperature-of-the = Temperature of the fitted sleeve less the shop's.
formula-warmed-t-sleeve-t = |t_sleeve - t_room|
formula-warmed-direct-reading-limit =
    Direct reading. Limit: from memory, no source; yours to change.
formula-protrusion-compressed-gasket-less =
    Compressed gasket less the largest protrusion. Compression ratio: swept volume and what is
    left of the clearance volume once the deck is lower.
formula-protrusion-room-gasket-max =
    room = gasket - max protrusion;  ratio = (Vs + Vc) / Vc, Vc = Vs / (ratio_0 - 1) - A cut
formula-protrusion-geometry-the-least = Geometry; the least room is the engine maker's.
formula-groove-depth-less =
    Groove depth less its target: ring height less its stand-proud. Flange left: thickness less
    deck cut less groove.
formula-groove-depth-target-h = depth_target = h_ring - P_ring
formula-groove-geometry-ring-and = Geometry; ring and stand-proud are the engine maker's.
formula-finish-finished-bore-less =
    Finished bore less the mean of the readings. Before there are any, less the inside as the fit
    closes it. Included angle of the cross-hatch: from stroke, cycles and turns, at the mean
    stroking speed.
formula-finish-stock-d-final =
    stock = D_final - mean D;  angle = 2 atan(2 stroke cycles / (pi D turns))
formula-finish-geometry-profile-in =
    Geometry. Profile in the drawing: axisymmetric linear elasticity by finite elements, for a
    joint that slides freely. Checked against an independent program. The line beside it: Lame's
    rings. Along and across the row: a rule fitted to finite elements, within 4 % of the close-in.
formula-ring-gap-the-least-gap =
    The least gap of the rings in this bore. A thou on the bore opens a gap by 3.14 thou.
formula-ring-gap-pi-dd = gap + pi dD
formula-ring-gap-geometry-limits-are = Geometry. Limits are the sheet's.
formula-sleeve-form-largest-less-smallest =
    Largest less smallest diameter right under the flange. Mean and taper: over all levels.
formula-sleeve-form-max-d-min = max D - min D at the first level
formula-sleeve-form-readings-the-terms =
    Readings; the terms are those of form as in ISO 1101. Limits: from memory, no source; yours to
    change.
formula-counterbore-target-depth-less =
    Target depth less the depth now. Target depth: the least flange thickness less the
    stand-proud. Chance of a low flange: the feed's scatter and the depth gauge together, normal
    law. For all flanges: each by itself, the error of the deck cut common to them.
formula-counterbore-c-t-p =
    C = T - P;  to go = C - depth;  p_low = Phi((clean_up - cut + low - P) / sqrt(feed^2 +
    gauge^2)), low: the deck below its highest point
formula-counterbore-geometry-and-normal =
    Geometry and normal law. Stand-proud: common practice, no source.
formula-step-depth-target-depth-less =
    Target depth less the depth now. Target depth: the least length of the sleeve less the
    stand-proud. Chance of a low sleeve: the feed's scatter and the depth gauge together, normal
    law.
formula-step-depth-d-l-p =
    D = L - P;  to go = D - depth;  p_low = Phi((clean_up - cut + low - P) / sqrt(feed^2 +
    gauge^2)), low: the deck below its highest point
formula-step-depth-geometry-and-normal =
    Geometry and normal law. Stand-proud: common practice, no source.
formula-fit-sleeve-less-bore =
    Sleeve less bore, each brought to 20 C with its own iron. The chance is by both gauges
    together, normal law.
formula-fit-ds-1 = fit = Ds / (1 + e(ts)) - Db / (1 + e(tb));  u = sqrt(us^2 + ub^2)
formula-fit-reference-temperature-iso =
    Reference temperature: ISO 1:2016. Expansion: see the material below. Uncertainty: JCGM 100
    and 106. Band: common practice, no source.
formula-cold-drop-heat-flows-into =
    Heat flows into the cold sleeve from air while it is carried, then across the shrinking gap in
    the bore. It grips where the clearance is gone. Be home within: the 2.5 % point of first
    contact over four hundred drops. They lean from none to all and carry frost up to 15 um. They
    shrink within the band of the material (measured: of the readings). They are carried 30 %
    shorter or longer unless timed. The colder side bows the sleeve. The time you need is set
    against that point. It is also taken 30 % shorter or longer (an estimate), to see whether a
    slow drop is home too. The picture is of a sleeve that goes in straight and bare.
formula-cold-drop-h-k-air =
    h = k_air / (gap + 0.18 um); grip: Db(T) - Ds(T) = 0; climb = L ((e(room) - e(at grip)) -
    (e_b(room) - e_b(block)))
formula-cold-drop-own-solution-checked =
    Own solution, checked against independent ones. Air: US Standard Atmosphere 1976; free
    convection: Churchill and Chu 1975; contraction: see the material below.
formula-height-as-measured =
    Height as measured less the predicted one, clock by clock. Predicted: flange thickness (of a
    plain sleeve its length) and shim, less depth. For a sleeve held by its fit: the height it was
    to stand at. The ceiling: what a sleeve that grips at bath temperature grows.
formula-height-h-t-shim = H - (T + shim - C);  ceiling = L (e(room) - e(bath))
formula-height-geometry-contraction-see = Geometry; contraction: see the material below.
formula-pulls-height-after-the =
    Height after the last pull less the predicted one. It has stopped when two losses of height
    are within the gauge's noise and the spring-back is steady.
formula-pulls-gap-h-t =
    gap = H - (T + shim - C);  u = sqrt(uH^2 + uT^2 + uC^2);  p = Phi((limit - gap) / u)
formula-pulls-geometry-and-normal =
    Geometry and normal law (JCGM 106). Limits: from memory, no source; yours to change.
formula-seat-height-at-the =
    Height at the clock positions less the predicted one. Tilt: the largest gap less the smallest.
    The three gauges together say how sure.
formula-seat-gap-h-t =
    gap = H - (T + shim - C);  u = sqrt(uH^2 + uT^2 + uC^2);  p = Phi((limit - gap) / u)
formula-seat-geometry-and-normal =
    Geometry and normal law (JCGM 106). Limits: from memory, no source; yours to change.
formula-deck-the-deepest-low =
    The deepest low spot, or what the lowest flange needs, and the clean-up. Or the planned cut.
    Each flange loses the cut and what it stood proud of its deck.
formula-deck-r-low-clean =
    r >= low + clean_up;  flange cut = deck + least height + r;  flange left = least T - flange
    cut
formula-deck-geometry-usual-cut =
    Geometry. Usual cut: common practice, no source. Chance of a low flange: normal law, height
    gauge twice, the error of the cut common to all flanges.

## A value that stands for several places.

mean-of-mean = { $value }, mean of { $places }
mean-of-least = { $value }, the least of { $places }
mean-of-largest = { $value }, the largest of { $places }

## A limit that stands as a new engine has it.

as-usual = { $value } (the usual value, not changed here)

## How a check before ordering is calculated.

order-formula-web-on-step = pitch - sleeve OD
order-formula-bottom-on-step = length - stand-proud - deck to lower step
order-formula-bottom-by-fit = deck to lower step - (length - stand-proud)
order-formula-ledge-on-step = (sleeve OD - the larger of sleeve ID and bore below the step) / 2
order-formula-wall = thinnest wall measured, less what boring takes; before that the wall entered
order-formula-web = pitch - (flange OD + middle of its clearance)
order-formula-bottom = deck to lower step - (flange - stand-proud) - length
order-formula-ledge = (flange OD - sleeve OD) / 2
order-formula-finish-stock = finished bore - (sleeve ID - middle of the fit)
order-formula-groove-inside = (groove inside - finished bore) / 2
order-formula-groove-outside = (flange OD - groove outside) / 2
order-formula-groove-floor = flange - stand-proud - planned cut - (ring height - its stand-proud)

## What an input was moved by, and what that step is.

step-by-gauge = { $by } (its gauge, k = 1)
step-by-reckoned = { $by } (gauge, frost and its warming, k = 1, estimated)
step-by = { $by }, one reading alone

## What an input does to the answer.

moves-some = off by { $by }, it moves the answer by { $effect }
moves-none = off by { $by }, there is no longer an answer

## A difference in the person's unit, with one digit more than a reading.

moved-time = { $si } s

## What a sleeve's shrink is taken from, where not from the table below.

shrink-by-shop =
    Shrink: as measured in this shop, entered with the engine, in place of the contraction below.
    Its band is that of the two readings.
shrink-by-sleeve =
    Shrink: of this sleeve, OD warm less OD measured cold, in place of the contraction below. Its
    band is that of the two readings (gauge, frost, warming while it is read: estimated).

## A material: how far its contraction is known, and by whom.

material = { $name }: contraction { $band } % (95 %), { $flag }. { $source }

## How a number of a material is known.

flag-read = read
flag-memory = from memory
flag-computed = computed
flag-estimate = estimate
