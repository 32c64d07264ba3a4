"""The booklet: rows set into pages, pages into PDF, PDF onto sheets; and the command."""
