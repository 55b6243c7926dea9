"""English between two clauses that each tell of a piece of their own."""

from __future__ import annotations

from logbook.languages.clauses import Clauses


def _w(words: str) -> frozenset[str]:
    return frozenset(words.split())


_DENIED = "isn't wasn't ain't aren't weren't hasn't haven't hadn't doesn't didn't don't won't can't couldn't never isnt wasnt hasnt doesnt didnt"

ENGLISH_CLAUSES = Clauses(
    joints=_w("and & n but while whereas then so though although plus"),
    leads=_w("then also now still just"),
    people=_w("i we you nobody i'm i've i'll i'd we've we're we'll we'd im ive"),
    it=_w("it"),
    there=_w("there there's theres"),
    points=_w("the that this my our a one"),
    wholes=_w("no nothing everything all none"),
    at_it=_w("on of in with around round for inside off"),
    to_another=_w("to into onto with from against between under over by through"),
    between=_w("between"),
    got_to=_w("got get"),
    verbs=_w(f"is was 's has had got gets needs needed went goes came comes sits sat took takes stays stayed still only just now also looks looked ran runs measures i we all {_DENIED}"),
    of_several=_w("are were aren't weren't have haven't don't 're"),
    past=("ed",),
    short=_w(f"is was 's has had got does did do will would i we too either also still yet not needs one none some so no though it that {_DENIED}"),
    leans=_w("them those these same likewise ditto both neither either too well each other others"),
    binds=_w("if unless whether said says saying told tell asked wants wanted should supposed think thinks thought know knows hope guess sure claims would could might maybe or both each drawing drawings plan plans print prints"),
    binds_ahead=_w("because since until till after"),
    opens=_w("when if after before until till once tomorrow tonight later next monday tuesday wednesday thursday friday saturday because since unless on for with while although though is are did does has have was can"),
    deeds=_w("stapled taped rubbed done finished good fine wiped hung up patched complete"),
    unnamed=_w("run runs line lines"),
)
