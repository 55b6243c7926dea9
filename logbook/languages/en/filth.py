"""What must not lie between the facing and the tape, and how a facing is called that has it on. Words of common speech, no published source."""

from __future__ import annotations

from logbook.languages.ways import ways

_NOUNS = "dust|dirt|grease|oil|mud|grit|grime|soot|powder|filth|sawdust|saw dust|drywall dust|concrete dust|gypsum dust|metal dust|lint|debris|crud|gunk|muck|gunge|slime|residue|silt|mortar|thinset|chalk|sand|ash|dew|frost|ice|condensation|moisture|overspray|shavings|filings|fuzz|fibers|glass dust|cobwebs|rust|tar"
# of each a note may hold one; regular expressions over lower-case words
FILTHS = (
    r"(?:dew|frost|ice|slush|snow|condensation|condensate|moisture|dust|saw[- ]?dust|dirt|mud|grease|oil|powder|grit|grime|overspray|(?:glove |finger|hand)prints?|smudges?|smears|soot|crud|gunk|muck|gunge|goop|slime|filth|silt|lint|fuzz|fluff|fibers?|fibres?"
    r"|chalk|ash|sand|sweat|shavings|filings|plaster|mortar|thinset|crumbs|debris|residue|cobwebs?|rust|tar)\b(?! (?:free|cover|mask|pan|bin|colou?r))"
)
FILTHY = r"(?:dusty|dirty|greasy|oily|grimy|gritty|filthy|sooty|muddy|chalky|powdery|linty|gunky|cruddy|mucky|slimy|grubby|grungy|unclean|unwiped)"
SWEATY = r"(?:dewy|frosty|sweaty|sweating|damp|moist|wet)"
FILTH_CUES = "frost|dew|condens|moist|dust|dirt|mud|greas|grit|grim|powder|soot|oil|spray|filth|chalk|sand|slim|gunk|crud|muck|grub|grung|silt|mortar|thinset|debris|residue|cobweb|rust|lint|tar\\b|uncle|unwip|sweat|damp|wet"

WIPE_IT_OFF = ways("get|knock|blow|brush|sweep|scrape|clean|rinse|wash|shake|wipe|vacuum|rub", "the|that|all the|any of the", _NOUNS, "off")
WIPED_IT_OFF = ways("got|knocked|blew|brushed|swept|scraped|cleaned|rinsed|washed|shook|wiped|vacuumed|rubbed|dusted", "the|that|all the", _NOUNS, "off")
CLEAN = "dried it off|dried it up|dried it all off|dried the facing|dried the foil|dried the board|dried the surface|dried them off|" + ways("no", "dirt|debris|grit|grime|grease|oil|mud|soot|lint|crud|residue|overspray|sawdust|powder|filth|gunk") + "|" + ways("no", "frost|dew|ice|condensation|moisture", "on it|on the facing|on the foil|on the board|on the surface|under it|under the tape")
DIRTY = "filthy|sooty|gritty|chalky|powdery|mucky|gunky|linty|unwiped|unclean|grubby|cruddy|" + ways("debris|mortar|overspray|soot|grime|grit|sawdust|lint|residue|silt|condensation|frost|dew|muck|crud|gunk|chalk", "on|all over", "it|the facing|the foil|the board|the joint|the surface|the seam")
# of the site or the day, and not of the facing
DIRTY_ELSEWHERE = ways("dusty|dirty|filthy|grimy|gritty|sooty|chalky|powdery|muddy|grubby|greasy|oily", "in here|up here|out here|down here|over here|in there|up there|down there|out there|outside|job|jobs|work|room|floor|floors|site|place|attic|basement|crawl space|business|hallway|corridor|day|morning|coffee|hands|gloves|clothes|rag|rags|jokes|trick")

# (fact, value, words of a clause)
TAPED_OVER_IT: tuple[tuple[str, object, str], ...] = (
    ("surface_clean", False, rf"(?:tap(?:e|ed|ing)|stuck|stuck it|laid|put|went|slapped|right|down|181a-?p|mastic)(?: (?:it|the tape|tape|with [\w -]{{2,12}}?|right|straight|on|down|directly))* (?:over|on top of|on|onto|to|across|with(?= (?:all |some of )?(?:the|that) \w+(?: \w+)? (?:still )?on\b)) (?:all )?(?:the |that |some |a (?:film|layer|coat) of |all that |a )?(?:dirty |wet |fine |drywall |concrete |metal |sheetrock |loose |light |greasy |muddy )*(?:{FILTHS}|(?:film|damp|{FILTHY}|wet)\b)(?! (?:free|cover))"),
    ("surface_clean", False, rf"(?:facing|foil|board|surface|joint|seam|face|jacket)(?:'s| is| was| were| stayed| had)*(?: still| a bit| a little| kind of| kinda| pretty| all| real| too| some)* (?:{FILTHY}|dust on it|dirt on it|grease on it|oil on it)\b"),
    ("surface_clean", False, rf"(?:it|they|facing|foil|board|surface|joint|seam|face|jacket)(?:'s| is| was| were| had gone)*(?: still| all| a little| kind of| pretty| too)* (?:{FILTHY}|{SWEATY}),? (?:and|but|so) (?:i|we) (?:just |still |went ahead and |only )*(?:taped|put (?:the )?tape on)(?: it| that| them| her| over it)* (?:anyway|anyhow|regardless|all the same|just the same|as is|as it was|like that)\b"),
    ("surface_clean", False, rf"(?:facing|foil|board|surface|joint|seam|face|jacket)s?(?:'s| is| was| were)?(?: still| all| a little| kind of| pretty)* (?:{FILTHY}|{SWEATY}) (?:under|underneath|beneath|behind) (?:the |my |that )?tape\b"),
)
