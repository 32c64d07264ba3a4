"""What can be wrong while a book or a card is made, in words."""

from __future__ import annotations

from layouts.words.say import N_

MESSAGES = {
    'making.too_many_pages': N_('{step} over {pitches} pitches would make {pages} pages'),
    'making.most_pages': N_('up to {most} pages'),
    'making.fewer_pages': N_('take a longer step, shorter runs or fewer pitches'),
    'making.cannot_write': N_('cannot be written: {fault}'),
    'making.writable_folder': N_('a folder that you may write in'),
    'making.another_folder': N_('give another with --out'),
    'making.writing_failed': N_('writing failed: {fault}'),
    'making.room_or_folder': N_('make room there or give another folder with --out'),
    'making.runs_over': N_('set {count} pages where {planned} were planned: {page} runs over'),
    'making.typesetter_said': N_('said: {words}'),
    'making.report': N_('this is a fault of the program: report it with the settings file'),
    'making.fewer_words': N_("put what that page says into fewer words in its language's catalogue"),
    'making.no_library': N_('the system library {library} is missing'),
    'making.set_up': N_('run: python3 layouts/bootstrap.py setup (it says what to install on this system)'),
    'making.no_letters': N_("the book's typeface has no {letters}"),
    'making.known_letters': N_('Latin, Greek and Cyrillic letters'),
    'making.write_otherwise': N_('write it another way'),
    'making.no_font': N_('{file} is not installed'),
    'making.get_font': N_('run: pip install fontpkg-open-sans==3.3'),
    'making.no_size': N_("'{name}' is no size of card"),
    'making.bigger_than_paper': N_("'{name}' is bigger than {paper} paper"),
    'making.smaller_card': N_("take a smaller card, or set paper = 'letter'"),
    'making.too_narrow': N_("'{name}' is too narrow for these pitches"),
    'making.larger_card': N_('take a larger card'),
    'making.too_small': N_("'{name}' is too small for the runs of {pitch}"),
    'making.larger_or_shorter': N_('take a larger card or shorter runs'),
}
