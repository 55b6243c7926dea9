"""The words of English around the number that alone names a piece."""

from __future__ import annotations

from logbook.languages.bare_names import BareNames


def _w(*lists: str) -> frozenset[str]:
    return frozenset(word for one in lists for word in one.split())


_KINDS = "straight straights elbow elbows ell ells tee tees wye wyes cap caps offset offsets transition transitions reducer reducers collar collars plenum plenums takeoff takeoffs take-off register registers branch branches grille jog saddle boot door hanger hangers"
_IS = "is was isn't wasn't ain't 's"

ENGLISH_BARE_NAMES = BareNames(
    name="piece",
    names="pieces",
    number="number",
    naming=_w(_KINDS, "piece pieces fitting fittings number numbers no mark section sections joint joints duct ducts run runs line lines stick sticks ninety forty-five"),
    kinds=_w(_KINDS, "damper box main duct piece fitting section joint stick stub"),
    acts=_w("taped stapled rubbed hung closed sealed patched strapped folded grooved trimmed retaped restapled resealed re-taped re-stapled wiped heated warmed ironed screwed capped taping stapling rubbing closing sealing folding shut squeegeed hook hooked ripped shot checked chckd finishd finished doing tackled reworked repaired plugged buried bury holding ironed cleaned hauled folded skipped"
            " tape staple hang seal boxed buttoned"),
    handlings=_w("got get had have put did do took take left leave built made opened set pulled pull hit kept keep moved ran brought shoved dropped tested want wanted need needed found saw shoved slid slide see carry carried bring throw threw"),
    turned_out=_w("closed taped stapled rubbed hung sealed up down open shut done finished in out back apart together trimmed wiped over cold dry wet inside hanging through with home before after"),
    ways=_w("up down off over out in back all just about already also then only cold around shut through straight today yesterday myself this tonight"),
    shares=_w("all rest most half part much bit end ends side sides top bottom seam seams joint joints corner corners back front left right throat heel flap flaps facing face edge edges board outside inside skin foil panel walls wall length both cheek cheeks female male"),
    things=_w("rag brush pass coat box sticker checklist throat staples staple tape tapes vanes vane tabs tab screws screw washers washer strap straps hanger hangers support supports rod rods damper dampers hole holes tear tears rip rips gash slit cut cuts dent dents gap gaps leak leaks patch patches repair mastic foil facing scrim flap flaps"
              " groove shiplap seam seams joint joints corner corners collar collars door tap takeoff board insulation wool fiberglass glass dust oil grease dirt water step legs leg throat sleeve liner reinforcement channel test fan gauge pressure static air rub squeegee iron heat spots dots strip strips stuff opening end ends side sides top bottom closure puncture damage sticker clinch entry legs bottom"),
    held=_w("damper dampers vanes vane hole holes tear tears rip rips gash slit cut cuts dent dents gap gaps leak leaks door collar tap takeoff insulation wool air pressure static staples staple screws tape gauge patch step groove opening rods channel reinforcement water puncture liner seam seams joint joints"),
    spaced=_w("straps strap hangers hanger supports support screws screw staples staple rods rod tabs tab trapezes washers washer"),
    joined=_w("joint seam end connection corner tap boot collar sleeve takeoff metal flange cap elbow tee transition reducer unit door hanger strap opening"),
    placed=_w("up over here there down back out working"),
    on=_w("on"), inside=_w("in inside into"), of=_w("of"), at=_w("at"), to=_w("to"), of_use=_w("for"), along=_w("with"), where=_w("where when while before after once until till"),
    going=_w("went going got came come back switched skipped moved moving jumped"),
    back=_w("back"),
    busy=_w("i'm we're am was i've started starting working start back worked he's"),
    now=_w("now today currently"),
    troubles=_w("trouble problem problems careful done happy finished wrong"),
    is_=_w(_IS),
    has=_w("would wouldn't will can't couldn't should passed failed tested runs ran moved moves joins weighs reads says lacked lacks lifted leaked tore stands ends ended turned looks sees went has had got gets needs needed comes came goes went sits sat took fell lost doesn't didn't hasn't hadn't won't leaks leaked held never still stood stands"),
    meets=_w("goes went meets met joins joined butts butted ties tied comes came hits lands sits connects connected slides slid enters hooks turns leaves"),
    states=_w("complete completed taped stapled rubbed hung closed sealed patched strapped folded grooved trimmed up done finished wet torn ripped crushed dented open shut hanging retaped restapled untaped unstapled unrubbed bare leaking boxed buried installed tight stuck dry ready built made cut tested screwed supported unsupported heated wiped missing"),
    barely=_w("not all still now only just already almost both never fully completely finally being about also nearly"),
    leads=_w("and but so because since that if though although yet then okay ok well yeah hey until till while when where once before after think know sure cause 'cause me you what where fyi okay ok so well yeah anyway afraid hope figured bet note down count say says said guess"),
    moves=_w("moves moved takes took brings brought kicks kicked shifts shifted drops dropped raises raised jogs offsets"),
    directions=_w("in out over up down across"),
    behind=_w("and but so either then or with without where when while before after because 'cause cause since as at on to from for off over through around under inside outside into onto"
              " the a an my our its his it i we he they you she nobody somebody someone today yesterday tomorrow tonight monday tuesday wednesday thursday friday saturday sunday later soon last next now here there too also again all both cold dry wet up down out back in"
              " this that these those until till if though although except instead once every still already just only never not no nor"
              " stapled taped rubbed hung closed sealed patched done shut open myself alone okay ok right long yet first last next which who",
              _IS, "are were aren't weren't has had got gets needs needed comes came goes went sits sat took fell lost doesn't didn't hasn't hadn't won't don't leaks leaked held stood stands weighs weighed by come outta exept would will joins lacked went w abt w/o its n r says said reads read shows showed complete about right straight carrying looks looked meets joins butts ties hits lands connects slides leaves moves fits fit takes ended can can't could couldn't will would wouldn't should must might have haven't did does do got"),
    points=_w("the that this my our"),
    turns=_w("elbow elbows ell ells wye offset offsets jog"),
    to_another=_w("through thru to by"),
    are=_w("are is were was 're"),
    pronouns=_w("it them there each every that this those"),
    fillers=_w("fyi on : okay ok so well alright right yeah yes hey and now , um uh this is hey boss man dude buddy chief bro"),
    doubts=_w("maybe or about correction think probably actually sorry give"),
    denials=_w("not no i more"),
    off=_w("off except"),
    joins=_w(", and & n"),
    places_numbered=_w("room rooms floor floors level bay unit units truck gate gates box page sheet sheets drawing detail door building bldg zone column grid apartment apt suite phase step day week type class gauge size model table figure channel extension shift crew job lot order invoice permit rev version area wing tower lift stair shaft highway route exit interstate local"
                       " section spec aisle dock bin rack shelf station chapter item items line lines row rows ahu rtu vav fcu version january february march april may june july august september october november december monday tuesday wednesday thursday friday saturday sunday"),
    does_so=("ed",),
    lengths=_w("length bit top bottom end back half width much most rest part"),
    units=_w("foot feet inch inches"),
    holes=_w("facing damper hole tear rip gash slit dent leak patch groove seam male female scrim flap"),
    warmth=_w("degree degrees temperature temp hot cold warm heat heated air fan thermometer"),
    got=_w("got get has had 's"),
    people=_w("i we he they she"),
    over=_w("over around round down up through thru inside along across"),
    right=_w("all halfway way partway right clear half"),
    square=_w("square sq"),
    throat=_w("throat"),
    cuts=_w("cut"),
    about=_w("about regarding re concerning"),
    told=_w("you me him them her said told"),
    did=_w("did done do"),
    through=_w("through thru inside"),
    fresh=_w("before fresh new again wrong short too this today yesterday first myself out from"),
    each=_w("each every either both"),
    points_at_one=_w("a an the no its"),
    whole=_w("complete completed done finished taped stapled rubbed sealed hung closed"),
    ones=_w("one"),
    sloped=_w("moves moved offset offsets transition transitions slope sloped slopes taper tapers kicks kicked jogs drops rises shifts shifted reducer"),
    one_thing=_w("joint seam flap facing throat heel groove scrim bottom top left right side"),
    texted=_w("stpl stpld stpled stapld tpd tapd tape rub rbd rubd hngd"),
    counted=_w("staples staple screws screw tabs tab washers strips strip pieces sheets rolls roll boxes box times"),
    other_kinds=_w("splitter sleeve slv return trunk damper riser saddle reducer wye stub transition elbow"),
    deeds=_w("got gotta had have haven't hadn't didn't did do don't still only just never left put forgot can't couldn't could need needed want went used ran made built cut already also finally"),
    well=_w("good fine ok okay perfect great nice right"),
    told_of=_w("there it it's there's"),
    spots=_w("by over above under behind near beside below"),
    bosses=_w("boss gc lead super foreman inspector guy guys engineer office helper apprentice electrician plumber sprinkler"),
    onward=_w("on over up down"),
    measuring=_w("measured measure measures ruler wide long deep length width inches"),
    knocks=_w("knocked bumped dragged lost lifted tipped"),
    carriers=_w("lift truck cart horses horse saw scaffold bench table rack dock tailgate ladder pallet trailer stack deck"),
    took=_w("took did built made finished knocked out"),
    minds=_w("thinking thought up wrong mistaken sorry stuck worried stopped"),
    us=_w("me us"),
    in_turn=_w("next other last first second third"),
    that=_w("that this which"),
    thats=_w("thats"),
)  # fmt: skip
