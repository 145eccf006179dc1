### What the steps say: help, what to do next, findings.

## How to take the readings of a step.

help-enquiry =
    Note the engine, what is wrong with it, sleeves fitted and deck cuts made before. Ask for the
    pistons and the gasket data with the block. The price counts the hours, a sleeve for each hole
    and the nitrogen. Nitrogen is what the sleeves boil off, what fills the bath, and what is lost
    by standing.
help-intake =
    Note who brought what, and in what condition. Number the main caps. Mark the cylinder 1 end on
    the block: count from the wrong end and the sleeves get swapped.
help-rest =
    Strip, wash and dry. Then let block and sleeves rest side by side. Start the timer when the
    block comes out of the wash. Write down how warm it is. A second reading later shows, from the
    block's own cooling, how long it still takes. A warm block measures large: that can hide the
    whole fit.
help-pressure =
    Low pressure, plates secured, stand clear. Write down where it leaks. A sleeve fixes the wall of
    a bore and nothing else.
help-datum =
    Measure the deck's height above the main line at both ends. Then measure the low spots in rows
    across the deck, from the front. Take one row before each bore and one behind the last. Left
    and right are as you stand at the front and look along it. The highest point is 0. If the deck
    leans, true it before you measure anything from it.
help-old-bore =
    Measure across and along the engine at three levels. The bar is centered on the unworn part,
    usually near the bottom.
help-wall =
    Measure at four clock positions on three levels, 12 toward the front of the engine. Wall left
    is wall now, less half of what the bar opens on diameter there. If the bar is off toward that
    wall, that comes off too.
help-choose =
    Check before you order. Wall, web, room below and stock for the last hone must all hold. So
    must the ledge under the flange, and what a fire-ring groove leaves of the flange. Where the
    flanges overlap the pitch they get flats.
help-sleeve =
    Measure the diameter across and along the engine, near the top, in the middle and near the
    bottom. Near the top means right under a flange. Lower down a sleeve springs round. At the top
    it must be round by itself. Measure flange thickness, or the length of a plain sleeve, at 12, 3,
    6 and 9. 12 is toward the front of the engine. Mark the sleeve with its cylinder number.
help-caps =
    Put the main caps on and torque them to the sheet before the bar goes in. Bored with the caps
    off or loose, the holes move when you torque them.
help-centre =
    Sweep an indicator from the bar around the unworn part. A larger reading means that wall is
    nearer. Half the difference of opposite readings is how far the bar is off. An offset on purpose
    is fine: note why.
help-bore =
    Measure the diameter after the last pass. The bar leaves a thou or so on diameter for the
    hone. Micrometer over spindle and cutter: add bore and spindle, then halve it.
help-counterbore-d = Measure the diameter of the counterbore. It must never grip the flange.
help-counterbore =
    Measure from the deck to the ledge at four clock positions, zero on the deck beside this hole.
    Where the deck at this hole is left empty, the survey around it counts. Target depth: least
    flange thickness less the stand-proud. Too shallow can be fixed, too deep cannot. Where the
    ledge may be cupped, read it at two radii. Enter the outer corner here. Enter the depth near the
    bore's edge under "More of this hole's ledge". A ledge that falls toward the bore breaks the
    flange.
help-step-depth =
    Measure from the deck to the bore step that the sleeve stands on. Read four clock positions,
    zero on the deck beside this hole. Target depth: least sleeve length less the stand-proud. A
    bore step is cut deeper, never higher: too shallow can be fixed, too deep cannot.
help-chamfer =
    The chamfer on the ledge's edge must clear the fillet under the flange. If not, the flange rides
    on it and settles later.
help-fit =
    Let block and sleeve rest side by side until cool. Measure the bore across and along at three
    levels. Set the bore gauge from the micrometer that measured the sleeve. Both temperatures
    count: a warm block measures large, and that can hide the whole fit. A fitted sleeve moves its
    neighbors. Measure all bores before the first sleeve goes in.
help-clean =
    Wash bore and counterbore. Blue the ledge. Look at the corner with a light: no chip, no burr.
