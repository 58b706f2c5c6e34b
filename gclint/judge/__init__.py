"""Rules: their language, their packs, and the findings they make."""
