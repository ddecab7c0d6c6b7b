"""A program tried on this kitchen: asked, proved, said what it is worth."""
