### What is said about keeping jobs.

notices = Licenses
notices-what =
    This page is built from free works of others. Their licenses are kept with it, on this device.
show-notices = Show the licenses
no-notices = The licenses are not on this device, and there is no network.
not-offline =
    The browser could not keep this page on the device. Without a network it may not open. What
    you type is stored all the same.
gone =
    This job was deleted in another tab, or the browser lost it. What you see is on the screen
    only.
keep-anew = Keep it after all
not-destroyed =
    The bin was not emptied. The second store of this browser refused. Nothing was deleted.
brought-back = The browser lost the last changes. The newer copy from the second store was used:
opening = Opening …
undo-job = Undo
redo-job = Redo
conflicts = Two values in one place
conflicts-what =
    Typed on two devices that did not know of each other. Both are kept. Choose the one that
    counts.
choose = Take
files = Backup, files, bin
backup = Backup
backup-what =
    One file with every job and cold drop on this device, also those in the bin. Keep it somewhere
    else.
last-backup = Last backup
no-backup = No backup was made on this device yet.
backup-now = Make a backup
save-all = Save all jobs to a file
save-csv = Readings as a table (CSV)
import = Jobs from a file
import-what =
    First you see what would change. A job that is already here is joined with its copy, reading
    by reading. Nothing is written over.
import-file = File with one job or many
preview = This would change:
take-all = Take these changes
not-taken = Leave all as it is
partly-repaired = something in it had to be repaired
bin = Bin
bin-what = Jobs and cold drops stay here until you empty the bin.
into-bin = Put this job into the bin
in-bin = This job is in the bin.
out-of-bin = Take out of the bin
empty-bin = Empty the bin
empty-bin-sure = All that is listed here is then gone for good, with every reading.
empty-bin-yes = Yes, delete them
empty-bin-no = No, keep them
search = Search: customer, engine, date, state
none-found = No job has all of these words.
csv-no-unit = no unit
floor-sheet = Floor sheet
floor-what = Sleeve and block at one temperature. Depth from the deck beside the bore.
hone-to = Hone the bore to
cut-to = Cut the ledge to a depth of
stands-proud = Sleeve to stand proud
steps-not-done = Steps not done
new-deck-height = height above the main line after this cut
record-caution =
    Seated and in the band mean: within the limits named above, by the readings in this record.
gasket-unknown = Head gasket to buy: not known, no piston was measured.
qr-label = Code with the essentials of this record
qr-caption = The essentials of this record, for a phone's camera.
home-chance = Home, chance
qr-opens-label = Code that opens this record
qr-opens = Opens this record on a device that has the job.
qr-head = COLDSEAT RECORD
learnt = What your jobs show
learnt-what = From jobs in which every sleeve is home, finished or not. The latest sixty count.
nothing-learnt = Nothing yet: a job counts when every sleeve in it is home.
few-data = Few values: do not rely on this yet.
offer-few = From only a few holes: the spread is hardly known yet. Shown, not recommended.
offer = For the next job
offer-take = Use for new jobs
hone-take = Use this rate for new jobs
offer-taken = New engines begin with these numbers. Jobs already started keep their own.

## How far what was typed last has come.

keeping-writing = saving …
keeping-both = saved
keeping-only-durable = saved in one of two stores
keeping-only-quick = stored, not yet sure
keeping-held = on the screen only
keeping-gone = deleted, on the screen only

## What is in one of the two stores only: in which, why, what to do. Nothing
## where there is nothing to do.

kept-in-one-newer =
    A later version of this page has written here. What you type now is not written over it.
    Reload the page.
kept-in-one-durable-full =
    The quick store of this browser is full. What you type is in the second store, on disk. It has
    no other copy. Empty the bin or save all to a file.
kept-in-one-durable =
    This browser has no quick store for the page. What you type is in the second store, on disk.
    It has no other copy. Save all to a file now and then.
kept-in-one-quick-full =
    The second store of this browser is full. What you type is in the quick store. The browser
    writes it out some seconds later. Leave the page open for a minute, and save the job to a
    file.
kept-in-one-quick-silent =
    The second store of this browser does not answer. Another page may hold it. What you type is
    in the quick store. The browser writes it out some seconds later. Close other tabs of this
    page.
kept-in-one-quick-blocked =
    This browser has no second store for the page. What you type is in the quick store. The
    browser writes it out some seconds later. Leave the page open for a minute, and save the job
    to a file.

