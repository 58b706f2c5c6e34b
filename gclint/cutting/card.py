"""Moved to gclint.setup.card (a card is a declaration); kept until nothing imports it from here."""

from gclint.setup.card import Material, describe, material, material_from, names

__all__ = ["Material", "describe", "material", "material_from", "names"]
