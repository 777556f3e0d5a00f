//! Membranes: concentrating sap by reverse osmosis.
