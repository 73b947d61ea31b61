#!/usr/bin/env python3
"""run.py - how many small changes of lib/ do the unit tests and the handbook notice?

    run.py PROGRAMS COVERED SANITIZED [--files PATTERN ...] [--sample N] [--seed WORD] [--jobs N] [--again] [--quick]

All three are builds by meson: plain ones, with clang's profiles, which tell what suites reach a line (no other can
notice its mutants), and with sanitizers. A mutant whose object is the same at -O2 is none. Each is linked with the
tests (many of one file in one program: switched.py) and asked suite by suite, quick ones and those of its module first;
what fails (it ends at its first assert that does), crashes, or takes four times as long has noticed it. What the suites
let live is shown the programs of ASKED_LAST that .ci/run asks too, the quick suites once more with sanitizers, and the
properties of its module, whose truth is the model (all there are, with fewer requests, where it has none). The golden
digest records the library's own answers, so it counts for nothing; of what lives still it tells whether an answer
changed at all. What is known of mutants of the same sources lies in PROGRAMS/mutants and is not asked again. --again
asks those that lived; --quick asks suites alone, all of lib/ in a few hours. equivalent.txt names mutants that change no
answer, or only which way a search goes, with the reason.

It fails where so many live that the score aimed at can hardly be true.

SPDX-License-Identifier: MIT"""
import argparse
import collections
import concurrent.futures
import fnmatch
import functools
import hashlib
import itertools
import json
import math
import os
import pathlib
import random
import re
import shlex
import shutil
import subprocess
import sys
import threading

import mutants
import switched

ROOT = pathlib.Path(__file__).resolve().parent.parent.parent
HERE = pathlib.Path(__file__).resolve().parent
AIM = 0.95  # what is held today of all of lib/; 0.97 is wanted
MEMORY = 4 << 30
PATIENCE = 6  # seconds for a suite of another module,
QUICK = 1.5  # and without sanitizers for one that is asked with them
HANDBOOK = "handbook"
GOLDEN = "golden"
REQUESTS = 60  # for each property of its module, or of the one whose properties ask it,
ASKED_BY = {"quilt": "solution", "sewing": "solution"}
OF_ALL = 10  # and for each of all modules
ASKED_LAST = (  # of which files, what program, and how much of it
    ("cutplan*", "tests/deep/cutplan.c", "30000"),
    ("length*", "tests/exhaustive/text.c", "few", "5"),
    ("length*", "tests/exhaustive/fractions.c", "2"),
    ("stripset*", "tests/exhaustive/yields.c"),
    ("finishing*", "tests/exhaustive/backing.c", "10"),
)
LIVES_CHANGED = "lives, digest changed"
LIVES_QUICK = "lives, as far as suites tell"
MANY = 4  # of one file: then one program holds them all (switched.py)
END = """#include <unistd.h>
void __wrap__ck_assert_failed(void) { _exit(1); }
__attribute__((weak)) void __wrap__mark_point(void) { }
""" + switched.CHOSEN


def asked(command, seconds=600, memory=MEMORY, **variables):
    """Whether a program of tests holds, and its processor time, of which it gets no more than told."""
    limited = ["prlimit", f"--cpu={math.ceil(seconds)}", f"--as={memory}", *command]
    with subprocess.Popen(limited, env=dict(os.environ, **variables), stdin=subprocess.DEVNULL,
                          stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL) as process:
        _pid, status, used = os.wait4(process.pid, 0)
        process.returncode = os.waitstatus_to_exitcode(status)
    return process.returncode == 0, used.ru_utime + used.ru_stime


def suite_asked(program, suite, seconds=600, memory=MEMORY, profile=os.devnull, number=0):
    tables = sorted(map(str, (ROOT / "tests/handbook").glob("*.csv"))) if suite == HANDBOOK else []
    return asked([program, *tables], seconds, memory, CK_FORK="no", CK_RUN_SUITE=suite, CK_VERBOSITY="silent",
                 MALLOC_PERTURB_="90", MUSLIN_MUTANT=str(number), LLVM_PROFILE_FILE=profile, UBSAN_OPTIONS="halt_on_error=1",
                 ASAN_OPTIONS=f"quarantine_size_mb=8:hard_rss_limit_mb={MEMORY >> 20}")


def module_of(mutant):
    return mutant.file.stem.split("_")[0]


