### What is said of the time that a sleeve has to go home.

# No press fit.
no-press = No press fit: it never grips. Nothing holds this part. Do not drop it.
# Before the time from the bath to the bore.
at-bore-within = from bath to bore within
# Before how much a part without a flange grows in length once it grips.
grows = grows in length once it grips
warmer-block = If the block is warmer
warmer-what =
    Warm it evenly around the bore, no hotter than its maker's sheet allows. Measure its
    temperature at the bore. Enter that as the block's temperature only with a bore measured at
    that temperature.

## What the time to go home allows.

home-words-go-room-and-time =
    Room and time enough, within the numbers entered. Wipe it. One straight motion, home within
    { $within } s. You need { $needed } s.
home-words-go-time-enough-by =
    Time enough by these numbers: home within { $within } s, you need { $needed } s. But first
    settle what is named below.
home-words-look =
    Little time to spare: home within { $within } s, and you need { $needed } s ("Time you need").
    Keep it straight, wipe it at the bore, or warm the { $housing }.
home-words-stop =
    Not home in time: cocked and frosted, it may touch after { $within } s. You need { $needed } s
    ("Time you need"). Do not try it as it is. Warm the { $housing }, wipe the part at the bore,
    and keep it straighter. Or change the time you need, if you are that quick.

## What the numbers of a drop stand on, where not on the table of its iron.

shrinks-by-shop = By the shop's own shrink, not by the table of its iron.
shrinks-by-sleeve = By this sleeve as measured cold, not by the table of its iron.

## Beside a time: the diameter measured cold.

cold-use-said-used = used for its drop
cold-use-said-odd = used for its drop, though it is not what its iron does
cold-use-said-not-used = not used: no iron does that
cold-use = measured cold { $diameter }, { $said }

## Below the time to go home: the middle, the late end, what rules it.

home-below-rules = ; { $cause } matters most ({ $by } s)
home-below = half the drops grip by { $middle } s, nearly all by { $late } s{ $rules }

## What a drop's time hangs on.

cause-fit = how well the fit is measured
cause-contraction = how far it shrinks
cause-lean = how straight it goes in
cause-frost = frost on it
cause-carry = how long it is carried
cause-block = how much metal around the bore takes part
cause-insertion = how quickly it goes home

## What the later end of that time means.

at-bore-late = from then on the clearance may be below target; after { $late } it is

## How soon in a warmer block.

warmer = Block at { $at }: be home within { $within }
