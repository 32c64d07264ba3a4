"""The setting up of a bare machine: what it decides, with every command faked; nothing is installed here.

The packages' names for Debian were checked on bare systems, releases 12 and 13. Elsewhere the names that bring
Pango (dnf, brew, MSYS2) follow the typesetter's installation notes and the rest is from memory; none was tried.
"""

import ast
import os
import re
import signal
import subprocess
import sys
import tomllib
from pathlib import Path

import pytest
from packaging.requirements import Requirement

from layouts import bootstrap
from layouts.verbs import VERBS

TOP = Path(__file__).resolve().parent.parent
SCRIPT = TOP / 'layouts' / 'bootstrap.py'
VENV_PACKAGE = f'python{sys.version_info.major}.{sys.version_info.minor}-venv'
NEW = {'python': 'cpython-311', 'root': '/book', 'project': 'abc', 'level': 'make'}


def done(output: str = '', status: int = 0) -> subprocess.CompletedProcess:
    return subprocess.CompletedProcess([], status, stdout=output)


@pytest.fixture
def steps(monkeypatch, tmp_path):
    """A project in a folder of its own; every command succeeds and is only noted down."""
    (tmp_path / 'pyproject.toml').write_text(
        '[project]\nname = "book"\ndependencies = ["pypdf>=5", "tzdata; sys_platform == \'win32\'"]\n'
        '[project.optional-dependencies]\ntest = ["pytest>=8"]\n'
    )
    for name, path in (
        ('ROOT', ''),
        ('PROJECT', 'pyproject.toml'),
        ('VENV', '.venv'),
        ('STAMP', '.venv/ready.json'),
        ('PIP_LOG', '.venv/pip.log'),
        ('TESTED', '.tested'),
    ):
        monkeypatch.setattr(bootstrap, name, tmp_path / path)
    (tmp_path / '.tested').mkdir()
    for level in ('make', 'test'):
        bootstrap.tested(level).write_text('pypdf==5.1\n')
    noted = []

    def quiet(command):
        noted.append(' '.join(command))
        (tmp_path / '.venv').mkdir(exist_ok=True)
        return done()

    monkeypatch.setattr(bootstrap, 'quiet', quiet)
    monkeypatch.setattr(bootstrap, 'works', lambda command: True)
    monkeypatch.setattr(bootstrap, 'missing', lambda level: [])
    return noted


def kinds(noted: list) -> list:
    """Name the steps that were run, in order."""
    names = {' venv ': 'environment', ' pip ': 'pip', 'import weasyprint': 'check', 'apt-get': 'system'}
    return [next(name for mark, name in names.items() if mark in command) for command in noted]


# An old or bare Python


def test_the_file_parses_on_an_old_python():
    assert ast.parse(SCRIPT.read_text(encoding='utf-8'), feature_version=(3, 6))


def test_only_the_standard_library_is_imported():
    imports = list(ast.walk(ast.parse(SCRIPT.read_text(encoding='utf-8'))))
    plain = {alias.name for node in imports if isinstance(node, ast.Import) for alias in node.names}
    named = {node.module for node in imports if isinstance(node, ast.ImportFrom)}
    assert {name.split('.')[0] for name in plain | named} <= set(sys.stdlib_module_names)


def test_a_module_beside_the_script_does_not_stand_in_for_a_library(tmp_path):
    beside = tmp_path / 'layouts'
    (beside / 'verbs').mkdir(parents=True)
    (beside / 'bootstrap.py').write_bytes(SCRIPT.read_bytes())
    (beside / 'verbs' / '__init__.py').write_bytes((TOP / 'layouts' / 'verbs' / '__init__.py').read_bytes())
    (beside / 'json.py').write_text('raise SystemExit(77)')
    ended = subprocess.run(
        [sys.executable, beside / 'bootstrap.py', '--help'], capture_output=True, text=True
    )
    assert (ended.returncode, ended.stdout) == (0, bootstrap.usage() + '\n')


@pytest.mark.parametrize(
    ('newer', 'line'),
    [
        (
            '',
            'Python 3.9 is too old, 3.11 or newer is needed; '
            "next: install python3.11 or newer, from your system's packages or python.org",
        ),
        (
            'python3.12',
            'Python 3.9 is too old, 3.11 or newer is needed; next: run python3.12 layouts/bootstrap.py instead',
        ),
    ],
)
def test_an_old_python_is_told_what_to_do(newer, line):
    assert bootstrap.old_python((3, 9, 18), newer) == line


