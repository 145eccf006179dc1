### Labels, buttons, headings and short words.

jobs = Jobs
cold-drop = Cold drop
new-job = New job
settings = Settings
main-menu = Main
# The button behind which the other screens and undo stand.
menu = Menu
working = This job
jobs-on-device = Jobs on this device
mark-it = Nothing to measure here. Mark it when it is done.
marked = Marked done.
passed-over = Skipped for this job.
passed = skipped
whole-job = Whole job
steps-of-job = Steps of the job
mark = Mark this step
mark-done = Done
deck-is-cut = The deck is cut
mark-skip = Skipped
mark-not = Not for this job
mark-none = Clear the mark
marked-done = marked done
skip-why = Why it is skipped, kept in the record
skip-needs-why = Type why first. The record shows the reason.
step-note = Note on this step
for-this-step = Done, skipped, note
none-here = none
order-check = Before you order: does this sleeve go into this block?
limits-fit = Limits: sleeve, fit and drop
limits-seat = Limits: height, seat and deck
limits-order = Limits: walls and the order
limits-bench = Limits: test, bar, counterbore, groove
engines = Engine sheets
engines-what =
    An engine's geometry, limits and gasket data, kept apart from any block. Check it before you
    order sleeves, share it by link or code, or start a job from it.
no-sheets = No engine sheet on this device yet.
new-sheet = New sheet
make-sheet = Make the sheet
copy-sheet = Make a copy of this sheet
keep-as-sheet = Keep this engine as a sheet
sheet-into-bin = Put this sheet into the bin
came-out = The sleeve came out again
came-out-what =
    What was read from bath to seat check goes into the record with what you found. The steps from
    cleaning on are then free for the next try. Sleeve, counterbore and bore keep their readings.
    Where a chip or the drag marked them, measure them again. Undo takes it back.
came-out-found = What was found: chip, burr, fillet
came-out-needs = Type what was found first. The record shows it.
next-try = Save this try, start the next
timer-start = Start the timer
timer-stop = Stop, keep the time
timer-home = It is home: keep the time since it entered
timer-drop = Throw this time away
timer-runs = running
timers = Timers running
timer-over = time is up
feedback = Beep and vibrate when time is up
feedback-what = The screen stays on while a timer runs, where the browser allows it.
no-jobs =
    No jobs yet. Look around in a demo job, or start one of your own. Everything stays on this
    device.
cold-drop-what = How soon it must be home, clearance and climb, without a job
new-job-what = From an engine you had before, or from your own numbers
open-demo = Open a demo job
unnamed = Job without a name
changed = changed
damaged-head = Kept, but could not be read
damaged-what = Nothing here was changed or deleted. Save it to a file to look into it.
save-to-file = Save to a file
newer = written by a later version of this page: shown as far as it can be read, not changed
repaired = Something in this job had to be repaired:
understood = Understood
store-blocked =
    This browser does not let the page store anything (private window, or storage turned off). You
    can keep working, but it is gone when the page closes. Save the job to a file.
store-full =
    This device's storage is full. What you type now is only on the screen. Save the job to a
    file, then free some space.
update-ready = A new version of this page is ready.
update-now = Take the new version
update-later = It waits until you are out of the job.
block = Block
sleeve-material = Sleeve material
block-material = Block material
units = Units
entry-clearance = clearance at the bore
bath-clearance = clearance out of the bath
grip-time = grip time
grips-in = straight and without frost, it grips after
home-within = once it enters, be home within
home-drawing = trying four hundred such drops
home-none = no time: it does not enter
climb = sleeve may climb
expected = expected
at-most = at most
band-95 = 95 % band
never-grips = does not grip within an hour
cautions = Cautions
standing-words =
    A guide only. Follow the gas supplier, the tool, sleeve and engine makers, the employer's
    rules and the law. Where they differ, they win. Stop if unsure. Verdicts hold within the
    limits you entered or left as usual.
