"""Pages on the printer’s paper: their order, marks and instructions."""
