"""Sets everything up on a machine that has only Python and git, then does what the command's verbs do, or the tests.

    python3 layouts/bootstrap.py make [its arguments], and so every verb of the command
    python3 layouts/bootstrap.py test [arguments of pytest]
    python3 layouts/bootstrap.py setup

Runs as a script, with the standard library alone. The file parses and starts on Python 3.6, so that an old
Python is told what is missing instead of failing on syntax: no newer syntax and no newer annotation here.
"""

import os
import sys

# A script's own folder comes first on the search path: no module beside this one may stand in for a library's.
if __name__ == '__main__':
    sys.path[:] = [folder for folder in sys.path if folder != os.path.dirname(os.path.abspath(__file__))]

import hashlib
import importlib.util
import json
import platform
import re
import shutil
import signal
import subprocess
from pathlib import Path

ROOT = Path(__file__).resolve().parent.parent
PROJECT = ROOT / 'pyproject.toml'
VENV = ROOT / '.venv'
STAMP = VENV / 'ready.json'
PIP_LOG = VENV / 'pip.log'
TESTED = ROOT / '.tested'
LISTED = Path(__file__).resolve().parent / 'verbs' / '__init__.py'

OLDEST = (3, 11)
PYTHON = 'py' if sys.platform == 'win32' else 'python3'
USAGE = f'use: {PYTHON} layouts/bootstrap.py VERB [arguments] | test [arguments] | setup; verbs: '

# Asked of the environment at every run: cheap, and enough to notice one that has lost its packages.
LOOK_UP = 'import sys; from importlib.metadata import version; [version(name) for name in sys.argv[1:]]'

# What pip says where no file of a version is for this Python and system, and where it could not even ask for one.
NO_FILE, NO_NETWORK = 'No matching distribution found', 'Retrying'

# The names by which the typesetter opens its libraries on Linux.
LIBRARIES = (
    'libgobject-2.0.so.0',
    'libpango-1.0.so.0',
    'libharfbuzz.so.0',
    'libharfbuzz-subset.so.0',
    'libfontconfig.so.1',
    'libpangoft2-1.0.so.0',
)
# Without HarfBuzz-Subset the typesetter loads but warns, and would put fonts into a booklet by other means.
LOAD_TYPESETTER = ('-W', 'error:HarfBuzz', '-c', 'import weasyprint')
# Programs that the tests run beside the Python packages.
TEST_PROGRAMS = ('qpdf', 'pdffonts')

# Which packages bring the system's parts, by package manager, and the command that installs them.
ENSUREPIP, TYPESETTER = 'the Python module ensurepip', 'the libraries Pango and HarfBuzz-Subset'
UCRT = 'mingw-w64-ucrt-x86_64-'
PACKAGES = {
    'apt': {
        ENSUREPIP: f'python{sys.version_info[0]}.{sys.version_info[1]}-venv',
        TYPESETTER: 'libpangoft2-1.0-0 libharfbuzz-subset0',
        'qpdf': 'qpdf',
        'pdffonts': 'poppler-utils',
    },
    'dnf': {ENSUREPIP: 'python3', TYPESETTER: 'pango harfbuzz', 'qpdf': 'qpdf', 'pdffonts': 'poppler-utils'},
    'brew': {ENSUREPIP: 'python', TYPESETTER: 'pango', 'qpdf': 'qpdf', 'pdffonts': 'poppler'},
    'msys2': {
        ENSUREPIP: UCRT + 'python',
        TYPESETTER: UCRT + 'pango',
        'qpdf': UCRT + 'qpdf',
        'pdffonts': UCRT + 'poppler',
    },
}
INSTALL = {
    # A failed update need not matter (one source of many may be down): the install tells.
    'apt': 'apt-get update; apt-get install -y --no-install-recommends',
    'dnf': 'dnf install -y',
    'brew': 'brew install',
    'msys2': 'pacman -S --noconfirm',
}


class SetupError(Exception):
    """Something that stops the setting up, told in one line with the next step."""


