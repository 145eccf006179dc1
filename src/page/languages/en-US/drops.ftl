### Cold drops that are kept under a name.

kept-drops = Kept cold drops
no-kept-drops = None yet. Keep these numbers under a name to find them here.
no-kept-drop = This cold drop is not on this device.
drop-name = Name
keep-drop = Keep these numbers
copy-drop = Copy
drop-into-bin = Put into the bin
drop-without-name = Numbers without a name
drop-in-bin = This cold drop is in the bin.
drop-gone =
    This cold drop was deleted in another tab, or the browser lost it. What you see is on the
    screen only.
drop-read-only =
    A later version of this page wrote this cold drop. It can be read here, not changed.
drop-repaired = Part of this cold drop could not be read. Check these numbers:

## The name of a copy.

copy-of = { $name } (copy)

## What a cold drop is of, by what was typed; nothing where nothing was.

drop-about-parts-od = OD
drop-about-parts-fit = fit
