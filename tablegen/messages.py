"""Messages: what is to be said, by name, with the values that stand in it; the words are the reader's language's."""

from __future__ import annotations

from msgspec import Struct


class Message(Struct, frozen=True):
    """One sentence, head or label to say.

    Attributes:
        name    of its words in the catalogue: the room and what is said, 'caution.short_seat'
        values  what stands in it, by name, in the order given: text, numbers, figures, other messages, or tuples of them
    """

    name: str
    values: tuple[tuple[str, object], ...] = ()

    def __str__(self) -> str:
        """Return the name and its values: what a program sees that has no catalogue."""
        given = ', '.join(f'{name}={value}' for name, value in self.values)
        return f'{self.name}({given})' if given else self.name


def message(name: str, /, **values: object) -> Message:
    """Return a message with its values."""
    return Message(name, tuple(values.items()))
