"""Small English words in the one spelling that the reader's patterns know: "didnt", "did not" and "did'nt" are "didn't".

Nothing is guessed here: what is written out is the same word. Where the letters are another word too ("its", "were", "id", "ill"), the neighbours decide.
"""

from __future__ import annotations

from logbook.languages.thumbs import Short

_HELPS = "did do does is are was were has have had could would should might must need".split()
_SHORTS = {**{one: f"{one}n't" for one in _HELPS}, "can": "can't", "will": "won't"}

_COUNTS = r"(?:\d[\d./]*|(?:an? )?(?:half|quarter|eighth)|one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|thirteen|fourteen|fifteen|sixteen|eighteen|twenty|thirty|forty|fifty|sixty|seventy|eighty|ninety)"
_PARTS = r"(?:(?:long|short|other|two|three|four|own)\s+)?(?:sides?|ends?|edges?|seams?|joints?|corners?|panels?|tabs?|flaps?|legs?|straps?|staples?|vanes?|faces?|pieces?|rods?|hangers?|runs?|ones)\b"
_STATES = (
    "bare|flat|level|open|torn|ripped|wet|dry|clean|dirty|dusty|loose|tight|missing|gone|short|bent|broken|broke|crooked|stuck|sticking|peeling|lifting|hanging|coming|popped|curling"
    "|(?:un)?(?:taped|stapled|rubbed|trimmed|sealed|patched|clinched)|hung|done|finished|on|off|not|still|already|all|only|just|fine|good|ready|untouched|never"
)
_STATE = rf"(?:{_STATES})\b"
_DOES = (
    r"(?:be|do|get|go|come|have|put|finish|fix|hang|send|wipe|trim|bend|see|need|never|just|let|tell|call|take|try|check|bring|make|start|redo|patch|leave|grab|still|also|tape|staple|rub|seal|clean|warm"
    r"|cut|say|run|admit|give|add|work|pick|swap|pull|catch|hit|log|probably|write|use|show|know|look|keep|want|set|install|measure|close)\b"
)
_NOT_OF = r"(?<!\bof)(?<!\bon)(?<!\bin)(?<!\bat)(?<!\bfrom)(?<!\bto)(?<!\bwith)(?<!\bby)(?<!\bfor)(?<!\bhas)(?<!\blost)(?<!\bneeds)(?:^|\s)\s*$"
_OPENS = r"(?:^|[.?!;\n]\s*|\b(?:so|because|okay|ok|now)\s+)$"
_BEGINS = r"(?:^|[,.?!;:\n]\s*|\b(?:but|and|though|only|because|so)\s+)$"
_GOES_ON = r"\s+(?!(?:not|and|or|but|too|also|so|if|when|because|yes|no|as|now)\b)[a-z\d]"
_NO_SECOND_NO = r"(?!\s+(?:no|nobody|nothing|none|never|not|any|gonna|going)\b)"
_NO_NAME = r"(?<!\brun)(?<!\bnumber)(?<!\bline)(?<!\bgrid)(?<!\btag)(?<!\bmark)(?<!\bstraight)(?<!\belbow)(?<!\btee)(?<!\bpiece)"


_SINGLE = "top bottom left right back front throat heel trunk main tape foil facing scrim mastic liner insulation rubbing taping stapling jacket step male female pattern mine".split()
_NUMBERS = "one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen twenty thirty forty fifty sixty seventy eighty ninety".split()
_PIECES = r"(?:^|[.?!;\n]\s*|\b(?:straight|elbow|tee|cap|collar|transition|section|piece|number|offset|plenum|fitting)\s+)"
_PIECE = rf"{_PIECES}$"
_OF_A_PIECE = rf"\s+(?:been|an?|up|{_STATES}|{_COUNTS}\s+(?:long|inch|by))\b(?!\s+of\b)"


