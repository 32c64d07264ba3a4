"""Everything that a pitch, a run and sizes of stock say about one roof: named readings, each with its line."""
