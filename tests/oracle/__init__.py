"""The roof worked out by other means: planes and lines in space at fifty digits, and nothing of the code under test.

Every quantity that the book prints is found by its definition: intersect, project, measure. Each function says from
where to where, on which face. `planes` holds the tools, `corner` the roof, the other modules what is measured on it,
`rounding` how a number becomes the digits of a page.
"""
