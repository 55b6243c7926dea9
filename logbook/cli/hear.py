"""Turn sound into a transcript: every word with its second and its probability."""

from __future__ import annotations

import argparse
import json
import sys
from pathlib import Path

from logbook.mistake import BAD, OK, Mistake
from logbook.wording import LANGUAGES, say

TONGUE = "en"  # of the command line's own sentences
FAINT = 0.5  # words below this are named under the text


def configure(parser: argparse.ArgumentParser) -> None:
    parser.add_argument("audio", nargs="+", metavar="AUDIO", help="sound files: webm, mp4, m4a, ogg, mp3, flac, wav")
    parser.add_argument("--json", action="store_true", help="print one JSON document")
    parser.add_argument("--language", choices=LANGUAGES, help="the language spoken; without it the ears find it")
    parser.add_argument("--engine", default="whisper", help="whisper, or scripted (prepared transcripts)")
    parser.add_argument("--prepared", type=Path, metavar="DIR", help="folder of prepared transcripts")
    parser.add_argument("--weights", default="base", help="base, small or medium")


def run(args: argparse.Namespace) -> int:
    from logbook.decoding.sound import decode
    from logbook.hearing import engine, second

    ears = engine.make(args.engine, args.prepared, weights=args.weights)
    if isinstance(ears, Mistake):
        return _refuse(ears)
    documents, worst = [], OK
    for name in args.audio:
        sound = decode(name)
        heard = sound if isinstance(sound, Mistake) else second.hear_twice(ears, [sound], [args.language])[0]
        document = {"input": name, **_document(heard, args.language)}
        worst = max(worst, BAD if "error" in document else OK)
        documents.append(document)
        if not args.json:
            _show(document)
    if args.json:
        if len(documents) > 1:
            print(json.dumps({"documents": documents}, ensure_ascii=False, indent=1))
        elif "error" in documents[0]:
            print(json.dumps(documents[0], ensure_ascii=False, indent=1))
        else:
            print(json.dumps({k: v for k, v in documents[0].items() if k != "input"}, ensure_ascii=False, indent=1))
    return worst


def _document(heard, given: str | None) -> dict:
    if isinstance(heard, Mistake):
        return {"error": say(f"{heard.key}.error", TONGUE, **heard.values), "cure": say(f"{heard.key}.cure", TONGUE, **heard.values)}
    from logbook.transcript import to_json

    return to_json(heard) | {"language_from": "given" if given else "ears" if heard.language else None}


def _refuse(mistake: Mistake) -> int:
    document = _document(mistake, None)
    print(document["error"], document["cure"], sep="\n", file=sys.stderr)
    return BAD


def _show(document: dict) -> None:
    if "error" in document:
        print(document["error"], document["cure"], sep="\n", file=sys.stderr)
        return
    seconds = document["words"][-1]["until"] if document["words"] else 0
    print(say("hearing.show.heard", TONGUE, name=document["input"], language=document["language"] or "–", seconds=seconds))
    print("  " + (document["text"] or say("hearing.show.nothing", TONGUE)))
    faint = [word["words"] for word in document["words"] if word["heard"] < FAINT]
    if faint:
        print("  " + say("hearing.show.faint", TONGUE, words=", ".join(faint)))
    for stretch in document["unheard"]:
        why = say(f"hearing.why.{stretch['why']}", TONGUE)
        print("  " + say("hearing.show.unheard" if stretch["until"] > stretch["second"] else "hearing.show.at", TONGUE, second=stretch["second"], until=stretch["until"], why=why))