def test_an_old_python_stops_before_anything_is_done(monkeypatch, steps, capsys):
    monkeypatch.setattr(bootstrap, 'OLDEST', (99, 0))
    monkeypatch.setattr(bootstrap, 'newer_python', lambda: '')
    assert bootstrap.main(['make']) == 1
    assert steps == []
    assert capsys.readouterr().err.count('\n') == 1


def test_the_newest_python_on_the_machine_is_named(monkeypatch):
    monkeypatch.setattr(bootstrap, 'works', lambda command: command[0] in ('python3.11', 'python3.13'))
    assert bootstrap.newer_python() == 'python3.13'


@pytest.mark.parametrize('words', [[], ['paint'], ['setup', 'more'], ['--out', 'x']])
def test_words_that_name_no_verb_get_the_usage(words, steps, capsys):
    assert bootstrap.main(words) == 2
    assert capsys.readouterr().err == f'bootstrap: {bootstrap.usage()}\n'
    assert steps == []


def test_every_verb_of_the_command_is_known():
    assert bootstrap.verbs() == VERBS
    assert bootstrap.usage() == (
        f'use: python3 layouts/bootstrap.py VERB [arguments] | test [arguments] | setup; verbs: {", ".join(VERBS)}'
    )


# What is left to do


@pytest.mark.parametrize(
    ('stamp', 'step'),
    [
        ({}, 'remake'),
        (NEW, 'nothing'),
        (NEW | {'level': 'test'}, 'nothing'),
        (NEW | {'project': 'changed'}, 'install'),
        (NEW | {'level': 'other'}, 'install'),
        (NEW | {'python': 'cpython-312'}, 'remake'),
        (NEW | {'root': '/moved'}, 'remake'),
    ],
)
def test_the_stamp_decides_what_is_left_to_do(stamp, step):
    assert bootstrap.plan(stamp, NEW) == step


def test_the_make_level_is_not_enough_for_the_tests():
    assert bootstrap.plan(NEW, NEW | {'level': 'test'}) == 'install'


@pytest.mark.parametrize('text', ['', '{"python"', '[1]'])
def test_a_spoilt_stamp_counts_as_none(text, steps):
    bootstrap.VENV.mkdir()
    bootstrap.STAMP.write_text(text)
    assert bootstrap.read_stamp() == {}


def test_a_first_run_does_every_step_and_a_second_none(steps):
    bootstrap.set_up('make')
    assert kinds(steps) == ['environment', 'pip', 'pip', 'check']
    steps.clear()
    bootstrap.set_up('make')
    assert steps == []


def test_the_test_level_adds_the_test_packages_to_the_same_environment(steps):
    bootstrap.set_up('make')
    steps.clear()
    bootstrap.set_up('test')
    assert kinds(steps) == ['pip', 'pip', 'check']
    assert steps[0].endswith(f'--require-hashes --requirement {bootstrap.TESTED}/test.txt')


@pytest.mark.parametrize('changed', ['pyproject.toml', '.tested/make.txt'])
def test_a_changed_project_file_or_list_of_versions_is_installed_again(changed, steps):
    bootstrap.set_up('make')
    steps.clear()
    with (bootstrap.ROOT / changed).open('a') as file:
        file.write('# changed\n')
    bootstrap.set_up('make')
    assert kinds(steps) == ['pip', 'pip', 'check']


def test_an_environment_that_lost_its_packages_is_made_anew(monkeypatch, steps):
    bootstrap.set_up('make')
    steps.clear()
    monkeypatch.setattr(bootstrap, 'works', lambda command: bootstrap.LOOK_UP not in command)
    bootstrap.set_up('make')
    assert kinds(steps) == ['environment', 'pip', 'pip', 'check']


def test_an_interrupted_run_leaves_no_stamp(monkeypatch, steps, capsys):
    bootstrap.set_up('make')

    def interrupted(level):
        raise KeyboardInterrupt

    monkeypatch.setattr(bootstrap, 'install_project', interrupted)
    assert bootstrap.main(['test']) == 130
    assert bootstrap.read_stamp() == {}
    assert capsys.readouterr().err.endswith('run the same command again, it takes up by itself\n')


