"""How the tests run: no deadline for one example, since two cores are shared with other work."""

from hypothesis import settings

settings.register_profile('book', deadline=None, max_examples=80, print_blob=True)
settings.load_profile('book')
