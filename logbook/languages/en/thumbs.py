"""What English thumbs write short on a phone: "tr 12 22x12>18x12", "no tpe bot side", "w/o vns", "brd thk 1.5"; and the words whose letters slip."""

from __future__ import annotations

from logbook.languages.en.spelled import ENGLISH_SPELLED
from logbook.languages.en.texted import ENGLISH_TEXTED
from logbook.languages.en.other_names import ENGLISH_OTHER_NAMES
from logbook.languages.thumbs import Short, Thumbs

_NUMBERED = r"\s*#?\s*[a-z]?-?\d"  # a piece's number behind its kind
_SIDES = r"(?<![\w./\"])[0-4]\s*$"
_EVERY = (
    r"\s*@?\s*(?:[1-3](?:\.\d+|\s*[- ]?\s*1/[248])?|[1-4]\.\d+)(?![\d.])\s*(?:\"|in\b|inch)?\s*(?:$|[,.;&+\n]|/(?!\d)|o\.?c\b"
    r"|(?!(?:sds?|sde|sides?|seams?|sm|of|or|to|x|by|in|places|spots|rows|corners|jts?|jnts?|joints?|ends?|pcs?|pieces|brd|bd|board|thk|thick|leg|legs|wide|wd|times|boxes|flaps?|tabs?)\b)"
    r"(?!(?:tpd|tped|tapd|taped|tape|tpe)\s*[0-4]\b(?!\s*(?:[\"./]|of\b|sd|side)))[a-z])"
)
_TAPE = r"(?:\bta?pe?d?\s*[:=-]?\s*[\d. /]+\"?\s*(?:in\b|inch|wide|wd)?\s*(?:wide|wd)?|\bta?pe?d?|\btape[ds]?|✓|✅|✔|\bw/|\bwith)\s*[:=-]?\s*$"
_OVER = r"\s*[\d.]+\s*/\s*\d\d\b"


def _same(pairs: str) -> tuple[Short, ...]:
    """Rows of "short short=meaning" without conditions, one pair a line."""
    rows = []
    for line in pairs.strip().split("\n"):
        shorts, _, means = line.strip().partition("=")
        rows += [Short(one.replace("_", " "), means) for one in shorts.split()]
    return tuple(rows)


def _kinds(pairs: str) -> tuple[Short, ...]:
    """The same, where a number stands right behind."""
    return tuple(Short(one.words, one.means, after=_NUMBERED) for one in _same(pairs))