def main(arguments: list) -> int:
    """Set up what the verb needs, run it, and return the exit status to end with.

    Given: the words after the script's name. Returned: the verb's own exit status; 1 where the setting up
    failed, 2 where the words name no verb, 130 where it was interrupted.
    """
    if sys.version_info < OLDEST:
        return told(old_python(sys.version_info, newer_python()), 1)
    verb, rest = (arguments or [''])[0], arguments[1:]
    if verb in ('-h', '--help'):
        sys.stdout.write(usage() + '\n')
        return 0
    if verb not in ('test', 'setup', *verbs()) or (verb == 'setup' and rest):
        return told(usage(), 2)
    try:
        set_up('test' if verb == 'test' else 'make')
        return run_verb(verb, rest)
    except SetupError as error:
        return told(str(error), 1)
    except OSError as error:
        return told(f'{error}; next: put that right and run the same command again', 1)
    except KeyboardInterrupt:
        return told('interrupted; next: run the same command again, it takes up by itself', 130)


def usage() -> str:
    """Return how this script is called."""
    return USAGE + ', '.join(verbs())


def verbs() -> tuple:
    """Return the verbs of the command, from the one file that lists them: nothing else is there before the setting up."""
    spec = importlib.util.spec_from_file_location('verbs', str(LISTED))
    listed = importlib.util.module_from_spec(spec)
    spec.loader.exec_module(listed)
    return listed.VERBS


def told(text: str, status: int) -> int:
    """Write one line for the reader on standard error and return the status."""
    sys.stderr.write(f'bootstrap: {" ".join(text.split())}\n')
    sys.stderr.flush()
    return status


def old_python(version: tuple, newer: str) -> str:
    """Return the line for a Python that is too old, naming a newer one where the machine has it."""
    oldest = '.'.join(map(str, OLDEST))
    have = f'Python {version[0]}.{version[1]} is too old, {oldest} or newer is needed'
    if newer:
        return f'{have}; next: run {newer} layouts/bootstrap.py instead'
    return f"{have}; next: install python{oldest} or newer, from your system's packages or python.org"


def newer_python() -> str:
    """Return the command of a new enough Python on this machine, the newest first, or ''."""
    names = (f'python3.{minor}' for minor in range(20, OLDEST[1] - 1, -1))
    return next((name for name in names if works([name, '--version'])), '')


def set_up(level: str) -> None:
    """Make the environment ready for a level, doing only what is still to do.

    Given: 'make', or 'test' which holds everything of 'make'. Raises SetupError.
    """
    wanted = fingerprint(level)
    step = plan(read_stamp(), wanted)
    if step == 'nothing' and works([inside('python'), '-I', '-c', LOOK_UP, *distributions(level)]):
        return
    # Whoever is asked for system packages is asked once: those of the tests come with the first.
    install_system(missing('test') if missing(level) else [])
    told('setting up .venv, which takes a minute or two the first time', 0)
    if step != 'install' or not works([inside('python'), '-I', '-m', 'pip', '--version']):
        make_environment()
    # Gone before pip starts, so that an interrupted run is never taken for a finished one.
    STAMP.unlink(missing_ok=True)
    install_project(level)
    check_typesetter()
    STAMP.write_text(json.dumps(wanted), encoding='utf-8')


def fingerprint(level: str) -> dict:
    """Return what a finished environment depends on: Python, place, project file and tested versions, level."""
    return {
        'python': f'{sys.implementation.cache_tag} {platform.machine()}',
        'root': str(ROOT),
        'project': hashlib.sha256(PROJECT.read_bytes() + tested(level).read_bytes()).hexdigest(),
        'level': level,
    }


def distributions(level: str) -> list:
    """Return the names of what pip installs for a level by the project file, the project itself first."""
    # Newer than the oldest Python that this file must start on.
    import tomllib

    project = tomllib.loads(PROJECT.read_text(encoding='utf-8'))['project']
    wanted = project['dependencies'] + (project['optional-dependencies']['test'] if level == 'test' else [])
    return [project['name'], *(re.match(r'[\w.-]+', each).group() for each in wanted if ';' not in each)]


def read_stamp() -> dict:
    """Return what the last finished setting up wrote, or {} where there is none that can be read."""
    try:
        stamp = json.loads(STAMP.read_text(encoding='utf-8'))
    except (OSError, ValueError):
        return {}
    return stamp if isinstance(stamp, dict) else {}


