### The shop's folder, that many devices write into.

folder = The shop's folder
folder-what =
    This page can be on the shop's own server. Its devices then share jobs, engine sheets and
    settings through a folder beside it. Nothing leaves the shop. Nothing waits for the folder:
    what you type is kept here first.
folder-one-file = This page is one file with no server beside it. Use files between devices.
device-name = Name of this device
device-name-what = What people call it: Surfacer tablet, bench phone.
device-nameless = Name this device first. The name shows the others who typed what.
join = Join
rename = Change the name
leave = Leave the folder
leave-sure = Leave? Jobs stay on this device and in the folder. From now on, changes go neither way.
leave-yes = Leave
leave-no = Stay
other-devices = Other devices
no-other-devices = No other device has joined yet.
strike = Cross off as lost
strike-what =
    The jobs of a device that is crossed off stay readable. To keep a stolen one out, change the
    folder's password.
struck = crossed off
newer-device = runs a later version of this page: reload the page
folder-was-older =
    The folder had less than this device had sent. It was emptied, or an older backup took its
    place. What was missing has been or will be sent again.
new-from-others = New from another device
to-be-sent = Waiting to be sent
in-other-tab = another tab is sending

## When and that a device wrote.

wrote-last = wrote last { $at }

## On which device a reading was entered.

entered-on = Entered on { $device }

## Why the folder does not do as it is asked, and what to do.

folder-fault-away = Nobody answers: check the network. The page tries again by itself.
folder-fault-locked = It asks for a name and a password: reload the page and enter them.
folder-fault-read-only = It takes nothing from here: allow writing in the folder.
folder-fault-full = It is full: make room on the server. What is typed stays here.
folder-fault-broken = The server fails or spoils what it gets. The page tries again by itself.
folder-fault-no-folder =
    There is no such folder beside this page. The page's files for hosting say how to set one up.

## The quiet line: how far what is typed has come.

in-folder-some = folder not reached since { $since }
in-folder-none-folder-does-not = folder does not take it
in-folder-none-in-the-shop = in the shop's folder { $at }
in-folder-other = here

## What is said at length of how the folder stands.

standing-lines-to-be-sent = To be sent: { $waiting }
standing-lines-not-complete-yet =
    Not complete yet in the folder: { $half }. Waiting for the device that wrote it.
standing-lines-a-later-version = A later version of this page writes there: reload the page.