help-dry-run =
    Walk the way with the sleeve: lifting gear, path, helper, oxygen meter, doors. Enter the
    room's volume and the liters in the dewar.
help-chill =
    Start the timer when the sleeve goes into the bath. Take it out when the bubbling stops, not
    before. The time shown is a guide with its band. If you measure its OD cold, enter it. It then
    counts for this sleeve in place of the table for its iron.
help-drop =
    Take it out when the bubbling stops. "From bath to bore within" is the longest carry that
    still leaves the clearance asked for. "Be home within" is your time once it enters the bore.
    Drop it in one straight motion. Hold it down while it warms. Then say how it went in: the shop
    learns from it.
help-hold =
    Hold the sleeve down while it warms. The time shown is until the sleeve and the iron around it
    are at one temperature. The thermometer decides. A sleeve that grips cold grows lengthwise and
    lifts its top. Do not measure before it is at shop temperature.
help-warm-height =
    Measure only when the sleeve is at shop temperature. Read four clock positions, zero on the
    deck, never on a neighbor's sleeve.
help-pull =
    Each pull, read gauge pressure, then height under load and after release, always at the same
    spot. At least three pulls, the last two at the highest pressure. If the sleeve comes out and
    goes in again, say so below. What was read is kept in the record. The readings are then free
    for the next try.
help-seat =
    Measure height at four clock positions after the last pull, zero on the deck. At each clock
    position it is compared with flange thickness and shim, less counterbore depth. For a plain
    sleeve on a bore step: length and shim, less bore step depth. A sleeve held by its fit is
    compared with the height it was to stand at.
help-deck =
    Survey the deck in rows across it, from the front. Take one row before each bore and one behind
    the last. Left and right are as you stand at the front and look along it. The highest point is
    0. Where the deck beside a hole was not measured at its counterbore, the four points around it
    count. What was entered under "Deck height and low spots" is here already: it is the same
    survey. The cut must clean up the lowest point and every sleeve.
help-heights =
    Measure each sleeve's height at four clock positions after the last pull, zero on the deck
    beside it. Type the heights at the seat check. If the engine's sheet states a torque, hold the
    sleeves down at it and say so first. Then read. Within one hole, between neighbors and over
    all, they keep the sheet's limits. The deck is not cut.
help-protrusion =
    Measure each piston at top dead center, front and rear over the pin, zero on the finished
    deck. It decides the gasket.
help-groove =
    Measure the depth from the finished top at four clock positions. Target: ring height less its
    stand-proud.
help-finish =
    Torque plate on. With the hone's stroke, turns and cycles under Engine, the cross-hatch is
    calculated. It shows the included angle between the scratches, and of one scratch to the
    horizontal. Measure across and along at three levels. Stop at the finished bore. The fit closes
    the sleeve inside, more in some places than others. The drawing shows where the hone must take
    more.
help-ring-gap =
    Set each ring square in its finished bore. Too small: file it. Each thou on the bore is three
    on the gap.
help-wash-again =
    Wash until a white towel stays white. Brush the galleries. Then pressure test again.
help-report =
    Read the record, sign it, tape it to the block. It shows the gasket to buy, the new deck
    height and what was not done.

## What a step says at a signal, where it says one thing only.

says-enquiry-go = The price at these rates. Take the job, or say no now.
says-rest-go = At one temperature: measure.
says-rest-wait = Temperatures too far apart: let both rest side by side, then measure again.
says-pressure-go = Holds, within the loss allowed.
says-pressure-stop =
    Loses pressure: find the leak. A sleeve fixes the wall of a bore and nothing else.
says-wash-again-go = Holds, within the loss allowed.
says-wash-again-stop = Loses pressure: find the leak before it leaves the shop.
says-datum-go = The deck is level enough, end to end.
says-datum-look = The deck leans: true it first, or measure both ends again.
says-old-bore-go = Center the bar on the unworn part of the bore, usually near the bottom.
says-wall-go = Enough wall, within the limits you entered or left as usual.
says-wall-look = Thin: move the center away from it, or take a smaller sleeve.
says-wall-stop = Too thin to bore: move the center, or take a smaller sleeve.
says-choose-go = This sleeve goes into this block, within the limits you entered or left as usual.
says-choose-look = Thin, or flanges overlapping: look at the lines below before ordering.
says-choose-stop = Do not order: what is on stop below is too small for this block.
says-choose-wait = Not all is checked yet: enter what is still needed below, then order.
says-pull-stop =
    A pull loads more than allowed: see the bars. Release the pressure. Look for cracks at the ledge
    and in the sleeve. If they are sound, say so in the note. Take that pull out of the list, and
    pull it down within the limit.
