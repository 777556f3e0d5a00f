//! The day's plan, from sap to bottles.
