### The record's two papers.

for-the-customer = what was done
for-the-file = for the file
print-customer = Print the customer's page
print-file = Print the page for the file
record-words = Shop, machinist, block: for the record
gauges-checked-group = When each gauge was last checked
gauges-checked-what =
    A date, or what your sticker says. It goes on the record beside what the gauge is good for.
what-was-done = What was done
all-steps-done = No step on the block was left out.
left-fit = fit
left-proud = proud
left-chance = home
left-bore = bore
deck-not-marked = Deck (a cut is entered, but not marked as taken)
sleeve-length = Sleeve length
off-mark = Off its mark
# Columns of the floor sheet for the hand.
measured-bore = Bore measured
measured-depth = Depth measured
initials = Initials

## What the words at each hole of the plan mean.

deck-plan-what-off-flanged = Gap: how far the gauges find it off its ledge
deck-plan-what-off-on-step = Gap: how far the gauges find it off its bore step
deck-plan-what-off-by-fit =
    Off its mark: how far above the height it was to stand at (below with a minus)
deck-plan-what-cut-decked = , before any cut of the deck
deck-plan-what-bore = {" "}Bore: as finished, diameter.
deck-plan-what =
    Deck from above, front of the engine to the left. Fit: how much larger the sleeve is than the
    hole it was pressed into. Proud: how far its top stood above the deck after the last
    pull{ $cut }. { $off }. Home: the chance that it is within its limit.{ $bore }

## How far a sleeve stands off, in a word.

left-gap-flanged-on-step = gap
left-gap-by-fit = off its mark

## Over the plan of a deck.

deck-plan-caption-how-as-left = as left
deck-plan-caption-how-as-measured-so = as measured so far
deck-plan-caption-deck = Deck { $bank } { $how } ({ $unit })
deck-plan-caption-the-deck = The deck { $how } ({ $unit })

## Shims under the sleeves, each with its hole.

shims-laid-each = cylinder { $cylinder }: { $size }
shims-laid = Shims under the sleeves: { $each }.

## The limits of sleeves that are left proud.

proud-limits =
    Left proud: each height { $low } to { $high }. Apart at most: within one hole { $hole },
    neighbors' means { $neighbors }, all means { $all } ({ $unit }).

## The record in one sentence.

record-cylinders =
    { $count ->
        [one] cylinder { $names }
       *[other] cylinders { $names }
    }
record-sentence-other-no-sleeve-was = No sleeve was fitted.
record-sentence-other-new-sleeves-in =
    New sleeves in { $home }. Measured, and every one is home, within the limits the shop entered.
record-sentence-other-no-sleeve-is = No sleeve is shown to be home. Still open: { $open }.
record-sentence-other-measured-and-home =
    Measured and home, within the limits the shop entered: { $home }. NOT shown to be home:
    { $open }.

## Sleeves of which nobody measured how tight they sit.

fit-not-measured =
    How tight they sit was NOT measured: { $count ->
        [one] cylinder
       *[other] cylinders
    } { $names }.

## Values that two devices set differently.

disputes-open =
    { $many ->
        [one] One value is in dispute between two devices. See the page for the file.
       *[other] { $many } values are in dispute between two devices. See the page for the file.
    }

## A gauge on the record: what it measures, how sure, when it was checked.

record-gauge-some = { $name } { $sure } (checked { $checked })
record-gauge-none = { $name } { $sure } (no date of its last check)

## The gauges behind the record and how far a gap is known.

record-gauges-gap = {" "}A gap is known to { $gap }.
record-gauges =
    Gauges (standard uncertainty, k = 1, { $unit }): { $known }.{ $gap } Chance: that the mean gap
    lies within its limit.

## How the deck came out, on the customer's page.

deck-finish-line-good-rougher-than = ROUGHER THAN
deck-finish-line-good-within = within
deck-finish-line =
    deck finish measured { $measured } ({ $kind }), { $good } the { $most } that the gasket allows

## The cut of a deck that nobody has made, for the record.

deck-not-cut-how-decided-on = to take
deck-not-cut-how-planned = planned
deck-not-cut = not cut yet, or not marked as cut; { $cut } { $how }

## A deck that is marked as cut, without a word of how deep.

deck-cut-unread = marked as cut; how deep was not entered ({ $planned } was planned)

## A deck that is marked as cut although a sleeve is not shown to be home.

deck-cut-locked = marked as cut (cut entered: { $typed }), but not every sleeve is shown to be home

## The same, and what it leaves of each flange.

deck-cut = { $cut_too } { $cut }; left of the flanges, at least { $left }

## A time of a drop among others, shorter than the name of its field.

time-kept-chill-time = bath
time-kept-carry = carry
time-kept-home-timed = entering to home
time-kept-hold-time = held down
