"""The groups of reference tables, by name: parts of the book that a settings file may ask for."""

GROUPS = (
    'set-out',
    'ridge',
    'seat',
    'tail',
    'hips',
    'jack-deductions',
    'cheeks',
    'trim',
    'gable',
    'unequal',
    'many-sided',
    'find-pitch',
)
"""In the order of the work."""
HOUSE_GROUPS = (
    'ridge',
    'seat',
    'tail',
    'hips',
    'jack-deductions',
    'cheeks',
    'trim',
    'gable',
    'find-pitch',
)
"""What a house framer needs."""
