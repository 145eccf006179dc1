//! English: a gauge on a wire.

use crate::gauge::WireStatus;
use coldseat_core::ask::{Frame, NoReading, WireUnit};

pub const WIRE: &str = "Gauge on a wire";
pub const WIRE_WHAT: &str = "For a gauge or an adapter that sends plain text over a serial port, one reading a line. While this screen is open its lines are only shown here. On a step they go where a typed reading goes.";
pub const WIRE_SPEED: &str = "Speed of the port";
pub const WIRE_FRAME: &str = "Bits of a letter";
pub const CONNECT: &str = "Connect a gauge";
pub const DISCONNECT: &str = "Disconnect the gauge";
pub const WIRE_CAME: &str =
    "Came last. Tap the number that is the reading; tap its unit if the line has one.";
pub const WIRE_UNIT: &str = "Unit of the reading";
pub const WIRE_FORGET: &str = "Forget which number";

/// A speed of a port.
#[must_use]
pub fn wire_speed(speed: u32) -> String {
    format!("{speed} bits a second")
}

/// Data, parity, stop.
#[must_use]
pub const fn wire_frame(frame: Frame) -> &'static str {
    match frame {
        Frame::EightNoneOne => "8 data, no parity, 1 stop",
        Frame::SevenEvenOne => "7 data, even parity, 1 stop",
        Frame::SevenEvenTwo => "7 data, even parity, 2 stop",
    }
}

/// How the wire stands.
#[must_use]
pub const fn wire_status(status: WireStatus) -> &'static str {
    match status {
        WireStatus::Off => "Not connected.",
        WireStatus::Asking => "Choose the port in the browser's list.",
        WireStatus::On => "Connected: press the gauge's send key.",
        WireStatus::NotOpened => {
            "The port did not open. Close the program that uses it, plug the gauge in again, connect again."
        }
        WireStatus::Lost => "The gauge is gone. Plug it in and connect again.",
    }
}

/// A number of a line.
#[must_use]
pub fn wire_is_reading(text: &str) -> String {
    format!("The reading is {text}")
}

/// A word of a line.
#[must_use]
pub fn wire_is_unit(text: &str) -> String {
    format!("The unit is {text}")
}

/// What a line says.
#[must_use]
pub fn wire_reads(text: &str) -> String {
    format!("Reads {text}")
}

/// Which number of a line is the reading.
#[must_use]
pub fn wire_number(number: Option<u8>) -> String {
    match number {
        Some(nth) => format!("The reading: number {} of each line.", u16::from(nth) + 1),
        None => "The reading: the only number of each line.".to_owned(),
    }
}

/// Where the unit comes from.
#[must_use]
pub fn wire_unit(unit: WireUnit) -> String {
    match unit {
        WireUnit::OfField => "this job's".to_owned(),
        WireUnit::Inch => "always inches".to_owned(),
        WireUnit::Millimetre => "always millimeters".to_owned(),
        WireUnit::Word(nth) => format!("word {} of each line", u16::from(nth) + 1),
    }
}

/// Why a line is no reading.
#[must_use]
pub const fn no_reading(why: NoReading) -> &'static str {
    match why {
        NoReading::TooLong => "The line is too long: check the port's speed and bits.",
        NoReading::NoNumber => "The line has no number where the reading should be.",
        NoReading::Several => {
            "The line has several numbers: under Settings, tap the one that is the reading."
        }
        NoReading::NoUnit => "The line does not name inches or millimeters where it should.",
    }
}
