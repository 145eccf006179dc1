### English, spoken: what is wanted next, what was read, what it means. Digits as a
### machinist says them; thousandths of an inch, hundredths of a millimetre.

# Says what is wanted and what the step means.
say-it = Say it
# When the page speaks.
speech = Speech
# Never.
speech-off = off
# With whose voice.
speech-what = With this device's voices. Those that need no network come first.
# There is none.
no-voice =
    This browser has no voice for English: the page does not speak. Tones and words still work.

## Its words.

spoken-asked-about = asked about
spoken-refused = refused
spoken-no-field = no field waits

## digits

digits-oh = oh
digits-one = one
digits-two = two
digits-three = three
digits-four = four
digits-five = five
digits-six = six
digits-seven = seven
digits-eight = eight
digits-nine = nine

## counted

counted-zero = zero
counted-one = one
counted-two = two
counted-three = three
counted-four = four
counted-five = five
counted-six = six
counted-seven = seven
counted-eight = eight
counted-nine = nine
counted-ten = ten
counted-eleven = eleven
counted-twelve = twelve
counted-thirteen = thirteen
counted-fourteen = fourteen
counted-fifteen = fifteen
counted-sixteen = sixteen

## Digits one by one, behind the point alone where nothing stands before it.

spoken-minus = minus
spoken-point = point
spoken-comma = comma
read-unit-millimetre = millimeters
read-unit-inch = inches
read-unit-thou = thou

## A length as it is said at the bench: thousandths, or hundredths of a millimetre.

small-inch = { $before } { $point } { $rest } thou
small-metric = { $before } { $point } { $rest } millimeters

## verdict

verdict-cut-deeper = cut { $by } more
verdict-too-deep = stop, { $by } too deep
verdict-hone-more = hone { $by } more
verdict-fit-loose = stop, { $by } too loose
verdict-stopped-high-not-seated = stop, { $by } high
verdict-tilted = look, tilted by { $by }
verdict-answer = asked about: { $at }
verdict-at-depth = at depth
verdict-seated = home

## Its choices.

speech-after-every-reading = after every reading
speech-when-say-it = when "Say it" is tapped