def plan(stamp: dict, wanted: dict) -> str:
    """Return what is to be done: 'nothing', 'install' the project again, or 'remake' the environment.

    An environment without a stamp was never finished: what pip left half-way in it cannot be trusted.
    """
    if any(stamp.get(key) != wanted[key] for key in ('python', 'root')):
        return 'remake'
    if stamp.get('project') != wanted['project'] or stamp.get('level') not in ('test', wanted['level']):
        return 'install'
    return 'nothing'


def missing(level: str) -> list:
    """Return the names of the system's parts that this machine lacks, as PACKAGES names them."""
    parts = [] if importlib.util.find_spec('ensurepip') else [ENSUREPIP]
    # Elsewhere the libraries' places are known to the typesetter alone, which is asked after pip.
    if sys.platform == 'linux' and not all(map(loads, LIBRARIES)):
        parts.append(TYPESETTER)
    if level == 'test':
        parts += [program for program in TEST_PROGRAMS if not shutil.which(program)]
    return parts


def loads(library: str) -> bool:
    """Say whether a shared library opens; True too where this Python cannot tell (no ctypes)."""
    try:
        import ctypes

        ctypes.CDLL(library)
    except ImportError:
        return True
    except OSError:
        return False
    return True


def package_manager() -> str:
    """Return the key of PACKAGES for this system, or '' for one that is not in it."""
    if sys.platform in ('darwin', 'win32'):
        return {'darwin': 'brew', 'win32': 'msys2'}[sys.platform]
    return 'apt' if shutil.which('apt-get') else 'dnf' if shutil.which('dnf') else ''


def prefix() -> list:
    """Return what gives a command the right to install system packages unasked; None where nothing does."""
    if os.geteuid() == 0:
        return []
    return ['sudo', '-n'] if works(['sudo', '-n', 'true']) else None


def install_command(manager: str, parts: list) -> str:
    """Return the shell command that installs the packages which bring the parts."""
    return ' '.join([INSTALL[manager], *(PACKAGES[manager][part] for part in parts)])


def advice(manager: str, parts: list, has_sudo: bool) -> str:
    """Return the one line that tells the reader how to install the parts by hand."""
    if not manager:
        return "install them with your system's package manager and run the same command again"
    command = install_command(manager, parts)
    if manager in ('apt', 'dnf'):
        command = f"sudo sh -c '{command}'" if has_sudo else f"su -c '{command}'"
    where = ' in an MSYS2 UCRT64 window' if manager == 'msys2' else ''
    return f'run{where}: {command} -- and then the same command again'


def install_system(parts: list) -> None:
    """Install missing parts of the system where that may be done unasked, else stop with the line to run."""
    if not parts:
        return
    manager = package_manager()
    by_hand = advice(manager, parts, bool(shutil.which('sudo')))
    before = prefix() if manager == 'apt' else None
    if before is None:
        raise SetupError(f'this system lacks {", ".join(parts)}; next: {by_hand}')
    command = install_command(manager, parts)
    told(f'installing system packages: {command}', 0)
    done = quiet([*before, 'env', 'DEBIAN_FRONTEND=noninteractive', 'LC_ALL=C', 'sh', '-c', command])
    if done.returncode:
        raise SetupError(
            f'the system packages were not installed ({cause(done)}); next: check the network, or {by_hand}'
        )


def make_environment() -> None:
    """Make the environment anew, whatever stands in its place."""
    # The Python under an activated environment, which may be the very one that is being replaced.
    python = getattr(sys, '_base_executable', None) or sys.executable
    done = quiet([python, '-I', '-m', 'venv', '--clear', str(VENV)])
    if done.returncode:
        raise SetupError(
            f'no environment could be made ({cause(done)}); next: '
            f'remove {VENV} and run the same command again'
        )


def tested(level: str) -> Path:
    """Return the file of a level's packages: each in the version that was tested, with the hashes of its files."""
    return TESTED / f'{level}.txt'


