//! Numerical methods that the models share: interpolation, roots, a stiff
//! stepper, the normal and the chi-squared law, order. Nothing here knows a
//! material or a sleeve.

pub mod dense;
pub mod gamma;
pub mod interpolation;
pub mod normal;
pub mod order;
pub mod quadrature;
pub mod roots;
pub mod sampling;
pub mod skyline;
pub mod stepper;
pub mod surface;
