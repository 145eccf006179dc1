### Sleeves that are left proud and not decked.

# The step in the place of the deck.
heights = Heights, left proud
# What is not done in such a job.
not-decked =
    The sleeves of this job are left proud: its deck is not cut. What is measured from the deck
    stays as it is.
# On the engine's sheet, in the place of what a cut changes.
from-deck-stays = Left proud: the deck is not cut. Nothing measured from it changes.
# On the record.
left-proud-not-decked = left proud, not cut.
# The limits.
proud-group = Left proud: height limits
# Where they come from. The order of magnitude is that of published engine manuals.
proud-what =
    The engine's own sheet decides: enter what it says. Use the numbers below only to tell a slip
    from a limit. In published engine manuals sleeves stand about 0.001 to 0.006 in (0.03 to 0.15
    mm) proud. Apart within one hole and from neighbor to neighbor: about 0.002 in (0.05 mm). Over
    all holes: about 0.004 in (0.10 mm).
# A sleeve without all of its heights.
not-all-measured = not measured at all four clock positions
# A sleeve that keeps its own limits, where not everything else is known.
own-limits-kept = within its own limits
# Spread of one sleeve's heights.
apart-here = Apart within the hole
# Mean of one sleeve's heights.
mean-height = Mean
# The plan.
plan-of-heights = Plan of the heights
# While it is calculated.
plan-working = Calculating the plan…
# More holes than can be planned.
too-many-holes =
    A plan covers eight holes of a deck at most. This deck has more. Its heights are still checked
    against their limits above.
# Held by the fit.
nothing-to-plan =
    These sleeves are held by their fit. There is no ledge to cut or shim, so there is nothing to
    plan.
# What is missing.
plan-wants = The plan still needs:
# Nothing to do.
plan-nothing =
    By these readings every height is within the limits you entered. Cut nothing, shim nothing,
    move nothing.
# A plan that is kept and asks for nothing.
plan-no-task = Nothing is left to do in this plan.
# Sleeves that change places.
plan-together =
    Sleeves that change places are checked off together, once each carries its new number.
# Clears a tick.
plan-tick-back = Uncheck
# The last shim of a size lies in another hole.
plan-none-left =
    None of this size is left. Take one out of another hole first, or enter how many are left.
# Takes a plan.
plan-take = Work to this plan
# What that does.
plan-take-what =
    Keeps these lines in the job for you to check off. Nothing else changes yet. Checking off a
    line enters the shim. For a sleeve that moves or turns, it takes the readings along to its
    hole, turned as planned. Uncheck to take that back.
# Gives it up.
plan-give-up = Give up this plan; what was checked off stays
# Sleeves that move.
plan-moves =
    A sleeve that moves has another fit in its new hole. Measure that bore against it before it
    goes in.
# A sleeve is in.
plan-sleeve-in = A height was read on a sleeve here, so it is in. This plan means taking it out.
# A tick.
done = Done
# Left in the drawing.
heights-now = as it is
# Left in the drawing of a plan that is worked to.
heights-planned = as planned
# Mean height planned.
planned = Planned, mean
# Mean height measured.
measured-again-mean = Measured, mean
# Difference of both.
off-plan = Off the plan, worst clock position
# Shims of a shop.
shims-at-hand = Shims at hand
# What the list is.
shims-what =
    Enter each size and how many are left. The shop's list is in Settings. A job has its own copy,
    so a change to the shop's list does not change its plan.
# Takes the shop's list.
shims-from-shop = Copy the list from Settings
# Readings that few jobs need.
drop-more = More of this drop
# What few jobs need of a ledge.
ledge-more = More of this hole's ledge

## How the sleeves of a job end.

sleeve-ends-decked = decked flush with the block
sleeve-ends-proud = left proud, within limits

## Whether sleeves were held down while they were read.

held-down-held = held down at the stated torque
held-down-free = free

## A limit that a sleeve breaks, seen from that sleeve.

breach-of-low = not proud enough by { $by }
breach-of-high = too proud by { $by }
breach-of-hole = its heights are too far apart by { $by }
breach-of-neighbour = too far from its neighbor, cylinder { $other }, by { $by }
breach-of-all = too far from cylinder { $other } by { $by }

## What to do next, of heights that are left proud.

next-proud-out-low =
    Cylinder { $hole }: { $what }. Measure again. Then lay a shim on its ledge, or fit a sleeve with
    a thicker flange.
next-proud-out-high =
    Cylinder { $hole }: { $what }. Measure again and look for a chip at its ledge. Then cut its
    ledge, or use a thinner shim.
