"""Reading what people write: one grammar of numbers, lengths, degrees, pitches and ranges for command, settings and CSV."""
