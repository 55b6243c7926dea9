"""Every act with all that takes it back: none is read as whole. The acts and the words stand in `cases/reading/taken_back.toml`."""

from __future__ import annotations

import tomllib

from reading_cases import CASES

from logbook.reading import read


def taken_back():
    """Every act with everything that takes it back; words of sides stay with what has sides."""
    data = tomllib.loads((CASES / "taken_back.toml").read_text(encoding="utf-8"))
    for act, (name, lead) in data["acts"].items():
        sided = name in ("stapled", "taped", "rubbed_down")
        for words in (*data["words"]["all"], *data["words"].get(act.rstrip("2"), ())):
            if sided or not any(side in words for side in ("bottom", "top", "sides", "foot", "back")):
                yield name, f"{lead}, {words}." if len(words) % 2 else f"{lead}. {words[0].upper()}{words[1:]}."


def test_an_act_is_never_whole_where_the_words_behind_take_it_back():
    whole = []
    for name, text in taken_back():
        entry = read(text, language="en").fittings[0]
        fact, sides = entry.fact(name), entry.fact(f"sides_{name}") if name in ("stapled", "taped") else None
        if fact is not None and fact.value is True and not fact.hedged and not entry.open_items and (sides is None or sides.value == 4):
            whole.append(text)
    assert whole == []
