"""Drawings, each computed from the same geometry as the figures beside it; floats only place ink."""
