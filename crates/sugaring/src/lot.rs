//! Lots of sap and syrup: mass, °Brix, temperature.
