"""Patterns of the members of whole roofs: left and right as they stand."""

from __future__ import annotations

import pytest
from roof_files import roof

from tablegen.frame.frame import frame
from tablegen.roof.ends import crossings
from tablegen.roof.member import Hand


@pytest.mark.parametrize('kind', ['wing', 'hip', 'bay'])
def test_a_long_point_is_on_the_hand_that_a_roof_s_member_has_it(kind):
    """Towards the ridge at its head, towards the eave at its foot."""
    seen = 0
    for one in frame(roof(kind)).members:
        head, foot = crossings(one.member)
        for end, cut, further in ((one.member.head, head, -1), (one.member.tail, foot, 1)):
            if end.long:
                long, short = (cut.left, cut.right) if end.long is Hand.LEFT else (cut.right, cut.left)
                assert further * (long - short) > 0
                seen += 1
    assert seen > 3
