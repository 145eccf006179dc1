### A gauge that types, what is heard.

# The line that says what came and stands nowhere.
gauge-line = Gauge
# Lets a reading go.
drop-it = Discard it
# No place of this screen waits.
no-place = Tap the field it belongs in.
# Whether a gauge is used, and how the hand goes.
hand = After a reading, go on to
# What it is good for.
hand-what =
    For a gauge that types its readings (cable or radio adapter, sent with Enter or Tab). With the
    second or third choice a whole block goes in without touching the screen. Page Down skips a
    place. Page Up goes back. A reading without an end is not taken.
# A gauge in use.
gauge-in-use = Gauge that types
# The key that skips.
skip-key = Key that skips a place
# The key that goes back.
back-key = Key that goes back a place
# Waits for a key.
press-key = Press it now
# The usual keys.
page-down = Page Down
# The usual keys.
page-up = Page Up
# Waits for another key.
teach = Set another key
# Forgets that other key.
forget-key = Forget the key you set
# The view for a tablet on the wall.
wall = Wall view
# Leaves it.
wall-close = Close the wall view

## A place with whose it is.

whole-place-owner-cylinder = cylinder { $cylinder },{" "}

## A reading that came and stands nowhere yet.

caught-why-no-field = came in with no field waiting. It is not written down yet.
caught-why-twice = came in twice at once. The second is not written down.
caught-why-cut-off = came in without an end: cut off? It is not written down.
caught-why-behind = came in after it. It is not written down yet.
caught-more =
    {" "}{ $more ->
        [one] 1 more is waiting.
       *[other] { $more } more are waiting.
    }

## Puts it into a place.

put-it-in = Put it in { $at }

## What came and was refused.

refused-of-field = Refused for { $of }: "{ $shown }". { $why }
refused-of-wire = Refused: "{ $shown }". { $why }
refused-read-only = Refused: "{ $shown }". This job can be read here, not changed.

## The orders, and none.

hand-none = the next field, then the answer
hand-by-cylinder = every place here, then the next cylinder
hand-by-place = this place on the next cylinder

## A key beside Page Down or Page Up.

key-taught-some = { $usual }, and { $key }

## Where the reading that came last stands.

wall-came = came in: { $at }
