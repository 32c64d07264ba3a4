"""The worked examples: one building, from its common rafter to its hip, jacks, valley and porch, for the book's settings."""

from tablegen.examples.building import nearest_pitch
from tablegen.examples.commons import porch, store
from tablegen.examples.hips import store_hip
from tablegen.examples.jacks import hip_jacks
from tablegen.examples.valleys import wing_valley

__all__ = ['hip_jacks', 'nearest_pitch', 'porch', 'store', 'store_hip', 'wing_valley']
