"""What is not set here: the typesetter then sets the page in its own way."""


class NotPlain(Exception):
    """A page has what this room does not set; what it is."""
