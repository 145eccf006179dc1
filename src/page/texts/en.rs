//! English: labels, buttons, headings and short words.

use coldseat_core::ask::{Family, Layout, Signal, State, UnitSystem};

pub const JOBS: &str = "Jobs";
pub const COLD_DROP: &str = "Cold drop";
pub const NEW_JOB: &str = "New job";
pub const SETTINGS: &str = "Settings";
pub const MAIN_MENU: &str = "Main";
/// The button behind which the other screens and undo stand.
pub const MENU: &str = "Menu";
pub const WORKING: &str = "This job";

pub const JOBS_ON_DEVICE: &str = "Jobs on this device";
pub const MARK_IT: &str = "Nothing to measure here. Mark it when it is done.";
pub const MARKED: &str = "Marked done.";
pub const PASSED_OVER: &str = "Skipped for this job.";
pub const PASSED: &str = "skipped";
pub const WHOLE_JOB: &str = "Whole job";
pub const STEPS_OF_JOB: &str = "Steps of the job";
pub const MARK: &str = "Mark this step";
pub const MARK_DONE: &str = "Done";
pub const DECK_IS_CUT: &str = "The deck is cut";
pub const MARK_SKIP: &str = "Skipped";
pub const MARK_NOT: &str = "Not for this job";
pub const MARK_NONE: &str = "Clear the mark";
pub const MARKED_DONE: &str = "marked done";
pub const SKIP_WHY: &str = "Why it is skipped, kept in the record";
pub const SKIP_NEEDS_WHY: &str = "Type why first. The record shows the reason.";
pub const STEP_NOTE: &str = "Note on this step";
pub const FOR_THIS_STEP: &str = "Done, skipped, note";
pub const NONE_HERE: &str = "none";
pub const ORDER_CHECK: &str = "Before you order: does this sleeve go into this block?";
pub const LIMITS_FIT: &str = "Limits: sleeve, fit and drop";
pub const LIMITS_SEAT: &str = "Limits: height, seat and deck";
pub const LIMITS_ORDER: &str = "Limits: walls and the order";
pub const LIMITS_BENCH: &str = "Limits: test, bar, counterbore, groove";
pub const ENGINES: &str = "Engine sheets";
pub const ENGINES_WHAT: &str = "An engine's geometry, limits and gasket data, kept apart from any block. Check it before you order sleeves, share it by link or code, or start a job from it.";
pub const NO_SHEETS: &str = "No engine sheet on this device yet.";
pub const NEW_SHEET: &str = "New sheet";
pub const MAKE_SHEET: &str = "Make the sheet";
pub const COPY_SHEET: &str = "Make a copy of this sheet";
pub const KEEP_AS_SHEET: &str = "Keep this engine as a sheet";
pub const SHEET_INTO_BIN: &str = "Put this sheet into the bin";
pub const CAME_OUT: &str = "The sleeve came out again";
pub const CAME_OUT_WHAT: &str = "What was read from bath to seat goes into the record with what you found. The steps from cleaning on are then free for the next try. Sleeve, counterbore and bore keep their readings. Where a chip or the drag marked them, measure them again. Undo takes it back.";
pub const CAME_OUT_FOUND: &str = "What was found: chip, burr, fillet";
pub const CAME_OUT_NEEDS: &str = "Type what was found first. The record shows it.";
pub const NEXT_TRY: &str = "Keep it and start the next try";
pub const TIMER_START: &str = "Start the timer";
pub const TIMER_STOP: &str = "Stop, keep the time";
pub const TIMER_HOME: &str = "It is home: keep the time since it entered";
pub const TIMER_DROP: &str = "Throw this time away";
pub const TIMER_RUNS: &str = "running";
pub const TIMERS: &str = "Timers running";
pub const TIMER_OVER: &str = "time is up";
pub const FEEDBACK: &str = "Beep and vibrate when time is up";
pub const FEEDBACK_WHAT: &str =
    "The screen stays on while a timer runs, where the browser allows it.";
pub const NO_JOBS: &str = "No jobs yet. Look around in a demo job, or start one of your own. Everything stays on this device.";
pub const COLD_DROP_WHAT: &str = "How soon it must be home, clearance and climb, without a job";
pub const NEW_JOB_WHAT: &str = "From an engine you had before, or from your own numbers";
pub const OPEN_DEMO: &str = "Open a demo job";
pub const UNNAMED: &str = "Job without a name";
pub const CHANGED: &str = "changed";
pub const DAMAGED_HEAD: &str = "Kept, but could not be read";
pub const DAMAGED_WHAT: &str =
    "Nothing here was changed or deleted. Save it to a file to look into it.";
