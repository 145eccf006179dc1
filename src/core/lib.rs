//! The computations of fitting flanged dry sleeves.
