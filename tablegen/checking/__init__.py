"""Checks of a tool in the hand: a reading, a square's own figures, stepping off, a corner, a tape."""