def _rows(pairs: str, before: str = "", after: str = "") -> tuple[Short, ...]:
    """Rows of "spelling spelling=word", one pair a line, "_" for a blank."""
    made = []
    for line in pairs.strip().split("\n"):
        spelled, _, means = line.strip().partition("=")
        made += [Short(one.replace("_", " "), means.replace("_", " "), before, after, same=True) for one in spelled.split()]
    return tuple(made)


def _denied():
    """Every way to write "didn't"."""
    for one, short in _SHORTS.items():
        bare = short.replace("'", "")
        yield from _rows(f"{one}_not {bare[:-1]}_t {bare[:-2]}'nt={short}")
        if bare != "cant":
            yield from _rows(f"{bare}={short}")
    yield from _rows("cannot=can't\ndosent doesent dosnt=doesn't")
    yield from _rows("ain't aint=haven't", r"\b(?:i|we)\s+$", r"\s+(?:[a-z]+ed|got|gotten|been|done|had|seen|even|bent|put|run)\b")
    yield from _rows("ain't aint=haven't", "", r"\s+(?:gotten|been|done|had|seen|looked|touched|[a-z]+ed (?:it|them|the|that|an?|any)|bent (?:it|them|the|that|an?|any))\b")
    yield from _rows("ain't aint=hasn't", "", r"\s+got\b(?! no\b)")
    yield from _rows("ain't aint=aren't", r"(?:(?<!\bthi)(?<!\bit)s|\b(?:they|these|those|them|you|we))\s+$", _NO_SECOND_NO)
    yield from _rows("ain't aint=isn't", r"[a-z\d]\s+$", _NO_SECOND_NO)
    yield from _rows("aint=ain't")
    yield Short("cant", "can't", before=r"(?<!\ba)(?<!\bthe)(?:^|\W)$", same=True)


def _endings():
    """ "Missin'", and "missin" where that is no other word."""
    for one in (
        "miss hang peel stick go com do say leav work putt gett mak wip rubb stapl tap show look lift com runn cutt bend clos seal patch hold sitt fall pull push tear ripp us tak giv mov wait need want noth someth anyth everyth "
        "mean think tell call talk bring feel curl bubbl gapp leak blow touch miss trimm clean heat warm finish start stopp try turn cover clinch flapp sagg wrinkl measur hav be see lay ly stand stay happen figur bother forgett"
    ).split():
        yield from _rows(f"{one}in' {one}in={one}ing")