next-proud-out-hole =
    Cylinder { $hole }: { $what }. Measure again and look for a chip at its ledge. Then turn the
    sleeve, or true the ledge.
next-proud-out-neighbour-all =
    Cylinder { $hole }: { $what }. Measure both again. Then shim the one that stands less proud, or
    cut the ledge of the prouder one.
next-proud-read-again = Work was done here after the reading. Read again: { $missing }.
next-proud-plan-open =
    Cylinder { $hole }: first do what the plan of the heights says for this hole. Check off each
    line when it is done. Then measure again.
next-proud-off-plan-way-prouder = prouder
next-proud-off-plan-way-less-proud = less proud
next-proud-off-plan =
    Cylinder { $hole }: one clock position is { $by } { $way } than planned. That is more than the
    gauges explain. Measure again. Look for a chip, the wrong shim or the wrong sleeve.
next-proud-in-limits-way-shallower = shallower
next-proud-in-limits-way-deeper = deeper
next-proud-in-limits = Within the limits, { $by } { $way } than their middle. Chamfer and clean.
next-proud-apart-from =
    Within its own limits. But at these depths it will stand { $by } too far from cylinder
    { $hole }. Get the plan of the heights at this deck before you cut or set.
next-proud-good = Every height is within the limits you entered. Leave the deck as it is.
next-proud-read-free =
    These heights were read free, but the sheet states a torque. Hold the sleeves down at that
    torque. Say so here, then read the heights again.

## A hole for those who cannot see the drawing.

height-spoken = cylinder { $cylinder }: { $low } to { $high }

## What the drawing shows.

heights-label = How proud each sleeve stands. { $holes }

## Under the drawing.

heights-caption =
    How proud each sleeve stands. One bar per clock position: 12, 3, 6, 9. Below: mean and cylinder.
    Dashed: the limits, { $low } and { $high }. Line at 0: the deck.

## No plan is calculated; the reason in the calculation's own words.

plan-refused = No plan can be calculated. { $why }

## A cut, under a hole of the drawing.

cut-short = cut { $by }

## A shim, under a hole of the drawing.

shim-short = shim { $size }

## Another sleeve, under a hole of the drawing.

sleeve-short = sleeve { $sleeve }

## A turn, under a hole of the drawing.

turn-short = turn { $quarters }°

## How a sleeve is turned: its 12 o'clock to which clock.

turned-other = , turned { $quarters }° clockwise: its 12 o'clock to { $quarters_too } o'clock

## What is done at a hole, as a sentence; nothing where it is not to be done.

line-cut =
    Cylinder { $hole }: cut { $cut } off its ledge, pass by pass. Then measure its depth again.
line-shim-hole-take-out = Cylinder { $hole }: take out the { $before } shim.
line-shim-hole-take-out-2 =
    Cylinder { $hole }: take out the { $before } shim, lay a { $shim } shim instead.
line-shim-hole-lay-a = Cylinder { $hole }: lay a { $shim } shim on its ledge.
line-sleeve-hole-fit-the =
    Cylinder { $hole }: fit the sleeve that was number { $sleeve }{ $quarters }. Mark that sleeve
    { $hole }.
line-sleeve-hole-fit-its = Cylinder { $hole }: fit its own sleeve{ $quarters }.

## What a plan takes.

plan-counts =
    Every height is then within the limits you entered. Holes cut: { $cuts }; shims laid or taken
    out: { $shims }; sleeves moved: { $moved }; turned: { $turned }. No plan needs fewer cuts.
    With as few cuts, none needs fewer shims under the sleeves. With as few of both, none needs
    fewer moves.

## No plan keeps the limits.

no-plan-which-proud = how proud each height may stand
no-plan-which-hole = how far apart the heights of one hole may be
no-plan-which-neighbour = how far apart two neighbors may be
no-plan-which-all = how far apart all holes may be
no-plan =
    No plan keeps every limit with what is at hand. In the way: { $which }, by at least { $by }.
    Get other shims or sleeves, or ask whether the ledges may be cut more. Below: what comes
    nearest.

## A hole of the drawing, for those who cannot see it.

hole-before-after-done = nothing done
hole-before-after = cylinder { $hole }: { $before }, then { $after }, { $done }

## The drawing of a plan.

heights-plan-label = Heights of each hole, before and after. { $holes }

## Under it.

heights-plan-caption =
    Each hole: { $before } on the left, after on the right. One bar per clock position: 12, 3, 6,
    9. Dashed: the limits, { $low } and { $high }. Line at 0: the deck.
