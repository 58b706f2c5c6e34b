from gclint.columns import Column

class Rim:
    used: int
    def __init__(self, depth: Column, edges: Column, above: Column, reach: Column, disc: Column) -> None: ...
