### What is missing, what cannot be used and why, what is in dispute.

# Over the lines of a drop that cannot be worked out.
drop-mend = Cannot be calculated: fix what is named below.
# The highest gauge pressure, where it is not known.
gauge-most-open = Highest gauge pressure: not all checked
# Steps that are only marked.
steps-only-marked = Marked done by hand, not measured
# Values in dispute, on the record.
in-dispute = Not judged, because two devices differ:
# In a verdict's place while a reading is being typed.
typing = reading
# What it waits for.
typing-what = The verdict comes when the reading is complete.
# Under a field of which this block has nothing.
none-of-it = This block has none.
# The button that says so.
has-none = This block has none
# The button that takes it.
home-time-take = Use for new jobs: time you need
# The button that takes it.
home-take = Use for new jobs: part that is home
# Why two values stand in one place.
disputed = two devices differ. Choose one.
# A cold drop into which nobody has typed.
drop-example =
    An example to look at. Enter your own part, fit, housing and carry. Then it says go or stop.

## A usual value in an empty field.

usual = usual { $value }

## A sleeve of a deck, spoken.

deck-seat-words = cylinder { $cylinder }: { $gap } off its ledge, chance home { $chance_short }

## The sleeves of a deck, for those who cannot see them.

deck-seats-label = Gap at each ledge, less the gauge error they all share. { $sleeves }.

## Under the same.

deck-seats-caption =
    Gap at each ledge, and the chance that the sleeve is home. Dashed: limit { $limit }.
    Subtracted from every gap: { $bias }, the gauge error they share.

## What the numbers of a deck point to.

deck-points-to-other =
    One sleeve alone: one reading can hardly prove it home. Measure the others, or use a better
    depth gauge.
deck-points-to-home = Every measured sleeve is home.
deck-points-to-who =
    { $count ->
        [one] Cylinder { $names } reads
       *[other] Cylinders { $names } read
    }
deck-points-to-stands-out = { $who } unlike the others: look for a chip, a burr or a cocked sleeve.
deck-points-to-all-alike = All alike: zero the depth gauge on a flat, and look at one fillet.
deck-points-to-undecided = The gauges cannot tell: measure height, depth and sleeve again.

## What the shop's own sleeves offer.

home-offer =
    Of { $n } sleeves that had stopped, and 20 usual ones before them, the part that was home:
    { $share }.

## What timed drops say.

home-time-said =
    { $n ->
        [one] One sleeve timed from entering to home: { $longest } s.
       *[other] { $n } sleeves timed from entering to home: { $mean } s on average, { $longest } s
            the longest.
    }
home-time-some = { $said } You need { $needed } s: 95 % of your drops take less (95 % sure).
home-time-none-from-on-the = { $said } From { $few } on, the time you need is calculated from them.
home-time-none-they-are-too = { $said } They are too far apart to tell the time you need.

## Each by itself is home, all together not sure enough.

together =
    Each sleeve alone is home. The chance that all of them are home is only { $chance_short }.
    Measure depth and height of the least sure ones again.

## What is missing: whose, which, how many.

missing-of-other = { $whose }{ $name } ({ $many } readings to go)

## owner words

owner-words-bank = deck { $bank },{" "}
owner-words-cylinder = cylinder { $cylinder },{" "}

## Where something stands.

where-words-engine = the engine (cylinders, layout, units, materials)
where-words-left-out = which holes get a sleeve
where-words-unlock = the unlocking of deck { $bank }
where-words-step = { $owner }the mark of "{ $step }"

## Why something cannot be told.

lack-missing = Still needed: { $missing }.

## A typed text that cannot be used, on the record.

cannot-be-used = "{ $text }" (cannot be used)

## What a number does not count.

not-counted = Not counted, because not entered: { $names }.

## How much of a deck a plan covers.

plan-covers = Covers only { $there } of { $wanted } deck points and { $holes } of { $all } sleeves.

## Why a drop is no go: numbers that are an example's in one line.

drop-doubts-questioned = { $place }: asked about and not answered.
drop-doubts-cold-size = Measure again: { $coldod }. It is not what this iron does.
drop-doubts-first = First: { $step }. It is neither done nor marked.
drop-doubts = Assumed, nobody typed them: { $examples }.

## Why a number cannot be used, with the allowed range in the person's unit.

refusal-not-read-empty = Nothing typed. Allowed: { $allowed }.
refusal-not-read-not-anumber = Not a number. Allowed: { $allowed }.
refusal-not-read-unknown-unit-cannot-be-read =
    "{ $word }" cannot be read: a letter O or l for 0 or 1? Allowed: { $allowed }.
refusal-not-read-unknown-unit-is-not-a =
    "{ $word }" is not a unit known here. Allowed: { $allowed }.
refusal-not-read-wrong-kind =
    { $unit } does not measure this; use { $wanted }. Allowed: { $allowed }.
refusal-not-read-two-marks =
    Two decimal marks. Use one, and none between thousands. Allowed: { $allowed }.
refusal-not-read-too-long = Too long for a number. Allowed: { $allowed }.
refusal-out-of-range = Out of range. Allowed: { $allowed }.
refusal-inner-not-below-outer = The inside must be smaller than the outside, { $outer }.
refusal-wall-too-thick =
    Two walls must leave a hole in a sleeve of { $outer }: less than { $outer_too }.
refusal-low-not-below-high = Must be below the upper limit, { $high }.
refusal-torque-alone =
    A torque to read heights at, but no limits for the heights: enter the limits first.
refusal-pass-not-in-cut =
    One pass must be above 0 and no more than the most that may be cut, { $most }.

## Why a number is asked about.

question-ten-times = Off by ten times? Perhaps { $likely } is meant.
question-other-unit-units-temperature = °F for °C, or the other way around
question-other-unit-units-volume = Cubic feet for cubic meters, or the other way around
question-other-unit-units-other = Inches for millimeters, or the other way around
question-other-unit = { $units }? It would be { $likely }.
question-radius-or-diameter = Radius for diameter? Perhaps { $likely } is meant.
question-far-from-unusually-far-from = Unusually far from zero. Right as typed?
question-far-from-the-others-read = The others read { $others }. Right as typed?
question-unusual = Unusual: mostly { $lo } to { $hi }. Right as typed?
question-sleeve-below-bore =
    The sleeve ({ $sleeve }) is smaller than this bore: it would fall through. Measure both again.
