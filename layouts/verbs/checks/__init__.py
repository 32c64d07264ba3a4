"""The checks of the command: what each is asked, and its answer as sentences, as an object, as rows.

A check's module has two functions, as a verb's has: add(checks) declares its arguments; run(args, out, err)
answers and returns the exit status.
"""
