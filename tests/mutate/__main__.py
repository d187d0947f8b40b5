"""How many small slips the tests notice: ``python -m tests.mutate [ROOM …] [--count N] [--seed N]``.

Slips are drawn at random, the same for a seed, from all of the rooms or from those named (``kernel/questions``).
Those that nobody noticed are listed, to be read: some change nothing that anyone could see.
"""

import argparse
import random
import tempfile
from collections import Counter
from pathlib import Path

from tests.mutate.reached import reached
from tests.mutate.slips import Slip, slips_in
from tests.mutate.trials import ROOT, copied_house, is_noticed, rooms_of, world_of

ROOMS = ["kernel", "catalog", "drawing", "browser", "site"]


def drawn(rooms: list[str], count: int, seed: int) -> list[Slip]:
    """Return so many slips from the rooms, a file's turn coming with its length."""
    files = [file for room in rooms for file in sorted((ROOT / "configurator" / room).rglob("*.py"))]
    slips = [slip for file in files for slip in slips_in(file)]
    return random.Random(seed).sample(slips, min(count, len(slips)))


def main() -> None:
    """Try each slip in turn and print the score of each room."""
    parser = argparse.ArgumentParser(prog="python -m tests.mutate")
    parser.add_argument("rooms", nargs="*", default=ROOMS, metavar="ROOM")
    parser.add_argument("--count", type=int, default=200)
    parser.add_argument("--seed", type=int, default=1)
    told = parser.parse_args()
    tried: Counter[str] = Counter()
    noticed: Counter[str] = Counter()
    with tempfile.TemporaryDirectory() as folder:
        place = Path(folder)
        copied_house(place)
        known = reached(place, world_of(place))
        for slip in drawn(told.rooms, told.count, told.seed):
            room = rooms_of(slip)[0]
            tried[room] += 1
            if is_noticed(place, slip, known):
                noticed[room] += 1
            else:
                print(f"not noticed: {slip.file.relative_to(ROOT)}:{slip.line}: {slip.what}", flush=True)
    for room in sorted(tried):
        print(f"{room}: {noticed[room]} of {tried[room]}")
    print(f"all: {noticed.total()} of {tried.total()}")


if __name__ == "__main__":
    main()
