### What is measured from the deck, and what the cut makes of it.

after-cut = What the cut does to sizes measured from the deck
after-cut-planned = By the planned cut. Nothing is cut yet.
after-cut-decided = By the cut entered (to take or taken).
from-deck-group = Measured from the deck, and how much may be cut
from-deck-what =
    Enter each size before the cut, and its range by the engine's sheet. Leave out what this
    engine does not have. The deck step shows what the cut does to each.
from-deck-none =
    Nothing measured from the deck is entered under Engine. That means water and seal
    counterbores, dowels, bolt holes and valve recesses. The cut changes all of them.
deck-size = Measured from the deck
size-before = Before
size-after = After the cut
size-range = Range
size-state = Result
size-block = off the block, all cuts
size-finish = deck finish
size-holds = in range
size-recut = recut, in range
size-brought-back = brought back, in range
recut-done = Recut, done
back-done = Brought back, done
recut-why = Left as is, because
recut-why-needed = Say why in a few words.
# Words that do not fit their line.
one-line = Use one line, and keep it shorter.
recut-leave = Leave it as is
recut-again = Take that back
said-done = checked off as done, not measured
not-measured-again = not measured
recuts-open = Not brought back and no reason given
# Without a limit on the cuts.
no-budget = Not entered: how much may ever be cut off this block.
# Without a limit of the finish.
no-finish = Not entered: the limit on the deck finish.

## What is measured from the deck.

deck-size-water-bore = water-hole counterbores, depth
deck-size-seal-bore = seal counterbores, depth
deck-size-bolt-chamfer = bolt-hole chamfers, depth
deck-size-dowel = dowels, height above the deck
deck-size-valve-recess = valve recesses, depth
deck-size-ring-groove = ring groove in the deck, depth
deck-size-piston = pistons, proud of the deck (minus: below it)
deck-size-bolt-hole = head-bolt holes, depth to the last full thread

## The same in a line of names.

deck-size-short-water-bore = water-hole counterbores
deck-size-short-seal-bore = seal counterbores
deck-size-short-bolt-chamfer = bolt-hole chamfers
deck-size-short-dowel = dowels
deck-size-short-valve-recess = valve recesses
deck-size-short-ring-groove = ring groove in the deck
deck-size-short-piston = pistons
deck-size-short-bolt-hole = head-bolt holes

## What brings a size back after a cut. Common practice, no source.

remedy-water-bore-seal-bore = cut them deeper
remedy-bolt-chamfer = chamfer them again
remedy-dowel = drive them down, or shorten them
remedy-piston = use a thicker gasket, or cut the crowns, by the maker's sheet
remedy-bolt-hole = run the tap deeper, or the bolts will bottom before they clamp

## What is not on this engine.

not-on-this-engine = Not entered, so taken as not on this engine: { $names }.

## The target before the cut.

bears-what-block = the block has no more to give
bears = Cut no more than { $most }: { $what }.

## No cut at all keeps it.

bears-none-size = Out of range before any cut: { $item }. Any cut changes it further.
bears-none-block = Nothing more may be cut off this block.

## Where a size is to be brought back to.

recut-to-bring-back-to = bring back to { $to }
recut-to-recut-to = recut to { $to }

## No cut is both deep enough and shallow enough.

bears-less = The deck cleans up at { $least }. Both cannot be had: fix one of them.

## What becomes of a size; `to` is where it is brought back to.

size-state-recut = { $to } (off by { $by }): { $item }
size-state-too-deep-too-low-by = too low by { $by }
size-state-too-deep-too-deep-by = too deep by { $by }

## The same on paper.

size-state-short-recut = back to { $to }

## Measured again.

measured-again = measured { $value }

## What is left to cut, or that too much was.

budget-state-over-by = over by { $left }
budget-state-left-after-this = { $left } left after this cut

## At least.

from-value = { $value } and deeper

## Rough or good, by which roughness.

finish-state = rougher than the gasket allows ({ $kind }): cut it finer

## What to do next, of a deck's cut and what it changes.

next-after-cut-block-cut-most =
    Do not cut this deep. With earlier cuts, it is { $over } more than the block may lose.
next-after-cut-deck-size-past =
    { $item }: past the range by { $over }. No cutting brings it back. Measure again. Repair it,
    then enter what it measures.
next-after-cut-deck-size-recut =
    { $item }: out of range by { $short } after this cut. To fix: { $item_too }. Then measure it
    below, check it off, or say why it is left.
next-after-cut-deck-size-will =
    { $item }: out of range by { $short } after the planned cut. Cut less, or plan to fix it:
    { $item_too }.
next-after-cut-deck-size-wants = { $item }: enter under Engine: { $field }.
next-after-cut-deck-rough =
    Rougher than the gasket maker allows: it leaks. Take a finer cut, then measure again.

## Words about a deck; of two it is named.

of-deck = Deck { $bank }: { $words }

## Over the table of a deck on the record.

after-cut-of-measured-from-deck = Measured from deck { $bank }, before and after its cut
after-cut-of-measured-from-the = Measured from the deck, before and after its cut