says-deck-wait = Locked: not every sleeve on it is shown to be home.
says-heights-wait = Not every sleeve on this deck is shown to be home: see their seat checks.
says-deck-none = Unlocked: cut the deck, then tap "The deck is cut".
says-centre-go = On center.
says-centre-look = Off center: move it, or note why the offset is meant.
says-bore-go = Enough is left for the hone.
says-bore-look = Little or nothing is left for the hone: measure again before honing.
says-counterbore-d-go = The flange drops in freely.
says-counterbore-d-look = Wide: the flange is not guided. Watch where the sleeve stands.
says-chamfer-go = The chamfer clears the fillet.
says-chamfer-wait = Too little room over the fillet, which may ride on the ledge: chamfer more.
says-dry-run-go =
    Oxygen in mixed air stays above 19.5 % by the numbers entered. Near the dewar and at the floor
    it is far worse.
says-dry-run-look =
    If it boils all at once, oxygen falls below 19.5 %: less nitrogen, open doors, oxygen alarm
    on.
says-dry-run-stop = Oxygen falls below 19.5 %: do not bring this much nitrogen into this room.
says-chill-go = Longer than the slow end of the band: quiet by now.
says-chill-look = Inside the band: take it out only if the bubbling has stopped.
says-chill-wait = Too short: back into the bath until the bubbling stops.
says-drop-go = It went in free. Hold it down while it warms.
says-drop-look =
    It dragged: look for a burr, a cocked start or a bore that is tight there. Note what you find.
    Hold it down while it warms.
says-drop-stop =
    Stuck: no hammer, the iron is brittle while it is cold. Let it come to shop temperature, then
    decide how it comes out.
says-hold-go = At shop temperature: let go, and measure the height.
says-hold-wait = Not at shop temperature yet: hold it down, do not measure yet.
says-protrusion-none =
    With gasket and sheet entered under Engine, the room to the head is calculated.
says-protrusion-go = Enough room to the head, by the sheet entered.
says-protrusion-stop = Too little room to the head: fit a thicker gasket, or stop.
says-groove-go = At depth.
says-finish-go = At size, round and straight.
says-finish-look = At size, but out of round or tapered: hone it straight.
says-ring-gap-go = Gaps within the sheet's limits.
says-ring-gap-wait = A ring would butt: file it.
says-ring-gap-look = A gap is wide: try another ring, or the bore is too large.

## The same, by how much.

says-by-bore-wait = Take { $by } more on diameter with the bar. The rest is for the hone.
says-by-bore-stop =
    Bored { $by } past the loosest bore for this sleeve: its press fit is lost. Measure again. If
    the reading holds, this hole needs a larger sleeve.
says-by-counterbore-d-wait = Too small: take { $by } more on diameter, or it grips the flange.
says-by-groove-stop = Too deep by { $by }: the ring would not seal. Stop.
says-by-groove-wait = Cut { $by } deeper.
says-by-finish-wait = Hone { $by } more on diameter.
says-by-finish-stop =
    Past the finished size by { $by } at one place at least: honing cannot bring it back. Stop.

## A finding in the person's words and units; what is not in this table says
## no number and stands as the calculation words it.

finding-apart-inch = 5 °F
finding-apart-metric = 3 °C
finding-uneven-inch = 0.001 in
finding-uneven-metric = 0.025 mm
finding-piston-tight =
    the piston has less room in its bore than the sheet asks for. Measure both again, then hone or
    stop
finding-no-piston-clearance =
    the finished bore is no larger than the piston: a radius among the diameters, or the wrong
    piston?
finding-cocked =
    one clock position is far from the others. A reading is off by a turn of the micrometer, or the
    sleeve is cocked. Measure again before pulling it down
