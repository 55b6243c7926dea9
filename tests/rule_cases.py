"""The cases that the rules' own code can answer, read from its source: rule id -> (cases, sentences)."""

from __future__ import annotations

import ast
import inspect
import sys
from functools import cache

from logbook.findings import VERDICTS, Rule

ANSWERS = ("meets", "departs", "unsaid", "unclear", "answer")
SPELLED = {  # cases that the code puts together from words
    "sizes-said": {"inlet-unsaid", "outlet-unsaid", "branch-unsaid"},
    "staple-clinch": {"outward", "inward"},
    "span-unreinforced": {"table-empty"},  # of the whole job
    "photo-reused": {"same-bytes", "same-pixels", "same-moment"},
}
SENTENCES = {
    "staple-clinch": {"inward-wrong", "outward-wrong"},
    "tape-width": {"heat", "any-board", "too-narrow-heat", "too-narrow-any-board"},
    "all-sides": {"four-sides_stapled", "four-sides_taped"},
    "sizes-agree": {"one-move"},
    "transition-slope": {"square-step", "said-within", "said-too-steep"},
}
SHARED = {"in-conflict", "maybe-misheard", "heard-faintly", "hedged", "hedged-at-the-limit", "not-understood"}


def cases(rule: Rule) -> set[str]:
    """Every case of a rule, also those of the functions that it calls in its own file."""
    found = set(SPELLED.get(rule.id, ()))
    for function in _reached(rule.judge):
        for node in ast.walk(function):
            if isinstance(node, ast.Call) and node.args and _name(node.func) in ANSWERS:
                found |= _words(node.args[0])
            elif isinstance(node, ast.Assign) and getattr(node.targets[0], "id", "") == "case":
                found |= _words(node.value)
            elif isinstance(node, ast.MatchValue) and rule.id == "mark-said":
                found |= _words(node.value) - {"no-mark"}  # a mark that was not said is told as unsaid
            elif isinstance(node, ast.Return) and isinstance(node.value, ast.Constant) and isinstance(node.value.value, str):
                found |= _words(node.value) if rule.id == "transition-slope" else set()
            elif isinstance(node, ast.Tuple) and len(node.elts) > 3 and set(_words(node.elts[1])) & set(VERDICTS):
                found |= _words(node.elts[0])
    return found


def sentences(rule: Rule) -> set[str]:
    """Sentences where one case has several."""
    found = set(SENTENCES.get(rule.id, ()))
    for function in _reached(rule.judge):
        for node in ast.walk(function):
            if isinstance(node, ast.keyword) and node.arg == "text":
                found |= _words(node.value)
            elif isinstance(node, ast.Assign) and getattr(node.targets[0], "id", "") == "text":
                found |= _words(node.value)
    return found


def _reached(judge) -> list[ast.FunctionDef]:
    functions = _functions(judge.__module__)
    reached, waiting = {}, [judge.__name__]
    while waiting:
        name = waiting.pop()
        if name in functions and name not in reached:
            reached[name] = functions[name]
            waiting += [node.id for node in ast.walk(functions[name]) if isinstance(node, ast.Name)]
    return list(reached.values())


@cache
def _functions(module: str) -> dict[str, ast.FunctionDef]:
    tree = ast.parse(inspect.getsource(sys.modules[module]))
    return {node.name: node for node in tree.body if isinstance(node, ast.FunctionDef)}


def _name(node) -> str:
    return node.attr if isinstance(node, ast.Attribute) else getattr(node, "id", "")


def _words(node) -> set[str]:
    """The words that an expression may be: a constant, or both sides of a choice."""
    if isinstance(node, ast.Constant) and isinstance(node.value, str):
        return {node.value}
    return _words(node.body) | _words(node.orelse) if isinstance(node, ast.IfExp) else set()
