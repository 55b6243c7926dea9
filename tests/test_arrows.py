"""The path of a note is the order of the imports: a stage imports only what stands above it in this list.

Edges (decoding, hearing, store, paper, web, cli, …) may import stages and each other; no stage imports an edge,
and the libraries of an edge are imported nowhere else.
"""

import ast
from functools import cache
from pathlib import Path

import pytest

import logbook

HOME = Path(logbook.__file__).parent

SPINE = (
    "record", "mistake", "measure", "wording", "facts", "labels", "limits", "schedule", "job", "intake", "transcript", "said",
    "languages", "reading", "clock", "note", "geometry", "air", "photos", "piece", "joining", "runs", "findings", "rules",
    "review", "worklist", "holds", "history", "walk", "lineup", "chain", "day", "handover", "pipeline",
)  # fmt: skip
EDGES = ("decoding", "hearing", "store", "paper", "web", "cli", "lease", "worker", "running", "settings", "demo")
ONLY_IN = {
    "torch": ("hearing",),
    "whisper": ("hearing",),
    "av": ("decoding", "demo"),
    "PIL": ("decoding", "demo"),
    "sqlite_utils": ("store",),
    "sqlite3": ("store",),
    "typst": ("paper",),
    "flask": ("web",),
    "flask_wtf": ("web",),
}
STEPS = ("words", "clauses", "meant", "composed", "names", "own", "undone", "stated", "compared", "pieces")  # of the reading of a text
FORBIDDEN_NAMES = {"utils", "util", "helpers", "helper", "common", "misc", "models", "views", "manager", "managers"}


def modules():
    return sorted(HOME.rglob("*.py"))


@cache
def arrows(path: Path) -> tuple[ast.Import | ast.ImportFrom, ...]:
    """Every import of a file, at any depth; each file is parsed once for all tests."""
    return tuple(node for node in ast.walk(ast.parse(path.read_text(encoding="utf-8"))) if isinstance(node, ast.Import | ast.ImportFrom))


def imports(path: Path):
    """Top-level names that a file imports: (part of logbook or None, library)."""
    for node in arrows(path):
        if isinstance(node, ast.Import):
            names = [alias.name for alias in node.names]
        elif node.level == 0 and node.module:
            # "from logbook import x" names a part; "from logbook.x import y" has it in the module
            names = [f"logbook.{a.name}" for a in node.names] if node.module == "logbook" else [node.module]
        else:
            continue
        for name in names:
            head, *rest = name.split(".")
            yield (rest[0] if head == "logbook" and rest else None), head


def part(path: Path) -> str:
    return path.relative_to(HOME).parts[0].removesuffix(".py")


def test_every_part_has_its_place():
    parts = {part(path) for path in modules()} - {"__init__", "__main__"}
    assert parts <= set(SPINE) | set(EDGES), "a new part of the package belongs into SPINE or EDGES"
    assert set(SPINE) | set(EDGES) <= parts, "a part that is gone still stands in SPINE or EDGES"


def test_no_stage_imports_from_below_or_from_an_edge():
    wrong = [
        f"{path.relative_to(HOME)} imports {target}"
        for path in modules()
        if part(path) in SPINE
        for target, _ in imports(path)
        if target and target != "__version__" and target != part(path)
        and (target not in SPINE or SPINE.index(target) > SPINE.index(part(path)))
    ]  # fmt: skip
    assert wrong == []


def folders(path: Path, part_of: str) -> list[str]:
    """The folders of a part of the package that a file imports from, its top as ""."""
    named = []
    for node in arrows(path):
        if isinstance(node, ast.ImportFrom) and node.module and node.module.split(".")[:2] == ["logbook", part_of]:
            inside = node.module.split(".")[2:]
            named += inside[:1] if inside and (HOME / part_of / inside[0]).is_dir() else [""]
    return named


def test_the_steps_of_reading_are_the_folders_of_the_reader():
    assert {path.parent.name for path in (HOME / "reading").glob("*/*.py")} == set(STEPS)


def test_no_step_of_reading_imports_from_a_later_one():
    wrong = [
        f"reading/{step}/{path.name} imports from {other or 'the top'}"
        for place, step in enumerate(STEPS)
        for path in sorted((HOME / "reading" / step).glob("*.py"))
        for other in folders(path, "reading")
        if other not in STEPS[: place + 1]
    ]
    assert wrong == []


def test_english_knows_nothing_of_spanish_and_no_shape_of_words_knows_a_language():
    assert [path.name for path in (HOME / "languages" / "en").glob("*.py") if "es" in folders(path, "languages")] == []
    assert [path.name for path in (HOME / "languages").glob("*.py") if path.name != "__init__.py" and {"en", "es"} & set(folders(path, "languages"))] == []


@pytest.mark.parametrize("library", ONLY_IN)
def test_the_library_of_an_edge_stays_there(library):
    wrong = [
        str(path.relative_to(HOME))
        for path in modules()
        if part(path) not in ONLY_IN[library] and any(head == library for _, head in imports(path))
    ]
    assert wrong == []


def test_no_file_is_a_drawer_for_odds_and_ends():
    assert [str(p.relative_to(HOME)) for p in modules() if p.stem in FORBIDDEN_NAMES] == []


def test_relative_imports_do_not_hide_arrows():
    hidden = [
        str(path.relative_to(HOME))
        for path in modules()
        for node in arrows(path)
        if isinstance(node, ast.ImportFrom) and node.level
    ]
    assert hidden == []