finding-cold-not-smaller =
    the sleeve measured cold is no smaller than it was warm: a reading is wrong. Wipe it and
    measure again, or clear the reading to go by the table for its iron
finding-cold-shrinks-little =
    the sleeve measured cold shrank far less than its iron should. Causes: frost, too short a
    bath, a wrong material or a wrong reading. Chill it fully, wipe it, measure it again
finding-cold-shrinks-much =
    the sleeve measured cold shrank far more than its iron can. Causes: a wrong reading, warm or
    cold, or a wrong material. Measure it again before you trust the clearance
finding-little-flange-left =
    the cut leaves less flange than the limit asks for, its groove counted. Do not cut this deep
finding-deep-cut =
    more than twice the planned cut: the pistons stand prouder by as much. Check gasket and room
    to the head first
finding-flange-may-stay-low =
    the chance of leaving a sleeve low is greater than the one accepted. Cut the deck deeper, or
    measure heights and deck again
finding-ledge-not-flat =
    the depth varies by more than { $uneven } around the hole. Clean the ledge, measure again, and
    true it before a sleeve sits on it
finding-temperatures-apart =
    sleeve and block were measured more than { $apart } apart. Let both rest side by side and
    measure again
finding-below-ledge =
    it reads lower than its ledge: height, depth or sleeve is read wrong. Measure again
finding-does-not-enter =
    the chilled sleeve is no smaller than the bore: do not drop it. Chill it fully, carry it
    faster, warm the block, or hone the bore to its fit
finding-flats-needed =
    the flanges overlap the pitch: each needs a flat of the depth shown, and the counterbores run
    into each other
finding-gauges-eat-the-band =
    with these gauges no reading can prove the fit inside its band. Use better gauges, or set the
    bore gauge from the micrometer that measured the sleeve
finding-sharp-corner =
    Both corners are sharp here, and a sharp corner's stress has no peak. This is the stress at
    the fillet's radius from it. It compares one sleeve, fit or flange with another.
finding-mesh-speaks =
    Two meshes differ by more than a tenth at a corner: trust the order of the numbers, not their
    digits.
finding-height-moved =
    the height at the clock positions is not the height after the last pull. Measure again, zero
    on the deck
finding-never-grips =
    the sleeve does not grip within an hour. Check the fit and the temperatures entered
finding-no-floor =
    the groove would cut through the flange: do not cut. Use another ring or a thicker flange
finding-no-wall =
    the bar would break through this wall: do not bore. Move the center or take a smaller sleeve
finding-odd-return =
    springs back unlike the job's other holes, or reads higher under load than released. Read it
    again, and look for a chip or a burr on the ledge
finding-oxygen-low =
    boiled all at once, this much nitrogen takes the room below 19.5 % oxygen. Use less of it, a
    larger room or the open air
finding-too-deep =
    deeper than planned: do not cut. Use a shim, a thicker flange or a longer sleeve. Or take a
    lower stand-proud with a deeper deck cut
finding-too-little =
    the planned cut leaves a low spot or a sleeve uncut. Plan at least the least cut, or find out
    why it is low
finding-unequal-pulls =
    the last two pulls were weaker than 95 % of the strongest: they cannot show that it has stopped.
    Pull it down twice more at one pressure
finding-worse-at-the-floor =
    near the dewar, in pits and at floor level there is far less oxygen: oxygen alarm, doors open,
    two people
finding-loose =
    nothing is left of the press fit once the peaks are smoothed: it would be loose. Hone less, or
    use a larger sleeve
finding-no-stock =
    the fitted sleeve leaves less than the hone needs. Use a sleeve with a smaller inside

## Why a calculation refused, by the number it names; its own message is in
## metres and for the log.

fault-which-deck = the low spots of the deck: survey them, the highest point is 0
fault-which-clean-up = the clean-up cut
fault-which-cut = the deck cut
fault-which-pulls = the pulls
fault-which-depth = the counterbore depth
fault-which-thickness = the flange thickness and the shim
fault-which-heights = the heights
fault-which-plan = the plan of the heights: the plan no longer fits: make a new one
fault-which-wall = the inside of the sleeve or its wall: it must be smaller than the outside
fault-which-temperatures = the temperatures
fault-which-cold = the cooling temperature: it must be below the shop's
fault-which-heat =
    the temperature of the housing: above the shop's, and in water 212 °F (100 °C) at most
