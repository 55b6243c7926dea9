"""The path of a note is the order of the imports: a stage imports only what stands above it in this list.

Edges (decoding, hearing, store, paper, web, cli, …) may import stages and each other; no stage imports an edge,
and the libraries of an edge are imported nowhere else.
"""

import ast
from pathlib import Path

import pytest

import logbook

HOME = Path(logbook.__file__).parent

SPINE = (
    "record", "mistake", "measure", "wording", "facts", "labels", "limits", "schedule", "job", "intake", "transcript", "said",
    "languages", "reading", "note", "geometry", "air", "photos", "piece", "joining", "runs", "findings", "rules",
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
FORBIDDEN_NAMES = {"utils", "util", "helpers", "helper", "common", "misc", "models", "views", "manager", "managers"}


def modules():
    return sorted(HOME.rglob("*.py"))


def imports(path: Path):
    """Top-level names that a file imports, at any depth: (part of logbook or None, library)."""
    for node in ast.walk(ast.parse(path.read_text(encoding="utf-8"))):
        if isinstance(node, ast.Import):
            names = [alias.name for alias in node.names]
        elif isinstance(node, ast.ImportFrom) and node.level == 0 and node.module:
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
        for node in ast.walk(ast.parse(path.read_text(encoding="utf-8")))
        if isinstance(node, ast.ImportFrom) and node.level
    ]
    assert hidden == []
