"""The frame of one whole roof: what is asked, its planes in plan, every member with its marks, what to buy."""
