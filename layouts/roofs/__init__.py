"""The sheets of one whole roof, from its frame to a PDF."""