ENGLISH_SPELLED: tuple[Short, ...] = (
    *_denied(),
    *_endings(),
    # an apostrophe left out, where the letters are no other word
    *_rows(
        """
        im=I'm
        ive=I've
        theyre=they're
        theyve=they've
        theyll=they'll
        theyd=they'd
        youre=you're
        youve=you've
        youll=you'll
        youd=you'd
        weve=we've
        hes=he's
        shes=she's
        hed=he'd
        itll=it'll
        itd=it'd
        thats=that's
        thatll=that'll
        thatd=that'd
        theres=there's
        therell=there'll
        whats=what's
        whos=who's
        heres=here's
        wheres=where's
        hows=how's
        nobodys=nobody's
        somebodys=somebody's
        everybodys=everybody's
        anybodys=anybody's
        someones=someone's
        everyones=everyone's
        everythings=everything's
        nothings nothins=nothing's
        elses=else's
        somethings=something's
        thems=them's
        todays=today's
        yesterdays=yesterday's
        tomorrows=tomorrow's
        this_ones=this one's
        that_ones=that one's
        other_ones=other one's
        """
    ),
    # and where they are
    *_rows("its=it's", _NOT_OF, rf"\s+(?:(?:an?|the|not|no|never|my|his|hers|up|out|down|over|under|in|at|got|now|about|almost|been|going|gonna|ok|okay|bad|hot|cold|too|so|like|where|what|that|because|me|nothing|inside|outside|supposed|here|there)\b|(?:hard|solid|real|really|pretty|both|either|every|[a-z]+ed|{_STATES})\b(?!\s+{_PARTS})|(?:straight|elbow|tee|cap|collar|transition|section|piece|number)\s+(?:number\s+)?\d|[a-z]-?\d|{_COUNTS}(?![\w/])(?!\s+{_PARTS}))"),
    *_rows("were=we're", rf"{_OPENS}|\b(?:say|think|guess|figure)\s+$", r"\s+(?:short|out of|going|gonna|done|good|still|waiting|all set|here|[a-z]+ing)\b"),
    *_rows("id=I'd", r"(?<!\bthe)(?<!\bno)(?<!\btag)(?<!\bits)(?<!\bpiece)(?<!\bphoto)(?:^|\W)$", rf"\s+(?:rather|love|like|guess|already|swear|skipped|forgot|forgotten|hate|bet|left|told|had|'ve|[a-z]+ed\b|{_DOES})"),
    *_rows("ill=I'll", r"(?<!\bis)(?<!\bwas)(?<!\bfelt)(?<!'s)(?:^|\W)$", rf"\s+{_DOES}"),
    *_rows("well=we'll", _OPENS, rf"\s+{_DOES}.{{0,20}}\b(?:tomorrow|later|monday|when|after|next|in the morning)\b"),
    *_rows("wed=we'd", "", r"\s+(?:have|rather|be|never|love|like|'ve)\b"),
    *_rows("lets=let's", _BEGINS, rf"\s+(?:not\s+)?{_DOES}"),
    *_rows("ones=one's", rf"{_BEGINS}|\b(?:in|bent)\s+$", rf"\s+{_STATE}"),
    *_rows("others=other's", r"\bones?\b.*\bthe\s+$", r"\s+(?:hanging|wide|open|torn|bare|loose|not)\b"),
    *(row for one in _SINGLE for row in _rows(f"{one}s={one}'s", r"(?<!s and)(?:^|\s|[,.;:])$", rf"\s+(?:the one|{_STATE})")),
    *(row for one in ("top", "bottom", "left", "right") for row in _rows(f"{one}s={one}'s", r"\b(?:the|and|my)\s+$", rf"\s+in\s+{_COUNTS}\b")),
    *_rows("steps=step's", "", r"\s+(?:outside|inside|facing|to the (?:in|out)side)\b"),
    *_rows("steps=step's", r"\b(?:the|low)\s+$", r"\s+(?:in|out)\b(?!\s+\d)"),
    *(row for one in _NUMBERS for row in _rows(f"{one}s={one}'s", _PIECE, _OF_A_PIECE)),
    *_rows("s='s", rf"{_PIECES}#?\d+$", _OF_A_PIECE),
    *(row for one in ("monday", "tuesday", "wednesday", "thursday", "friday") for row in _rows(f"{one}s={one}'s", "", r"\s+(?:problem|job|work)\b")),
    # two words, where the patterns know them as one
    *(row for one in ("it", "that", "there", "here") for row in _rows(f"{one}_is={one}'s", r"(?<!\bof)(?<!\bon)(?<!\bin)(?<!\bfrom)(?<!\bwith)(?<!\bunder)(?<!\bbehind)(?<!\babout)(?<!\bfor)(?<!\bto)(?<!\bat)(?<!\bup)(?<!\bout)(?<!\bis)(?:^|\W)$", _GOES_ON)),
    *(row for one in ("what", "who", "he", "she", "where") for row in _rows(f"{one}_is={one}'s", "", _GOES_ON)),
    *_rows("it's_now=it is now"),
    *(row for one in ("they", "we", "you") for row in _rows(f"{one}_are={one}'re", "", _GOES_ON)),
    *_rows("i_am=I'm", "", _GOES_ON),
    *(row for one in ("I", "we", "they", "it", "you", "he", "she") for row in _rows(f"{one.lower()}_will={one}'ll", "", _GOES_ON)),
    *(row for one in ("could", "would", "should", "might", "must") for row in _rows(f"{one}_have {one}_of {one}a {one}ve={one}'ve", "", r"(?!\s+(?:the|course|no|any|an?|my|its)\b)")),
    *_rows("let_us=let's"),
    # as it is spoken
    *_rows("gonna=going to", r"(?:\b(?:was|were|is|are|am|be|not)|'m|'re|'s|n't)\s+$", r"(?!\s+lie\b)"),
    *_rows("hafta=have to\noutta=out of\nalot=a lot\nsuppose_to=supposed to"),
    *_rows("gotta=have to", r"(?<!have)(?<!has)(?<!had)(?<!'ve)(?<!'s)(?:^|\s)\s*$"),
    *_rows("have_got_to=have to", r"\b(?:i|we|you|they|still)\s+$", rf"\s+{_DOES}"),
    *_rows("'em=them"),
    *_rows("em=them", r"[a-z]\s+$"),
    *_rows("y'all yall=you"),
    *_rows("'til til till 'till=until"),
    *_rows("'cause 'cuz 'cos=because"),
    *_rows("cos=because"),
    *_rows("cause bc=because", r"(?<!\bthe)(?<!\bno)(?<!\bto)(?<!\ba)(?<!ll)(?<!\bcan)(?<!\bany)(?<!could)(?<!might)(?<!would)(?<!may)(?:^|\W)\s*$", r"\s+(?:i|we|it|they|he|she|you|the|there|that|this|my|no|its|of|somebody|nobody|i'm|i've|it's|they're|there's|that's)\b"),
    *_rows("nah naw=no\nyup=yes"),
    *_rows("nope=no", r",\s*$", r"\s*,"),
    *_rows("no_one no-one=nobody", "", r"(?!\s+of\b)"),
    # "and"
    *_rows("&=and", r"\s$", r"\s+[a-z\d]"),
    *_rows("+=and", r"[a-z\d\",]\s+$", r"\s+[a-z\d]"),
    *_rows("&=_and_", r"[a-z]{3}$", r"[a-z]{3}"),
    *_rows("an' 'n' 'n=and", r"\s$", r"\s"),
    *_rows("n=and", rf"^(?!.*\by\b).*(?<=[a-z\d\",]){_NO_NAME}\s+$", r"(?!.*\by\b)(?!.*\bn\s*(?:$|[.,;\n]))\s+(?:[a-z]{2}|[ia]\b|\d)"),
    *_rows("n=and", rf"\b{_COUNTS}\s+$", r"\s+(?:an? |one |three |five |seven )?(?:half|quarter|eighth|third|[a-z]+ths?|quarters)\b"),
    *_rows("an=and", r"[a-z\d\"]\s+$", r"\s+(?:then|the|it|i|we|they|taped|stapled|rubbed|trimmed|wiped|cleaned|sealed|patched|hung|no|not)\b"),
    *_rows("an=a", "", r"\s+(?!hour|honest|honou?r|heir)[bcdfghjklmnpqrstvwyz][a-z]{2}"),
    # a small number that counts parts: what is said with it ("not one side") is known in words
    *_rows("1=one", r"(?:\b(?:not|every|without|after|except|short|on|in|but|only|just)|n't)\s+$", r"\s+(?:of|sides?|seams?|staples?|vanes?|tabs?|corners?|spots?|joints?|ends?|edges?)\b"),
    *_rows("1=one", _BEGINS, r"\s+(?:side|seam|staple|vane|tab|corner|spot|joint|end|edge)\b"),
    *(row for at, one in enumerate(_NUMBERS[:10], 1) for row in _rows(f"{at}={one}", r"(?:^|[,.;:]\s*|[a-z]\s+)$", r"\s+of\s+(?:the|them|those|these|us|its|my|'?em)\b")),
    # British
    *_rows("fibreglass=fiberglass\nfibre=fiber\nfibres=fibers\ncentre=center\ncentres=centers\ncentred=centered\naluminium=aluminum\ncolour=color\ngrey=gray"),
)
