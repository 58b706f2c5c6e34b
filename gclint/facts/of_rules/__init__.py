"""Facts that one rule alone looks at: one file for each such rule, named as the rule is, with underscores."""