class Build:
    """What meson has built: how it compiles a source, and what the tests are linked from."""

    def __init__(self, where):
        self.where = pathlib.Path(where).resolve()
        self.work = self.where / "mutants"
        self.work.mkdir(exist_ok=True)
        self.commands = {}
        with open(self.where / "compile_commands.json", encoding="utf-8") as commands:
            for entry in json.load(commands):
                source = (self.where / entry["file"]).resolve()
                if source.parent == ROOT / "lib":
                    self.commands.setdefault(source.name, shlex.split(entry["command"]))
        words = next(iter(self.commands.values()))
        self.linker = [*itertools.takewhile(lambda word: not word.startswith("-"), words),
                       *(word for word in words if word.startswith("-fsanitize="))]
        self.libraries = subprocess.run(["pkg-config", "--libs", "check"], stdout=subprocess.PIPE, check=True,
                                        text=True).stdout.split() + ["-lcsv"]
        self.end = str(self.work / "end.o")
        subprocess.run(["gcc", "-xc", "-", "-c", "-o", self.end], input=END, text=True, check=True)

    def options(self, source):
        """How clang reads a source as the compiler does."""
        flags = [str((self.where / word[2:]).resolve()).join(["-I", ""]) for word in self.commands[source]
                 if word.startswith("-I")]
        builtin = subprocess.run(["clang-14", "-print-resource-dir"], stdout=subprocess.PIPE, check=True, text=True)
        return flags + ["-std=c11", "-DMUSLIN_BUILDING", f"-I{builtin.stdout.strip()}/include"]

    def compile(self, source, text, where):
        """The object of a changed source, or None where it is no C any more."""
        return self.compiled(source, text, where)[0]

    def compiled(self, source, text, where):
        """The same, and what the compiler says."""
        where.mkdir(exist_ok=True)
        (where / source).write_bytes(text)
        unwanted = re.compile(r"-O.$|-g$|-W|-M[DQF]?$|-[oc]$")
        words = self.commands[source]
        flags = [word for before, word in zip([""] + words, words)
                 if not unwanted.match(word) and before not in ("-o", "-c", "-MQ", "-MF")]
        command = [*flags, "-O2", "-w", "-fdiagnostics-color=never", "-iquote", str(ROOT / "lib"),
                   "-c", str(where / source), "-o", str(where / "it.o")]
        done = subprocess.run(command, cwd=self.where, stderr=subprocess.PIPE, text=True, check=False,
                              env=dict(os.environ, LC_ALL="C"))
        return (where / "it.o").read_bytes() if done.returncode == 0 else None, done.stderr

    def link(self, name, where):
        folder = {"unit": "tests/unit.p", HANDBOOK: "tests/handbook/handbook.p", GOLDEN: "tests/golden.p"}[name]
        objects = sorted(map(str, (self.where / folder).glob("*.o"))) + [str(where / "it.o"), self.end]
        program = where / name
        subprocess.run([*self.linker, "-fuse-ld=lld", "-Wl,--wrap=_ck_assert_failed,--wrap=_mark_point", *objects,
                        str(self.where / "libmuslin.a"), *self.libraries, "-o", str(program)], check=True)
        return str(program)

    def compile_program(self, source, where, *objects):
        """A program of one source, with the library."""
        program = where / pathlib.Path(source).stem
        subprocess.run(["gcc", "-O2", "-I", str(ROOT / "include"), str(ROOT / source), *map(str, objects),
                        str(self.where / "libmuslin.a"), "-o", str(program)], check=True)
        return str(program)

    def link_shared(self, source, where):
        objects = [str(path) for path in self.where.glob("libmuslin.so.*.p/lib_*.o") if path.stem != f"lib_{source}.c"]
        library = where / "libmuslin.so.1"
        subprocess.run(["gcc", "-shared", "-fuse-ld=lld", *objects, str(where / "it.o"), "-o", str(library)],
                       check=True)
        return str(library)


def reached(lcov):
    """The lines that ran, by the file's name."""
    files = re.findall(r"^SF:(.*)\n((?:.*\n)*?)end_of_record", lcov, flags=re.M)
    lines = {pathlib.Path(name).name: [int(line) for line in re.findall(r"^DA:(\d+),[1-9]", counts, flags=re.M)]
             for name, counts in files}
    return {name: found for name, found in lines.items() if found}


