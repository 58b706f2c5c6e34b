"""Teaching: drawings of what the model sees, rules at length, the glossary. A plain check loads none of it."""