def test_a_failed_check_of_the_typesetter_leaves_no_stamp(monkeypatch, steps):
    def quiet(command):
        bootstrap.VENV.mkdir(exist_ok=True)
        return done("OSError: cannot load library 'libpango'", int(bootstrap.LOAD_TYPESETTER[-1] in command))

    monkeypatch.setattr(bootstrap, 'quiet', quiet)
    with pytest.raises(bootstrap.SetupError, match=r"cannot load library 'libpango'.*next: "):
        bootstrap.set_up('make')
    assert bootstrap.read_stamp() == {}


@pytest.mark.parametrize(
    ('level', 'names'), [('make', ['book', 'pypdf']), ('test', ['book', 'pypdf', 'pytest'])]
)
def test_the_environment_is_asked_for_what_the_project_file_lists(level, names, steps):
    assert bootstrap.distributions(level) == names


def test_the_look_up_fails_on_a_package_that_is_not_there():
    look_up = [sys.executable, '-I', '-c', bootstrap.LOOK_UP]
    assert bootstrap.works([*look_up, 'pytest'])
    assert not bootstrap.works([*look_up, 'pytest', 'no-such-package-here'])


# The tested versions


def versions(level: str) -> dict[str, tuple[str, list[str]]]:
    """Return by name the version of every package of a level, and the hashes of its files."""
    text = bootstrap.tested(level).read_text('utf-8')
    each = re.findall(
        r'^([\w.-]+)==([\w.]+)(?: ; [^\\\n]+)?((?: \\\n    --hash=sha256:[0-9a-f]{64})+)\n', text, re.M
    )
    assert text.count('==') - text.count("== '") == len(each) == len({name for name, *_ in each})
    return {name: (version, hashes.split(' \\\n')[1:]) for name, version, hashes in each}


def test_both_levels_have_tested_versions_and_no_address_of_any():
    make, test = versions('make'), versions('test')
    files = [one for level in (make, test) for _, hashes in level.values() for one in hashes]

    assert make.items() <= test.items()
    assert len(files) > 500
    assert '/' not in bootstrap.tested('test').read_text()


@pytest.mark.parametrize('level', ['make', 'test'])
def test_every_library_has_a_tested_version_that_the_project_file_allows(level):
    project = tomllib.loads(bootstrap.PROJECT.read_text('utf-8'))['project']
    wanted = project['dependencies'] + project['optional-dependencies']['test'] * (level == 'test')
    found = versions(level)
    for one in map(Requirement, wanted):
        assert one.specifier.contains(found[one.name][0]), one
    assert 'setuptools' in found, 'it builds the project'


def failing(step: str, said: str, noted: list):
    """Return what runs a step: the one named fails once, saying something."""

    def quiet(command):
        noted.append(' '.join(command))
        bootstrap.VENV.mkdir(exist_ok=True)
        return done(said, int(step in command))

    return quiet


def test_a_machine_for_which_there_are_no_tested_files_gets_what_is_allowed_and_is_told(
    monkeypatch, steps, capsys
):
    said = 'ERROR: No matching distribution found for brotli==1.2.1'
    monkeypatch.setattr(bootstrap, 'quiet', failing('--require-hashes', said, steps))
    bootstrap.set_up('test')
    told = capsys.readouterr().err.splitlines()

    assert kinds(steps) == ['environment', 'pip', 'pip', 'check']
    assert steps[2].endswith(f'install --editable {bootstrap.ROOT}[test]')
    assert told[1:] == [
        f'bootstrap: this machine cannot have the tested versions ({said}): the newest allowed are installed'
    ]
    assert bootstrap.PIP_LOG.read_text().startswith(said)


@pytest.mark.parametrize(
    'said',
    [
        'WARNING: Retrying (Retry(total=0))\nERROR: No matching distribution found for brotli==1.2.1',
        'ERROR: THESE PACKAGES DO NOT MATCH THE HASHES FROM THE REQUIREMENTS FILE.',
    ],
    ids=['no network', 'another file'],
)
def test_without_a_network_or_with_another_file_nothing_else_is_installed(said, monkeypatch, steps, capsys):
    monkeypatch.setattr(bootstrap, 'quiet', failing('--require-hashes', said, steps))

    assert bootstrap.main(['make']) == 1
    assert kinds(steps) == ['environment', 'pip']
    assert f'({said.splitlines()[-1]}); next: check the network' in capsys.readouterr().err
    assert bootstrap.read_stamp() == {}


# The system's parts


