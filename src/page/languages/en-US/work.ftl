### Phases of the shop, the number to work to.

# The name of the page.
name = Coldseat
# What it is for, in one sentence.
what-it-is = Fit dry sleeves by the numbers, from the first call to the signed record.
# The numbers that every step hangs on.
first-numbers = First numbers
# What is asked for first, and what is not.
first-numbers-what =
    From the sleeve's and the engine's sheets. Each step asks for anything else it needs.
# Which holes get sleeves.
holes = Tap the holes that get sleeves
# All of them.
holes-all = All holes
# None of them, to tap a few.
holes-none = No hole
# From the engine to the bench.
to-the-bench = Go to the bench
# From the engine to the price.
to-the-price = Price the job
# A step that is done and good.
done-tick = done

## Under an empty field for which no usual value stands.

by-sheet = From the maker's sheet. Above { $most } you are asked to check it.

## A hole that gets a sleeve or does not.

hole-name = Sleeve in cylinder { $cylinder }

## The temperature that was read last, and when, to be taken over.

as-read-at = { $text } { $unit }, as read { $when }

## How the pad takes digits.

pad-count-from-right = From the right
pad-count-last = Last digits
pad-count-as-typed = As typed

## What a job in the list needs next.

next-in-job = Next: cylinder { $cylinder }, { $step }

## Steps of a phase that are done.

steps-done = { $done } of { $of }

## A phase of the shop.

phase-take-in = Check-in
phase-measure = Measure
phase-bore = Bore
phase-counterbore = Cut and hone
phase-drop = Chill and drop
phase-seat = Pull down, seat
phase-deck = Deck
phase-finish = Finish

## The word before it.

work-bore = bore to (diameter)
work-widen = open it to (diameter)
work-depth = cut to a depth of
work-step-depth = cut the bore step to a depth of
work-chamfer = chamfer at least
work-hone = hone to (diameter)
work-groove = groove to a depth of
work-finish = finish to (diameter)
work-gap = ring gap at least
work-home-warm-home = once home, it stands proud by

## Its limits. Near them the gauges may not be able to tell: no word of good.

limits-between = limits { $low } to { $high }

## What stands in for a reading that is not there yet.

work-taken-sleeve-od = By the nominal size: measure the sleeve first.
work-taken-flange-od-here = By the engine's flange: measure this flange first.
work-taken-deck-cut = By the planned cut.
work-taken-other = Sleeve and block at one temperature.

## The number to work to has to wait.

work-waits = The size to work to waits for: { $field }.
