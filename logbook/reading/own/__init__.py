"""Whose words they are: his own work on his own piece, or another's, a question, a plan, a drawing, a story."""
