"""help and complete: what a verb takes, told by name, and completed by a shell."""

from __future__ import annotations

import shutil
import subprocess

import pytest
from asking import ask
from test_one_word import parsers

from layouts.verbs import VERBS
from layouts.verbs.complete import SHELLS


@pytest.mark.parametrize('verb', VERBS)
def test_help_of_a_verb_is_its_own(verb):
    assert ask('help', verb) == ask(verb, '--help')


def test_help_of_a_check_and_of_the_command():
    assert ask('help', 'check', 'length') == ask('check', 'length', '--help')
    assert ask('help') == ask('--help')


@pytest.mark.parametrize(
    ('words', 'line'),
    [
        (['help', 'fnd'], f"rafterbook: 'fnd' is no verb; allowed: {', '.join(VERBS)}; next: did you mean find?"),
        (
            ['help', 'check', 'len'],
            "rafterbook check: 'len' is no CHECK; allowed: length, square, steps, corner, turn-over; "
            'next: did you mean length?',
        ),
        (['complete', 'csh'], "rafterbook: SHELL: 'csh' is unknown; allowed: bash, zsh, fish; next: see rafterbook complete --help"),
    ],
)  # fmt: skip
def test_what_is_not_there_is_told_in_a_line(words, line):
    assert ask(*words) == (2, '', f'{line}\n')


@pytest.mark.parametrize('shell', SHELLS)
def test_a_shell_s_script_names_every_verb_and_option(shell):
    status, told, remarks = ask('complete', shell)

    assert (status, remarks) == (0, '')
    for _, parser in parsers():
        for option in parser.options():
            assert option.removeprefix('--') in told


@pytest.mark.parametrize('shell', SHELLS)
def test_a_shell_reads_its_script(shell, tmp_path):
    """Where the machine has the shell; bash is on every one that the tests run on."""
    program = shutil.which(shell)
    if program is None and shell != 'bash':
        pytest.skip(f'no {shell} here')
    (tmp_path / 'script').write_text(ask('complete', shell)[1])
    subprocess.run([program, '-n', tmp_path / 'script'], check=True)


@pytest.mark.parametrize(
    ('typed', 'completed'),
    [
        (['ma'], {'make'}),
        (['make', '--pa'], {'--paper'}),
        (['make', '--paper', ''], {'letter', 'a4'}),
        (['find', '--hip-'], {'--hip-stock', '--hip-thickness'}),
        (['check', 'tu'], {'turn-over'}),
        (['check', 'steps', '--st'], {'--step', '--steep'}),
        (['help', 'fi'], {'find'}),
        (['complete', 'z'], {'zsh'}),
    ],
)
def test_bash_completes(typed, completed, tmp_path):
    (tmp_path / 'script').write_text(ask('complete', 'bash')[1])
    asking = (
        'source "$1"; shift; COMP_WORDS=(rafterbook "$@"); COMP_CWORD=$#; '
        'complete -p rafterbook | grep -q _shtab_rafterbook && _shtab_rafterbook && printf "%s\\n" "${COMPREPLY[@]}"'
    )
    done = subprocess.run(
        ['bash', '-c', asking, 'bash', tmp_path / 'script', *typed],
        capture_output=True,
        text=True,
        check=True,
    )
    assert set(done.stdout.split()) == completed