pub const SAVE_TO_FILE: &str = "Save to a file";
pub const NEWER: &str =
    "written by a later version of this page: shown as far as it can be read, not changed";
pub const REPAIRED: &str = "Something in this job had to be repaired:";
pub const UNDERSTOOD: &str = "Understood";

pub const STORE_BLOCKED: &str = "This browser does not let the page store anything (private window, or storage turned off). You can keep working, but it is gone when the page closes. Save the job to a file.";
pub const STORE_FULL: &str = "This device's storage is full. What you type now is only on the screen. Save the job to a file, then free some space.";
pub const UPDATE_READY: &str = "A new version of this page is ready.";
pub const UPDATE_NOW: &str = "Take the new version";
pub const UPDATE_LATER: &str = "It waits until you are out of the job.";

pub const BLOCK: &str = "Block";
pub const SLEEVE_MATERIAL: &str = "Sleeve material";
pub const BLOCK_MATERIAL: &str = "Block material";
pub const UNITS: &str = "Units";
pub const ENTRY_CLEARANCE: &str = "clearance at the bore";
pub const BATH_CLEARANCE: &str = "clearance out of the bath";
pub const GRIP_TIME: &str = "grip time";
pub const GRIPS_IN: &str = "straight and without frost, it grips after";
pub const HOME_WITHIN: &str = "once it enters, be home within";
pub const HOME_DRAWING: &str = "trying four hundred such drops";
pub const HOME_NONE: &str = "no time: it does not enter";
pub const CLIMB: &str = "sleeve may climb";
pub const EXPECTED: &str = "expected";
pub const AT_MOST: &str = "at most";
pub const BAND_95: &str = "95 % band";
pub const NEVER_GRIPS: &str = "does not grip within an hour";
pub const CAUTIONS: &str = "Cautions";
pub const STANDING_WORDS: &str = "A guide only. Follow the gas supplier, the tool, sleeve and engine makers, the employer's rules and the law. Where they differ, they win. Stop if unsure. Verdicts hold within the limits you entered or left as usual.";

pub const FROM_ENGINE: &str = "Engine";
pub const OWN_NUMBERS: &str = "Your own numbers";
pub const ENGINE_NAME: &str = "Engine name";
pub const JOB_NAME: &str = "Job name or number";
pub const CUSTOMER: &str = "Customer";
pub const NOTE: &str = "Note";
pub const CYLINDERS: &str = "Cylinders";
pub const LAYOUT: &str = "Layout";
pub const BEGIN_JOB: &str = "Begin the job";
pub const NUMBERS_LATER: &str =
    "Its numbers and holes come next. Change them any time under \"Engine\".";
pub const ENGINE_AND_LIMITS: &str = "Engine";
pub const STEPS: &str = "Steps of this cylinder";
pub const GEOMETRY: &str = "Geometry";
pub const ENGINE_FIRST: &str =
    "The rest can wait until a step asks for it. Change any usual value you find in a field.";
pub const PISTONS_AND_HEAD: &str = "Pistons, head and rings, by the sheet";
pub const TOOLS: &str = "Bar, hone, ram and rod";
pub const SHOP_LIMITS: &str = "Shop limits and rates";
pub const SERVICE: &str = "Faces, bath and the running engine";
pub const GAUGES: &str = "Gauges (standard uncertainty, k = 1)";
pub const LIMITS_WHAT: &str = "Usual values from common practice. The engine and sleeve makers' sheets override them. Change them here for this job.";
pub const THIS_ENGINE_FROM: &str = "as in job";
pub const SHOP_WHAT: &str = "For new jobs. Jobs already started keep their own.";

pub const CYLINDER: &str = "Cylinder";
pub const BANK: &str = "Bank";
pub const DECK: &str = "Deck";
pub const RECORD: &str = "Record";
pub const STRIP: &str = "Cylinders";
pub const NEXT_STEP: &str = "Next step";
pub const NEXT_CYLINDER: &str = "Next cylinder, this step";
pub const HELP: &str = "How to measure this";
pub const LEAVE_OUT: &str = "No sleeve in this cylinder";
pub const TAKE_IN: &str = "This cylinder gets a sleeve after all";
pub const PULL: &str = "Pull";
pub const NO_JOB: &str = "This job is not on this device.";
pub const BACK_TO_JOBS: &str = "Back to the jobs";
pub const READ_ONLY: &str =
    "Written by a later version of this page. You can look, but not change it.";

