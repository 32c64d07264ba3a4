"""The opening of a pitch: everything that one pitch needs on two pages, placed by the widths of its own figures."""
