@echo off
rem Makes a book by a double-click: asks for pitches, paper and name, then shows it. For Windows.
cd /d "%~dp0..\.."
py layouts\bootstrap.py make --ask --open
pause
