### What drawings say to those who cannot see them, and the lines
### below them.

load-caption =
    Strongest pull. Mark: 80 % of the ram's rating, half the rod's yield, ledge pressure and
    flange shear as entered.
chill-caption =
    Time in the bath until it is quiet. Shaded: earliest to latest. Bar: the time in the bath.
oxygen-caption =
    Oxygen in this room, 15 to 21 %, mixed through. Near the dewar and at the floor it is far
    worse. Mark: 19.5 %.
deck-map-caption =
    Deck from above, front to the left. The larger a spot, the farther it is below the highest
    point. Filled: still low after the planned cut.
deck-survey-caption =
    Deck from above, front to the left. The larger a spot, the farther it is below the highest
    point.
at-once = all at once
with-air = with the air entered
# Parts named in a section.
part-block = block
# What the flange sits on.
part-ledge = ledge
# What was fitted.
part-sleeve = sleeve
# What stands proud.
part-flange = flange
shallow = shallow
deep = deep
own-cuts-one =
    Your counterbores in this job against the depth each was cut for. One says nothing about
    scatter yet.

## A level of readings.

level-name-0 = top
level-name-1 = middle
level-name-other = bottom

## round level

round-level = { $level }: across { $across }, along { $along }

## round label

round-label = Shape at each level and down the length. { $levels }.

## round caption

round-caption-limit = ; the limit is { $limit }
round-caption =
    Out of round drawn ×{ $times } against the diameter{ $limit }. Below: solid line across,
    dashed along. Wider is to the right.

## wall label

wall-label = Wall left after boring: { $walls }.

## wall caption

wall-caption =
    Wall left around the bore, a smooth line through the four clock positions. The number is the
    thinnest of the levels. Dashed: { $stop }, the limit for a stop.

## plan wall

plan-wall = cylinder { $cylinder } thinnest wall { $wall }

## plan label

plan-label = Plan of the block. Pitch { $pitch }, web between counterbores { $web }. { $walls }

## plan caption

plan-caption =
    From above, front to the left. Web { $web }. Cross: where the bar stands, drawn ×{ $times }.
    Below: thinnest wall left.

## load words

load-words-what-ram = ram
load-words-what-rod = rod
load-words-what-ledge = ledge
load-words-what-flange = flange shear
load-words = { $what } { $now }, at most { $most }

## load label

load-label = Loads of the strongest pull: { $loads }.

## chill label

chill-label-some =
    In the bath { $elapsed }. Quiet after about { $quiet }, between { $low } and { $high }.
chill-label-none = Quiet after about { $quiet }, between { $low } and { $high }.

## oxygen label

oxygen-label =
    Oxygen in the room: all at once { $sudden }, with the air entered { $least }; limit 19.5 %.

## deck map label

deck-map-label-some = Deck below its highest point: { $spots }. Planned cut { $plane }.
deck-map-label-none = Deck below its highest point: { $spots }.

## Which way an error of depth goes.

way-deep = deep
way-shallow = shallow

## own cut words

own-cut-words = cylinder { $cylinder } { $by } { $error_m }

## own cuts label

own-cuts-label = Counterbores of this job against their target depth: { $cuts }.

## own cuts caption

own-cuts-caption-few = {" "}Few cuts: the next may be well outside.
own-cuts-caption =
    Your { $n } counterbores in this job against the depth each was cut for. Dashed: their mean,
    { $mean } { $mean_m }. Shaded: one standard deviation, { $sd }.{ $few }
