"""People of a job: list them, add one, give one a key, or take him off."""

from __future__ import annotations

import sys


def configure(parser) -> None:
    from logbook.wording import say

    parser.add_argument("--folder", default="uploads", help=say("people.folder-help", "en"))
    acts = parser.add_subparsers(dest="act", metavar="ACT")
    add = acts.add_parser("add", help=say("people.add-help", "en"))
    add.add_argument("name", metavar="NAME")
    add.add_argument("--role", default="installer", help=say("people.role-help", "en"))
    add.add_argument("--key", action="store_true", help=say("people.key-help", "en"))
    for act in ("leave", "erase"):
        one = acts.add_parser(act, help=say(f"people.{act}-help", "en"))
        one.add_argument("name", metavar="NAME")
    one.add_argument("--only-look", action="store_true", help=say("erasing.only-look-help", "en"))


def run(args) -> int:
    from logbook import store
    from logbook.mistake import OK, Mistake

    folder = store.open_folder(args.folder)
    if isinstance(folder, Mistake):
        return _refused(folder)
    with folder:
        if args.act is None:
            return _list(folder)
        act = {"add": _add, "leave": _leave, "erase": _erase}[args.act]
        refused = act(folder, args)
    return OK if refused is None else _refused(refused)


def _list(folder) -> int:
    from logbook.mistake import OK
    from logbook.store import people

    for person in people.everybody(folder.db):
        print("\t".join((person.id, person.name or "-", person.role, f"-{person.left_at}" if person.left_at else "")).rstrip())
    return OK


def _add(folder, args):
    """The key is printed here once, alone on standard output; everything else goes to standard error."""
    from datetime import UTC, datetime

    from logbook import store
    from logbook.mistake import Mistake
    from logbook.store import people
    from logbook.wording import say

    now = datetime.now(UTC)
    with store.writing(folder) as db:
        known = people.by_name(db, args.name)
        same = known is not None and known.role == args.role and known.left_at is None and args.key
        person = known if same else people.add(db, args.name, args.role, now)
        if isinstance(person, Mistake):
            return person
        if not same:
            store.journal.write(db, "person-added", {"person": person.id, "role": person.role}, person.name)
        key = None
        if args.key:
            device, key = people.give_device(db, person.id, "script", say("people.key-called", "en"), now)
            store.journal.write(db, "key-given", {"person": person.id, "device": device.id}, None)
    print(say("people.added", "en", id=person.id, name=person.name, role=person.role), file=sys.stderr)
    if key is not None:
        print(say("people.key-once", "en"), file=sys.stderr)
        print(key)
    return None


def _leave(folder, args):
    from datetime import UTC, datetime

    from logbook import store
    from logbook.mistake import Mistake
    from logbook.store import people
    from logbook.wording import say

    now = datetime.now(UTC)
    with store.writing(folder) as db:
        person = people.by_name(db, args.name) or people.person(db, args.name)
        if person is None:
            return Mistake("people.nobody", "NAME", {"name": args.name})
        people.leave(db, person.id, now)
        store.journal.write(db, "person-left", {"person": person.id}, None)
    print(say("people.leave-done", "en", id=person.id), file=sys.stderr)
    return None


def _erase(folder, args):
    """What goes and what stays is printed before and after: whoever was asked to forget has to answer for the rest."""
    from logbook.mistake import Mistake
    from logbook.store import erasing, people
    from logbook.wording import say

    person = people.by_name(folder.db, args.name) or people.person(folder.db, args.name)
    if person is None:
        return Mistake("people.nobody", "NAME", {"name": args.name})
    if args.only_look:
        goes, stays = erasing.told(erasing.standing(folder, person), folder.job, "en")
        print(say("erasing.goes", "en"), *(f"- {line}" for line in goes), say("erasing.stays", "en"), *(f"- {line}" for line in stays), sep="\n")
        return None
    done = erasing.erase(folder, person.id, None)
    if isinstance(done, Mistake):
        return done
    print(say("erasing.done", "en", id=person.id, seq=done.seq), file=sys.stderr)
    print(say("erasing.stays", "en"), *(f"- {line}" for line in erasing.told(done.standing, folder.job, "en")[1]), sep="\n")
    return done.left


def _refused(mistake) -> int:
    from logbook.mistake import BAD
    from logbook.wording import say

    for part in ("error", "cure"):
        print(say(f"{mistake.key}.{part}", "en", **mistake.values), file=sys.stderr)
    return BAD
