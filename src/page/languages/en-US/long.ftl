### Sentences. What to do next, why a number is asked about, cautions,
### help, what drawings say to those who cannot see them.

staircase-caption =
    Height above the deck, pull by pull: down under load, back after release. Shaded: close enough
    to be home.
clearance-caption =
    Clearance on diameter against seconds in the bore, until it grips. Shaded: the 95 % band.
fit-caption =
    Shaded: the band. Bar: what the gauges leave open (95 %). Ticks: loosest and tightest pair of
    readings.
enters-with = enters with
mean-diameter = mean diameter
round-anywhere = out of round, worst level
depth-wanted = target depth
chance-low = chance of a low sleeve
all-home = chance that all of them are home
cut-too-deep = Do not cut: it leaves too little flange.
proud-for-risk = least stand-proud for the accepted chance
chance-inside = chance that the fit is in its band
loosest = loosest pair
tightest = tightest pair
bore-round = bore out of round
bore-taper = bore taper
predicted-height = predicted height when home
climb-ceiling = warming explains at most
last-drop = last pull moved it
last-return = sprang back
still = a move of up to this is too small to count
chance-seated = chance that it is home
gauges-show = best chance one sleeve alone could show with these gauges
better-depth = with a depth gauge twice as sure
chance-asked = chance asked for
over-an-hour = over an hour
drop-numbers = see inside
slider = slider
cut-kept = The cut entered below is kept. It does not count until the deck is unlocked.
left-out-why =
    A hole that is left out has readings of a sleeve. If that sleeve is still in the block, put
    the hole back in and do not deck over it. If it came out, write that down at its seat check.
open-why = Every sleeve is home, within the limits you entered or left as usual.
cut-good = Cleans up the lowest point and every sleeve.
cut-too-small =
    Leaves metal that is not cleaned up: cut the deck more, or bring the low sleeve up first.

## What to do next.

next-measure-needs-a-number =
    Needs a number of the engine: { $field }. Enter it under "{ $engine_and_limits }".
next-measure = Measure: { $missing }.
next-mend = Cannot be used: { $spot }. Fix it.
next-answer = Asked about and not answered: { $place }. Fix it, or say that it is meant.
next-first = First: { $step }. It is neither done nor marked.
next-proved-wrong = "{ $step }" shows otherwise: this verdict no longer holds.
next-assumed-deck-cut = Good by the planned cut: enter the cut that was made.
next-assumed-deck-here =
    Good with the deck beside each hole taken from the survey. Measure it there to be sure.
next-assumed-sleeve-od =
    Good with a sleeve of nominal size. Nobody has measured the sleeve yet: measure it.
next-assumed-indicator = Good with the bar on the old center. Nobody has swept it yet: sweep it.
next-assumed-flange-od-here = Good with a flange of nominal size. Measure this one.
next-assumed =
    Good with the usual or planned { $field }. Nobody has measured or entered it yet: do that.
next-released-by-hand =
    Unlocked by hand over flanges that are not shown to be home. One that settles later takes the
    gasket with it.
next-deep-cut = More than twice the planned cut: check the number. Pistons stand prouder by as much.
next-may-stay-low =
    The chance of leaving a sleeve low is more than the one accepted. Cut the deck deeper, or
    measure again.
next-stops-at = Cylinder { $cylinder } is on stop: hand nothing over until it is fixed.
next-not-all-done = Marked, but steps are open. The record shows what was not done.
next-no-groove = This engine has no fire ring: no groove to cut.
next-refused = No answer from these numbers; see why below.
next-sleeve-round = Round at the top: mark it with its cylinder number.
next-sleeve-look =
    Out of round at the top: turn the sleeve a quarter turn and measure again. If it stays out of
    round, ask the supplier.
next-sleeve-stop = Too far out of round at the top: do not fit it.
next-cut-deeper =
    Cut { $to_go } deeper. Take small bites for the last { $what }, then measure all four clock
    positions.
next-cut-deeper-inch = 0.010 in
next-cut-deeper-metric = 0.25 mm
next-ledge-uneven =
    The depth is not the same around the hole. Clean the ledge and measure again before you cut or
    set a sleeve on it.
next-at-depth = At depth, as near as the gauge can tell: stop cutting, chamfer and clean.
next-too-deep =
    Too deep by { $over }: do not fit the sleeve. Put a shim under it, or repair what it stands
    on.
next-step-lies =
    The bore step is { $over } deeper than this sleeve needs, and it is only ever cut deeper. Use a
    longer sleeve, a shim, or repair the bore step.