class Suites:
    """The suites, how long each takes, and what lines of lib/ each reaches."""

    def __init__(self, build, covered, pool):
        known = build.work / f"suites-{fingerprint('tests/unit/*', 'tests/handbook/*', 'lib/*.[ch]')}.json"
        if not known.exists():
            names = {name for source in (ROOT / "tests/unit").glob("test_*.c")
                     for name in re.findall(r'suite_create\("([^"]+)"', source.read_text(encoding="utf-8"))}
            names = sorted(names | {HANDBOOK})
            looked_at = pool.map(lambda suite: self.looked_at(suite, build, pathlib.Path(covered).resolve()), names)
            known.write_text(json.dumps(dict(zip(names, looked_at))), encoding="utf-8")
        self.all = json.loads(known.read_text(encoding="utf-8"))

    @staticmethod
    def looked_at(suite, build, covered):
        program = "tests/handbook/handbook" if suite == HANDBOOK else "tests/unit"
        holds, seconds = suite_asked(str(build.where / program), suite)
        if not holds:
            raise SystemExit(f"{suite} fails without any change")
        profiles = here(build).with_suffix(".profiles")
        shutil.rmtree(profiles, ignore_errors=True)
        merged = profiles / "merged"
        # A program that has the library from beside it writes two profiles.
        suite_asked(str(covered / program), suite, profile=f"{profiles}/%m.profraw")
        subprocess.run(["llvm-profdata-19", "merge", "-o", merged, *profiles.glob("*.profraw")], check=True)
        shown = subprocess.run(["llvm-cov-19", "export", "-format=lcov", f"-instr-profile={merged}",
                                covered / program, "--object", covered / "libmuslin.so.1", ROOT / "lib"],
                               check=True, text=True, stdout=subprocess.PIPE).stdout
        lines = reached(shown)
        if not any((ROOT / "lib" / name).exists() for name in lines):
            raise SystemExit(f"{suite} reaches nothing of lib/")
        return {"seconds": seconds, "reached": lines}

    def for_mutant(self, mutant):
        """The suites that can notice it, quick ones and those of its module first; of others none that takes long."""
        module, file = module_of(mutant), mutant.file.name
        suites = [(facts["seconds"], suite.startswith(module), suite) for suite, facts in self.all.items()
                  if file in facts["reached"] and (not mutant.function or mutant.line in facts["reached"][file])]
        suites = [(seconds if its_own else 10 * seconds, suite) for seconds, its_own, suite in suites
                  if its_own or seconds < PATIENCE]
        return [suite for _seconds, suite in sorted(suites)]

    def limit(self, suite):
        return math.ceil(4 * self.all[suite]["seconds"] + 0.5)


def fingerprint(*patterns):
    digest = hashlib.sha256()
    for pattern in patterns:
        for path in sorted(ROOT.glob(pattern)):
            digest.update(path.read_bytes() if path.is_file() else b"")
    return digest.hexdigest()[:16]


def here(build):
    """The folder of one worker."""
    return build.work / threading.current_thread().name


def suite_fails(names, build, suites, where, patience=1, memory=MEMORY):
    """The suite of these that notices a mutant whose object is made, or None."""
    linked = {}
    for suite in names:
        program = HANDBOOK if suite == HANDBOOK else "unit"
        if program not in linked:
            linked[program] = build.link(program, where)
        if not suite_asked(linked[program], suite, patience * suites.limit(suite), memory)[0]:
            return suite
    return None


class Switched:
    """A program for each file with many mutants, which holds them all. It is slower than the usual one."""

    def __init__(self, chosen, build, suites):
        self.build, self.suites = build, suites
        self.locks = collections.defaultdict(threading.Lock)
        self.files = collections.defaultdict(list)
        for mutant in chosen:
            self.files[mutant.file].append(mutant)

    @functools.lru_cache(maxsize=None)
    def made(self, file):
        """Where the programs lie, and the numbers of the mutants in them."""
        here_are, left_out, where = self.files[file], set(), self.build.work / "switched" / file.stem
        where.parent.mkdir(exist_ok=True)
        while True:
            source = switched.switched(here_are, left_out)
            built, messages = self.build.compiled(file.name, source.encode("latin-1"), where)
            if built:
                break
            wrong = switched.wrong_numbers(source, messages) - left_out
            if not wrong:
                print(f"{file.name}: its mutants do not stand in one source: {messages}", flush=True)
                return {}
            left_out |= wrong
        for program in ("unit", HANDBOOK):
            self.build.link(program, where)
        there = switched.numbers(source)
        return {mutant.key: (where, number) for number, mutant in enumerate(here_are, 1) if number in there}

    @functools.lru_cache(maxsize=None)
    def seconds(self, program, suite):
        holds, seconds = suite_asked(program, suite)
        if not holds:
            raise SystemExit(f"{suite} fails without any change in {program}")
        return seconds

    def suite_fails(self, mutant):
        """Whether it was asked, and the suite that notices it or None."""
        with self.locks[mutant.file]:
            found = self.made(mutant.file) if len(self.files[mutant.file]) >= MANY else {}
        if mutant.key not in found:
            return False, None
        where, number = found[mutant.key]
        for suite in self.suites.for_mutant(mutant):
            program = str(where / (HANDBOOK if suite == HANDBOOK else "unit"))
            limit = math.ceil(4 * self.seconds(program, suite) + 0.5)
            if not suite_asked(program, suite, limit, number=number)[0]:
                return True, suite
        return True, None


