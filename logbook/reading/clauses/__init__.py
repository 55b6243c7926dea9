"""What every step looks at: a row of items, its clauses and parts, claims, and the places where a piece is named."""
