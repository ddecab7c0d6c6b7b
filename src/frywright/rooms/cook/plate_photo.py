"""Reads figures off the photo of a fryer's plate, with Tesseract where it is installed. What it reads fills
empty boxes and is compared by eye; nothing it says is taken unseen.
"""

from __future__ import annotations

import re
import shutil
import subprocess
from threading import Lock

READ_S, MOST_LETTERS, MEMORY_KB = 20, 20_000, 1_500_000
"""Longest time, longest text and most memory of one reading (own rules)."""
_ONE = Lock()
LIMITED = 'ulimit -v "$1"; ulimit -t "$2"; exec "$3" stdin stdout --psm 6'
"""A picture made to harm can use up no more than this; it is handed over as data, never as a name."""
NUMBER = r"([0-9][0-9 ]*(?:[.,][0-9]+)*)"
PATTERNS = {
    "power": (rf"{NUMBER}\s*KW\b", " kW"),
    "oil_mass": (rf"(?:OIL|SHORTENING|FAT|FRYPOT)\D{{0,24}}?{NUMBER}\s*(LBS?|KG)\b", ""),
    "working_gauge": (rf"(?:WORKING|OPERATING|COOKING)\D{{0,24}}?{NUMBER}\s*(PSI|KPA|BAR)", ""),
    "relief_gauge": (rf"(?:RELIEF|SAFETY|MAX)\D{{0,24}}?{NUMBER}\s*(PSI|KPA|BAR)", ""),
}
BURNED = rf"{NUMBER}\s*BTU"
SERIAL = r"\bSER(?:IAL)?[^A-Z0-9]*(?:(?:NO|NUMBER|NR|N)\b[^A-Z0-9]*)?([A-Z0-9][A-Z0-9-]{3,23})"


def reader() -> str:
    """Where Tesseract is, or nothing."""
    return shutil.which("tesseract") or ""


def text_of(photo: bytes) -> str:
    """Text on a photo; nothing where it cannot be read, or not in time. One photo at a time."""
    place = reader()
    if not place:
        return ""
    words = ["/bin/sh", "-c", LIMITED, "sh", str(MEMORY_KB), str(READ_S), place]
    with _ONE:
        try:
            done = subprocess.run(
                words,
                input=photo,
                capture_output=True,
                timeout=READ_S,
                check=False,
                env={"OMP_THREAD_LIMIT": "1", "PATH": "/usr/local/bin:/usr/bin:/bin"},
            )
        except (subprocess.TimeoutExpired, OSError):
            return ""
    return done.stdout[:MOST_LETTERS].decode("utf-8", "replace") if done.returncode == 0 else ""


def figures(text: str) -> dict[str, str]:
    """What a plate's text says, by the box it belongs into, with the unit printed beside it."""
    plain = re.sub(r"\s+", " ", text.upper())
    found = {}
    for box, (pattern, unit) in PATTERNS.items():
        hit = re.search(pattern, plain)
        if hit:
            found[box] = f"{_plain(hit[1])}{unit or f' {hit[2].removesuffix(chr(83)).lower()}'}"
    burned = re.search(BURNED, plain)
    if burned:
        found |= {"power": f"{_plain(burned[1])} Btu/h", "fuel": "gas"}
    elif "power" in found:
        found["fuel"] = "electric"
    serial = re.search(SERIAL, plain)
    return found | ({"serial": serial[1]} if serial else {})


def _plain(digits: str) -> str:
    """Digits of a plate as the reader of typed values takes them: groups of three are joined."""
    joined = digits.replace(" ", "")
    return re.sub(r"[.,](?=[0-9]{3}(?:[.,]|$))", "", joined)
