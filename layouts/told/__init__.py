"""What the verbs tell: words for a person in a terminal, JSON for a program."""
