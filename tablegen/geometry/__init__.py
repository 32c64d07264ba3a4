"""The geometry of the roof: one module a member or idea, every relation from the pitch's slope alone."""
