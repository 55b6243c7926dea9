"""The text as it is meant: what is said twice, written short, stopped wrongly or said in a roundabout way, before any item is read."""
