"""Roofs of the reader's own, for books that work them through: a hip roof, a porch on a ledger, a wing as wide as its house, a saltbox, a gambrel."""

STORE = """
kind = "hip"
name = "Garden store"
pitch = 7
width = "24 ft"
length = "36 ft"
spacing = "16 in"
overhang = {eave = "16 in", fascia = "3/4 in"}
stock = {rafters = "2x8", hips = "2x10"}
"""
PORCH = """
kind = "shed"
name = "Porch"
pitch = 4
width = "7 ft"
length = "12 ft"
shed = {upper = "ledger", thickness = "1 1/2"}
"""
WING = """
kind = "wing"
name = "Garden store"
pitch = 7
width = "23 ft 5 in"
length = "36 ft"
first = "6 in"
stock.hips = "2x10"
wing = {width = "23 ft 5 in", out = "10 ft", from_left = "6 ft", main_ends = 2}
cuts.hip_heads = "single"
"""
SALTBOX = """
kind = "saltbox"
name = "Wood store"
pitch = 7
width = "11 ft"
length = "12 ft"
saltbox.back_pitch = 4
"""
GAMBREL = """
kind = "gambrel"
name = "Barn"
pitch = 7
width = "17 ft"
length = "12 ft"
gambrel = {upper_pitch = 4, break = "3 ft 6 in"}
"""
