"""The items as they are meant: numbers and names put together, words told by their neighbours, corrections of measures."""
