"""The same in Spanish ("le puse dos, pero la regla dice dos y media")."""

from __future__ import annotations

THOUGHT = r"(?<!\w)(?:pens[éeaá]\w*|cre[íi]\w*|calcul[éea]\w*|anot[éea]\w*|apunt[éea]\w*|dije|dec[íi]a|parec[íie]\w*|se ven?|a ojo|al ojo|ech[éea]\w* ojo|juraba)(?!\w)"
THOUGHT_SO = r"(?<!\w)(?:pens[ée]|cre[íi]|calcul[ée]|dec[íi]a yo|seg[úu]n yo|a ojo|al ojo)(?!\w)"
_TOOL = r"(?:la regla|el metro|la cinta m[ée]trica|la cinta|el flex[óo]metro|la placa|la etiqueta|la b[áa]scula|el man[óo]metro|el term[óo]metro|la caja)"
FOUND_BY = (
    r"(?:(?:[,;.] ?| )(?:pero|mal|no|y)[,;.]? ?|[,;.] )(?:pero |ya |en realidad |la verdad |cuando med[íi],? )*"
    rf"(?:(?:son|es|eran|era|est[áa]n a|est[áa] a|miden?|med[íi]a|pesa|salieron (?:a|de)|sali[óo] (?:a|de)|quedaron a)|{_TOOL} (?:dice|marca|da|lee|mide)(?: que)?(?: es| son)?|med[íi] y (?:son|es)|med[íi])"
    r" (?:(?:de|a|como|m[áa]s bien) )*$"
)