@pytest.mark.parametrize(
    ('level', 'parts'),
    [
        ('make', [bootstrap.ENSUREPIP, bootstrap.TYPESETTER]),
        ('test', [bootstrap.ENSUREPIP, bootstrap.TYPESETTER, 'qpdf', 'pdffonts']),
    ],
)
def test_a_bare_system_lacks_everything(level, parts, monkeypatch):
    monkeypatch.setattr(bootstrap.sys, 'platform', 'linux')
    monkeypatch.setattr(bootstrap.importlib.util, 'find_spec', lambda name: None)
    monkeypatch.setattr(bootstrap, 'loads', lambda library: False)
    monkeypatch.setattr(bootstrap.shutil, 'which', lambda program: None)
    assert bootstrap.missing(level) == parts


def test_one_library_that_does_not_open_is_enough_to_be_missing(monkeypatch):
    monkeypatch.setattr(bootstrap.sys, 'platform', 'linux')
    monkeypatch.setattr(bootstrap, 'loads', lambda library: library != 'libharfbuzz-subset.so.0')
    assert bootstrap.TYPESETTER in bootstrap.missing('make')


def test_off_linux_the_libraries_are_left_to_the_typesetter(monkeypatch):
    monkeypatch.setattr(bootstrap.sys, 'platform', 'darwin')
    monkeypatch.setattr(bootstrap, 'loads', lambda library: False)
    assert bootstrap.TYPESETTER not in bootstrap.missing('make')


def test_a_library_that_is_not_there_does_not_open():
    assert not bootstrap.loads('libnosuchlibraryhere.so.0')


@pytest.mark.parametrize(
    ('lacking', 'asked_for'),
    [
        (
            {'make': [bootstrap.TYPESETTER], 'test': [bootstrap.TYPESETTER, 'qpdf']},
            [bootstrap.TYPESETTER, 'qpdf'],
        ),
        ({'make': [], 'test': ['qpdf']}, []),
    ],
)
def test_who_makes_a_book_is_asked_for_the_tests_programs_with_others_and_never_for_them_alone(
    lacking, asked_for, monkeypatch, steps
):
    asked = []
    monkeypatch.setattr(bootstrap, 'missing', lacking.get)
    monkeypatch.setattr(bootstrap, 'install_system', asked.extend)
    bootstrap.set_up('make')
    assert asked == asked_for


@pytest.mark.parametrize(
    ('platform', 'programs', 'manager'),
    [
        ('linux', ['apt-get'], 'apt'),
        ('linux', ['dnf'], 'dnf'),
        ('linux', [], ''),
        ('darwin', [], 'brew'),
        ('win32', [], 'msys2'),
    ],
)
def test_the_package_manager_of_each_system(platform, programs, manager, monkeypatch):
    monkeypatch.setattr(bootstrap.sys, 'platform', platform)
    monkeypatch.setattr(bootstrap.shutil, 'which', lambda program: program if program in programs else None)
    assert bootstrap.package_manager() == manager


APT = 'apt-get update; apt-get install -y --no-install-recommends'


@pytest.mark.parametrize(
    ('manager', 'has_sudo', 'line'),
    [
        (
            'apt',
            True,
            f"run: sudo sh -c '{APT} {VENV_PACKAGE} libpangoft2-1.0-0 libharfbuzz-subset0 qpdf poppler-utils' "
            '-- and then the same command again',
        ),
        (
            'apt',
            False,
            f"run: su -c '{APT} {VENV_PACKAGE} libpangoft2-1.0-0 libharfbuzz-subset0 qpdf poppler-utils' "
            '-- and then the same command again',
        ),
        (
            'dnf',
            True,
            "run: sudo sh -c 'dnf install -y python3 pango harfbuzz qpdf poppler-utils' "
            '-- and then the same command again',
        ),
        (
            'brew',
            False,
            'run: brew install python pango qpdf poppler -- and then the same command again',
        ),
        (
            'msys2',
            False,
            'run in an MSYS2 UCRT64 window: pacman -S --noconfirm mingw-w64-ucrt-x86_64-python '
            'mingw-w64-ucrt-x86_64-pango mingw-w64-ucrt-x86_64-qpdf mingw-w64-ucrt-x86_64-poppler '
            '-- and then the same command again',
        ),
        ('', True, "install them with your system's package manager and run the same command again"),
    ],
)
def test_the_line_to_run_on_each_system(manager, has_sudo, line):
    parts = [bootstrap.ENSUREPIP, bootstrap.TYPESETTER, *bootstrap.TEST_PROGRAMS]
    assert bootstrap.advice(manager, parts, has_sudo) == line


