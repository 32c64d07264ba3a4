"""Proof-reading: a finished booklet read back by position, every figure worked out once more by other means.

Nothing here uses the book's geometry, tables or roof, nor they this; what is read is known by the printed heads alone.
"""
