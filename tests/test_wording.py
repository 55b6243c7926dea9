"""Every text people read stands in both languages, with the same placeholders, and somebody uses it."""

import re
import string
from pathlib import Path

import logbook
from logbook import facts, wording

HOME = Path(logbook.__file__).parent


def placeholders(text: str) -> set[str]:
    return {field for _, field, _, _ in string.Formatter().parse(text) if field is not None}


def test_the_languages_hold_the_same_keys():
    one, other = (set(wording.texts(language)) for language in wording.LANGUAGES)
    assert one == other


def test_the_languages_hold_the_same_placeholders():
    one, other = (wording.texts(language) for language in wording.LANGUAGES)
    assert {key for key in one if placeholders(one[key]) != placeholders(other[key])} == set()


def test_every_placeholder_is_a_plain_name():
    odd = {
        key: field
        for language in wording.LANGUAGES
        for key, text in wording.texts(language).items()
        for field in placeholders(text)
        if not re.fullmatch(r"[a-z_0-9]+", field)
    }
    assert odd == {}


def test_every_mistake_has_a_cure():
    keys = set(wording.texts("en"))
    lonely = {key for key in keys if key.endswith(".error") and key.removesuffix(".error") + ".cure" not in keys}
    lonely |= {key for key in keys if key.endswith(".cure") and key.removesuffix(".cure") + ".error" not in keys}
    assert lonely == set()


def test_no_text_is_empty_and_spanish_is_not_english():
    english, spanish = (wording.texts(language) for language in wording.LANGUAGES)
    assert {k for k in english if not english[k].strip()} | {k for k in spanish if not spanish[k].strip()} == set()
    long_and_same = {k for k in english if english[k] == spanish[k] and len(english[k].split()) > 4}
    assert long_and_same == set()


def test_every_fact_has_a_label():
    for row in facts.FACTS:
        for language in wording.LANGUAGES:
            assert wording.has(f"facts.name.{row.name}", language), row.name


def test_every_value_of_a_choice_has_a_word():
    for row in facts.FACTS:
        if row.shape == "choice" and row.name != "closure_mark":  # a mark is the print itself, in every language
            for value in row.values:
                for language in wording.LANGUAGES:
                    table = "kind" if row.name == "kind" else "value"
                    assert wording.has(f"facts.{table}.{value}", language), (row.name, value)


def test_every_mistake_that_the_code_can_answer_has_its_sentences():
    """A key written in the code without its text would be a failure of the server instead of an answer."""
    import ast
    from pathlib import Path

    import logbook
    from logbook.wording import has

    keys = set()
    for path in sorted(Path(logbook.__file__).parent.rglob("*.py")):
        for node in ast.walk(ast.parse(path.read_text(encoding="utf-8"))):
            if isinstance(node, ast.Call) and getattr(node.func, "id", None) == "Mistake" and node.args and isinstance(node.args[0], ast.Constant):
                keys.add((node.args[0].value, path.name))
    assert len(keys) > 100
    assert [(key, file, language) for key, file in sorted(keys) for language in ("en", "es") if not has(f"{key}.error", language)] == []


def test_the_page_calls_a_run_what_the_reader_hears():
    """A word that the page teaches must be the word that is read: "tramo" is a run to one and a section to another."""
    from logbook import reading

    for language, said in (("en", "Straight 28, {run}, 18 by 12."), ("es", "Pieza recta 28, {run}, 18 por 12.")):
        read = reading.read(said.format(run=wording.say("phone.run", language, run="2")), language=language)
        (entry,) = read.fittings
        assert (entry.fact("mark").value, entry.fact("run").value) == ("28", "2")