pub const LOCKED: &str = "Decking is locked";
pub const OPEN: &str = "Decking is open";
pub const OPEN_BY_HAND: &str = "Decking was released by hand";
pub const NOT_SEATED_YET: &str = "Not shown to be home:";
pub const LOCK_WHY: &str =
    "An unseated sleeve that is decked flush drops later and takes the head gasket with it.";
pub const RELEASE: &str = "Release by hand";
pub const RELEASE_REASON: &str = "Reason, kept in the record";
pub const RELEASE_NEEDS_REASON: &str = "Type why first. The record shows the reason.";
pub const LOCK_AGAIN: &str = "Lock again";
pub const REASON: &str = "Reason";
pub const NO_SLEEVES: &str = "No cylinder of this deck gets a sleeve.";
pub const CUT: &str = "cut";
pub const CUT_LEAST: &str = "at least";
pub const FLANGE_LOSES: &str = "sleeve loses (lowest to highest clock)";
pub const FLANGE_LEFT: &str = "left at least";
pub const WITHOUT_HEIGHT: &str =
    "Not in the plan, because the height or what it is judged by is missing:";

pub const PRINT: &str = "Print";
pub const TAPER: &str = "Taper";
pub const FIT: &str = "Fit";
pub const MEAN: &str = "mean";
pub const GAP: &str = "Gap";
pub const TILT: &str = "Tilt";
pub const STATE: &str = "State";
pub const PULLS: &str = "Pulls";
pub const SLEEVE_OD: &str = "Sleeve OD";
pub const BORE: &str = "Bore";
pub const FLANGE: &str = "Flange";
pub const DEPTH: &str = "Depth";
pub const HEIGHT_LEFT: &str = "Height";
pub const HEIGHT: &str = "Height before the cut";
pub const NOT_DONE: &str = "Not done, not shown:";
pub const REMARKS: &str = "Marks, notes and times (min:s):";
pub const NOTHING_OPEN: &str = "Every sleeve is home.";
pub const SIGNED: &str = "Signed";
pub const DATE: &str = "Date";
pub const PRINTED: &str = "printed";
pub const AS_LEFT: &str = "As left";

pub const PAD: &str = "Number pad";
pub const PAD_DELETE: &str = "Delete";
pub const PAD_NEXT: &str = "Next";
pub const PAD_DONE: &str = "Close";
pub const PAD_UNDO: &str = "Take back";
pub const PAD_WAS: &str = "was";
pub const PAD_CHANGE: &str = "change";
pub const PAD_PLUS: &str = "up by";
pub const PAD_MINUS: &str = "down by";
pub const PAD_POINT: &str = "Decimal point";
pub const PAD_SIGN: &str = "Plus or minus";
pub const PROUD: &str = "proud";
pub const LOW: &str = "low";
pub const PAD_SETTING: &str = "This page's number pad";
pub const PAD_SETTING_WHAT: &str = "Off: the device's keyboard is used instead.";
pub const ON: &str = "on";
pub const OFF: &str = "off";
pub const IT_IS_RIGHT: &str = "It is right as typed";
pub const USE_VALUE: &str = "Use";

pub const PREDICTED: &str = "predicted";
pub const WANTED: &str = "target";
pub const MEASURED: &str = "measured";
pub const LOADED: &str = "loaded";

#[must_use]
pub const fn units(units: UnitSystem) -> &'static str {
    match units {
        UnitSystem::Inch => "inch",
        UnitSystem::Metric => "mm",
    }
}

#[must_use]
pub const fn family(family: Family) -> &'static str {
    match family {
        Family::Iron => "irons",
        Family::Steel => "steels",
        Family::Bronze => "bronzes and brass",
        Family::Light => "aluminum and magnesium",
        Family::Seat => "seat alloys",
    }
}

#[must_use]
pub const fn layout(layout: Layout) -> &'static str {
    match layout {
        Layout::InLine => "in line",
        Layout::VHalves => "V, first half of the numbers on bank A",
        Layout::VOddEven => "V, odd numbers on bank A",
    }
}

#[must_use]
pub const fn bank(bank: u8) -> &'static str {
    if bank == 0 { "A" } else { "B" }
}

#[must_use]
pub const fn signal(signal: Signal) -> &'static str {
    match signal {
        Signal::None => "to do",
        Signal::Marked => "marked",
        Signal::Go => "go",
        Signal::Wait => "wait",
        Signal::Look => "look",
        Signal::Stop => "stop",
    }
}

#[must_use]
pub const fn state(state: State) -> &'static str {
    match state {
        State::LeftOut => "left out",
        State::NotBegun => "to do",
        State::InWork(..) => "started",
        State::Marked => "marked",
        State::Seated => "seated",
        State::Look => "look",
        State::Stop => "stop",
    }
}
