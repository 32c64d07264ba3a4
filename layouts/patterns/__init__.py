"""Patterns at full size, from a member's lines to sheets of the printer's paper."""
