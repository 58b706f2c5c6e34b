"""Reports for other programs: JSON, SARIF, JUnit."""