def usual_seconds(command, **variables):
    """What a program of tests takes without any change."""
    holds, seconds = asked(command, **variables)
    if not holds:
        raise SystemExit(f"{' '.join(command)} fails without any change")
    return seconds


@functools.lru_cache(maxsize=None)
def program_seconds(source, arguments, build, where):
    return usual_seconds([build.compile_program(source, where), *arguments])


def program_fails(mutant, build, where):
    """The program of ASKED_LAST that notices it, or None. Three times as long as without it is too long."""
    for files, source, *arguments in ASKED_LAST:
        if fnmatch.fnmatch(mutant.file.name, files):
            seconds = program_seconds(source, tuple(arguments), build, where)
            if not asked([build.compile_program(source, where, where / "it.o"), *arguments], 3 * seconds + 1)[0]:
                return source
    return None


@functools.lru_cache(maxsize=None)
def properties_of(module, build):
    """How tests/property is asked of a module: the command, its variables, and the seconds it takes."""
    own = sorted(map(str, (ROOT / "tests/property").glob(f"test_{ASKED_BY.get(module, module)}*.py")))
    command = ["python3", "-m", "pytest", "-q", "-x", "-p", "no:cacheprovider", *(own or ["tests/property"])]
    variables = dict(PYTHONPATH=str(ROOT / "bindings/python"), PYTHONDONTWRITEBYTECODE="1", CI="1",
                     MUSLIN_PROPERTY_EXAMPLES=str(REQUESTS if own else OF_ALL), MUSLIN_PROPERTY_FIRST="1",
                     HYPOTHESIS_STORAGE_DIRECTORY=str(build.work / "hypothesis"))
    usual = str(build.where / "libmuslin.so.1")
    return command, variables, usual_seconds(command, MUSLIN_LIBRARY=usual, **variables)


def properties_fail(mutant, build, where):
    """Whether tests/property notices it. It, too, gets three times as long."""
    command, variables, seconds = properties_of(module_of(mutant), build)
    changed = build.link_shared(mutant.file.stem, where)
    return not asked(command, 3 * seconds + 1, MUSLIN_LIBRARY=changed, **variables)[0]


def sanitizers_fail(mutant, build, suites):
    """The quick suite that notices it with sanitizers, or None. They slow it down, and need many addresses."""
    where = here(build)
    build.compile(mutant.file.name, mutants.mutated(mutant), where)
    names = [suite for suite in suites.for_mutant(mutant) if suites.all[suite]["seconds"] < QUICK]
    suite = suite_fails(names, build, suites, where, patience=10, memory="unlimited")
    return suite and f"sanitizers, {suite}"


def verdict(mutant, build, sanitized, suites, together, same, golden, quick):
    """What becomes of one mutant: `none`, what notices it, or `lives` and whether the digest changed."""
    was_asked, suite = together.suite_fails(mutant)
    if suite:
        return suite
    where = here(build)
    compiled = build.compile(mutant.file.name, mutants.mutated(mutant), where)
    if compiled is None or compiled == same:
        return "none"
    noticed = None if was_asked else suite_fails(suites.for_mutant(mutant), build, suites, where)
    if noticed:
        return noticed
    if quick:
        return LIVES_QUICK
    noticed = (program_fails(mutant, build, where) or sanitizers_fail(mutant, sanitized, suites) or
               (properties_fail(mutant, build, where) and "properties"))
    if noticed:
        return noticed
    done = subprocess.run(["prlimit", "--cpu=60", f"--as={MEMORY}", build.link(GOLDEN, where)], check=False,
                          stdout=subprocess.PIPE, stderr=subprocess.DEVNULL)
    return "lives" if done.stdout == golden else LIVES_CHANGED


class Known:
    """Verdicts of earlier runs, a line each; of a file that was changed since they hold no more."""

    def __init__(self, path):
        self.path = path
        self.lock = threading.Lock()
        self.all = {}
        if path.exists():
            for line in path.read_text(encoding="latin-1").splitlines():
                mark, said, key = line.split("\t", 2)
                self.all[mark, key] = said

    def add(self, mark, key, said):
        with self.lock, open(self.path, "a", encoding="latin-1") as file:
            self.all[mark, key] = said
            print(mark, said, key, sep="\t", file=file)