## The clock of the device was moved while a timer ran.

clock-moved = The clock of this device moved by { $by }. Which time is right?

## Heads of the table of readings; units are added.

csv-heads-job-name-text = Job: name (text)
csv-heads-reading-whose-text = Reading: whose (text)
csv-heads-reading-what-text = Reading: what (text)
csv-heads-number-length = Number: length
csv-heads-number-temperature = Number: temperature
csv-heads-number-pressure = Number: pressure
csv-heads-number-force = Number: force
csv-heads-number-time = Number: time
csv-heads-number-plain = Number: plain
csv-heads-number-roughness = Number: roughness
csv-heads-number-volume = Number: volume
csv-heads-number-torque = Number: torque
csv-heads-as-typed-value = As typed: value (text)
csv-heads-as-typed-unit = As typed: unit (text)
csv-heads-as-typed-when = As typed: when (date and time here)
csv-heads-as-typed-kept = As typed: kept though it was asked about (x)

## What a file is that cannot be used.

file-fault-too-long = This file is longer than 32 MB. It is not a file of jobs. Nothing was changed.
file-fault-unreadable = No job can be read from this file: { $why }. Nothing was changed.
file-fault-newer =
    This file was written by a later version of this page (format { $version }). Take the new
    version of the page first. Nothing was changed.

## What would come of a job in a file.

outcome-new = is not here yet and would be added
outcome-same = is here already, nothing would change
outcome-joins-0 = joined with the one here, { $values } values change
outcome-joins =
    joined with the one here, { $values } values change, { $both } places then have two values to
    choose from
outcome-newer = written by a later version of this page (format { $version }), cannot be taken
outcome-unreadable = cannot be taken, { $why }

## How many jobs were taken.

taken =
    { $count ->
        [one] One job was taken.
       *[other] { $count } jobs were taken.
    }

## The button under a long list.

more-jobs = { $shown } of { $all } shown: show more

## A calm word on the last backup.

reminder-jobs =
    { $jobs ->
        [one] one job
       *[other] { $jobs } jobs
    }
reminder-some =
    Last backup { $days ->
        [one] 1 day
       *[other] { $days } days
    } ago, { $jobs } changed since.
reminder-none = No backup yet of { $jobs } on this device.

## The gasket to buy.

gasket-head-gasket-to =
    Head gasket to buy: largest protrusion { $most }; the least clearance to the head is not
    entered.
gasket-entered-true = ; { $entered } as entered is thick enough
gasket-entered-some = ; { $entered } AS ENTERED IS TOO THIN
gasket-grade-other = the grade of { $grade }:{" "}
gasket-grade-none = NONE of the grades entered is thick enough:{" "}
gasket-head-gasket-to-2 =
    Head gasket to buy: { $grade }at least { $least } compressed (largest protrusion
    { $most }){ $entered }.

## A step that was not done, with the cylinders or decks where not all need it.

step-not-done-cylinder = { $title } (cylinder { $holes })
step-not-done-deck = { $title } (deck { $decks })

## What jobs show.

lesson-feed = Counterbore depth against target depth (plus: too deep)
lesson-fit = Fit against the middle of its band (plus: too tight)
lesson-drop-free = Predicted clearance of sleeves that dropped freely
lesson-drop-dragged = Predicted clearance of sleeves that dragged
lesson-drop-stuck = Predicted clearance of sleeves that stuck
lesson-settling = Height lost from first pull to last
lesson-hone = Taken off by ten strokes of the hone (diameter)

## Number, mean, spread and interval of a lesson.

lesson-numbers-some = One value: { $only }
lesson-numbers =
    { $n } values, mean { $mean }, spread (1 sd) { $sd }; 95 % of the next ones lie between
    { $low } and { $high } (95 % sure)

## From how many jobs.

learnt-from =
    { $jobs ->
        [one] From one job.
       *[other] From { $jobs } jobs.
    }

## What the shop's feeds offer.

offer-by-your-last =
    By your last { $n } counterbores the feed spreads by { $feed_sd }. With your clean-up, planned
    cut and risk, a flange needs at least { $least } proud. Aim for { $target }. The maker's sheet
    wins.

## What the shop's own holes offer for its hone.

hone-offer =
    By your last { $n } holes, ten strokes of the hone take { $rate } off the diameter. The
    strokes still to go can be calculated from it.

## Whether a cylinder gets a sleeve, as the name of a value.

spot-left-out = Sleeve in this cylinder
