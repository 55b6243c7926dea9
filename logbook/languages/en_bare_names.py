"""The words of English around the number that alone names a piece."""

from __future__ import annotations

from logbook.languages.bare_names import BareNames


def _w(*lists: str) -> frozenset[str]:
    return frozenset(word for one in lists for word in one.split())


_KINDS = "straight straights elbow elbows ell ells tee tees wye wyes cap caps offset offsets transition transitions reducer reducers collar collars plenum plenums takeoff takeoffs off register registers branch branches grille jog saddle boot door hanger hangers"
_IS = "is was isn't wasn't ain't 's"

ENGLISH_BARE_NAMES = BareNames(
    name="piece",
    number="number",
    naming=_w(_KINDS, "piece pieces fitting fittings number numbers no mark section sections joint joints duct ducts run runs line lines stick sticks ninety forty-five"),
    kinds=_w(_KINDS, "damper duct piece fitting section joint stick stub"),
    acts=_w("taped stapled rubbed hung closed sealed patched strapped folded grooved trimmed retaped restapled resealed re-taped re-stapled wiped heated warmed ironed screwed capped taping stapling rubbing closing sealing folding shut squeegeed"
            " tape staple hang seal boxed buttoned"),
    handlings=_w("got had put did took left cut built made opened finished set pulled hit kept moved ran brought shoved dropped tested checked"),
    turned_out=_w("closed taped stapled rubbed hung sealed up down open shut done finished in out back off apart together trimmed wiped over cold dry wet inside hanging through with"),
    ways=_w("up down off over out in back all just about already also then only cold around shut through straight today yesterday myself this tonight"),
    shares=_w("all rest most half part much bit end ends side sides top bottom seam seams joint joints corner corners back front left right throat heel flap flaps facing face edge edges board outside inside skin foil panel walls wall length both cheek cheeks female male"),
    things=_w("staples staple tape tapes vanes vane tabs tab screws screw washers washer strap straps hanger hangers support supports rod rods damper dampers hole holes tear tears rip rips gash slit cut cuts dent dents gap gaps leak leaks patch patches repair mastic foil facing scrim flap flaps"
              " groove shiplap seam seams joint joints corner corners collar collars door tap takeoff board insulation wool fiberglass glass dust oil grease dirt water step legs leg throat sleeve liner reinforcement channel test fan gauge pressure static air rub squeegee iron heat spots dots strip strips stuff opening end ends side sides top bottom closure puncture damage sticker clinch entry legs bottom"),
    held=_w("damper dampers vanes vane hole holes tear tears rip rips gash slit cut cuts dent dents gap gaps leak leaks door collar tap takeoff insulation wool air pressure static staples staple screws tape gauge patch step groove opening rods channel reinforcement water puncture liner seam seams joint joints"),
    spaced=_w("straps strap hangers hanger supports support screws screw staples staple rods rod tabs tab trapezes washers washer"),
    joined=_w("joint seam end connection corner tap boot collar sleeve takeoff metal flange cap elbow tee transition reducer unit door hanger strap opening"),
    places=_w("up over here there down back out working"),
    on=_w("on"), inside=_w("in inside into"), of=_w("of"), at=_w("at"), to=_w("to"), of_use=_w("for"), along=_w("with"), where=_w("where when while before after once until till"),
    going=_w("went going got came come back switched skipped"),
    back=_w("back"),
    busy=_w("i'm we're am was i've started starting working start back worked he's"),
    now=_w("now today currently"),
    troubles=_w("trouble problem problems careful done happy finished wrong"),
    is_=_w(_IS),
    has=_w("has had got gets needs needed comes came goes went sits sat took fell lost doesn't didn't hasn't hadn't won't leaks leaked held never still stood stands"),
    meets=_w("goes went meets met joins joined butts butted ties tied comes came hits lands sits connects connected slides slid enters hooks turns leaves"),
    states=_w("taped stapled rubbed hung closed sealed patched strapped folded grooved trimmed up done finished wet torn ripped crushed dented open shut hanging retaped restapled untaped unstapled unrubbed bare leaking boxed buried installed tight stuck dry ready built made cut tested screwed supported unsupported heated wiped missing"),
    barely=_w("not all still now only just already almost both never fully completely finally being about also nearly"),
    leads=_w("and but so because since that if though although yet then okay ok well yeah hey until till while when where once before after think know sure cause 'cause note down count say says said guess"),
    moves=_w("moves moved takes took brings brought kicks kicked shifts shifted drops dropped raises raised jogs offsets"),
    directions=_w("in out over up down across"),
    behind=_w("and but so then or with without where when while before after because 'cause cause since as at on to from for off over through around under inside outside into onto"
              " the a an my our its his it i we he they you she nobody somebody someone today yesterday tomorrow tonight monday tuesday wednesday thursday friday saturday sunday later soon last next now here there too also again all both cold dry wet up down out back in"
              " this that these those until till if though although except instead once every still already just only never not no nor"
              " stapled taped rubbed hung closed sealed patched done shut open myself alone okay ok right long yet first last next which who",
              _IS, "are were aren't weren't has had got gets needs needed comes came goes went sits sat took fell lost doesn't didn't hasn't hadn't won't don't leaks leaked held stood stands weighs weighed looks looked meets joins butts ties hits lands connects slides leaves moves fits fit takes ended can can't could couldn't will would wouldn't should must might have haven't did does do got"),
    points=_w("the that this my our"),
    turns=_w("elbow elbows ell ells wye offset offsets jog"),
    thru=_w("through thru"),
    are=_w("are is were was 're"),
    pronouns=_w("it them there each every the a"),
    fillers=_w("okay ok so well alright right yeah yes hey and now , um uh this is"),
    doubts=_w("maybe or about correction think probably actually sorry give"),
    denials=_w("not no i more"),
    off=_w("off except"),
    sloped=_w("moves moved offset offsets transition transitions slope sloped slopes taper tapers kicks kicked jogs drops rises shifts shifted reducer"),
)  # fmt: skip