def install_project(level: str) -> None:
    """Install the tested packages and the project, editable, so that later changes count at once.

    Where this Python or system has no files of the tested versions, that is told, and what the project file allows is
    taken. A file that is not the one that was tested stops everything: it is never taken from anywhere else.
    """
    pip = [inside('python'), '-I', '-m', 'pip', '--no-input', '--disable-pip-version-check', 'install']
    done = quiet([*pip, '--only-binary', ':all:', '--require-hashes', '--requirement', str(tested(level))])
    said = done.stdout
    if not done.returncode:
        done = quiet([*pip, '--no-deps', '--no-build-isolation', '--editable', str(ROOT)])
        said += done.stdout
    elif NO_FILE in said and NO_NETWORK not in said:
        told(
            f'this machine cannot have the tested versions ({cause(done)}): the newest allowed are installed',
            0,
        )
        done = quiet([*pip, '--editable', f'{ROOT}[test]' if level == 'test' else str(ROOT)])
        said += done.stdout
    PIP_LOG.write_text(said, encoding='utf-8')
    if done.returncode:
        raise SetupError(
            f'the Python packages were not installed ({cause(done)}); next: check the network, '
            f'see {PIP_LOG} and run the same command again'
        )


def check_typesetter() -> None:
    """Stop with the line to run where the typesetter does not find its libraries."""
    done = quiet([inside('python'), '-I', *LOAD_TYPESETTER])
    if done.returncode:
        by_hand = advice(package_manager(), [TYPESETTER], bool(shutil.which('sudo')))
        raise SetupError(f'the typesetter lacks {TYPESETTER} ({cause(done)}); next: {by_hand}')


def run_verb(verb: str, arguments: list) -> int:
    """Run a verb in the environment and return its exit status, as a shell tells it."""
    values = surroundings()
    if verb == 'test':
        # Tests start many programs: what all of them import is compiled once, also where that is switched off.
        values.pop('PYTHONDONTWRITEBYTECODE', None)
        return status_of([inside('python'), '-m', 'pytest', *arguments], ROOT, values)
    return 0 if verb == 'setup' else status_of([inside('rafterbook'), verb, *arguments], None, values)


def status_of(command: list, folder: Path, values: dict) -> int:
    """Run a command in the reader's own terminal and return its exit status, 128 + n for a signal n.

    Given: the folder that it runs in, None for the reader's, and its environment variables.
    """
    process = subprocess.Popen(command, cwd=folder, env=values)
    for name in ('SIGTERM', 'SIGHUP'):  # sent to this process alone, they are meant for the command
        if getattr(signal, name, None) and signal.getsignal(getattr(signal, name)) != signal.SIG_IGN:
            signal.signal(getattr(signal, name), lambda number, frame: process.send_signal(number))
    while True:
        try:
            status = process.wait()
            return status if status >= 0 else 128 - status
        except KeyboardInterrupt:
            # The command got it too and ends in its own way: its status is the one to pass on.
            continue


def quiet(command: list) -> subprocess.CompletedProcess:
    """Run a step of the setting up without a word or a question, all that it says kept in `stdout`."""
    return subprocess.run(
        command,
        stdin=subprocess.DEVNULL,
        stdout=subprocess.PIPE,
        stderr=subprocess.STDOUT,
        encoding='utf-8',
        errors='replace',
        env=surroundings(),
        check=False,
    )


def works(command: list) -> bool:
    """Say whether a command can be run and succeeds."""
    nowhere = subprocess.DEVNULL
    try:
        return subprocess.call(command, stdin=nowhere, stdout=nowhere, stderr=nowhere) == 0
    except OSError:
        return False


def surroundings() -> dict:
    """Return the environment variables of a step; on macOS they name the folders that brew installs to."""
    values = dict(os.environ)
    if sys.platform == 'darwin':
        values.setdefault('DYLD_FALLBACK_LIBRARY_PATH', '/opt/homebrew/lib:/usr/local/lib:/usr/lib')
    return values


def inside(program: str) -> str:
    """Return the path of a program in the environment."""
    return str(VENV / 'Scripts' / f'{program}.exe' if sys.platform == 'win32' else VENV / 'bin' / program)


def cause(done: subprocess.CompletedProcess) -> str:
    """Return what a failed step's output tells best: its last line that names an error, else its last line."""
    lines = [line.strip() for line in done.stdout.splitlines() if line.strip()]
    errors = [line for line in lines if re.match(r'(E|ERROR|\w*Error|\w*Warning): ', line)]
    return (errors or lines or [f'exit status {done.returncode}'])[-1]


if __name__ == '__main__':
    sys.exit(main(sys.argv[1:]))
