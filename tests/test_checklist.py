"""The installation check list: every question is there, and every rule that it names is in the book."""

from collections import Counter

from logbook import wording
from logbook.rules import BY_ID
from logbook.rules.checklist import CHECKLIST, LEAD, WALK

# Groups and how many questions each has in NAIMA's installation check list: general, board (product), fabrication,
# reinforcement, hanging, and the rest with the signature.
GROUPS = {"g": 4, "p": 3, "f": 9, "r": 3, "h": 3, "s": 4}


def test_all_questions_are_there_once():
    assert [question.id for question in CHECKLIST] == [f"{group}{n + 1}" for group, most in GROUPS.items() for n in range(most)]
    assert Counter(question.id for question in CHECKLIST).most_common(1)[0][1] == 1 and len(CHECKLIST) == 26


def test_every_rule_that_it_names_is_in_the_book():
    named = {name for question in CHECKLIST for name in question.covered_by}
    assert named - set(BY_ID) == {WALK, LEAD}


def test_every_question_is_somebody_s():
    assert [question.id for question in CHECKLIST if not question.covered_by] == []


def test_every_question_has_words_in_every_language_and_no_words_are_left_over():
    keys = {question.asks for question in CHECKLIST}
    for language in wording.LANGUAGES:
        assert {key for key in wording.texts(language) if key.startswith("checklist.")} == keys
