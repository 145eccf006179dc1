### Links, codes, what came by one.

share-engine = Share this engine: link and code
share-drop = Share this cold drop: link and code
share-floor = Share the floor sheet: link and code
nothing-to-share = Nothing to share yet.
link-qr = QR code of the link below
qr-too-long = Too long for a code that a phone reads well. Use the link.
no-link-from-file =
    This page was opened as a file. It has no address that another phone could open: no link, no
    code. Send the line below as text. Whoever has Coldseat pastes it under New job, A link that
    was sent. Or save the job to a file and pass that on.
link-to-paste = Line to paste
one-file =
    This is Coldseat as one file. This browser keeps what you type for the file where it is now.
    Moved, renamed or opened on another device, it may begin empty. Save all jobs to a file when
    the work is done.
link = Link
link-what =
    All of it is in the link itself. Nothing is sent anywhere. Whoever opens the link sees it
    first, then takes it as a copy of their own.
copy-link = Copy the link
copied = Copied.
copy-by-hand = The browser does not let the page copy it. Select the line and copy it.
share-sheet = Send it on
by-link = By link
link-preview =
    This came with a link. Nothing of it is stored yet. Nothing of yours will be changed. Check
    the numbers against the maker's sheets before you cut to them.
link-taken = There is nothing more in this link. It was taken or closed.
link-ask-again = Nothing was stored. Ask for the link or the code again, or for the file.
take-profile = Begin a job with this engine
take-drop = Open this cold drop
take-floor = Add it as a job of its own
not-now = Not now
engine = Engine, limits, gauges
paste-link = A link that was sent to you
scan = Read a code with the camera
scan-outside =
    A code on a wall or a screen: point the phone's own camera at it. Open the link it shows.
scan-asking = The browser asks whether the camera may be used.
scan-looking = Hold the code in the picture. Nothing is recorded or sent.
scan-video = What the camera sees
scan-stop = Camera off
scan-refused =
    There is no camera, or the browser may not use it. Allow it in the browser's settings for this
    page. Or use the phone's own camera and open the link it shows.
scan-no-code = No code was read in two minutes. The camera is off.
look-at-link = Look at it

## Why a link cannot be used, and what to do.

link-fault-empty = There is nothing in this link.
link-fault-too-long = This link is longer than any this program makes.
link-fault-foreign =
    This is not a link from this program. It has characters that no link of this program has.
link-fault-damaged = This link was cut off or changed on its way. Its checksum does not match.
link-fault-later =
    This link was made by a later version ({ $version }). Open this page with a network once and
    take the new version. Then open the link again.
link-fault-out-of-range = This link has a number that cannot be right: { $which }.
link-fault-cylinders = This link has { $count } cylinders. This program takes 1 to 16.
