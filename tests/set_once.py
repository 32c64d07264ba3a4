"""Documents of books that are built, set once a run: where another test or process has had the same set, its file is copied.

What is set and refused, or remarked on, is set again each time. Tests of the typesetting itself call it as it is.
"""

from __future__ import annotations

import os
import shutil
from collections.abc import Callable
from hashlib import sha256
from pathlib import Path

import pytest

from layouts.pdf.typeset import Job, set_document


def shared(factory: pytest.TempPathFactory) -> Path:
    """Return a folder that all processes of a run have."""
    base = factory.getbasetemp()
    return base.parent if 'PYTEST_XDIST_WORKER' in os.environ else base


def set_once(folder: Path) -> Callable[..., None]:
    """Return what sets documents, keeping each in a folder under a name made of all that it is set from."""

    def set_or_copied(job: Job, tell: Callable[[int], None] = lambda pages: None) -> None:
        if job.pages is None:  # how many there are would not be known
            set_document(job, tell)
            return
        named = sha256('\0'.join((job.html, job.css, str(job.tagged), str(job.pages))).encode()).hexdigest()
        kept = folder / f'{named}.pdf'
        if kept.exists():
            shutil.copyfile(kept, job.out)
            for _ in range(job.pages):
                tell(1)
            return
        set_document(job, tell)
        part = folder / f'{named}.{os.getpid()}'
        shutil.copyfile(job.out, part)
        part.rename(kept)

    return set_or_copied
