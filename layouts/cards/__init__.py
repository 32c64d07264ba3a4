"""Cards for the toolbox: what fits a size, planned as records, set as faces, laid on sheets to cut and laminate."""