fault-which-times = the times, the carry first
fault-which-diameters = the diameters: sleeve, bore and block do not go together
fault-which-lengths = lengths of sleeve and block
fault-which-gauges = what the gauges are good for
fault-which-limits = the limits and how sure you want to be
fault-which-loads = gas, clamp and ram
fault-which-tools = hone and boring bar
fault-which-materials = the materials, the surfaces and the room
fault-which-costs = nitrogen and prices
fault-which-other =
    the numbers of this step and of the engine: one is missing or outside what can be calculated
fault = Cannot be calculated as it stands. Look at { $which }.

## What a step's expected time is.

timer-expected-drop =
    from bath to bore at most { $span }: after that, the clearance at the bore is less than asked
    for
timer-expected-hold = sleeve and the iron around it are at one temperature after { $span }
timer-expected-rest = by the block's own cooling, near enough after { $span }
timer-expected-other = expected { $span }

## timer left

timer-left = { $low } to { $high } to go

## timer at most

timer-at-most = { $low } left

## What a calculation found, where it says no number of its own.

finding-all-alike =
    All sleeves read high alike. Zero the depth gauge on a flat. Look at one fillet: the flange
    may ride on it.
finding-bore-too-big =
    One bore is already too big for the fit with any of these sleeves. Choose a larger sleeve for
    it, or look for a wrong reading.
finding-butts =
    The ring's ends would meet: do not run it. File the ring to its gap, or choose one of the
    bore's size.
finding-deck-not-surveyed =
    The deck beside this hole is not measured. It counts as its highest point. The chance of a low
    flange is at least the one shown.
finding-joint-spread =
    Published examples lie between 0.8 and 8 times this conductance. Use it to compare one finish
    with another.
finding-little-margin =
    A hoop stress is more than half of the tensile strength entered. Lower the fit or the
    pressure, and ask the maker.
finding-load-not-checked =
    Ram, rod, ledge and flange are not all checked. Enter what is missing, or keep to your makers'
    limits.
finding-loose-in-service =
    At these running temperatures nothing is left of the press fit. Plan more press, or keep the
    block cooler.
finding-neighbours-move =
    Fitting one sleeve makes the neighboring bores oval. Measure all bores before the first sleeve
    goes in, and the neighbors again after it.
finding-no-flange =
    Nothing is left of a flange after this cut: do not cut. Set that sleeve deeper, cut the deck
    less, or choose a thicker flange.
finding-no-plan =
    No plan keeps every limit. Get other shims or sleeves, or ask whether the ledges may be cut.
finding-one-reading =
    One sleeve alone proves little: a gauge error looks the same as a gap. Measure again with
    another gauge, or zero it again.
finding-outside-sizes =
    Outside the sizes these seconds are checked for. Checked: OD 30 to 150 mm (a pin 5 to 66),
    wall 1.5 to 8 mm. Wall around the bore: 4 to 60 mm. Take them as a rough guide only. Try a
    spare part first.
finding-outside-the-rule =
    Outside what this rule was fitted to: pitch 1.15 to 1.45 bores, half width 1.2 to 2.5 radii.
    Take its numbers as a guess.
finding-returns-not-compared =
    A pull of another hole cannot be read. Whether this one springs back like the others is not
    known.
finding-samples-refused = Some of the draws had no answer. The band is that of the others.
finding-slope-from-roughness =
    The slope was taken from the roughness. Published rules differ by a factor of 2 there.
finding-stands-out =
    One sleeve reads unlike the others. Pull it down again. Then take it out and look for a chip or
    a burr under its flange.
finding-swept-oval =
    12 and 6 together read otherwise than 3 and 9. The hole is oval where it was swept, or one was
    misread.
finding-tighter-below-the-deck =
    In a jacketed block the deck plate is stiff. Half an inch below the ledge the sleeve closes 11
    to 20 % more than at mid length.
