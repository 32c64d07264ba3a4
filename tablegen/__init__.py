"""Rafter geometry and its tables, exact until one rounding: settings, geometry, rows."""
