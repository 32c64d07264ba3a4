"""What is remarked on while a book is made all the same."""

from __future__ import annotations


class Remark(UserWarning):
    """What the typesetter says of a document that it sets all the same; holds a BookError that tells it."""
