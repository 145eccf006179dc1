//! Numerical methods that the models share: interpolation, roots, a stiff
//! stepper, the normal law, order. Nothing here knows a material or a sleeve.

pub mod interpolation;
pub mod normal;
pub mod order;
pub mod roots;
pub mod sampling;
pub mod skyline;
pub mod stepper;
