//! What the numbers of a cylinder say, as types: signals, the one number of a
//! step, what to do next, the state shown in the strip. Words are the page's.

pub mod answer;
pub mod figure;
pub mod ledge;
pub mod load;
pub mod next;
pub mod order;
pub mod proud;
pub mod report;
pub mod signal;
pub mod work_to;

pub use answer::{Answer, Heights};
pub use figure::{Detail, Figure, More, OneNumber};
pub use next::Next;
pub use report::{CylinderReport, StepReport, Verdict, Worked};
pub use signal::{Signal, State};
pub use work_to::{Work, WorkTo};