@pytest.mark.parametrize(
    ('user', 'sudo_works', 'prefix'),
    [(0, False, []), (1000, True, ['sudo', '-n']), (1000, False, None)],
)
def test_who_may_install_system_packages_unasked(user, sudo_works, prefix, monkeypatch):
    monkeypatch.setattr(bootstrap.os, 'geteuid', lambda: user, raising=False)
    monkeypatch.setattr(bootstrap, 'works', lambda command: sudo_works and command == ['sudo', '-n', 'true'])
    assert bootstrap.prefix() == prefix


@pytest.mark.parametrize('prefix', [[], ['sudo', '-n']])
def test_with_the_right_the_packages_are_installed(prefix, monkeypatch, steps):
    monkeypatch.setattr(bootstrap, 'package_manager', lambda: 'apt')
    monkeypatch.setattr(bootstrap, 'prefix', lambda: prefix)
    bootstrap.install_system(['qpdf'])
    environment = ['env', 'DEBIAN_FRONTEND=noninteractive', 'LC_ALL=C']
    assert steps == [' '.join([*prefix, *environment, f'sh -c {APT} qpdf'])]


@pytest.mark.parametrize(('manager', 'prefix'), [('apt', None), ('dnf', []), ('brew', []), ('', [])])
def test_without_the_right_nothing_is_installed_and_one_line_is_told(
    manager, prefix, monkeypatch, steps, capsys
):
    monkeypatch.setattr(bootstrap, 'package_manager', lambda: manager)
    monkeypatch.setattr(bootstrap, 'prefix', lambda: prefix)
    monkeypatch.setattr(bootstrap, 'missing', lambda level: ['qpdf'])
    assert bootstrap.main(['test']) == 1
    assert steps == []
    told = capsys.readouterr().err
    assert told.startswith('bootstrap: this system lacks qpdf; next: ')
    assert told.count('\n') == 1


def test_a_failed_installation_is_told_with_its_cause(monkeypatch):
    monkeypatch.setattr(bootstrap, 'package_manager', lambda: 'apt')
    monkeypatch.setattr(bootstrap, 'prefix', list)
    output = 'Reading package lists...\nE: Unable to locate package qpdf\n'
    monkeypatch.setattr(bootstrap, 'quiet', lambda command: done(output, 100))
    with pytest.raises(bootstrap.SetupError, match='E: Unable to locate package qpdf'):
        bootstrap.install_system(['qpdf'])


# Failures and exit statuses


@pytest.mark.parametrize(
    ('output', 'cause'),
    [
        (
            'WARNING: Retrying\nERROR: No matching distribution found for pypdf\n[end of output]\n'
            'error: subprocess-exited-with-error\n',
            'ERROR: No matching distribution found for pypdf',
        ),
        ('Traceback\nOSError: cannot load library\n\n-----\n', 'OSError: cannot load library'),
        ('one\n\n  two \n\n', 'two'),
        ('', 'exit status 3'),
    ],
)
def test_the_telling_line_of_a_failed_step(output, cause):
    assert bootstrap.cause(done(output, 3)) == cause


def test_a_pip_that_fails_is_told_in_one_line_and_its_output_kept(monkeypatch, steps, capsys):
    def quiet(command):
        bootstrap.VENV.mkdir(exist_ok=True)
        return done('ERROR: No matching distribution found for pypdf', int('pip' in command))

    monkeypatch.setattr(bootstrap, 'quiet', quiet)
    assert bootstrap.main(['make']) == 1
    told = capsys.readouterr().err.splitlines()[-1]
    assert told.startswith(
        'bootstrap: the Python packages were not installed (ERROR: No matching distribution'
    )
    assert 'ERROR: No matching distribution found for pypdf' in bootstrap.PIP_LOG.read_text()


def test_an_unwritable_folder_is_told_in_one_line(monkeypatch, capsys):
    def unwritable(level):
        raise PermissionError(13, 'Permission denied', '.venv/ready.json')

    monkeypatch.setattr(bootstrap, 'set_up', unwritable)
    assert bootstrap.main(['make']) == 1
    assert capsys.readouterr().err.startswith(
        "bootstrap: [Errno 13] Permission denied: '.venv/ready.json'; next: "
    )


