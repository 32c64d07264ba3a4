"""Templates compiled once, as Python's own modules are: to compile them takes as long as to fill them."""

from __future__ import annotations

import marshal
from hashlib import sha256
from pathlib import Path

import jinja2
from jinja2.bccache import Bucket, BytecodeCache

from layouts.paper import once

TEMPLATES = Path(__file__).with_name('templates')


class Compiled(BytecodeCache):
    """Compiled templates of one environment, each a file; known by their source, the engine's release and the environment's code."""

    def __init__(self, made_by: bytes):
        self._made_by = sha256(jinja2.__version__.encode() + made_by + Path(__file__).read_bytes()).digest()

    def get_cache_key(self, name: str, filename: str | None = None) -> str:
        """Return a template's own name."""
        return name

    def load_bytecode(self, bucket: Bucket) -> None:
        """Take what is kept of a template."""
        told = once.take(TEMPLATES / bucket.key, self._made_of(bucket))
        if told is not None:
            bucket.code = marshal.loads(told)

    def dump_bytecode(self, bucket: Bucket) -> None:
        """Keep a template that was compiled."""
        once.keep(TEMPLATES / bucket.key, self._made_of(bucket), marshal.dumps(bucket.code))

    def _made_of(self, bucket: Bucket) -> bytes:
        return self._made_by + bucket.checksum.encode()
