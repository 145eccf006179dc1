### How a ledge lies toward the bore, its ink, its repair.

# Over what would repair a ledge.
ledge-repair = To repair this ledge
# No shim is at hand.
no-shim-at-hand = no shims at hand are listed
# It needs no shim.
no-shim = It is then no deeper than the sleeve needs: no shim.

## What the ink says.

inked-full = full ring
inked-broken = broken ring
inked-not-done = not done

## What to do next, of a ledge.

next-ledge-shape-cupped =
    CUPPED: the ledge falls by { $by } toward the bore all around. The flange bears only at its
    rim and breaks there: no sleeve on it. Clean it, measure again, true it.
next-ledge-shape-sloped =
    SLOPED: the ledge falls by { $by } toward the bore on one side. The flange breaks there: no
    sleeve on it. Clean it, measure again, true it.
next-ledge-shape-rises =
    The ledge rises by { $by } toward the bore: the flange bears at its root. Look for a burr,
    measure again, true it.
next-ledge-ink-broken =
    The bluing is broken: the flange does not bear all around. Clean both and blue again. Then
    true the ledge.

## The least cut.

true-it =
    True it by the least cut: to { $depth } all over, { $cut } where it is highest. Then measure
    its depth again, at both radii.

## The shim that makes up for it.

then-shim =
    The sleeve then sits { $shim } too deep. A shim of { $shim } makes up for it ({ $at_hand }).

## Of the shims at hand the nearest.

nearest-shim = nearest at hand: { $size }
