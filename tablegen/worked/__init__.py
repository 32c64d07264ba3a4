"""The worked examples: one building, from its common rafter to its hip, jacks, valley and porch, for the book's settings."""

from tablegen.worked.building import nearest_pitch
from tablegen.worked.commons import porch, store
from tablegen.worked.hips import store_hip
from tablegen.worked.jacks import hip_jacks
from tablegen.worked.valleys import wing_valley

__all__ = ['hip_jacks', 'nearest_pitch', 'porch', 'store', 'store_hip', 'wing_valley']