@pytest.mark.parametrize(
    ('words', 'command'),
    [
        (['make', 'my.toml', '--out', 'there'], ['rafterbook', 'make', 'my.toml', '--out', 'there']),
        (['find', '6', '4 ft'], ['rafterbook', 'find', '6', '4 ft']),
        (['help'], ['rafterbook', 'help']),
        (['test', '-k', 'pitch'], ['python', '-m', 'pytest', '-k', 'pitch']),
    ],
)
def test_further_words_and_the_exit_status_are_passed_on(words, command, monkeypatch, steps):
    run = []
    monkeypatch.setattr(bootstrap, 'inside', lambda program: program)
    monkeypatch.setattr(bootstrap, 'status_of', lambda command, folder, values: run.append(command) or 5)
    assert bootstrap.main(words) == 5
    assert run == [command]


def test_what_tests_start_is_compiled_once(monkeypatch, steps):
    """Other verbs leave what is switched off as it is."""
    seen = {}
    monkeypatch.setenv('PYTHONDONTWRITEBYTECODE', '1')
    monkeypatch.setattr(
        bootstrap, 'status_of', lambda command, folder, values: seen.update({command[1]: values}) or 0
    )
    for words in (['test'], ['find', '6']):
        bootstrap.main(words)

    assert 'PYTHONDONTWRITEBYTECODE' not in seen['-m']
    assert seen['find']['PYTHONDONTWRITEBYTECODE'] == '1'


@pytest.mark.parametrize(
    ('ends', 'status'),
    [([0], 0), ([7], 7), ([-15], 143), ([KeyboardInterrupt(), 3], 3)],
)
def test_the_status_is_the_commands_own(ends, status, monkeypatch):
    class Process:
        def __init__(self, command, cwd, env):
            self.ends = iter(ends)

        def wait(self):
            end = next(self.ends)
            if isinstance(end, BaseException):
                raise end
            return end

    monkeypatch.setattr(bootstrap.subprocess, 'Popen', Process)
    monkeypatch.setattr(bootstrap.signal, 'signal', lambda number, heard: None)
    assert bootstrap.status_of(['any'], None, {}) == status


@pytest.mark.parametrize(
    ('platform', 'place'),
    [
        ('linux', Path('bin/rafterbook')),
        ('darwin', Path('bin/rafterbook')),
        ('win32', Path('Scripts/rafterbook.exe')),
    ],
)
def test_the_programs_place_on_each_system(platform, place, monkeypatch):
    monkeypatch.setattr(bootstrap.sys, 'platform', platform)
    assert bootstrap.inside('rafterbook') == str(bootstrap.VENV / place)


def test_on_macos_a_step_finds_the_libraries_that_brew_installs(monkeypatch):
    monkeypatch.setattr(bootstrap.sys, 'platform', 'darwin')
    monkeypatch.delenv('DYLD_FALLBACK_LIBRARY_PATH', raising=False)
    assert bootstrap.surroundings()['DYLD_FALLBACK_LIBRARY_PATH'].startswith('/opt/homebrew/lib:')


# The same command everywhere


def test_the_continuous_check_runs_the_very_command_of_the_readme():
    shebang, folder, command = (TOP / '.ci' / 'run').read_text(encoding='utf-8').splitlines()
    assert (shebang, folder) == ('#!/usr/bin/env bash', 'cd "$(dirname "$0")/.." || exit')
    assert command == 'python3 layouts/bootstrap.py test'
    fenced = (TOP / 'README.md').read_text(encoding='utf-8').split('```')[1::2]
    assert command in [line.strip() for block in fenced for line in block.splitlines()]


def test_the_continuous_check_may_be_run():
    assert os.access(TOP / '.ci' / 'run', os.X_OK)


@pytest.mark.skipif(os.name == 'nt', reason='has no such signals')
@pytest.mark.parametrize('sent', [signal.SIGTERM, signal.SIGHUP])
def test_a_signal_to_end_is_passed_on_to_the_command(sent):
    """The command says so and ends in its own way, and its status is the script's."""
    hears = (
        'import signal, sys, time; [signal.signal(one, lambda n, f: sys.exit(n + 40)) for one in (1, 15)]; '
    )
    inner = f"{hears}print('on', flush=True); time.sleep(15)"
    # a test run under nohup would hand on its deafness, which the script keeps for its command
    run = f'import signal; signal.signal({int(sent)}, signal.SIG_DFL); from layouts import bootstrap; raise SystemExit(bootstrap.status_of([{sys.executable!r}, "-c", {inner!r}], None, None))'
    with subprocess.Popen([sys.executable, '-c', run], cwd=TOP, stdout=subprocess.PIPE, text=True) as process:
        assert process.stdout.readline() == 'on\n'
        process.send_signal(sent)
        assert process.wait(10) == sent + 40
