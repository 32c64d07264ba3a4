"""Pages of plain boxes, placed and drawn without the typesetter's own layout, dot for dot as it would."""
