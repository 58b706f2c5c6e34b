"""Read a CNC program, model the cut, and say line by line what will go wrong and what to change."""

__version__ = "0.1.0"
HOME = "https://code.lowtide.example/gclint"  # invented: reports link to it; put there where your copy of gclint stands
