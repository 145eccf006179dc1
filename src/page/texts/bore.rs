//! The bore of a fitted sleeve down its length.

use crate::words::made as w;
use coldseat_core::ask::{Dial, Fault, profile_field_of as field_of};

pub const BORE_COLUMNS: [crate::words::Word; 4] = [
    w::BORE_COLUMNS_BELOW_DECK,
    w::BORE_COLUMNS_CLOSES,
    w::BORE_COLUMNS_HONE_TAKES,
    w::BORE_COLUMNS_AFTER_BAR,
];

/// A dimension to try.
#[must_use]
pub fn dial(dial: Dial) -> &'static str {
    match dial {
        Dial::Fit => w::DIAL_FIT.get(),
        Dial::Wall => w::DIAL_WALL.get(),
        Dial::Flange => w::DIAL_FLANGE.get(),
    }
}

#[must_use]
pub fn on_diameter(unit: &str) -> String {
    w::OnDiameter { unit: &unit }.say()
}

#[must_use]
pub fn pressure_head(unit: &str) -> String {
    w::PressureHead { unit: &unit }.say()
}

#[must_use]
pub fn pressure_label(least: &str, most: &str) -> String {
    w::PressureLabel {
        least: &least,
        most: &most,
    }
    .say()
}

#[must_use]
pub fn push_home(least: &str, most: &str, low: &str, high: &str) -> String {
    w::PushHome {
        least: &least,
        most: &most,
        low: &low,
        high: &high,
    }
    .say()
}

#[must_use]
pub fn head_sinks(down: &str) -> String {
    w::HeadSinks { down: &down }.say()
}

#[must_use]
pub fn pull_sinks(down: &str) -> String {
    w::PullSinks { down: &down }.say()
}

#[must_use]
pub fn closes_oval(along: &str, across: &str) -> String {
    w::ClosesOval {
        along: &along,
        across: &across,
    }
    .say()
}

#[must_use]
pub fn order_of_sleeves(order: &[u8], neighbours: usize) -> String {
    let list: Vec<String> = order.iter().map(u8::to_string).collect();
    let why = match neighbours {
        0 => w::ORDER_OF_SLEEVES_WHY_0.get(),
        1 => w::ORDER_OF_SLEEVES_WHY_1.get(),
        _ => w::ORDER_OF_SLEEVES_WHY_OTHER.get(),
    };
    w::OrderOfSleeves {
        list: &list.join(", "),
        why: &why,
    }
    .say()
}

#[must_use]
pub fn profile_label(most: &str, lame: &str, stock: Option<(String, String)>) -> String {
    let closes = w::ProfileLabelCloses {
        most: &most,
        lame: &lame,
    }
    .say();
    match stock {
        Some((least, greatest)) => w::ProfileLabelSome {
            closes: &closes,
            least: &least,
            greatest: &greatest,
        }
        .say(),
        None => closes,
    }
}

/// A bore that cannot be drawn, with the dimension that is in the way.
#[must_use]
pub fn no_profile(field: &str, fault: &Fault) -> String {
    w::NoProfile {
        why: &super::fault(fault),
        field: &field,
    }
    .say()
}

/// A stress on two meshes: where they differ, the mesh speaks.
#[must_use]
pub fn two_meshes(half: &str, usual: &str) -> String {
    w::TwoMeshes {
        half: &half,
        usual: &usual,
    }
    .say()
}

#[must_use]
pub fn no_stress(fault: &Fault) -> String {
    if fault.field == "at_m" {
        w::NO_STRESS_THE_FILLET_UNDER.get().to_owned()
    } else {
        no_profile(super::field(field_of(fault)), fault)
    }
}