def equivalents():
    """Keys of mutants that change no answer. A reason stands above those that share it, after a #."""
    path = HERE / "equivalent.txt"
    lines = path.read_text(encoding="utf-8").splitlines() if path.exists() else []
    return {line for line in lines if line and not line.startswith("#")}


def interval(killed, all_):
    """Wilson's interval for the share, 95 in 100."""
    share, z = killed / all_, 1.96
    middle, half = share + z * z / (2 * all_), z * math.sqrt(share * (1 - share) / all_ + z * z / (4 * all_ * all_))
    return (middle - half) / (1 + z * z / all_), (middle + half) / (1 + z * z / all_)


def chance_of_so_many(living, all_):
    """That as many or more live, where the score aimed at is true."""
    return 1 - sum(math.comb(all_, k) * (1 - AIM) ** k * AIM ** (all_ - k) for k in range(living))


def main():
    parser = argparse.ArgumentParser(description=__doc__.split("\n", maxsplit=1)[0])
    parser.add_argument("programs")
    parser.add_argument("covered")
    parser.add_argument("sanitized")
    parser.add_argument("--files", nargs="*", default=["*.c"])
    parser.add_argument("--sample", type=int)
    parser.add_argument("--seed", default="")
    parser.add_argument("--jobs", type=int, default=2)
    parser.add_argument("--again", action="store_true")
    parser.add_argument("--quick", action="store_true")
    asked_for = parser.parse_args()
    os.chdir(ROOT)

    pool = concurrent.futures.ThreadPoolExecutor(asked_for.jobs, "worker")
    build, sanitized = Build(asked_for.programs), Build(asked_for.sanitized)
    suites = Suites(build, asked_for.covered, pool)
    known = Known(build.work / "known.tsv")
    files = [path for path in sorted(ROOT.glob("lib/*.c"))
             if any(fnmatch.fnmatch(path.name, pattern) for pattern in asked_for.files)]
    marks = {path: hashlib.sha256(path.read_bytes()).hexdigest()[:8] for path in files}
    chosen = [mutant for path in files for mutant in mutants.mutants(path, build.options(path.name))]
    print(len(chosen), "mutants in", len(files), "files", flush=True)
    stale = equivalents() - {mutant.key for mutant in chosen} if asked_for.files == ["*.c"] else ()
    if stale:
        raise SystemExit("\n".join(["equivalent.txt names what is no mutant:", *sorted(stale)]))
    if asked_for.sample:
        random.Random(asked_for.seed).shuffle(chosen)  # so that a larger sample holds the smaller one
        chosen = chosen[:asked_for.sample]
    together = Switched(chosen, build, suites)
    read = sorted({mutant.file for mutant in chosen})
    same = dict(zip(read, pool.map(lambda path: build.compile(path.name, path.read_bytes(), here(build)), read)))
    golden = subprocess.run([str(build.where / "tests/golden")], stdout=subprocess.PIPE, check=True).stdout

    def judge(mutant):
        said = known.all.get((marks[mutant.file], mutant.key))
        if said is None or (asked_for.again and said.startswith("lives")):
            said = verdict(mutant, build, sanitized, suites, together, same[mutant.file], golden,
                           asked_for.quick)
            if said != LIVES_QUICK:
                known.add(marks[mutant.file], mutant.key, said)
        return mutant, said

    return report(list(pool.map(judge, chosen)))


def report(judged):
    accepted = equivalents()
    total, living = collections.Counter(), collections.Counter()
    digest = equal = last = 0
    for mutant, said in judged:
        if said == "none":
            continue
        if said.startswith("lives") and mutant.key in accepted:
            equal += 1
            continue
        total[mutant.file.name] += 1
        last += said.startswith(("tests/", "sanitizers", "properties"))
        if said.startswith("lives"):
            living[mutant.file.name] += 1
            digest += said == LIVES_CHANGED
            print(f"lib/{mutant.file.name}:{mutant.line}: {said}: {mutant.key}")
    for name in sorted(total):
        print(f"{name:28} {total[name] - living[name]:5} of {total[name]:5}")
    all_, alive = sum(total.values()), sum(living.values())
    if all_ == 0:
        return 1
    low, high = interval(all_ - alive, all_)
    print(f"{alive} live, {digest} of them change the digest; {equal} change no answer; {last} are noticed by no suite "
          f"but by what is asked last\n{all_ - alive} of {all_} mutants noticed, {100 - 100 * alive / all_:.1f} % "
          f"(95 %: {100 * low:.1f} to {100 * high:.1f})")
    return 1 if chance_of_so_many(alive, all_) < 0.001 else 0


if __name__ == "__main__":
    sys.exit(main())