next-fit-good = The fit is in its band: clean, blue the ledge, go on.
next-fit-undecided =
    The gauges cannot tell whether the fit is in its band. Set the bore gauge from the micrometer
    that measured the sleeve, and measure both again.
next-hone-more = Too tight: hone { $stock } more off the bore, to the middle of the band.
next-fit-loose =
    Too loose by { $short }: measure both again at one temperature. Then use a larger sleeve for
    this hole.
next-bore-form = The fit is right, but the bore is out of round or tapered: hone it straight.
next-drop-ready = The numbers are there: see clearance and grip time below.
next-pulled-home =
    Above its ledge before it was pulled down, as warming makes it. The seat check has shown it home
    since.
next-pull-home =
    Above its ledge, and warming alone can explain it. A chip on its ledge would read the same: only
    pulling it down tells. Pull it down onto its ledge.
next-above-ceiling =
    Higher than warming can explain: look for a chip, a burr, or a corner that rides on the ledge.
next-home-warm =
    On its ledge already, as near as the gauges can tell. Pull it down once to prove it, then
    check the seat.
next-pull-again =
    Not shown to have stopped. It takes at least three pulls, the last two at the highest pressure.
    Neither of those may move it by more than the gauge can tell. Pull it down again at the same
    pressure and read it loaded and released.
next-check-seat =
    It has stopped moving. By the pulls it may be home: only the seat check proves it. Measure the
    height at all four clock positions.
next-stopped-high =
    Stopped moving but { $gap } high: not home. Do not deck. Take it out. Look for a chip, a burr
    or a corner that rides.
next-stopped-unsure =
    Stopped. The gauges cannot tell whether it is home. Measure the four clock positions, the
    depth and the sleeve again.
next-seated = Seated, within the limits you entered or left as usual.
next-set-too-low =
    TOO LOW by { $low }: nothing under it stops it, and no pull brings it up. Do not deck. Draw it
    out and set it again.
next-set-low-at =
    TOO LOW by { $low } at its lowest clock position. Nothing under it stops it, and no pull
    brings it up. Do not deck. Draw it out and set it again.
next-set-high =
    Stands { $high } too high: pull it down a little at a time. Measure after each pull. Nothing
    under it will stop it.
next-set-undecided =
    The gauge cannot tell whether it stands where it should. Measure the height again.
next-not-seated =
    NOT SEATED: stopped with a gap of { $gap } at its ledge. Do not deck. Take it out. Look for a
    chip, a burr or a corner that rides.
next-tilted =
    NOT SEATED: it stands tilted by { $tilt }. Do not deck. Take it out. Look for a chip or a burr
    on the high side.
next-seat-undecided =
    The gauges cannot tell whether it is home. Measure height, depth and sleeve again. A better
    depth gauge helps most.
next-below-ledge =
    It reads lower than its ledge: a reading is wrong. Measure height, depth and sleeve again.

## cylinders

count-of-cylinders =
    { $count ->
        [one] 1 cylinder
       *[other] { $count } cylinders
    }

## engine of sheet

engine-of-sheet = { $engine } (engine sheet)

## How much of a folded group is there.

entered = { $there } of { $all } entered

## How a try that failed stands in the record.

came-out-read = nothing
came-out-verdict = {" "}Verdict then: { $words }
came-out-came-out-found =
    Came out { $date }, found: { $found }. Read until then: { $read }.{ $verdict }

## What was repaired in a document.

repair-checksum = its checksum does not match: it was changed outside this page
repair-missing = "{ $part }" was missing
repair-set-aside = "{ $part }" could not be used; it is kept in the file

## Why stored data cannot be read.

unreadable-empty = nothing in it
unreadable-too-long = longer than any job
unreadable-torn = torn or damaged
unreadable-not-adocument = not a job

## Heading of a caution.

caution-title-lifting = Lifting and wash
caution-title-pressure-test = Pressure test
caution-title-cutting = Cutting
caution-title-nitrogen = Liquid nitrogen
caution-title-cold-iron = Cold iron
caution-title-cold-reading = Measuring it cold
caution-title-ram = Ram and rod
caution-title-dry-ice = Dry ice
caution-title-hot = Hot parts

## A caution.

caution-lifting = Rated slings, block secured; the wash is hot and caustic.
caution-pressure-test = Low pressure, plates secured, stand clear.
caution-cutting = No gloves near rotation; eye protection; sharp edges.
caution-nitrogen =
    Face shield, loose cryogenic gloves, cuffless pants over boots. It asphyxiates without warning:
    oxygen alarm, doors open, two people, never a pit or small room. Someone down: get out and call
    for help, do not rush in. Never seal it. No oil or grease near an open bath. Lower the part
    slowly. No bare skin.
