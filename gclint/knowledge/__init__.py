"""What gclint knows in words and numbers: the glossary, the model's numbers, its quantities."""
