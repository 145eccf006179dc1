### Names of the one number of a step and of the further ones.

## The word before the one number; `si` with the sign it goes by (`OneNumber::sense`).

figure-price = price
figure-apart = block and sleeves differ by
figure-pressure-lost = pressure lost
figure-datum-lean = deck leans, end to end
figure-wear = old bore varies by
figure-wall-left-breaks-through-by = breaks through by
figure-wall-left-thinnest-wall-left = thinnest wall left
figure-web-left-flanges-overlap-by = flanges overlap by
figure-web-left-web-left-between = web left between the holes
figure-offset = bar off the old center
figure-hone-stock-past-the-target = past the target bore by
figure-hone-stock-left-for-the = left for the hone (diameter)
figure-flange-room-flange-larger-than = flange larger than its counterbore by
figure-flange-room-around-the = room around the flange (diameter)
figure-fillet-room-fillet-over-chamfer = fillet larger than chamfer by
figure-fillet-room-chamfer-over-fillet = chamfer larger than fillet by
figure-oxygen-left = least oxygen in the room
figure-quiet = quiet after about
figure-warm-apart = sleeve and shop differ by
figure-head-room = room between piston and head
figure-piston-proud-piston-low-by = piston low by
figure-piston-proud-piston-proud-at = piston proud at most
figure-groove-off-groove-still-to = groove still to cut
figure-groove-off-groove-deeper-than = groove deeper than target by
figure-finish-stock-past-the-size = past the size by
figure-finish-stock-left-diameter = stock left (diameter)
figure-least-gap = least ring gap
figure-out-of-round = out of round near the top
figure-still-to-cut-past-the-depth = past the depth by
figure-still-to-cut-still-to-cut = still to cut
figure-fit-loose-by = loose by
figure-fit = fit
figure-above-predicted-below-its-ledge = below its ledge by
figure-above-predicted-above-its-seat = above its ledge by
figure-above-target-too-low-by = too low by
figure-above-target-above-its-mark = above its mark
figure-gap-after-pull-gap = below its ledge by
figure-gap-after-pull = gap after the last pull
figure-gap = gap at its ledge
figure-proud-spread = means of all holes apart

## What a further number of a step is.

detail-hours = hours of work
detail-sleeves = sleeves to buy
detail-sleeves-nitrogen = nitrogen the sleeves boil off (liters)
detail-bath-fill = nitrogen to fill the bath (liters)
detail-stood-away = nitrogen lost by standing (liters)
detail-strokes = hone strokes for it, by your rate
detail-nitrogen = nitrogen to buy (liters, a quarter to spare)
detail-thinnest = thinnest at
detail-sleeve-wall = sleeve wall
detail-flat-depth = flat on each flange
detail-cutter-setting = micrometer over spindle and cutter
detail-bore-wanted = bore to (diameter)
detail-offset-up = toward 12 o'clock
detail-offset-right = toward 3 o'clock
detail-sudden = all at once (%)
detail-litres-at-limit = liters that take it to 19.5 % at once
detail-quiet-low = at the earliest
detail-quiet-high = at the latest
detail-bath-litres = boils off (liters)
detail-largest = largest
detail-smallest = smallest
detail-round = out of round, worst level
detail-taper = taper
detail-groove-wanted = target depth
detail-floor-left = flange left under the groove
detail-gasket-taken = with the gasket of
detail-compression = compression ratio after the cut
detail-close-in = the fit closes the inside by (diameter)
detail-bore-to = bore the fitted sleeve to (diameter)
detail-grip-left = grip left after boring (%)
detail-piston-room = room around the piston (diameter)
detail-hatch-included = cross-hatch, included angle (degrees)
detail-hatch-horizontal = each scratch to the horizontal (degrees)

## The unit of a one number that is no length.

figure-unit-apart-warm-apart-inch = °F
figure-unit-apart-warm-apart-metric = °C

## A range of numbers, its unit behind it.

range = { $from } to { $to }