ENGLISH_THUMBS = Thumbs(
    shorts=(
        *ENGLISH_OTHER_NAMES,
        # kinds, right before the piece's number
        *_kinds(
            """
            acc_dr acc_door accs_dr a/d acdr accdr access_dr=access door
            eqc eq_conn eqp_conn equip_conn eqpt_conn eq_con equip_con eqpt_con eq_cn unit_conn eqconn=equipment connection
            dmpr_slv dmp_slv damp_slv fd_slv fd_sleeve damper_slv dmpr_sleeve dmpr_slve damp_sleeve dslv=damper sleeve
            pl pln plnm plm=plenum
            endc e/c end_cp endcp endcap e_cap ecap=end cap
            t/o=take-off
            brn brch brnch bch=branch
            xition xsition trnsn trnsition trnstn trx tx=transition
            sec sect sctn=section
            coll cllr colr clr=collar
            elbw elbo lbow=elbow
            rpr=repair
            reg rgstr rgst reg_opng=register
            """
        ),
        # acts
        *_same(
            """
            stpld stpd stplled stapld stpled stpl'd stapd stplt=stapled
            tpd tped tapd tpd' tp'd tapped_up=taped
            rbd rbbd rubd rubbd rb'd rbed=rubbed
            rbd_dn rubd_dn rbd_dwn rubd_dwn rubbed_dn rubbed_dwn=rubbed down
            trmd trimd trmmd trm'd=trimmed
            outwd outwrd=outward
            inwd inwrd=inward
            ovr=over
            lft=left
            rgt rght=right
            wpd wipd wpd_dn=wiped
            clnd clned=cleaned
            mstc mast mstk mastc mstic msstc=mastic
            clnch clnsh=clinch
            clinchd clenchd clnchd clnch'd clnced=clinched
            prehtd prht preht pre-htd=preheated
            fixd fxd=fixed
            rprd rpr'd repd reprd rprd'=repaired
            ptchd patchd=patched
            tied+tpd tied&tpd tied/tpd=tied in and taped
            rplcd repl'd repld rplc'd=replaced
            instld instl'd=installed
            rnfcd reinf reinfd rnf=reinforced
            """
        ),
        # things
        *_same(
            """
            tpe=tape
            stpls stpl's stples stpels=staples
            vns vnes t-vanes tvanes trn_vns turn_vns turng_vns=vanes
            fbrc fabrc=fabric
            scrws scrs screwz scrw=screws
            wshrs wshr wshs washrs wshers=washers
            xtabs x-tabs x_tabs xtab x-tab ctabs c-tabs crs_tabs crss_tabs cr_tabs=cross tabs
            tbs=tabs
            jnt jt=joint
            jnts jts=joints
            sm sms=seams
            sds sdes=sides
            sd sde=side
            bott bttm btm botm bot=bottom
            thk thck thik=thick
            lng lgth=long
            dia diam=diameter
            prs pres prss=pressure
            suply sply=supply
            rtn rtrn=return
            exh exhst=exhaust
            fml fmle fem=female
            insl insul insltn=insulation
            trnk trk=trunk
            grv grve=groove
            pnl pnel=panel
            flp=flap
            scrm=scrim
            shwng shwg shown_thru=showing
            shws=shows
            thrt=throat
            cntr ctr ctrs cntrs=center
            dmg dmge damg=damage
            dmgd=damaged
            kitchn kitchin ktchn=kitchen
            punct pnctr punc=puncture
            crshd crsh'd crusht=crushed
            delam delammed delamd dlam=delaminated
            tierods trods=tie rods
            crnr cornr=corner
            sqft sq'_sq_ft=sq ft
            lktst lk_tst leak_tst lk_test lktest lkg_test=leak test
            insd insde=inside
            outsd outsde otsd otsde=outside
            exc cept exept xcpt xcept excpt ecxept=except
            frm=from
            thru=through
            tmrw tmw tmrrw 2moro tomo tmro tmrow 2mrw 2mro=tomorrow
            ltr l8r=later
            abt aprx appx approx=about
            prob probly prolly prbly=probably
            nvr nver=never
            frgt 4got fgt frgot=forgot
            ndd=needed
            nds=needs
            msng mssng missn=missing
            cuz coz bcuz bcz b/c=because
            idk=i don't know
            hngd=hung
            hngrs hgrs=hangers
            hngr hgr=hanger
            shrt=short
            tday 2day=today
            ystrday yday=yesterday
            othr=other
            evry evy=every
            sze sz=size
            brds=boards
            fitg ftg fttg=fitting
            w/o w/out=without
            w/=with
            wrmd warmd=warmed
            heatr htr=heater
            facng fcng=facing
            gonna_do=going to do
            lv lvs=leaves
            gd=good
            nxt=next
            fnsh=finish
            fnshd=finished
            jst=just
            evrything evrythng=everything
            nthng nothin=nothing
            sumthin=something
            oc o.c o/c c-c c/c=on center
            """
        ),
        # where only the neighbours tell
        Short("to", "take-off", before=r"^$", after=_NUMBERED),
        *(Short(ul, "listed tape", after=r"(?:\s+(?:all|around|on|both|rubbed|rub|everywhere)\b|\s*$|\s*[.,;/&+])") for ul in ("ul181", "ul 181", "ul-181")),
        Short("st", "stapled", before=r"(?:^|[.,;:\n/])\s*$", after=r"\s*[/,&+]\s*(?:tp|tape)"),
        Short("/", "to", before=r"\d\s*x\s*\d+\s*$", after=r"\s*\d+\s*x\s*\d"),
        Short("in", "over", before=r"\b(?:ofs|ofst|off|offset|offst)\s*\d+\"?\s*$", after=r"\s*\d"),
        Short("l", "left", before=r"\b(?:off|on|from|frm)\s*$"),
        Short("r", "right", before=r"\b(?:off|from|frm)\s*$"),
        Short("4", "4 sides", before=r"\b(?:tape|taped|tpd)\s*$", after=r"\s*[,/&+]?\s*st\w*\s*[2-4]\b"),
        Short("in", "inches", before=r"\b(?:test|tst|press\w*)\b.{0,20}\d\s*$", after=r"\s*(?:[,;:/\n]|-\s|\d)"),
        Short("r", "run", before=r"(?:test|tst|^lt|\bhn?grs?|hangers?|straps?|supply|sup|return|rtn)\s*(?:on\s*|for\s*|[:-]\s*)?$", after=r"\s?\d"),
        Short("sp", "static", after=r"\s*[:=]?\s*(?:[-+]?\d?\.\d|\d\"?\s*(?:wg|in\b|wc|[,;/\n]|$))"),
        Short("hole", ", hole", before=r"(?:^|[.\n;])\s*[a-z]+[ .]*#?\d+[a-z]?[\s,-]+(?:r(?:un)?\s*\d+[\s,]+)?\d+\s*x\s*\d+\s*$", after=r"\s+(?:in|on|left|right|top|bot\w*|btm|lh|rh|thru|through|near|\d|by|at|w)\b"),
        Short("s/t/r", "stapled, taped, rubbed"),
        Short("s/t/rb", "stapled, taped, rubbed"),
        Short("s/t", "stapled, taped", after=r"\s*(?:[.,;\n]|$|not|no|rub)"),
        Short("stpl", "stapled", after=r"\s*[,/&+]?\s*(?:n\s+|and\s+)?(?:tpd|tped|taped|tapd)\b"),
        Short("stp", "stapled", after=r"\s*[,/&+]?\s*(?:n\s+|and\s+)?(?:tpd|tped|taped|tapd|tp)\b"),
        Short("stpl", "sides stapled,", before=_SIDES, after=r"\s*[,/&+]?\s*[0-4]\s*tpe?d"),
        Short("stpld", "sides stapled,", before=_SIDES, after=r"\s*[,/&+]?\s*[0-4]\s*tpe?d"),
        Short("tpd", "sides taped,", before=_SIDES, after=r"\s*[,/&+]?\s*[0-4]\s*stpl"),
        Short("tpd", "sides taped,", before=r"(?<![\w./\"])[0-4]\s*(?:sds?\s*|sides?\s*)?(?:stp\w*|stapled)\s*[,/&+]?\s*[0-4]\s*$"),
        Short("stpl", "sides stapled,", before=r"(?<![\w./\"])[0-4]\s*(?:sds?\s*|sides?\s*)?(?:tpe?d|taped)\s*[,/&+]?\s*[0-4]\s*$"),
        Short("stpld", "sides stapled,", before=r"(?<![\w./\"])[0-4]\s*(?:sds?\s*|sides?\s*)?(?:tpe?d|taped)\s*[,/&+]?\s*[0-4]\s*$"),
        Short("stpl leg", "staple leg, every", before=r"\d/\d+\s*(?:\"|in)?\s*$", after=r"\s*[\d.]+\s*(?:\"|in)?\s*(?:oc|o\.c|apart)"),
        Short("stpl leg", "staple leg", before=r"(?:\d/\d+|\.\d+)\s*(?:\"|in)?\s*$"),
        Short("stpl leg", ", staple leg", before=r"(?:\d|\"|in)\s*$"),
        *(Short(one, f", {one}", before=r"\d\s*x\s*\d+\s+$", after=r"\s*\"?\s*(?:in\s*)?(?:legs?|stpls?|staples?|wg|wc|static|sp)\b") for one in ("3/8", "1/2", "5/8", "9/16", "1/4")),
        *(Short(one, "board,", before=r"(?:^|[\s,])(?:1|1\.5|1[ -]1/2|2)\s*(?:\"|in|inch)\s*$", after=r"\s*[\d.]|\s*(?:tape|tpe|tpd|stpl)") for one in ("brd", "bd", "thk brd", "thick brd")),
        *(Short(one, f"{one} inch,", before=r"\b(?:brd|bd|board)\s*[:=]?\s*(?:is\s*)?$", after=r"\s*(?:ta?pe?d?|taped|st\w+|clnch\w*|\d)\b") for one in ("1", "1.5", "2")),
        *(Short(one, f"{one} inch", before=r"\b(?:brd|bd|board)\s*[:=]?\s*(?:is\s*)?$", after=r"\s*(?:[,;\n]|/(?!\d)|$|(?!in\b|inch|x)[a-z])") for one in ("1", "1.5", "2")),
        *(Short(one, f"{one} inch", before=r"\b(?:tape|tpe|tp)\s*[:=]?\s*$", after=r"\s*(?:181|[ph]\b|wide|wd)") for one in ("2", "2.5", "3")),
        *(Short(f"{one}/4", f"{one} sides", before=r"\b(?:st\w+|ta?pe?d?|taped)\s*[:=]?\s*$", after=r"\s*[,;]?\s*(?:ta?pe?d?|taped|st\w+)\s*[:=]?\s*[0-4]/4") for one in "1234"),
        *(Short(f"{one}/4", f"{one} sides,", before=r"[0-4]/4\s*[,;]?\s*(?:st\w+|ta?pe?d?|taped)\s*[:=]?\s*$") for one in "1234"),
        *(Short(one, f"{one} board,", before=r"(?:wg|wc|static|\",?|[,/])\s*$", after=r"\s*(?:no\b|stp|s/t|w/|tie|rods?)") for one in ("475", "800", "1400")),
        Short("rods", "tie rods", before=r"(?<!tie)(?<!tie\s)(?:\b(?:no|without|w/o|need|needs|nd|w/|with|wo|forgot|got)\s*|[,;.]\s*)$"),
        Short("tape ovr", "taped over", before=r"[,;/]\s*$"),
        Short("tape over", "taped over", before=r"[,;/]\s*$", after=r"\s*(?:it\b|[,.;/\n]|$)"),
        Short("sd", "sides", before=r"[02-4]\s*$"),
        Short("stpl", "stapled", after=r"\s*(?:all\s*)?[0-4]\s*(?:sds?|sides?)\b"),
        Short("in", "inches wide", before=r"181\s?-?a?-?\s?[ph]\s*[,/]?\s*[\d.]+\s*$"),
        Short('"', '" wide', before=r"181\s?-?a?-?\s?[ph]\s*[,/]?\s*[\d.]+\s*$", after=r"(?!\s*(?:w\.?g|w\.?c|static|sp\b|line|oc|leg|stpl|staple))"),
        Short("x", "n/a", before=r"\b(?:st\w*|ta?pe?d?|taped|rub|rbd|rubbed|vns|vanes|trim|trmd|wiped|wpd|tabs)\s*$", after=r"\s*(?:[,;/\n]|$)"),  # a cross, or a tick
        Short("ea side", "on each side", before=r"\d\"?\s*$"),
        Short("s+t", "stapled, taped"),
        Short("s&t", "stapled, taped"),
        Short("in", "off the", before=r"\d\s*x\s*\d+\s*$", after=r"\s*\d+\s*x\s*\d"),
        *(Short(one, f"{one} sides", before=r"\bst\w+\s*$", after=r"\s*[/&+]?\s*(?:tpd|taped)\s*[0-4]\b(?![\"./]|\s*(?:sd|side|of\b|in\b|inch))") for one in "234"),
        *(Short(one, f"{one} sides,", before=r"\bst\w+\s*[0-4]\s*(?:sds?|sides?)?\s*[/&+]?\s*(?:tpd|taped)\s*$", after=r"(?![\"./\d]|\s*(?:in|inch|inches)\b)") for one in "1234"),
        Short("dr", "access door", before=r"^$|[\n;]\s*$", after=_NUMBERED),
        Short("ds", "damper sleeve", before=r"^$|[\n;]\s*$", after=_NUMBERED),
        Short("lt", "leak test", before=r"^$|[\n;]\s*$", after=r"\s*r(?:un)?\s*\d"),
        *(Short(f"air {out}{end}", f"air leaves by {means}", after=r"\s*(?:[,.;/\n]|$)") for out in ("", "out ", "by ") for end, means in (("f", "female"), ("fem", "female"), ("female", "female"), ("m", "male"), ("male", "male"))),
        *(Short(f"all {one}", "all 4 sides taped", before=r"[0-3]\s*(?:sds?|sides?)\s*st\w+\s*,?\s*$") for one in ("tpd", "taped")),
        Short("pre heat", "preheat"),
        *(Short(one, means, before=r"(?:^|\br(?:un)?\s?\d+[,/]?|[,/])\s*$", after=r"\s*(?:[,/;\n]|$|\d)") for one, means in (("sup", "supply"), ("ret", "return"))),
        Short("stpl", "staple leg, every", before=r"(?:^|[\s,/])(?:1/2|3/8|5/8|9/16|7/16|\.5)\s*(?:\"|in)?\s*$", after=r"\s*@?\s*[\d.]+\s*(?:\"|in)?\s*(?:oc|o\.c)"),
        Short("out", "clinched outward", before=r"\b(?:oc|o\.c\.?)\s*$"),
        Short("in", "clinched inward", before=r"\b(?:oc|o\.c\.?)\s*$", after=r"\s*(?:[,.;/\n]|$|tpd|taped|tape)"),
        Short("in", "inch wide", before=r"\b(?:w|w/|with|wth)\s*[\d.]+\s*$", after=r"\s*181"),
        Short('"', '" wide', before=r"\b(?:w|w/|with|wth)\s*[\d.]+\s*$", after=r"\s*181"),
        Short("in", "come in", before=r"\b(?:all|all 4|4)\s*(?:sds|sides)\s*$", after=r"\s*\d"),
        *(Short("in", "over", before=rf"\b{one}\s*$", after=r"\s*\d") for one in ("ofs", "ofst", "offset", "offst")),
        Short("ofs", "offset", before=r"\d\"\s*$"),
        Short("r side", "on the right side,", before=r"\b(?:hole|puncture|tear|rip|dent)\s*[\d/.]+\"?\s*$"),
        Short("l side", "on the left side,", before=r"\b(?:hole|puncture|tear|rip|dent)\s*[\d/.]+\"?\s*$"),
        *(Short(one, ", vanes", before=r"\b(?:90|45|60|30)\s*(?:deg)?\s*$") for one in ("vanes", "vns")),
        Short("r", "throat radius", before=r"\b(?:el|elb|elbow|vanes|vns|pc|90|45)\b.{0,12}$", after=r"\s*=\s*\d"),
        *(Short(f"{one}s", f"{one} sides", after=r"\s*(?:stp|stapl|ta?pe?d|taped)") for one in "234"),
        Short("tabs:", "tabs", after=r"\s*\d+\s*of\s*\d+"),
        Short("tv", "vanes", before=r"\b(?:90|45|60|no|w/|with|without|w/o)\s*$"),
        *(Short(one, f"{one} inch", before=r"(?:^|[\s,;/])$", after=r"\s*(?:brd|bd)\b") for one in ("1", "1.5", "2")),
        Short("no warm up", "no preheat"),
        Short("stpl", "staple", after=r"\s*legs?\b"),
        Short("s t r", "stapled, taped, rubbed", after=r"\s*(?:[.,;/\n]|$)"),
        Short("w", "wye", before=r"^$", after=r"-?\d+\s+\d+x"),
        *(Short(one, side, before=r"(?:^|[,;/.\n]|\d)\s*$", after=r"\s+(?:flat|lvl|level|sd|side|stays|str8)\b") for one, side in (("l", "left"), ("r", "right"), ("b", "bottom"), ("t", "top"))),
        Short("w", "with", after=r"\s*\d+\s*x|\s*[\d.]+\s*(?:in\b|inch|\")|\s+(?:vns|vanes|no|an?|the|tape|tpe|stpl|staples|mastic|mstc|br|br\w*|mast|half|quarter|cloth|duct|masking|foil|listed|heat|silver|gr[ae]y|wide|long|short|screws?|washers?|tabs?|dust|grease|glue|wet|cold|my|our|his|that|this|some|all|one|two|three|just|only|both)\b"),
        Short("l", "left", after=_OVER),
        Short("r", "right", after=_OVER),
        Short("t", "top", after=_OVER),
        Short("b", "bottom", after=_OVER),
        Short("t", "top", after=r"\s+(?:dn|down|up|in|out|flat|lvl|level|comes|drops)\b"),
        Short("b", "bottom", after=r"\s+(?:dn|down|up|in|out|flat|lvl|level|comes|raises)\b"),
        Short("brd", "the board", before=r"\b(?:warmed|warmd|wrmd|heated|htd|preheated|wiped|wpd|warm|heat)\s*$"),
        Short("brd", "board"),
        Short("bd", "board", before=r"\d\"?\s*(?:in|inch)?\s*$|\b(?:475|800|1400)\s*$"),
        Short("bd", "board", after=r"\s*[:=-]?\s*(?:is\s*)?\d|\s+thick|\s+thk"),
        Short("tp", "top", after=r"\s+(?:dn|down|in|out|up|lvl|level|flat|drops|comes|side|sd|sde|tpd|and bot|& bot|n bot)\b"),
        Short("tp", "tape", before=r"\b(?:no|w/o|w/|without|with|nd|need|needs|more|put|the|out of|forgot|cloth|foil)\s*$"),
        Short("tp", "tape", after=r"\s*(?::|=|-|\?|on\b|not\b|isnt|wont|\d|181|✓|✗|y\b|n\b|yes|no\b)"),
        Short("181p", "181A-P"),
        Short("-", "n/a", before=r"\b(?:stap|stp|tap|tpe|rub|vane|vns|trim|wip|tab)\w*\s*[:=]\s*$", after=r"-*\s*(?:[,;/\n]|$)"),
        *(Short(one, ",", before=_TAPE, after=r"(?![\w'-])") for one in ("p", "h")),  # a grade is no listing: the print on it was not told
        Short("tape", "taped", after=r"\s+[ph]\b(?![\w'-])"),
        Short("f", "female", before=r"\b(?:air|lv|lvs|leaves|out|by|off|from|frm|fr|end)\s*[:=-]?\s*$", after=r"\s*(?:end\b|[,.;\n/]|$)"),
        Short("m", "male", before=r"\b(?:air|lv|lvs|leaves|out|by|off|from|frm|fr|end)\s*[:=-]?\s*$", after=r"\s*(?:end\b|[,.;\n/]|$)"),
        Short("fr", "from", after=r"\s+(?:the\s+)?(?:f|m|fem|female|male|fml|ml|mle)\b"),
        Short("stp", "step", after=r"\s+(?:in|out|inside|outside|insd|outsd|ins|facing|faces)\b"),
        Short("ins", "inside", before=r"\b(?:step|stp|groove|grv)\s*$"),
        Short("wash", "washers", after=r"\s*[:=]?\s*\d"),
        Short("wash", "washers", before=r"\d\"?\s*(?:in|inch)?\s*$"),
        Short("fab", "fabric", before=r"(?:\bma?sti?c|\band|\bn|[+&/])\s*$"),
        Short("fab", "fabric", after=r"\s*(?:\+|&|and|n|/)\s*ma?sti?c"),
        Short("wo", "without", after=r"\s+(?:vanes|vns|tape|tpe|staples|stpl|rods|mastic|flap)"),
        Short("wd", "wide", before=r"\d\"?\s*(?:in|inch)?\s*$"),
        Short("nd", "need", after=r"\s+(?:to|2|tape|tpe|stpl|staples|vns|vanes|more|new|a)\b"),
        Short("2", "to", before=r"\b(?:need|nd|needs|got|have|hv|going|want|forgot|frgt)\s+$", after=r"\s+(?:tape|tpe|stpl|staple|rub|do|fix|finish|fnsh|get|trim|wipe|put|hang|check|seal)"),
        Short("b4", "before", after=r"\s+(?:i|we|it|the|my|lunch|tap|tpd|tape|rub|stpl|stap|hang|they|he|quit|break)\w*|\s*(?:[,;/\n]|$)", before=r"[a-z]\s$"),
        Short("hv", "have"),
        Short("dn", "down"),
        Short("lvl", "level"),
        Short("ml", "male", before=r"\b(?:air|lv|lvs|leaves|out|by|off|from|frm|fr)\s*$"),
        Short("u", "you", before=r"\s$", after=r"\s+[a-z]{2}"),
        Short("wg", "in wg", before=r"\d\s*$"),
        Short("wc", "in wg", before=r"\d\s*$"),
        Short("sf", "sq ft", before=r"\d\s*$"),
        Short("s.f", "sq ft", before=r"\d\s*$"),
        Short("ft2", "sq ft", before=r"\d\s*$"),
        *(Short(one, "stapled every", after=_EVERY) for one in ("stpld", "stpd", "stapled", "stpl", "stp")),
        *(Short(one, ", taped", before=r"\d\"?\s*(?:in|oc|\")?\s*$") for one in ("tpd", "tped", "tapd")),
        *(Short(one, ", rubbed", before=r"\d\"?\s*(?:in|oc|\")?\s*$") for one in ("rbd", "rubd")),
        *ENGLISH_TEXTED,
        *ENGLISH_SPELLED,
    ),
    slips=tuple("stapled staples taped rubbed trimmed vanes wiped mastic collar elbow straight transition offset branch plenum hanger hangers spacing repaired crushed puncture washers screws scrim pressure bottom insulation outward clinched reinforced repair delaminated shiplap".split()),
    true_words=frozenset("ribbed rubber taper tapes tapered wiper wired crusher clincher trimmer trimmed ruled stales staled stapler hander hunger pressurer bottoms straights collars elbows transitions offsets branches washes rubbed robbed vans vales vamps wipes piped striped strapped strips scrums springs mystic trams trams spacings wined tamed tared taxed tiled tales talked tasted stalled stables stable staple bottle better button scrip scrip screams tapped talked raped roped rapped repaid repairs repairer repaired impaired screw scream crashed".split()),
    keys="qwa wqeasd ewrsd retdf trygf ytuhg uyijh iuokj oiplk pol awsqz sawdezx dserfcx fdrtgvc gftyhbv hgyujnb jhuikmn kjiolm lkop zasx xzsdc cxdfv vcfgb bvghn nbhjm mnjk",
    yes=r"[✓✔✅☑👍]\ufe0f?|\[[xX✓✔vV]\]",
    no=r"[✗✘❌☒👎☐❎]\ufe0f?|\[[ _]?\]",
    ticked=r"\b(?:sta?p|ta?p|rub|rb|trim|trm|va?ne?|wip|wp|clean|tab|x-?tab|rod|mast|mst|flap|flp|heat|preh|hung|hang|tie)\w*(?: (?:down|dn|in|out|up|rods?))?\s*[:=(-]?\s*$",
    was_done=r"(?:[a-z]+(?:ed|pld|tpd|bbd)|hung|bent|tpd|tapd|rbd|rubd|stpd|stpld|trmd|trimd|wpd|tight|clean|dry)\b",
)
