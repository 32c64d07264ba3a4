"""The pages of the book: what stands on each, counted before anything is set."""
