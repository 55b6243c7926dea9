"""Places of a building in Spanish: nouns that end the name of a place, words that are one by themselves, and how many storeys a riser passes."""

from __future__ import annotations

PLACES = (
    "pasillo", "cuarto", "cuartos", "techo", "piso", "azotea", "sótano", "oficina", "oficinas", "cocina", "baño", "baños", "ala",
    "sala", "lobby", "vestíbulo", "corredor", "bodega", "almacén", "entrada principal", "cuarto de máquinas", "gimnasio",
    "cafetería", "salón", "escalera", "escaleras", "estacionamiento", "recepción", "elevador", "planta baja", "nivel", "ático",
    "muro", "clóset", "closet", "lavandería", "garage", "garaje", "mezzanine", "comedor", "andén", "recámara", "terraza", "tapanco", "muro cortafuego", "pared", "laboratorio", "plafón", "cielo", "edificio",
)
WHOLE_PLACES = (
    "a la intemperie", "al aire libre", "al sol y al agua", "dentro del concreto", "adentro del concreto", "entre el concreto", "en la losa", "dentro de la losa", "bajo el concreto", "en la tierra", "en zanja", "en la zanja", "en una zanja", "afuera del edificio", "fuera del edificio", "por fuera del edificio", "por afuera del edificio", "por fuera de la pared", "por afuera de la pared", "por fuera del muro", "sobre la azotea", "encima de la azotea", "enterrado", "enterrada", "lo enterré", "la enterré", "ya lo enterré", "ya la enterré", "ya lo enterramos", "lo enterramos", "la enterramos", "lo enterraron", "los enterramos", "quedó bajo tierra", "va bajo tierra", "bajo tierra", "bajo la losa", "debajo de la losa", "abajo de la losa", "debajo del concreto", "enterrado debajo de la losa",
    "enterrado bajo la losa", "enterrada bajo la losa", "en concreto", "en el concreto", "campana de cocina", "campana de la cocina", "campana del laboratorio", "campana de laboratorio", "campana de gases", "campana de extracción", "extracción de gases", "extractor de gases", "gases de la campana", "campana de humos", "campana de grasa", "extractor de grasa", "extractor de la grasa", "extractor de cocina", "extractor de la cocina",
)

_MANY = r"(?:\d+|dos|tres|cuatro|cinco|seis|siete|ocho|nueve|diez|doce)"
_FLOORS = r"(?:pisos|niveles|plantas)"
_RISER = r"(?:riser|montante|bajante|columna|subida|shaft|ducto vertical|chimenea)"
STOREYS = (
    rf"{_RISER},?(?: (?:que|de|vertical|el|ese|este|la|va|sube|pasa|corre|cruza|recorre|atraviesa|agarra|alimenta|sirve|por|a|los|las|hasta|derecho|recto|abarca|todos|unos))* {_MANY} {_FLOORS}"
    rf"|(?:sube|suben|pasa|pasan|atraviesa|cruza|recorre)(?: (?:derecho|recto|por|a traves de|a través de|los|las|hasta|todos))* {_MANY} {_FLOORS}"
)
