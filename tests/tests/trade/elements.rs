//! Section 2: elements, their resistances, currents, insulation and faults to the sheath.
