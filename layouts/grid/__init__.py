"""Figures in columns: what fits, where rules and fractions stand, how tables are cut into pages."""
