"""Records: cases, the inspector's pack, people."""
