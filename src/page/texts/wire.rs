//! A gauge on a wire.

use crate::gauge::WireStatus;
use crate::words::made as w;
use coldseat_core::ask::{Frame, NoReading, WireUnit};

/// A speed of a port.
#[must_use]
pub fn wire_speed(speed: u32) -> String {
    w::WireSpeedBitsPerSecond { speed: &speed }.say()
}

/// Data, parity, stop.
#[must_use]
pub fn wire_frame(frame: Frame) -> &'static str {
    match frame {
        Frame::EightNoneOne => w::WIRE_FRAME_EIGHT_NONE_ONE.get(),
        Frame::SevenEvenOne => w::WIRE_FRAME_SEVEN_EVEN_ONE.get(),
        Frame::SevenEvenTwo => w::WIRE_FRAME_SEVEN_EVEN_TWO.get(),
    }
}

/// How the wire stands.
#[must_use]
pub fn wire_status(status: WireStatus) -> &'static str {
    match status {
        WireStatus::Off => w::WIRE_STATUS_OFF.get(),
        WireStatus::Asking => w::WIRE_STATUS_ASKING.get(),
        WireStatus::On => w::WIRE_STATUS_ON.get(),
        WireStatus::NotOpened => w::WIRE_STATUS_NOT_OPENED.get(),
        WireStatus::Lost => w::WIRE_STATUS_LOST.get(),
    }
}

/// A number of a line.
#[must_use]
pub fn wire_is_reading(text: &str) -> String {
    w::WireIsReading { text: &text }.say()
}

/// What a line says.
#[must_use]
pub fn wire_reads(text: &str) -> String {
    w::WireReads { text: &text }.say()
}

/// Which number of a line is the reading.
#[must_use]
pub fn wire_number(number: Option<u8>) -> String {
    match number {
        Some(nth) => w::WireNumberSome {
            nth: &(u16::from(nth) + 1),
        }
        .say(),
        None => w::WIRE_NUMBER_NONE.get().to_owned(),
    }
}

/// What a number without a unit is in.
#[must_use]
pub fn wire_unit(unit: WireUnit) -> &'static str {
    match unit {
        WireUnit::OfField => w::WIRE_UNIT_OF_FIELD.get(),
        WireUnit::Inch => w::WIRE_UNIT_INCH.get(),
        WireUnit::Millimetre => w::WIRE_UNIT_MILLIMETRE.get(),
    }
}

/// Why a line is no reading.
#[must_use]
pub fn no_reading(why: NoReading) -> &'static str {
    match why {
        NoReading::TooLong => w::NO_READING_TOO_LONG.get(),
        NoReading::NoNumber => w::NO_READING_NO_NUMBER.get(),
        NoReading::Untaught => w::NO_READING_UNTAUGHT.get(),
        NoReading::Otherwise => w::NO_READING_OTHERWISE.get(),
        NoReading::TwoUnits => w::NO_READING_TWO_UNITS.get(),
    }
}
