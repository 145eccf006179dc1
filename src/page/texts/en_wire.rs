//! English: a gauge on a wire.

use crate::gauge::WireStatus;
use coldseat_core::ask::{Frame, NoReading, WireUnit};

pub const WIRE: &str = "Gauge on a wire";
pub const WIRE_WHAT: &str = "For a gauge or an adapter that sends plain text over a serial port, one reading per line. While this screen is open, its lines are only shown here. On a step they go where a typed reading goes.";
pub const WIRE_SPEED: &str = "Port speed";
pub const WIRE_FRAME: &str = "Bits per character";
pub const CONNECT: &str = "Connect a gauge";
pub const DISCONNECT: &str = "Disconnect the gauge";
pub const WIRE_CAME: &str =
    "Came in last. Tap the number that is the reading. Tap its unit if the line has one.";
pub const WIRE_UNIT: &str = "Unit, if the line names none";
pub const WIRE_FORGET: &str = "Forget which number";

/// A speed of a port.
#[must_use]
pub fn wire_speed(speed: u32) -> String {
    format!("{speed} bits per second")
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
            "The port did not open. Close the program that uses it. Plug the gauge in again, then connect again."
        }
        WireStatus::Lost => "The gauge is gone. Plug it in and connect again.",
    }
}

/// A number of a line.
#[must_use]
pub fn wire_is_reading(text: &str) -> String {
    format!("The reading is {text}")
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
        None => "The reading: a line that is one number, with or without its unit.".to_owned(),
    }
}

/// What a number without a unit is in.
#[must_use]
pub const fn wire_unit(unit: WireUnit) -> &'static str {
    match unit {
        WireUnit::OfField => "as in the job",
        WireUnit::Inch => "inches",
        WireUnit::Millimetre => "millimeters",
    }
}

/// Why a line is no reading.
#[must_use]
pub const fn no_reading(why: NoReading) -> &'static str {
    match why {
        NoReading::TooLong => "The line is too long. Check the port's speed and bits.",
        NoReading::NoNumber => "The line has no number where the reading should be.",
        NoReading::Untaught => {
            "More than a number and its unit. Under Settings, tap the number that is the reading."
        }
        NoReading::Otherwise => {
            "The line looks different from the one you set up. Read the gauge's display."
        }
        NoReading::TwoUnits => "The line names a different unit from the one set under Settings.",
    }
}