from-engine = Engine
own-numbers = Your own numbers
engine-name = Engine name
job-name = Job name or number
customer = Customer
note = Note
cylinders = Cylinders
layout = Layout
begin-job = Begin the job
numbers-later = Its numbers and holes come next. Change them any time under "Engine".
engine-and-limits = Engine
steps = Steps of this cylinder
geometry = Geometry
engine-first =
    The rest can wait until a step asks for it. Change any usual value you find in a field.
pistons-and-head = Pistons, head and rings, by the sheet
tools = Bar, hone, ram and rod
shop-limits = Shop limits and rates
service = Faces, bath and the running engine
gauges = Gauges (standard uncertainty, k = 1)
limits-what =
    Usual values from common practice. The engine and sleeve makers' sheets override them. Change
    them here for this job.
this-engine-from = as in job
shop-what = For new jobs. Jobs already started keep their own.
cylinder = Cylinder
bank = Bank
deck = Deck
record = Record
strip = Cylinders
next-step = Next step
next-cylinder = Next cylinder, this step
help = How to measure this
leave-out = Put no sleeve in this cylinder
take-in = This cylinder gets a sleeve after all
pull = Pull
no-job = This job is not on this device.
back-to-jobs = Back to the jobs
read-only = Written by a later version of this page. You can look, but not change it.
locked = Decking is locked
open = Decking is unlocked
open-by-hand = Decking was unlocked by hand
not-seated-yet = Not shown to be home:
lock-why = An unseated sleeve that is decked flush settles later and takes the head gasket with it.
release = Unlock by hand
release-reason = Reason, kept in the record
release-needs-reason = Type why first. The record shows the reason.
lock-again = Lock again
reason = Reason
no-sleeves = No cylinder of this deck gets a sleeve.
cut = cut
cut-least = at least
flange-loses = sleeve loses (lowest to highest clock)
flange-left = left at least
without-height = Not in the plan, because the height or what it is judged by is missing:
print = Print
taper = Taper
fit = Fit
mean = mean
gap = Gap
tilt = Tilt
state = State
pulls = Pulls
sleeve-od = Sleeve OD
bore = Bore
flange = Flange
depth = Depth
height-left = Height
height = Height before the cut
not-done = Not done, not shown:
remarks = Marks, notes and times (min:s):
nothing-open = Every sleeve is home.
signed = Signed
date = Date
printed = printed
as-left = As left
pad = Number pad
pad-delete = Delete
pad-next = Next
pad-done = Close
pad-undo = Take back
pad-was = was
pad-change = change
pad-plus = up by
pad-minus = down by
pad-point = Decimal point
pad-comma = Decimal comma
pad-sign = Plus or minus
proud = proud
low = low
pad-setting = This page's number pad
pad-setting-what = Off: the device's keyboard is used instead.
on = on
off = off
it-is-right = It is right as typed
use-value = Use
predicted = predicted
wanted = target
measured = measured
loaded = loaded

language = Language
language-what =
    For this device. Jobs, links and files hold numbers and your own words: they open in any
    language.
no-language =
    That language could not be loaded. Nothing was changed. Reload the page with a network.
decimal = Decimals
decimal-what = How the page writes numbers on this device. You may type a point or a comma: both are read.
record-language = Language of this record

## units

units-inch = inch
units-metric = mm

## family

family-iron = irons
family-steel = steels
family-bronze = bronzes and brass
family-light = aluminum and magnesium
family-seat = seat alloys

## layout

layout-in-line = in line
layout-vhalves = V, first half of the numbers on bank A
layout-vodd-even = V, odd numbers on bank A

## bank

bank-a = A
bank-b = B

## signal

signal-none = to do
signal-marked = marked
signal-go = go
signal-wait = wait
signal-look = look
signal-stop = stop

## state

state-left-out = left out
state-not-begun = to do
state-in-work = started
state-marked = marked
state-seated = seated
state-look = look
state-stop = stop

## How much a finding weighs.

level-note = note
