"""The worked examples: one building, from its common rafter to its hip, jacks, valley and porch, for the book's settings."""

from tablegen.examples.building import nearest_pitch
from tablegen.examples.hips import store_hip, wing_valley
from tablegen.examples.jacks import hip_jacks
from tablegen.examples.one_rafter import one_rafter
from tablegen.examples.rafters import porch, store

__all__ = ['hip_jacks', 'nearest_pitch', 'one_rafter', 'porch', 'store', 'store_hip', 'wing_valley']
