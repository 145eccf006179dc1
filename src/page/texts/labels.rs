//! Labels, buttons, headings and short words.

use crate::words::{Decimal, decimal, made as w};
use coldseat_core::ask::{Family, Layout, Level, Signal, State, UnitSystem};

#[must_use]
pub fn units(units: UnitSystem) -> &'static str {
    match units {
        UnitSystem::Inch => w::UNITS_INCH.get(),
        UnitSystem::Metric => w::UNITS_METRIC.get(),
    }
}

#[must_use]
pub fn family(family: Family) -> &'static str {
    match family {
        Family::Iron => w::FAMILY_IRON.get(),
        Family::Steel => w::FAMILY_STEEL.get(),
        Family::Bronze => w::FAMILY_BRONZE.get(),
        Family::Light => w::FAMILY_LIGHT.get(),
        Family::Seat => w::FAMILY_SEAT.get(),
    }
}

#[must_use]
pub fn layout(layout: Layout) -> &'static str {
    match layout {
        Layout::InLine => w::LAYOUT_IN_LINE.get(),
        Layout::VHalves => w::LAYOUT_VHALVES.get(),
        Layout::VOddEven => w::LAYOUT_VODD_EVEN.get(),
    }
}

#[must_use]
pub fn bank(bank: u8) -> &'static str {
    if bank == 0 {
        w::BANK_A.get()
    } else {
        w::BANK_B.get()
    }
}

#[must_use]
pub fn signal(signal: Signal) -> &'static str {
    match signal {
        Signal::None => w::SIGNAL_NONE.get(),
        Signal::Marked => w::SIGNAL_MARKED.get(),
        Signal::Go => w::SIGNAL_GO.get(),
        Signal::Wait => w::SIGNAL_WAIT.get(),
        Signal::Look => w::SIGNAL_LOOK.get(),
        Signal::Stop => w::SIGNAL_STOP.get(),
    }
}

#[must_use]
pub fn state(state: State) -> &'static str {
    match state {
        State::LeftOut => w::STATE_LEFT_OUT.get(),
        State::NotBegun => w::STATE_NOT_BEGUN.get(),
        State::InWork(..) => w::STATE_IN_WORK.get(),
        State::Marked => w::STATE_MARKED.get(),
        State::Seated => w::STATE_SEATED.get(),
        State::Look => w::STATE_LOOK.get(),
        State::Stop => w::STATE_STOP.get(),
    }
}

/// How much a finding weighs.
#[must_use]
pub fn level(level: Level) -> &'static str {
    match level {
        Level::Note => w::LEVEL_NOTE.get(),
        Level::Look => w::SIGNAL_LOOK.get(),
        Level::Stop => w::SIGNAL_STOP.get(),
    }
}

/// The pad's key before decimals.
#[must_use]
pub fn pad_point() -> &'static str {
    match decimal() {
        Decimal::Point => w::PAD_POINT.get(),
        Decimal::Comma => w::PAD_COMMA.get(),
    }
}
