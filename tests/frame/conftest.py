"""The frame's roofs are assembled with the solids of tests/solids."""

import sys
from pathlib import Path

sys.path.append(str(Path(__file__).parents[1] / 'solids'))
