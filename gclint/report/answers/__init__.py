"""What the verbs answer beside a check: windows, cards, rules, the rule language."""
