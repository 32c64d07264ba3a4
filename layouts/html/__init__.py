"""Pages as HTML: templates that place strings, styles, the typeface."""
