"""Spanish for several pieces told of one after the other."""

from logbook.languages.several import Several

SPANISH_SEVERAL = Several(
    next_one=r"(?:(?:y|luego|despues|ahora|tambien|sigue|bueno|ok|okay|entonces)[,.]? )*(?:el |la |un |una )?",
    of_others=(
        r"\b(?:amb[oa]s|l[oa]s (?:dos|tres|cuatro|cinco)|ningun[oa]?|igual(?:es|ito|ita)?|mism[oa]s?|tampoco|tambien|(?:el|la|l[oa]s) otr[oa]s?|(?:primer[oa]?|segund[oa]|tercer[oa]?|ultim[oa])s?|otr[oa] {kind}|(?:el|la|es[ea]|est[ea]|mi) {kind}(?! (?:numero |no\.? ?|#)?\d)|como (?:el|la|l[oa]s|es[ea]|antes)|anterior(?:es)?|de (?:ell[oa]s|es[oa]s|est[oa]s)|idem)\b"
        r"|(?:^|[.;?!] )(?:(?:y|pero|todavia|aun|nomas que) )*(?:les|(?:no )?l[oa]s (?:he|hemos|\w+(?:e|amos)\b)|no (?:les|l[oa]s)|el par|(?:no )?(?:estan|quedaron|van sin|llevan|tienen|traen)|ni (?:un[oa]|el uno|la una) ni|(?:(?:hay|tengo|tenemos) que|(?:me |nos )?falta) \w+[aei]r(?:l[oa]s|les))\b"
        r"|(?:^|[.;?!] )(?:(?:y|pero|tambien|luego|entonces|ah|bueno) )*(?:tod[oa]s?|nada|nadie|es[oa]s|est[oa]s|ell[oa]s|l[oa]s demas|cada|borra\w*|quita|olvida\w*|espera\w*|digo|perdon|corrijo|no,|mejor dicho)\b"
    ),
)
