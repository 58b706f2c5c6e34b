"""The usual cautions, once, for every output."""

from __future__ import annotations

from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from gclint.tables.material import Material

NOT_A_PROMISE = (
    "A report without findings is not a promise. gclint reads the program and what you declared; it cannot see the "
    "machine, the clamps, the bit or where you set zero."
)
USUAL = (
    NOT_A_PROMISE,
    "Eyes: wear eye protection; chips and broken bits fly.",
    "Hearing: protect it; a router and its extraction are loud enough to harm it.",
    "Hands: keep hands, sleeves, hair and cables away while anything turns; know where the stop is before you press "
    "start.",
    "Hands at the tool: spindle off, wait until it stands still, and make sure that it cannot start (a hand-started "
    "router unplugged; a driven spindle as the machine's manual says) before a hand goes to the tool or the collet. A "
    "tool that has just cut is sharp and hot.",
    "Dust: use extraction and a mask that suits the material; wood, resin and laminate dust harms lungs and skin.",
    "Fire: rubbing and packed chips smoulder, also later in the extraction. Never leave a cut unattended; keep an "
    "extinguisher near.",
    "Workholding: see that the blank and every loose part are held, and that no clamp or screw lies in the path.",
    "Manuals: what the machine's and the tool's own manuals say comes before this report; never turn a tool faster "
    "than its top speed.",
    "The law of the place, the rules of your workshop and its trained supervision come before this report.",
)
SHORT = (
    "No promise: gclint cannot see the machine, the clamps, the bit or where zero is. Law, manuals, the tool's top "
    "speed, workshop rules and supervision come first.",
    "Protect eyes, ears, lungs. Spindle off, wait until it stands still, before a hand goes near the tool.",
)

SHORTEST = "No promise. Protect eyes, ears, lungs; no hand near the tool until it stands still. More at the end."


def cautions(material_cautions: tuple[str, ...] = ()) -> tuple[str, ...]:
    """Return the usual cautions, then those of the materials in hand, each once."""
    return USUAL + tuple(dict.fromkeys(text for text in material_cautions if text))


def of_material(material: Material | None) -> tuple[str, ...]:
    """Return what a material's card warns of, each with the material's name."""
    if material is None:
        return ()
    name = f"{material.named[:1].upper()}{material.named[1:]}"
    return tuple(f"{name}: {caution}" for caution in material.cautions)


def in_short(material_cautions: tuple[str, ...] = ()) -> tuple[str, ...]:
    """Return the cautions in a few lines: no promise, the hands, and each material's own in one line."""
    own: dict[str, list[str]] = {}
    for text in dict.fromkeys(material_cautions):
        name, _, caution = text.partition(": ")
        own.setdefault(name, []).append(caution)
    return SHORT + tuple(f"{name}: {' '.join(said)}" for name, said in own.items())
