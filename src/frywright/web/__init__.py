"""Pages: parse a form, ask a room, render."""
