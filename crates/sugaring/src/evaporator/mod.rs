//! The evaporator: heat into the pan, a batch boil, what the pan holds.
