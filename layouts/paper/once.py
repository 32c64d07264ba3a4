"""What is made of the program alone, of nobody's settings, made once and kept where Python keeps what it compiles.

Contract: what is taken is, byte for byte, what would be made: it is known by a hash of all that it is made of and of itself, so that
a file which is not whole is not taken. Where nothing can be written it is made anew each time. PYTHONDONTWRITEBYTECODE changes
nothing: that is asked for where compiled code could be stale, which this cannot be.
"""

from __future__ import annotations

from contextlib import suppress
from hashlib import sha256
from importlib.util import cache_from_source
from pathlib import Path

DIGEST = 32
"""Bytes before what is kept: a hash of it with all that it is made of."""


def take(source: Path, made_of: bytes) -> bytes | None:
    """Return what is kept of a file of the program, None where there is nothing or it is made of something else."""
    with suppress(OSError, NotImplementedError):
        told = _kept(source).read_bytes()
        if sha256(made_of + told[DIGEST:]).digest() == told[:DIGEST]:
            return told[DIGEST:]
    return None


def keep(source: Path, made_of: bytes, told: bytes) -> None:
    """Keep what was made of a file of the program."""
    with suppress(OSError, NotImplementedError):
        file = _kept(source)
        file.parent.mkdir(parents=True, exist_ok=True)
        file.write_bytes(sha256(made_of + told).digest() + told)


def _kept(source: Path) -> Path:
    file = Path(cache_from_source(str(source)))
    return file.with_name(f'{source.name}{file.suffixes[-2]}.made')
