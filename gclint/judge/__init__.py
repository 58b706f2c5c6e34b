"""Rules held against the facts: findings, what accepts them, and their order."""
