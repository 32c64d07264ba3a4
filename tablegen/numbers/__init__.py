"""Exact numbers, angles, figures with their one rounding, and the text of every number."""
