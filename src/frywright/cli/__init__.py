"""Terminal: parse options, ask a room, print."""
