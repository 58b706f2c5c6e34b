"""The tables that pass between the steps: frozen columns and structs, with units in their comments."""
