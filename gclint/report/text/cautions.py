"""The usual cautions, once, for every output."""

from __future__ import annotations

NOT_A_PROMISE = (
    "A report without findings is not a promise. gclint reads the program and what you declared; it cannot see the "
    "machine, the clamps, the bit or where you set zero."
)
USUAL = (
    NOT_A_PROMISE,
    "Eyes: wear eye protection; chips and broken bits fly.",
    "Hands: keep hands, sleeves, hair and cables away while anything turns; know where the stop is before you press "
    "start.",
    "Dust: use extraction and a mask that suits the material; wood, resin and laminate dust harms lungs and skin.",
    "Fire: rubbing and packed chips smoulder, also later in the extraction. Never leave a cut unattended; keep an "
    "extinguisher near.",
    "Workholding: see that the blank and every loose part are held, and that no clamp or screw lies in the path.",
    "The rules of your workshop and its trained supervision come before this report.",
)


def cautions(material_cautions: tuple[str, ...] = ()) -> tuple[str, ...]:
    """The usual cautions, then those of the materials in hand, each once."""
    return USUAL + tuple(dict.fromkeys(text for text in material_cautions if text))
