"""What every page is made of: sizes of paper and page, the record of a page, the typeface and its measures."""