caution-cold-iron =
    Cold iron is brittle: no hammer. Pinch point at the deck. Dry and oil it afterward.
caution-dry-ice =
    One kilogram becomes 0.55 m3 (19 cu ft) of carbon dioxide. The US limit for a working day (OSHA)
    is 5000 parts per million. What 0.9 kg gives off brings a room of 100 m3 (3500 cu ft) to that
    limit. The gas lies at the floor: doors open, never a pit, a cellar or a closed van. Never in a
    sealed vessel: it bursts. Alcohol burns, and its vapor with it: no flame, no spark, a small open
    vessel. Gloves and face shield.
caution-hot =
    Dry gloves that stand the heat: water turns to steam. No oil near it: it smokes and burns.
    Heat evenly. Measure at the bore by contact. The maker's sheet says how hot: heat-treated
    aluminum and hardened parts lose strength. Nothing closed or filled goes into an oven.
caution-cold-reading =
    Frozen metal burns skin and sticks to it: gloves on sleeve and micrometer. It frosts over in
    seconds, and frost reads as diameter: wipe where you measure, read at once. The micrometer
    cools too: take one quick reading. Then let it come back to shop temperature and check its
    zero.
caution-ram =
    Rated ram and rod, full thread engagement, straight line, nobody in line with the rod. Pump
    slowly, release the pressure before touching. Oil under the skin: hospital now.

## A drop that a job cannot work out yet: what is missing.

drop-missing = Still needed for clearance and grip time: { $names }.

## section label

section-label =
    Section of the sleeve on its ledge. Predicted height { $predicted }, measured { $measured },
    gap { $gap }.

## section label waiting

section-label-waiting =
    Section of the sleeve on its ledge. Predicted height { $predicted }, not measured yet.

## section caption

section-caption-some =
    Height and gap drawn ×{ $times } against the flange. Mean of the clock positions.
section-caption-none =
    Height and gap drawn far larger than they are, the sleeve far shorter. Mean of the clock
    positions.

## staircase label

staircase-label =
    Height after each of { $pulls } pulls. Last { $last }, predicted when home { $predicted }:
    { $above } above it.

## clearance label

clearance-label-other-clearance-against-time =
    Clearance against time. Enters with { $entry }. Grips after { $nominal } seconds, with 95 %
    between { $early } and { $late }.
clearance-label-some =
    Clearance against time. Enters with { $entry }. Grips after { $nominal } seconds. The band is
    open to one side.
clearance-label-other-clearance-against-time-2 =
    Clearance against time. Enters with { $entry }. Does not grip within an hour.

## fit label

fit-label = Fit { $mean }. Its band is { $lo } to { $hi }.

## deck label

deck-label = A deck cut of { $cut } takes off the sleeves: { $flanges }.

## deck caption

deck-caption = What the cut takes off each sleeve. Dashed: the clean-up cut, { $clean_up }.

## What the clearance at the bore allows.

drop-words-free = Enough room at the bore, within the numbers entered.
drop-words-tight =
    Less clearance than asked for: chill it through, carry faster, or warm the { $housing }.
drop-words-may-not-enter =
    At the narrow end of the band it may not enter. Do not try it as it is. Warm the { $housing }
    or hone more.
drop-words-does-not-enter =
    It does not enter the bore: do not try. Warm the { $housing } or hone more.

## The chance over all flanges, and of how many.

chance-any-low =
    { $flanges ->
        [one] chance that the cut misses it
       *[other] chance that the cut misses any of { $flanges }
    }

## A chance in per cent.

percent-over-99-9 = over 99.9 %
percent-under-0-1 = under 0.1 %

## Readings that are still asked about.

questioned = Still asked about: { $places }.

## Holes that are left out and were read with a sleeve in them.

open-beside =
    Every other sleeve is home, within the limits entered. Left out: { $holes }. { $left_out_why }

## The states of a job's cylinders, counted.

tally-text = { $count } of { $total } seated
tally-stop = { $text }, { $stops } stop
tally-look = { $text }, { $looks } look
tally-to-choose-two = { $text }, { $disputed } to choose: two devices differ

## The state of a cylinder in the record: plainer than the strip's word.

record-state-not-seated-tilted = NOT SEATED

## The limits behind the record.

record-limits =
    Limits ({ $unit }), as entered or left at their usual value: fit { $fit_low } to { $fit_high }.
    Gap at most { $gap }, tilt at most { $tilt }.
