#!/bin/sh
# Makes a book by a double-click: asks for pitches, paper and name, then shows it. For macOS; runs on Linux too.
cd "$(dirname "$0")/../.." || exit
exec python3 layouts/bootstrap.py make --ask --open
