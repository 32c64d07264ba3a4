"""Patterns of the members of whole roofs: left and right as they stand, each asked for by its mark."""

from __future__ import annotations

import pytest
from asking import ask
from printed_words import told
from roof_files import roof

from tablegen.frame.frame import frame
from tablegen.roof.ends import crossings
from tablegen.roof.member import Hand

ROOF = 'kind = "hip"\npitch = 7\nwidth = "24 ft"\nlength = "36 ft"\n'


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


def test_a_member_of_a_roof_file_has_its_mark_and_its_hand(tmp_path, monkeypatch):
    monkeypatch.chdir(tmp_path)
    (tmp_path / 'a.toml').write_text(ROOF)
    for hand in ('left', 'right'):
        status, said, _ = ask(
            'pattern', '--roof', 'a.toml', '--member', 'HJ3', '--long-side', hand, '--out', 'a.pdf'
        )
        page = ' '.join(told('pdftotext', '-l', '1', 'a.pdf', '-').split())

        assert (status, said.splitlines()[1]) == (0, 'pages 1 to 3: upper end')
        assert 'HJ3, hip jack, 7 in 12, 2×8: upper end' in page
        assert f'The long point is on the {hand} side. Geometry' in page


@pytest.mark.parametrize(
    ('asked', 'line'),
    [
        (['--roof', 'a.toml', '--member', 'X'], "--member: 'X' is unknown; allowed: C, E, HJ1, HJ2,"),
        (['--roof', 'a.toml'], '--member: is missing; allowed: C, E, HJ1, HJ2,'),
        (['8', '--roof', 'a.toml', '--member', 'C'], 'PITCH: the roof file says it; next: leave PITCH out'),
        (['--roof', 'a.toml', '--member', 'C', '--seat', '3'], '--seat: the roof file says it; next: leave --seat out'),
        (['--roof', 'a.toml', '--member', 'C', '--long-side', 'left'], '--long-side: the roof has none of that hand'),
        (['--roof', 'b.toml', '--member', 'C'], 'b.toml: there is no such file; next: rafterbook roof --starter'),
        ([], 'PITCH: is missing; next: give it, or a roof file with --roof'),
    ],
)  # fmt: skip
def test_what_a_roof_file_says_is_not_said_twice(asked, line, tmp_path, monkeypatch):
    monkeypatch.chdir(tmp_path)
    (tmp_path / 'a.toml').write_text(ROOF)
    status, said, remarks = ask('pattern', *asked)

    assert (status, said) == (2, '')
    assert remarks.startswith(f'rafterbook: {line}')
    assert [path.name for path in tmp_path.iterdir()] == ['a.toml']
